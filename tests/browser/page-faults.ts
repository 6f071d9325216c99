import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "playwright";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** What the accessibility checker finds on the page as it stands. */
export async function axeProblems(page: Page): Promise<string[]> {
  await page.evaluate(axe);
  return page.evaluate(async () => {
    const { axe: checker } = window as unknown as {
      axe: { run: () => Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
    };
    const { violations } = await checker.run();
    return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(" ")}`);
  });
}

/** What sticks out of the window on either side, if the page can be scrolled there. */
export async function stickingOut(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    if (document.documentElement.scrollWidth <= window.innerWidth) return [];
    const found: string[] = [];
    const visit = (root: Document | ShadowRoot): void => {
      for (const element of root.querySelectorAll("*")) {
        if (element.shadowRoot) visit(element.shadowRoot);
        const { left, right, width } = element.getBoundingClientRect();
        if (width > 0 && (right > window.innerWidth + 0.5 || left < -0.5))
          found.push(`${element.tagName}.${element.getAttribute("class")} ${left} … ${right}`);
      }
    };
    visit(document);
    return found;
  });
}

/** The words of the triangle with their boxes on the screen. */
export async function wordBoxes(page: Page) {
  return page.locator("triangle-plane svg text").evaluateAll((texts) =>
    texts
      .map((text) => ({ words: text.textContent ?? "", box: text.getBoundingClientRect() }))
      .filter(({ box }) => box.width > 0)
      .map(({ words, box: { left, right, top, bottom } }) => ({ words, left, right, top, bottom })),
  );
}

/** Pairs of words of the triangle that stand over each other. */
export async function overlapsIn(page: Page): Promise<string[]> {
  const boxes = await wordBoxes(page);
  return boxes.flatMap((a, i) =>
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
}
