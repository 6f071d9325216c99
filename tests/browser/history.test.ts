import { expect } from "vitest";
import type { BenchPage } from "./bench-page.js";
import { describeWalks } from "./walks.js";

/** Where the page is, as a person sees it: its title, and whether the focus has a place. */
async function place({ page }: BenchPage): Promise<string> {
  await page.waitForFunction(() => document.activeElement?.localName === "reedpoint-app");
  return (await page.title()).replace(/ – Reedpoint$/, "");
}

describeWalks("the browser's history", (walk) => {
  walk("Back and Forward lead through pages, and the reed stays", async (bench) => {
    const { page } = bench;
    await page.goto(`${bench.url}#v=1&model=bassoon&reed=Bittern`);
    const tab = (name: string) => page.locator("page-tabs").getByText(name, { exact: true });
    await tab("Plan").click();
    await tab("Bench").click();
    await bench.slider("spine").focus();
    for (let i = 0; i < 5; i += 1) await page.keyboard.press("ArrowRight");
    const spine = await bench.value("spine");
    await page.goBack();
    expect(await place(bench)).toBe("Plan");
    await page.goBack();
    expect(await place(bench)).toBe("Bench");
    expect(await bench.value("spine")).toBe(spine);
    await page.goForward();
    expect(await place(bench)).toBe("Plan");
    await page.goForward();
    expect(await place(bench)).toBe("Bench");
    expect(await bench.value("spine")).toBe(spine);
    await page.reload();
    expect(await bench.value("spine")).toBe(spine);
  });

  walk(
    "Back leads from a step to the one before, to the list, and out of the lessons",
    async (bench) => {
      const { page } = bench;
      await page.goto(bench.url);
      await page.locator("page-tabs").getByText("Lessons").click();
      await page
        .locator("lesson-list")
        .getByRole("button", { name: /parts of a blade/ })
        .click();
      await page.locator("lesson-choice").first().waitFor();
      const titles = [await page.title()];
      await page.getByRole("button", { name: "Next step" }).first().click();
      expect(titles).not.toContain(await page.title());
      await page.goBack();
      expect(await place(bench)).toBe(titles[0]!.replace(/ – Reedpoint$/, ""));
      await page.goBack();
      expect(await place(bench)).toBe("Lessons");
      await page.goBack();
      expect(await place(bench)).toBe("Bench");
    },
  );

  walk(
    "a short address leads to its place, and leaves the reed on the bench alone",
    async (bench) => {
      const { page } = bench;
      await page.goto(`${bench.url}#lesson=06-shape.2`);
      await page.locator("open-lesson").waitFor();
      await page.goto(`${bench.url}#v=1&model=bassoon&reed=Heron&finished=1&page=plan`);
      await page.evaluate(() => (location.hash = "page=measure"));
      await page.locator("measure-page").waitFor();
      expect(await place(bench)).toBe("Measure");
      await page.goBack();
      expect(await place(bench)).toBe("Plan");
      const reed = page.locator("bench-header .choice option:checked");
      expect(await reed.innerText()).toContain("Heron");
    },
  );
});
