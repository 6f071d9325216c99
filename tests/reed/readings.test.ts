import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { placesOf, type Place } from "../../src/reed/places.js";
import {
  inOrder,
  isEveryPlaceRead,
  meanReading,
  nextPlace,
  repeatsError,
  type Reading,
} from "../../src/reed/readings.js";

const stepOf = (id: string) => bassoonModel.features.find((one) => one.id === id)!;
const at = (place: Place, ...values: number[]): Reading[] =>
  values.map((value) => ({ place, value }));
const errorOf = (id: string, readings: readonly Reading[]) => repeatsError(stepOf(id), readings);

describe("the mean of readings", () => {
  test("is the mean of one place, and the mean over places of their means", () => {
    expect(meanReading("throatWidth", at("one", 8, 9, 10))).toBe(9);
    const readings = [...at("frontBlade", 0.4), ...at("backBlade", 0.48, 0.5, 0.52)];
    expect(meanReading("heart", readings)).toBeCloseTo(0.45, 12);
  });

  test("a place that is read once more does not pull the mean toward itself", () => {
    const four = inOrder("wings", [0.2, 0.24, 0.28, 0.24]);
    const more = [...four, ...at("backLeft", 0.28)];
    expect(meanReading("wings", more)).toBeCloseTo(meanReading("wings", four), 12);
  });

  test("no reading, or one that is no number, is an error that names the feature", () => {
    expect(() => meanReading("tip", [])).toThrow("meanReading: tip reads []");
    expect(() => meanReading("tip", at("frontBlade", 0.1, NaN))).toThrow(RangeError);
  });
});

describe("what repeats say of the gauge", () => {
  const variance = (error: number | undefined): number => error! ** 2;

  // Example by hand: 2, 4, 6 have s² = (4 + 0 + 4)/2 = 4, so s²/n = 4/3 (JCGM 100:2008, 4.2.3); a step of 0.1 adds
  // 0.1²/12 (F.2.2.1).
  test("three of one place give the standard error of their mean, and what the gauge cannot show", () => {
    const error = errorOf("throatWidth", at("one", 2, 4, 6));
    expect(variance(error)).toBeCloseTo(4 / 3 + 0.01 / 12, 12);
  });

  test("two say nothing", () => {
    expect(errorOf("throatWidth", at("one", 2, 6))).toBeUndefined();
  });

  test("equal repeats leave 0.29 of a step, never 0", () => {
    expect(errorOf("throatWidth", at("one", 8.5, 8.5, 8.5))).toBeCloseTo(0.0289, 4);
    const all = [...at("frontBlade", 0.5, 0.5, 0.5), ...at("backBlade", 0.5, 0.5, 0.5)];
    expect(variance(errorOf("spine", all))).toBeCloseTo((2 * 0.0001) / 12 / 4, 12);
  });

  test("front, back, front, back say nothing: the two blades may differ", () => {
    expect(errorOf("bladeLength", inOrder("bladeLength", [27, 27.6, 27, 27.6]))).toBeUndefined();
  });

  // By hand: both blades scatter by s² = 0.01; (0.01/3 + 0.01/3)/2² = 0.001667.
  test("three of each blade give the scatter within them, not the difference between them", () => {
    const readings = inOrder("bladeLength", [27, 27.6, 27.1, 27.7, 27.2, 27.8]);
    const step = (2 * 0.01) / 12 / 4;
    expect(variance(errorOf("bladeLength", readings))).toBeCloseTo(0.02 / 3 / 4 + step, 12);
  });

  test.each(["wings", "rails"])("four places of the %s are no repeats", (feature) => {
    expect(errorOf(feature, inOrder(feature, [0.2, 0.3, 0.2, 0.3]))).toBeUndefined();
  });

  test("readings of which nobody has said the place say nothing of the gauge", () => {
    expect(errorOf("heart", inOrder("heart", [0.45, 0.46, 0.47]))).toBeUndefined();
    const more = [...inOrder("heart", [0.4, 0.5, 0.4, 0.5, 0.4, 0.5]), ...at("one", 0.45)];
    expect(errorOf("heart", more)).toBeUndefined();
  });

  test("whatever is read, the mean lies among the readings and the error never below the gauge's part", () => {
    const seed = 20_261_128;
    const anyReadings = fc.constantFrom(...bassoonModel.features).chain((feature) =>
      fc.record({
        feature: fc.constant(feature),
        readings: fc.array(
          fc.record({
            place: fc.constantFrom(...placesOf(feature.id)),
            value: fc.double({ min: feature.min, max: feature.max, noNaN: true }),
          }),
          { minLength: 1, maxLength: 18 },
        ),
      }),
    );
    fc.assert(
      fc.property(anyReadings, ({ feature, readings }) => {
        const error = repeatsError(feature, readings) ?? Infinity;
        const least = feature.step / Math.sqrt(12 * placesOf(feature.id).length);
        expect(error).toBeGreaterThanOrEqual(least * (1 - 1e-12));
        const values = readings.map(({ value }) => value);
        const mean = meanReading(feature.id, readings);
        expect(mean).toBeGreaterThanOrEqual(Math.min(...values) - 1e-12);
        expect(mean).toBeLessThanOrEqual(Math.max(...values) + 1e-12);
      }),
      { seed },
    );
  });
});

describe("places", () => {
  // Common practice, no source.
  test("are four quarters, two blades, or one", () => {
    const counts = ["wings", "rails", "heart", "spine", "tip", "bladeLength", "throatWidth"];
    expect(counts.map((id) => placesOf(id).length)).toEqual([4, 4, 2, 2, 2, 2, 1]);
    expect(placesOf("constructor")).toEqual(["one"]);
  });

  test("the next is the first that was read least, also where one was taken out", () => {
    const read = inOrder("wings", [0.24, 0.23, 0.28, 0.24]);
    expect(nextPlace("wings", [])).toBe("frontLeft");
    expect(nextPlace("wings", read.slice(0, 2))).toBe("backLeft");
    expect(
      nextPlace(
        "wings",
        read.filter(({ place }) => place !== "frontRight"),
      ),
    ).toBe("frontRight");
    expect(nextPlace("wings", read)).toBe("frontLeft");
  });

  test("a list has the places of the sheet's order where it reads each equally often, and none otherwise", () => {
    expect(inOrder("heart", [1, 2, 3, 4]).map(({ place }) => place)).toEqual([
      "frontBlade",
      "backBlade",
      "frontBlade",
      "backBlade",
    ]);
    expect(inOrder("heart", [1, 2, 3]).map(({ place }) => place)).toEqual(["one", "one", "one"]);
    expect(meanReading("heart", inOrder("heart", [1, 2, 6]))).toBe(3);
  });

  test("all are read when each is, or when somebody has given one number for them", () => {
    expect(isEveryPlaceRead("heart", at("frontBlade", 0.4))).toBe(false);
    expect(isEveryPlaceRead("heart", inOrder("heart", [0.4, 0.5]))).toBe(true);
    expect(isEveryPlaceRead("heart", at("one", 0.4))).toBe(true);
  });
});
