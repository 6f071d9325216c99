import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { dist, loadedWith, packed, packedWith } from "./built-sizes.js";

/** The module script of the app's page. */
const app = /<script type="module"[^>]* src="\.\/([^"]+)"/.exec(
  readFileSync(`${dist}index.html`, "utf8"),
)![1]!;

// Bytes, minified, gzip -9: what a first visit costs. 110,000 were hoped for the app and 90,000 for all elements: the
// words of advice, several thousand bytes, come with both although only late parts say them.
test.each([
  ["the app's first load", () => packedWith(app), 116_000],
  ["all elements", () => packedWith("elements/reed-elements.js"), 94_500],
  ["the triangle alone with Lit", () => packedWith("elements/reed-triangle.js"), 30_000],
  ["the loader of elements", () => packedWith("elements/reed-elements.lazy.js"), 1_000],
])("%s stays within its size", (_what, size, most) => {
  expect(size()).toBeLessThanOrEqual(most);
});

// 16,000 were hoped for. Model, actions and qualities are 5,000 of it, plans, stand-ins and reach another 7,000; the
// readers with every problem's sentence, on a schema library, are 6,000, and a page cannot know beforehand whether it
// will read a file. One script for every element carries them all at once, because a sandbox lets nothing come later.
test.each([
  ["the engine with its data and readers", () => packedWith("lib/engine.js"), 25_500],
  [
    "the classic script with every element whole",
    () => packed("elements/reed-elements.classic.js"),
    125_000,
  ],
])("%s stays near what it is", (_what, size, most) => {
  expect(size()).toBeLessThanOrEqual(most);
});

test("what comes later does come later", () => {
  const first = [...loadedWith(app), ...loadedWith("elements/reed-elements.js")].join(" ");
  for (const part of ["bench-lip", "measure-page", "plan-parts", "plan-inside", "read-readings"])
    expect(first).not.toContain(part);
});
