import type { Browser, Page } from "playwright";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { encodeBench, newBench } from "../../src/reed/bench.js";
import { demoReeds } from "../../src/reed/demo-reeds.js";
import { chromiumPath, launch } from "./chromium.js";
import { axeProblems, overlapsIn, stickingOut, wordBoxes } from "./page-faults.js";
import { pseudoCatalogue, type PseudoLanguage } from "./pseudo-catalogue.js";

const readings = (name: string) => demoReeds.find(({ reed }) => reed === name)!.readings;
/** Everything that has words is on the screen: layers, own target, a pinned reed, remarks. */
const full = encodeBench(
  {
    ...newBench(bassoonModel),
    reed: "Heron",
    values: { ...readings("Heron"), wings: 0.9 },
    target: "own",
    aim: [0.3, 0.45, 0.25],
    pinned: { reed: "", values: readings("Bittern") },
    layers: ["readingLines", "certainty", "pulls", "reach"],
  },
  bassoonModel,
);

/** A plan with several sittings behind it, on a reed with much to say. */
const planned = encodeBench(
  {
    ...newBench(bassoonModel),
    reed: "Plover",
    values: readings("Plover"),
    finished: true,
    target: "softLow",
    done: [
      [
        { action: "roundFirstWire", amount: 2 },
        { action: "clipTip", amount: 1 },
      ],
      [{ action: "thinTipCorners", amount: 1 }],
    ],
    page: "plan",
  },
  bassoonModel,
);

/** Doubled words stand closest on the narrowest page. */
const sizes: readonly (readonly [PseudoLanguage, number])[] = [
  ...[320, 768, 1440].flatMap(
    (width) =>
      [
        ["long", width],
        ["rtl", width],
      ] as const,
  ),
  ["doubled", 320],
];

describe.skipIf(chromiumPath === undefined)("the bench in languages that nobody speaks", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(async () => {
    await browser.close();
  });

  async function speak(language: PseudoLanguage, width: number, code = full): Promise<Page> {
    const page = await browser.newPage({
      viewport: { width, height: 900 },
      reducedMotion: "reduce",
    });
    await page.goto(`${inject("appUrl")}#${code}`);
    await page.locator("bench-grid main").waitFor();
    if (code.includes("page=lip")) await page.locator("lip-panel").waitFor();
    // Words that come late stand in the catalogue of the part that says them.
    await page.evaluate(`{
      const make = ${pseudoCatalogue.toString()};
      const app = document.querySelector("reedpoint-app");
      const late = app.shadowRoot.querySelector("bench-grid").shadowRoot.querySelector("bench-lip");
      const panel = late?.shadowRoot.querySelector("lip-panel");
      app.text = make({ ...app.text, ...panel?.text }, ${JSON.stringify(language)});
    }`);
    await page.waitForTimeout(150);
    await openAdvice(page);
    for (const details of await page.locator("details summary").all())
      if (await details.isVisible()) await details.click();
    const sheet = page.locator("bench-recipe .handle");
    if (await sheet.isVisible()) await sheet.click();
    return page;
  }

  /** Everything of the plan page that waits to be asked for. */
  async function openAdvice(page: Page): Promise<void> {
    if ((await page.locator("bench-plan").count()) === 0) return;
    await page.locator("reed-gains .name").first().click();
    await page.locator("[data-symptom=stiff]").click();
    await page.locator("bench-plan .done").click();
    const handle = page.locator("bench-recipe .handle");
    if (await handle.isVisible()) await handle.click();
    await page.locator("reed-feature-row#heart .name").click();
    await page.locator("reed-feature-row#heart .ask").click();
    if (await handle.isVisible()) await handle.click();
  }

  test.each(sizes.map(([language, width]) => [language, width] as const))(
    "the plan page, %s, %d px: nothing sticks out, no two words overlap",
    async (language, width) => {
      const page = await speak(language, width, planned);
      expect(await stickingOut(page)).toEqual([]);
      expect(await overlapsIn(page)).toEqual([]);
      await page.close();
    },
  );

  test("on the plan page, too, words that look like markup do nothing", async () => {
    const page = await speak("markup", 1440, planned);
    expect(await page.evaluate(() => "struck" in window)).toBe(false);
    expect(await page.locator("bench-plan img, bench-trouble img, bench-gains img").count()).toBe(
      0,
    );
    await page.close();
  });

  test.each(sizes.map(([language, width]) => [language, width] as const))(
    "%s, %d px: nothing sticks out, no two words of the triangle overlap",
    async (language, width) => {
      const page = await speak(language, width);
      expect(await stickingOut(page)).toEqual([]);
      expect(await overlapsIn(page)).toEqual([]);
      for (const { words, left, right } of await wordBoxes(page)) {
        expect(left, words).toBeGreaterThanOrEqual(-0.5);
        expect(right, words).toBeLessThanOrEqual(width + 0.5);
      }
      await page.close();
    },
  );

  test.each(
    (["long", "rtl"] as const).flatMap((language) =>
      (["measure", "lip"] as const).flatMap((name) =>
        [320, 1440].map((width) => [language, name, width] as const),
      ),
    ),
  )("%s, page %s, %d px: nothing sticks out", async (language, name, width) => {
    const page = await speak(language, width, `${full}&page=${name}`);
    expect(await stickingOut(page)).toEqual([]);
    await page.close();
  });

  test("every sentence of the guided sheet is in the catalogue: only the model's own names stay", async () => {
    const labels = bassoonModel.features.map(({ label }) => label.toLowerCase());
    const left = new Set<string>();
    const page = await speak(
      "rtl",
      1440,
      encodeBench(
        {
          ...newBench(bassoonModel),
          reed: "Q",
          values: { wings: 0.3, heart: 0.2 },
          page: "measure",
        },
        bassoonModel,
      ),
    );
    for (const step of [0, 1, 2, 6, 11, 14, 15, 16]) {
      const jump = page.locator("measure-page select").last();
      await jump.selectOption(String(step));
      const words = await page.locator("measure-page").evaluate((host) => {
        const found: string[] = [];
        const visit = (node: Node): void => {
          if (node instanceof Element && ["STYLE", "OPTION"].includes(node.tagName)) return;
          if (node instanceof Element && node.shadowRoot) visit(node.shadowRoot);
          if (node.nodeType === Node.TEXT_NODE) found.push(node.textContent ?? "");
          node.childNodes.forEach(visit);
        };
        visit(host);
        return found;
      });
      for (const one of words) {
        const rest = labels.reduce((text, label) => text.replaceAll(label, ""), one.toLowerCase());
        if (/[a-z]{3,}/.test(rest)) left.add(one.trim());
      }
    }
    await page.close();
    expect([...left]).toEqual([]);
  });

  test("a script from right to left turns the page, and the corners of the triangle stay", async () => {
    const page = await speak("rtl", 1440);
    const seen = await page.evaluate(() => {
      const app = document
        .querySelector("reedpoint-app")!
        .shadowRoot!.querySelector("bench-grid")!.shadowRoot!;
      const left = (selector: string): number =>
        app.querySelector(selector)!.getBoundingClientRect().left;
      const triangle = app
        .querySelector("bench-place")!
        .shadowRoot!.querySelector("triangle-plane")!;
      const corner = (name: string): number =>
        triangle.shadowRoot!.querySelector(`.corner.${name}`)!.getBoundingClientRect().left;
      return {
        dir: document.documentElement.dir,
        recipeIsLeft: left("bench-recipe") < left("bench-place"),
        lowIsLeft: corner("low") < corner("loud"),
      };
    });
    expect(seen).toEqual({ dir: "rtl", recipeIsLeft: true, lowIsLeft: true });
    expect(await axeProblems(page)).toEqual([]);
    await page.close();
  });

  test("words that look like markup are shown as they are and do nothing", async () => {
    const page = await speak("markup", 1440);
    const found = await page.evaluate(() => {
      const strange: string[] = [];
      let shown = 0;
      const visit = (root: Document | ShadowRoot): void => {
        for (const element of root.querySelectorAll("*")) {
          if (element.shadowRoot) visit(element.shadowRoot);
          if (element.matches("img, u")) strange.push(element.outerHTML);
          if (element.childElementCount === 0 && element.textContent.includes("<img")) shown += 1;
        }
      };
      visit(document);
      return { strange, shown, struck: "struck" in window };
    });
    expect(found).toMatchObject({ strange: [], struck: false });
    expect(found.shown).toBeGreaterThan(40);
    await page.close();
  });
});
