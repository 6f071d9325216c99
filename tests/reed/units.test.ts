import fc from "fast-check";
import { expect, test } from "vitest";
import {
  fromMillimetres,
  lengthUnits,
  parseUnit,
  toMillimetres,
  toThousandths,
  unitDecimals,
} from "../../src/reed/units.js";

// Lengths that come out even: NIST SP 811, appendix B.8, gives the inch as 2.54 cm exactly, the mil as 0.0254 mm.
test.each([
  [1, "in", 25.4],
  [12, "in", 304.8],
  [1, "thou", 0.0254],
  [1000, "thou", 25.4],
  [5000, "thou", 127],
  [17.25, "mm", 17.25],
] as const)("%d %s are %d mm exactly", (value, unit, millimetres) => {
  expect(toMillimetres(value, unit)).toBe(millimetres);
  expect(fromMillimetres(millimetres, unit)).toBe(value);
});

test("a length comes back from any unit", () => {
  const length = fc.double({ min: -1e4, max: 1e4, noNaN: true });
  fc.assert(
    fc.property(length, fc.constantFrom(...lengthUnits), (value, unit) => {
      // Two multiplications and two divisions round, each by half a last digit at most.
      const back = fromMillimetres(toMillimetres(value, unit), unit);
      expect(Math.abs(back - value)).toBeLessThanOrEqual(
        2 * Number.EPSILON * Math.abs(value) + Number.MIN_VALUE * 64,
      );
    }),
    { seed: 4 },
  );
});

test("a number that is none is an error that names it", () => {
  expect(() => toMillimetres(NaN, "in")).toThrow(
    "toMillimetres: value NaN in must be a finite number",
  );
  expect(() => fromMillimetres(Infinity, "thou")).toThrow(RangeError);
  expect(() => toThousandths(-Infinity)).toThrow(RangeError);
});

const spellings = {
  mm: ["mm", " MM ", "mm.", "millimetre", "Millimetres", "millimeter", "millimeters"],
  in: ["in", "In.", "inch", "INCHES", '"', "″", "”", "''"],
  thou: [
    "thou",
    "thous",
    "mil",
    "mils",
    "1/1000 in",
    "1/1000 inch",
    '1/1000"',
    "1/1000 of an inch",
    "0.001 in",
    '.001"',
    "thousandth",
    "thousandths",
    "thousandths of an  inch",
  ],
};

test.each(Object.entries(spellings).flatMap(([unit, texts]) => texts.map((text) => [text, unit])))(
  "“%s” means %s",
  (text, unit) => {
    expect(parseUnit(text)).toBe(unit);
  },
);

test.each(["", "cm", "m", "mmm", "ratio", "0-1", "inchworm", "1/100 in", "27", "min"])(
  "“%s” is no unit",
  (text) => {
    expect(parseUnit(text)).toBeUndefined();
  },
);

test("a feature keeps its decimals in mm and gets those of the gauge in inches", () => {
  const tip = { unit: "mm", decimals: 2 } as const;
  expect(lengthUnits.map((unit) => unitDecimals(tip, unit))).toEqual([2, 4, 1]);
});

test("ratios and judgements keep their decimals in every unit", () => {
  for (const unit of lengthUnits) {
    expect(unitDecimals({ unit: "ratio", decimals: 2 }, unit)).toBe(2);
    expect(unitDecimals({ unit: "0-1", decimals: 3 }, unit)).toBe(3);
  }
});

test("the decimals of a unit lose nothing that the state keeps of a gauge reading", () => {
  for (let tenths = 0; tenths <= 20_000; tenths += 1) {
    const kept = toThousandths(toMillimetres(tenths / 10, "thou"));
    expect(fromMillimetres(kept, "thou").toFixed(1)).toBe((tenths / 10).toFixed(1));
  }
});

test.each([
  [0.4318, 0.432],
  [27.7, 27.7],
  [0.0005, 0.001],
  [-0.0001, 0],
])("%d is kept as %d", (value, kept) => {
  expect(toThousandths(value)).toBe(kept);
});
