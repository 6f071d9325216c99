import { expect, test } from "vitest";
import { demoReeds } from "../../src/reed/demo-reeds.js";
import { readingsSummary } from "../../src/reed/repeats.js";
import { placesOf, unevenness } from "../../src/reed/uneven.js";

// Limits: common practice, no source.
test.each([
  { feature: "wings", readings: [0.18, 0.27, 0.23, 0.24], spread: 0.09, limit: 0.03 },
  { feature: "rails", readings: [0.39, 0.39, 0.43, 0.4], spread: 0.04, limit: 0.03 },
  { feature: "heart", readings: [0.49, 0.45], spread: 0.04, limit: 0.03 },
  { feature: "spine", readings: [0.55, 0.6], spread: 0.05, limit: 0.03 },
  { feature: "bladeLength", readings: [27.2, 27.6], spread: 0.4, limit: 0.3 },
])("$feature that differ by $spread mm are uneven", ({ feature, readings, spread, limit }) => {
  expect(unevenness(feature, readings)).toEqual({ spread, limit });
});

test.each([
  {
    feature: "wings",
    readings: [0.24, 0.27, 0.25, 0.24],
    why: "exactly the limit, whatever binary makes of it",
  },
  { feature: "heart", readings: [0.43, 0.46], why: "exactly the limit" },
  { feature: "bladeLength", readings: [27.2, 27.5], why: "exactly the limit" },
  { feature: "wings", readings: [0.2], why: "one reading" },
  { feature: "wings", readings: [], why: "no reading" },
  { feature: "tip", readings: [0.08, 0.13], why: "no limit" },
  { feature: "hinging", readings: [0, 1], why: "no limit" },
])("$feature at $readings are even: $why", ({ feature, readings }) => {
  expect(unevenness(feature, readings)).toBeUndefined();
});

test("Teal hides uneven wings behind a good mean, and no other demo reed has any", () => {
  const uneven = demoReeds.filter(({ wingsSingly }) => unevenness("wings", wingsSingly ?? []));
  expect(uneven.map(({ reed }) => reed)).toEqual(["Teal"]);
});

test("places are quarters, blades or one", () => {
  expect(
    ["wings", "rails", "heart", "spine", "tip", "bladeLength", "throatWidth"].map(placesOf),
  ).toEqual(["quarters", "quarters", "blades", "blades", "blades", "blades", "one"]);
});

// Example by hand: 2, 4, 6 have the mean 4 and s² = (4 + 0 + 4)/2 = 4, so s/√3 = 2/√3.
test("three repeats give the mean and its standard error", () => {
  const { mean, gaugeError } = readingsSummary("throatWidth", [2, 4, 6]);
  expect(mean).toBe(4);
  expect(gaugeError).toBeCloseTo(2 / Math.sqrt(3), 14);
});

test("two repeats say nothing about their scatter", () => {
  expect(readingsSummary("throatWidth", [2, 6])).toEqual({ mean: 4 });
});

test.each(["wings", "rails"])("four places of the %s are no repeats", (feature) => {
  expect(Object.keys(readingsSummary(feature, [0.2, 0.3, 0.2, 0.3]))).toEqual(["mean"]);
});

test("no reading, or one that is no number, is an error that names the feature", () => {
  expect(() => readingsSummary("tip", [])).toThrow("readingsSummary: tip reads []");
  expect(() => readingsSummary("tip", [0.1, NaN])).toThrow(RangeError);
  expect(() => unevenness("wings", [0.1, Infinity])).toThrow("unevenness: wings reads Infinity mm");
});
