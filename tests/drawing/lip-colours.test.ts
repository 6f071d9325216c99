import { readFileSync } from "node:fs";
import { join } from "node:path";
import { wcagContrast } from "culori";
import { describe, expect, test } from "vitest";

const root = join(import.meta.dirname, "../..");
const page = readFileSync(join(root, "src/app/page.css"), "utf8");
/** The custom properties of a look, as the page sets them. */
function look(selector: string): (name: string) => string {
  const [, body] = page.split(`${selector} {`, 2);
  const found = new Map(
    [...body!.split("}")[0]!.matchAll(/--reed-([\w-]+): (#\w+);/g)].map(([, name, colour]) => [
      name!,
      colour!,
    ]),
  );
  return (name) => (name.startsWith("#") ? name : found.get(name)!);
}

/** Colours that drawings of the lip panel write themselves. */
const cane = "#b06a20";
const [light, dark] = ["#fff8e6", "#1d0d04"];

// WCAG 2.2: graphics 3 : 1 (1.4.11), text 4.5 : 1 (1.4.3).
describe.each([
  ["paper", ":root"],
  ["night", ':root[data-theme="night"]'],
  ["print", ":root:root:root"],
])("the lip panel's colours, %s", (_name, selector) => {
  const colour = look(selector);

  test.each([
    ["own line", "ink", "card"],
    ["other line and what cannot be held", "ink-soft", "card"],
    ["axes", "edge", "card"],
    ["what is now, what can be held", "accent", "card"],
    ["the blades around the opening", cane, "card"],
    ["breath in the bar", "edge", "ground"],
    ["breath beside lips in the bar", "edge", "ink"],
  ])("%s: at least 3 : 1", (_what, one, other) => {
    expect(wcagContrast(colour(one), colour(other))).toBeGreaterThanOrEqual(3);
  });

  test.each([
    ["words", "ink", "card"],
    ["lesser words", "ink-soft", "card"],
    ["words under the sliders on a phone", "ink-soft", "ground"],
    ["the sign of a disagreement", "card", "ink"],
  ])("%s: at least 4.5 : 1", (_what, one, other) => {
    expect(wcagContrast(colour(one), colour(other))).toBeGreaterThanOrEqual(4.5);
  });
});

test("the outline of what swings is light with a dark edge: one of the two stands out on any cane", () => {
  expect(wcagContrast(light, dark)).toBeGreaterThanOrEqual(9); // 3 : 1 to whatever lies between
  for (const file of ["reed-lip-region", "reed-lip-opening"]) {
    const source = readFileSync(join(root, `src/widgets/${file}.ts`), "utf8");
    for (const one of file === "reed-lip-opening" ? [cane] : [light, dark]) {
      expect(source).toContain(one);
    }
  }
});
