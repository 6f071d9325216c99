import { describe, expect, test } from "vitest";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { english } from "../../src/reed/catalogue.js";
import type { LengthUnit } from "../../src/reed/units.js";
import { isWire, wireReading } from "../../src/reed/wire-reading.js";

const first = bassoonModel.features.find(({ id }) => id === "firstWire")!;
const read = (height: string, width: string, roundness = "", unit: LengthUnit = "mm") =>
  wireReading(first, { height, width, roundness }, unit, english);

describe("a wire after a step", () => {
  test("is read as height and width, in any unit, or as a roundness", () => {
    expect(isWire("firstWire") && isWire("secondWire") && !isWire("tip")).toBe(true);
    expect(read("6.3", "8,75")!.value).toBeCloseTo(0.72, 12);
    expect(read("248", "344.4", "", "thou")!.value).toBeCloseTo(0.72, 3);
    expect(read("6.3", "344.5 thou")!.value).toBeCloseTo(0.72, 3);
    expect(read("", "", "0.74")).toEqual({ value: 0.74, problem: "" });
    expect(read(" ", "", "")).toBeUndefined();
  });

  test("what was measured counts before what was reckoned", () => {
    expect(read("6.3", "8.75", "0.9")!.value).toBeCloseTo(0.72, 12);
  });

  test.each([
    ["6.3", "", "", /^A wire needs both/],
    ["", "8.7", "0.74", /^A wire needs both/],
    ["high", "8.7", "", /^“high” is no number/],
    ["0", "8.7", "", /^“0” is no number/],
    ["8.7", "4.1", "", /roundness of 2\.12: are height and width the right way round\?$/],
    ["", "", "flat", /^“flat” is not a number/],
  ])("height “%s”, width “%s”, roundness “%s” is refused, with the reason", (h, w, r, problem) => {
    const { value, problem: said } = read(h, w, r)!;
    expect(value).toBeUndefined();
    expect(said).toMatch(problem);
  });
});
