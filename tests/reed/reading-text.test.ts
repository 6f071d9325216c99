import { describe, expect, test } from "vitest";
import type { Feature } from "../../src/engine/model.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { english } from "../../src/reed/catalogue.js";
import { readingText, typedValue, unitSign, unitSpoken } from "../../src/reed/reading-text.js";
import { lengthUnits, toThousandths, type LengthUnit } from "../../src/reed/units.js";

const feature = (id: string): Feature => {
  const found = bassoonModel.features.find((one) => one.id === id);
  if (!found) throw new Error(`the bassoon model has no feature "${id}"`);
  return found;
};

test("zeros behind the usual digits say nothing, behind a decimal comma neither", () => {
  const number = (value: number, digits: number): string =>
    new Intl.NumberFormat("de", {
      minimumFractionDigits: digits,
      maximumFractionDigits: digits,
    }).format(value);
  expect(readingText(feature("bladeLength"), 27.65, "mm", { ...english, number }, true)).toBe(
    "27,65",
  );
});

describe("a reading as the gauge shows it", () => {
  test.each<[string, number, LengthUnit, string]>([
    ["bladeLength", 27.7, "mm", "27.7"],
    ["bladeLength", 27.7, "in", "1.0906"],
    ["bladeLength", 27.7, "thou", "1090.6"],
    ["spine", 0.56, "mm", "0.56"],
    ["spine", 0.5588, "in", "0.0220"],
    ["spine", 0.5588, "thou", "22.0"],
    ["firstWire", 0.747, "mm", "0.75"],
    ["firstWire", 0.747, "thou", "0.75"],
    ["hinging", 0.533, "in", "0.53"],
  ])("%s of %d in %s is %s", (id, value, unit, expected) => {
    expect(readingText(feature(id), value, unit, english)).toBe(expected);
  });

  test.each<[string, number, LengthUnit, string]>([
    ["bladeLength", 27.65, "mm", "27.65"],
    ["bladeLength", 27.7, "mm", "27.7"],
    ["bladeLength", 28, "mm", "28.0"],
    ["spine", 0.563, "mm", "0.563"],
    ["spine", 0.56, "mm", "0.56"],
    ["firstWire", 0.747, "thou", "0.747"],
    ["spine", 0.559, "thou", "22.0"],
  ])("exactly, %s of %d in %s is %s", (id, value, unit, expected) => {
    expect(readingText(feature(id), value, unit, english, true)).toBe(expected);
  });

  test("is never grouped: 1090.6 thousandths are typed as they are shown", () => {
    expect(readingText(feature("bladeLength"), 27.7, "thou", english)).not.toContain(",");
  });
});

describe("what a user types", () => {
  test.each<[string, string, LengthUnit, number]>([
    ["bladeLength", "27.7", "mm", 27.7],
    ["bladeLength", " 27,7 ", "mm", 27.7],
    ["bladeLength", "1", "in", 25.4],
    ["bladeLength", "1000", "thou", 25.4],
    ["tip", ".11", "mm", 0.11],
    ["tip", "4.", "mm", 4],
    ["firstWire", "0.75", "in", 0.75],
    ["backRise", "-0.02", "mm", -0.02],
    ["backRise", "−0.02", "mm", -0.02],
  ])("for %s, “%s” in %s, is %d", (id, typed, unit, expected) => {
    expect(typedValue(feature(id), typed, unit)).toBeCloseTo(expected, 12);
  });

  test.each<[string, LengthUnit, number]>([
    ["1 in", "mm", 25.4],
    ["1000 thou", "mm", 25.4],
    ["27.7 mm", "in", 27.7],
    ["27.7mm", "thou", 27.7],
  ])("a length carries its own unit: “%s” where %s are set is %d mm", (typed, unit, expected) => {
    expect(typedValue(feature("bladeLength"), typed, unit)).toBeCloseTo(expected, 12);
  });

  test.each([
    "",
    " ",
    ".",
    ",",
    "-",
    "1.2.3",
    "1,2,3",
    "1e3",
    "0x10",
    "NaN",
    "Infinity",
    "--1",
    "1 2",
    "٣",
    "abc",
  ])("“%s” is no number", (typed) => {
    expect(typedValue(feature("bladeLength"), typed, "mm")).toBeUndefined();
  });

  test("a ratio takes no unit of length", () => {
    expect(typedValue(feature("firstWire"), "0.75 mm", "mm")).toBeUndefined();
  });

  test("a number too long for a computer is no number either", () => {
    expect(typedValue(feature("bladeLength"), "9".repeat(400), "mm")).toBeUndefined();
  });
});

test("what is shown exactly can be typed back to the same thousandth, in every unit", () => {
  for (const one of bassoonModel.features) {
    for (const unit of lengthUnits) {
      for (let i = 0; i <= 200; i += 1) {
        const value = toThousandths(one.min + ((one.max - one.min) * i) / 200);
        const shown = readingText(one, value, unit, english, true);
        const typed = typedValue(one, shown, unit) ?? NaN;
        // A ten-thousandth of an inch is 0.00254 mm: half of it may be lost in inches.
        const allowed = one.unit === "mm" && unit !== "mm" ? 0.00127 + 1e-9 : 1e-12;
        expect(
          Math.abs(typed - value),
          `${one.id} ${value} as ${shown} ${unit}`,
        ).toBeLessThanOrEqual(allowed);
      }
    }
  }
});

test("the sign and the spoken unit belong to lengths only", () => {
  expect(unitSign(feature("spine"), "thou", english)).toBe("thou");
  expect(unitSign(feature("hinging"), "thou", english)).toBe("");
  expect(unitSpoken(feature("spine"), "in", english)).toBe("inches");
  expect(unitSpoken(feature("firstWire"), "in", english)).toBe("");
});
