import type { Browser, Page } from "playwright";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { encodeBench, newBench } from "../../src/reed/bench.js";
import { demoReeds } from "../../src/reed/demo-reeds.js";
import { chromiumPath, launch } from "./chromium.js";
import { axeProblems, overlapsIn, stickingOut, wordBoxes } from "./page-faults.js";

const heron = encodeBench(
  {
    ...newBench(bassoonModel),
    reed: "Heron",
    values: demoReeds.find(({ reed }) => reed === "Heron")!.readings,
    target: "lowTutti", // the longest name of all
    layers: ["certainty", "readingLines", "pulls", "eachPull", "reach"],
  },
  bassoonModel,
);

const twoReeds = encodeBench(
  {
    ...newBench(bassoonModel),
    reed: "Heron",
    values: demoReeds.find(({ reed }) => reed === "Heron")!.readings,
    pinned: { reed: "Bittern", values: demoReeds.find(({ reed }) => reed === "Bittern")!.readings },
    target: "softLow",
    layers: ["certainty", "readingLines", "pulls", "reach"],
  },
  bassoonModel,
);

describe.skipIf(chromiumPath === undefined)("the screens in Chromium", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(async () => {
    await browser.close();
  });

  async function open(width: number, colorScheme: "light" | "dark" = "light"): Promise<Page> {
    const page = await browser.newPage({
      viewport: { width, height: 900 },
      colorScheme,
      reducedMotion: "reduce",
    });
    await page.goto(`${inject("appUrl")}#${heron}`);
    await page.locator("triangle-plane svg").waitFor();
    return page;
  }

  test.each([280, 320, 360, 768, 1440, 1920])(
    "nothing scrolls sideways at %d px",
    async (width) => {
      const page = await open(width);
      expect(await stickingOut(page)).toEqual([]);
      await page.close();
    },
  );

  test.each([280, 360, 768, 1440])(
    "no two words of the triangle overlap or are cut off at %d px",
    async (width) => {
      const page = await open(width);
      for (const { words, left, right } of await wordBoxes(page)) {
        expect(left, words).toBeGreaterThanOrEqual(0);
        expect(right, words).toBeLessThanOrEqual(width);
      }
      expect(await overlapsIn(page)).toEqual([]);
      await page.close();
    },
  );

  test.each([360, 768, 1440])(
    "with text twice as large all of it still has room at %d px",
    async (width) => {
      const page = await open(width);
      await page.evaluate(() => {
        document.documentElement.style.fontSize = "200%";
        window.dispatchEvent(new Event("resize"));
      });
      await page.waitForTimeout(250);
      expect(await stickingOut(page)).toEqual([]);
      expect(await overlapsIn(page)).toEqual([]);
      await page.close();
    },
  );

  test.each([
    [360, "light"],
    [1440, "light"],
    [1440, "dark"],
  ] as const)("axe finds nothing at %d px, %s", async (width, scheme) => {
    const page = await open(width, scheme);
    expect(await axeProblems(page)).toEqual([]);
    await page.close();
  });

  test("axe finds nothing in the open dialog either, and it fits a phone", async () => {
    const page = await open(320);
    await page.getByText("More", { exact: true }).click();
    await page.getByRole("button", { name: "Paste readings" }).click();
    await page.locator("dialog textarea").waitFor();
    expect(await axeProblems(page)).toEqual([]);
    expect(await stickingOut(page)).toEqual([]);
    await page.close();
  });

  test("everything that is pressed is at least 24 px each way at 360 px", async () => {
    const page = await open(360);
    const small = await page.evaluate(() => {
      const found: string[] = [];
      const visit = (root: Document | ShadowRoot): void => {
        for (const element of root.querySelectorAll<HTMLElement>("*")) {
          if (element.shadowRoot) visit(element.shadowRoot);
          if (!element.matches("button, select, input, summary, textarea")) continue;
          // A box in a label is pressed by the label.
          const target = element.matches("[type=checkbox], [type=radio]")
            ? element.closest("label")!
            : element;
          const box = target.getBoundingClientRect();
          if (box.width > 0 && (box.width < 24 || box.height < 24)) {
            found.push(`${element.outerHTML.slice(0, 80)} ${box.width}×${box.height}`);
          }
        }
      };
      visit(document);
      return found;
    });
    expect(small).toEqual([]);
    await page.close();
  });

  test("a reed prints on one page, black on white even in the night look", async () => {
    const page = await open(1440, "dark");
    const pdf = (await page.pdf({ format: "A4" })).toString("latin1");
    expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
    await page.emulateMedia({ media: "print" });
    const colours = await page
      .locator("reed-sentence p")
      .evaluate((sentence) => [
        getComputedStyle(sentence).color,
        getComputedStyle(document.documentElement).backgroundColor,
      ]);
    expect(colours).toEqual(["rgb(0, 0, 0)", "rgb(255, 255, 255)"]);
    expect(await page.locator("reed-feature-row#heart .number").isVisible()).toBe(true);
    expect(await page.locator("bench-header").isVisible()).toBe(false);
    await page.close();
  });

  test.each([
    [1440, "A4"],
    [1440, "Letter"],
    [360, "A4"],
    [360, "Letter"],
  ] as const)(
    "two reeds with every layer print on one page too, from %d px on %s",
    async (width, format) => {
      const page = await open(width);
      await page.goto(`${inject("appUrl")}#${twoReeds}`);
      await page.reload();
      await page.locator("reed-comparison").waitFor();
      const pdf = (await page.pdf({ format })).toString("latin1");
      expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
      await page.close();
    },
  );

  test("in forced colours the point and its words still stand out from the ground", async () => {
    const page = await browser.newPage({ forcedColors: "active", reducedMotion: "reduce" });
    await page.goto(`${inject("appUrl")}#${heron}`);
    const fillOf = (selector: string): Promise<string> =>
      page
        .locator(`triangle-plane ${selector}`)
        .first()
        .evaluate((part) => getComputedStyle(part).fill);
    const ground = await fillOf(".paper");
    expect(await fillOf(".dot")).not.toBe(ground);
    expect(await fillOf(".corner.high")).toBe(await fillOf(".dot"));
    const colourOf = (name: string): Promise<string> =>
      page
        .getByRole("button", { name, exact: true })
        .evaluate((button) => getComputedStyle(button).color);
    expect(await colourOf("Undo"), "nothing to undo").not.toBe(await colourOf("Reset"));
    await page.close();
  });

  test("where more contrast is asked for, soft words are as dark as the others", async () => {
    const page = await browser.newPage({ contrast: "more" });
    await page.goto(`${inject("appUrl")}#${heron}`);
    const colourOf = (selector: string): Promise<string> =>
      page
        .locator(selector)
        .first()
        .evaluate((part) => getComputedStyle(part).color);
    expect(await colourOf("bench-words .story")).toBe(await colourOf("reed-sentence"));
    await page.close();
  });
});
