import type { Page } from "playwright";
import { expect } from "vitest";
import { axeProblems } from "./page-faults.js";
import type { BenchPage } from "./bench-page.js";
import { describeWalks } from "./walks.js";

const shape = "v=1&model=bassoon&page=lessons&lesson=06-shape.1";

/** Both windows, with a lesson on them. */
async function present(bench: BenchPage): Promise<Page> {
  await bench.page.goto(`${bench.url}#${shape}`);
  await bench.button("Present it to a class").click();
  const opened = bench.page.waitForEvent("popup");
  await bench.button("Open the class's window").click();
  const audience = await opened;
  await audience.locator("lesson-step h2").waitFor();
  return audience;
}

const titleOf = (page: Page) => page.locator("lesson-step h2").innerText();
const connected = (page: Page) => page.getByText("The class's window is connected");

describeWalks(
  "a lesson before a class",
  (walk) => {
    walk("notes are in the presenter's window alone; the steps go together", async (bench) => {
      const { page } = bench;
      await page.goto(`${bench.url}#${shape}`);
      await page.locator("lesson-step h2").waitFor();
      expect(await page.locator(".notes").count()).toBe(0);
      const audience = await present(bench);
      await connected(page).waitFor();
      expect(await page.locator(".notes .note").innerText()).not.toBe("");
      expect(await axeProblems(page)).toEqual([]);
      expect(await axeProblems(audience)).toEqual([]);
      expect(await audience.locator(".note, button:not(main *), reed-compass").count()).toBe(0);
      const first = await titleOf(audience);
      await page
        .locator("lesson-presenter aside")
        .getByRole("button", { name: "Next step" })
        .click();
      await expect.poll(() => titleOf(audience)).not.toBe(first);
      expect(await titleOf(audience)).toBe(await titleOf(page));
    });

    walk("type is tall enough for a room, and taller for a longer one", async (bench) => {
      const audience = await present(bench);
      await audience.setViewportSize({ width: 1920, height: 1080 });
      const smallest = () =>
        audience.evaluate(() => {
          const sizes: number[] = [];
          const read = (root: ParentNode): void => {
            for (const one of root.querySelectorAll<HTMLElement>("*")) {
              if (one.shadowRoot) read(one.shadowRoot);
              const isText = [...one.childNodes].some(
                ({ nodeType, textContent }) => nodeType === 3 && textContent?.trim(),
              );
              if (!isText || one.closest("style, .unseen") || !one.checkVisibility()) continue;
              const own = Number.parseFloat(getComputedStyle(one).fontSize);
              sizes.push(own * (one as Element & { currentCSSZoom: number }).currentCSSZoom);
            }
          };
          read(document.querySelector("reedpoint-app")!.shadowRoot!);
          return Math.min(...sizes);
        });
      await expect.poll(smallest).toBeGreaterThan(27.99);
      await bench.page.getByText("Size for the last row").click();
      await bench.page.getByLabel("Farthest seat, m").fill("10.5");
      await bench.page.getByLabel("Height of the picture, m").fill("1.5");
      await bench.page.getByLabel("Height of the picture, m").press("Enter");
      await expect.poll(smallest).toBeGreaterThan(0.035 * 1080 - 0.01);
      const wide = await audience.evaluate(() => document.documentElement.scrollWidth);
      expect(wide).toBeLessThanOrEqual(1920);
    });

    walk("a guess is seen as it is made; the outcome only once it is locked", async (bench) => {
      const { page } = bench;
      const audience = await present(bench);
      await page.locator("lesson-predict triangle-plane svg").scrollIntoViewIfNeeded();
      await bench.dragPoint([0.6, 0.2, 0.2]);
      const place = (one: Page) =>
        one.locator("lesson-predict reed-shares input[type=range]").first().inputValue();
      await expect.poll(() => place(audience)).toBe(await place(page));
      expect(await audience.locator("lesson-feedback").count()).toBe(0);
      await page.getByRole("radio", { name: "Sure", exact: true }).check();
      await bench.button("Lock in").click();
      await audience.locator("lesson-feedback .told").waitFor();
      expect(await audience.locator("lesson-feedback .told").innerText()).toBe(
        await page.locator("lesson-feedback .told").innerText(),
      );
    });

    walk("frozen, it stays; blank, it is dark; pointed at, it has a ring", async (bench) => {
      const { page } = bench;
      const audience = await present(bench);
      const first = await titleOf(audience);
      await bench.button("Freeze").click();
      await page.keyboard.press("PageDown");
      await expect.poll(() => titleOf(page)).not.toBe(first);
      await audience.waitForTimeout(200);
      expect(await titleOf(audience)).toBe(first);
      await bench.button("Freeze").click();
      await expect.poll(() => titleOf(audience)).toBe(await titleOf(page));
      await page.keyboard.press(".");
      await audience.locator(".blank").waitFor();
      await page.keyboard.press("Escape");
      await audience.locator(".blank").waitFor({ state: "detached" });
      await bench.button("Point").click();
      await page.locator("lesson-predict triangle-plane svg").hover();
      await audience.locator(".pointer").waitFor();
      const near = await audience.evaluate(() => {
        const root = document.querySelector("reedpoint-app")!.shadowRoot!;
        const view = root.querySelector("audience-view")!.shadowRoot!;
        const ring = view.querySelector(".pointer")!.getBoundingClientRect();
        return ring.top > 0 && ring.bottom < innerHeight;
      });
      expect(near).toBe(true);
    });

    walk(
      "frozen, it can be dark, and it is still frozen after both were reloaded",
      async (bench) => {
        const { page } = bench;
        const audience = await present(bench);
        const first = await titleOf(audience);
        await bench.button("Freeze").click();
        await bench.button("Blank").click();
        await audience.locator(".blank").waitFor();
        await bench.button("Blank").click();
        await audience.locator(".blank").waitFor({ state: "detached" });
        await page.keyboard.press("PageDown");
        await expect.poll(() => titleOf(page)).not.toBe(first);
        await bench.code();
        await page.reload();
        await connected(page).waitFor();
        await audience.reload();
        await expect.poll(() => titleOf(audience)).toBe(first);
        expect(await titleOf(page)).not.toBe(first);
      },
    );

    walk("the next lesson comes into the same window", async (bench) => {
      const { page } = bench;
      const audience = await present(bench);
      await bench.page.getByRole("button", { name: "All lessons" }).first().click();
      await page.locator("lesson-list .lesson").first().click();
      expect(await page.locator(".notes").count()).toBe(0);
      await bench.button("Present it to a class").click();
      await expect.poll(() => titleOf(audience)).toBe("Hold it to the lamp");
      await connected(page).waitFor();
    });

    walk("a clicker turns steps though a slider has the focus, in either window", async (bench) => {
      const { page } = bench;
      const audience = await present(bench);
      const slider = page.locator("lesson-predict reed-shares input[type=range]").first();
      await slider.focus();
      const value = await slider.inputValue();
      await page.keyboard.press("PageDown");
      await expect.poll(() => page.locator(".step[aria-current]").innerText()).toBe("2");
      await page.keyboard.press("PageUp");
      await expect.poll(() => page.locator(".step[aria-current]").innerText()).toBe("1");
      expect(await slider.inputValue()).toBe(value);
      await audience.bringToFront();
      await audience.keyboard.press("PageDown");
      await expect.poll(() => page.locator(".step[aria-current]").innerText()).toBe("2");
    });

    walk("either side may be reloaded; a closed window is told", async (bench) => {
      const { page } = bench;
      const audience = await present(bench);
      await page.keyboard.press("PageDown");
      await page.keyboard.press(".");
      await audience.locator(".blank").waitFor();
      const title = await titleOf(page);
      await audience.reload();
      await expect.poll(() => titleOf(audience)).toBe(title);
      await bench.code();
      await page.reload();
      await connected(page).waitFor();
      expect(await titleOf(page)).toBe(title);
      expect(await bench.button("Blank").getAttribute("aria-pressed")).toBe("true");
      await page.keyboard.press("PageDown");
      await expect.poll(() => titleOf(audience)).not.toBe(title);
      await audience.close();
      await page.getByText("Not connected to the other window").first().waitFor();
      await bench.button("Stop presenting").click();
      await expect.poll(() => page.locator(".notes").count()).toBe(0);
    });
  },
  { afresh: true },
);
