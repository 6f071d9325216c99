import { expect, test } from "vitest";
import { demoReeds } from "../../src/reed/demo-reeds.js";
import { inOrder } from "../../src/reed/readings.js";
import { unevenness } from "../../src/reed/uneven.js";

// Limits: common practice, no source.
test.each([
  { feature: "wings", readings: [0.18, 0.27, 0.23, 0.24], spread: 0.09, limit: 0.03 },
  { feature: "rails", readings: [0.39, 0.39, 0.43, 0.4], spread: 0.04, limit: 0.03 },
  { feature: "heart", readings: [0.49, 0.45], spread: 0.04, limit: 0.03 },
  { feature: "spine", readings: [0.55, 0.6], spread: 0.05, limit: 0.03 },
  { feature: "bladeLength", readings: [27.2, 27.6], spread: 0.4, limit: 0.3 },
])("$feature that differ by $spread mm are uneven", ({ feature, readings, spread, limit }) => {
  expect(unevenness(feature, inOrder(feature, readings))).toMatchObject({ spread, limit });
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
  expect(unevenness(feature, inOrder(feature, readings))).toBeUndefined();
});

test("Teal hides uneven wings behind a good mean, and no other demo reed has any", () => {
  const uneven = demoReeds.filter(({ wingsSingly }) =>
    unevenness("wings", inOrder("wings", wingsSingly ?? [])),
  );
  expect(uneven.map(({ reed }) => reed)).toEqual(["Teal"]);
});

test("which place is largest is told where places are known, and only there", () => {
  expect(unevenness("wings", inOrder("wings", [0.24, 0.23, 0.28, 0.24]))?.largest).toBe("backLeft");
  expect(unevenness("heart", inOrder("heart", [0.45, 0.45, 0.49]))).toEqual({
    spread: 0.04,
    limit: 0.03,
  });
});

test("the scatter of repeats is no unevenness", () => {
  const front = [0.43, 0.47].map((value) => ({ place: "frontBlade" as const, value }));
  expect(unevenness("heart", [...front, { place: "backBlade", value: 0.46 }])).toBeUndefined();
});

test("a reading that is no number is an error that names the feature", () => {
  expect(() => unevenness("wings", inOrder("wings", [0.1, Infinity]))).toThrow(
    "unevenness: wings reads Infinity mm",
  );
});
