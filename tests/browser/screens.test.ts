import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Browser } from "playwright";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { encodeBench, newBench } from "../../src/reed/bench.js";
import { demoReeds } from "../../src/reed/demo-reeds.js";
import { chromiumPath, launch } from "./chromium.js";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const heron = encodeBench(
  {
    ...newBench(bassoonModel),
    reed: "Heron",
    values: demoReeds.find(({ reed }) => reed === "Heron")!.readings,
    layers: ["certainty", "readingLines"],
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

  async function open(width: number, colorScheme: "light" | "dark") {
    const page = await browser.newPage({ viewport: { width, height: 900 }, colorScheme });
    await page.goto(`${inject("appUrl")}#${heron}`);
    await page.locator("reed-triangle svg").waitFor();
    await page.getByRole("button", { name: "Paste readings" }).click();
    return page;
  }

  test.each([280, 320, 360, 768, 1440, 1920])(
    "nothing scrolls sideways at %d px",
    async (width) => {
      const page = await open(width, "light");
      const size = await page.evaluate(() => [
        document.documentElement.scrollWidth,
        window.innerWidth,
      ]);
      expect(size[0]).toBeLessThanOrEqual(size[1]!);
      await page.close();
    },
  );

  test.each([280, 360, 768, 1440])(
    "no two words of the triangle overlap or are cut off at %d px",
    async (width) => {
      const page = await open(width, "light");
      const boxes = await page.locator("reed-triangle svg text").evaluateAll((texts) =>
        texts
          .map((text) => ({ words: text.textContent ?? "", box: text.getBoundingClientRect() }))
          .filter(({ box }) => box.width > 0)
          .map(({ words, box: { left, right, top, bottom } }) => ({
            words,
            left,
            right,
            top,
            bottom,
          })),
      );
      for (const box of boxes) {
        expect(box.left, box.words).toBeGreaterThanOrEqual(0);
        expect(box.right, box.words).toBeLessThanOrEqual(width);
      }
      const overlaps = boxes.flatMap((a, i) =>
        boxes
          .slice(i + 1)
          // Line boxes are taller than their letters: 4 px of air above and below do not count.
          .filter(
            (b) =>
              a.left < b.right &&
              b.left < a.right &&
              a.top + 4 < b.bottom - 4 &&
              b.top + 4 < a.bottom - 4,
          )
          .map((b) => `${a.words} / ${b.words}`),
      );
      expect(overlaps).toEqual([]);
      await page.close();
    },
  );

  test.each([
    [360, "light"],
    [1440, "light"],
    [1440, "dark"],
  ] as const)("axe finds nothing at %d px, %s", async (width, scheme) => {
    const page = await open(width, scheme);
    await page.evaluate(axe);
    const found = await page.evaluate(async () => {
      const { axe: checker } = window as unknown as {
        axe: { run: () => Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
      };
      const { violations } = await checker.run();
      return violations.map(
        ({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(" ")}`,
      );
    });
    expect(found).toEqual([]);
    await page.close();
  });

  test("everything that is pressed is at least 24 px each way at 360 px", async () => {
    const page = await open(360, "light");
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
          if (box.width > 0 && (box.width < 24 || box.height < 24))
            found.push(`${element.outerHTML.slice(0, 80)} ${box.width}×${box.height}`);
        }
      };
      visit(document);
      return found;
    });
    expect(small).toEqual([]);
    await page.close();
  });

  test("with reduced motion and in forced colours the point and its words are still drawn", async () => {
    const page = await browser.newPage({ forcedColors: "active", reducedMotion: "reduce" });
    await page.goto(`${inject("appUrl")}#${heron}`);
    const fill = await page
      .locator("reed-triangle .dot")
      .evaluate((dot) => getComputedStyle(dot).fill);
    const ground = await page
      .locator("reed-triangle .paper")
      .evaluate((paper) => getComputedStyle(paper).fill);
    expect(fill).not.toBe(ground);
    await page.close();
  });
});
