import { expect, test } from "vitest";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { english } from "../../src/reed/catalogue.js";
import { typedReading } from "../../src/reed/typed-reading.js";

const feature = (id: string) => bassoonModel.features.find((one) => one.id === id)!;

test("a number is taken in the person's unit, or in the unit behind it", () => {
  expect(typedReading(feature("spine"), "0.5", undefined, "mm", english)).toEqual({
    value: 0.5,
    problem: "",
  });
  expect(typedReading(feature("spine"), "20", 0.5, "thou", english).value).toBeCloseTo(0.508, 9);
  expect(typedReading(feature("spine"), "0.5mm", 0.5, "thou", english).value).toBe(0.5);
});

test("what is no number, or far off, is told with what was allowed and what still counts", () => {
  expect(typedReading(feature("heart"), "abc", 0.47, "mm", english).problem).toMatch(
    /^“abc” is not a number; allowed: .* mm\. 0\.47 mm still counts\.$/,
  );
  expect(typedReading(feature("heart"), "47", undefined, "mm", english).problem).toMatch(
    /^47 is far outside .* mm: is the unit right\?$/,
  );
});

test("a feature without a unit is never asked about its unit", () => {
  for (const typed of ["7", "-1"]) {
    const { value, problem } = typedReading(feature("hinging"), typed, 0.5, "mm", english);
    expect(value).toBeUndefined();
    expect(problem).not.toContain("unit right");
    expect(problem).toMatch(/0\.50 still counts\.$/);
  }
});
