import { expect } from "vitest";
import type { BenchPage } from "./bench-page.js";
import { describeWalks, phone } from "./walks.js";

const sheet = (bench: BenchPage) => bench.page.locator("bench-recipe .sheet");

describeWalks("the bench on a phone", (walk) => {
  walk(
    "the recipe comes up as a sheet under the triangle, which stays in sight, and goes again",
    async (bench) => {
      await bench.open();
      expect(await bench.row("wings").isVisible()).toBe(false);
      await bench.openRecipe();
      await bench.slider("wings").scrollIntoViewIfNeeded();
      const [, pointY] = await bench.point();
      const top = (await sheet(bench).boundingBox())!.y;
      expect(pointY).toBeGreaterThan(0);
      expect(pointY).toBeLessThan(top);
      await bench.type("wings", "0.2");
      expect((await bench.shares())[0]).toBeGreaterThan(33);
      await bench.button("Close recipe").click();
      expect(await bench.row("wings").isVisible()).toBe(false);
    },
    phone,
  );

  walk(
    "by keyboard: the first link leads to the sheet, Escape closes it, and the focus stays with its handle",
    async (bench) => {
      await bench.open();
      await bench.page.keyboard.press("Tab");
      await bench.page.keyboard.press("Enter");
      expect(await bench.row("wings").isVisible()).toBe(true);
      await bench.page.keyboard.press("Tab");
      await bench.page.keyboard.press("Escape");
      expect(await bench.row("wings").isVisible()).toBe(false);
      const name = await bench.page.evaluate(() => {
        let active: Element | null = document.activeElement;
        while (active?.shadowRoot?.activeElement) active = active.shadowRoot.activeElement;
        return active?.textContent.trim();
      });
      expect(name).toBe("Open recipe");
    },
    { viewport: { width: 360, height: 740 } },
  );

  walk(
    "the lesser tools are in a menu that closes by Escape and after its work",
    async (bench) => {
      await bench.open();
      await bench.pickReed("Heron");
      const more = bench.page.getByText("More", { exact: true });
      await more.click();
      expect(await bench.button("Reset").isVisible()).toBe(true);
      await bench.page.keyboard.press("Escape");
      expect(await bench.button("Reset").isVisible()).toBe(false);
      await more.click();
      await bench.button("Reset").click();
      expect(await bench.button("Reset").isVisible()).toBe(false);
      expect(await bench.shares()).toEqual([33, 33, 34]);
    },
    phone,
  );
});
