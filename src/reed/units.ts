import type { Feature } from "../engine/model.js";

/** A unit that a gauge may read lengths in. */
export type LengthUnit = "mm" | "in" | "thou";

/** Every length unit, in the order it is offered. */
export const lengthUnits: readonly LengthUnit[] = ["mm", "in", "thou"];

// 25.4 has no exact binary form; 127/5 is the same number in whole ones, so that 12 inches are 304.8 mm to the last digit.
const millimetresIn5Inches = 127;
const thousandthsPerInch = 1000;

/**
 * A length in millimetres.
 *
 * Unit    mm, inch or thousandths of an inch → mm.
 * Throws  RangeError if the value is not a finite number.
 * Source  the international inch is 25.4 mm exactly: NIST SP 811, appendix B.8; ISO 31-1.
 *
 * @example toMillimetres(1, "in") → 25.4
 */
export function toMillimetres(value: number, unit: LengthUnit): number {
  checkFinite("toMillimetres", value, unit);
  if (unit === "mm") return value;
  return (value * millimetresIn5Inches) / (unit === "in" ? 5 : 5 * thousandthsPerInch);
}

/**
 * A length in the unit of a gauge.
 *
 * Unit    mm → mm, inch or thousandths of an inch.
 * Throws  RangeError if the value is not a finite number.
 * Source  as `toMillimetres`.
 *
 * @example fromMillimetres(25.4, "thou") → 1000
 */
export function fromMillimetres(millimetres: number, unit: LengthUnit): number {
  checkFinite("fromMillimetres", millimetres, "mm");
  if (unit === "mm") return millimetres;
  return (millimetres * (unit === "in" ? 5 : 5 * thousandthsPerInch)) / millimetresIn5Inches;
}

const inch = "(?:in|inch|inches|\"|″|”|'')";

/** How people write each unit, in lower case without a full stop at the end; made where it is used, and left out else. */
const spellings = /* @__PURE__ */ (() =>
  [
    ["mm", /^(?:mm|millimet(?:re|er)s?)$/],
    ["in", new RegExp(`^${inch}$`)],
    [
      "thou",
      new RegExp(
        `^(?:thous?|mils?|thousandths?(?: of an inch| inch)?|(?:1/1000|0?\\.001) ?(?:th )?(?:of an )?${inch})$`,
      ),
    ],
  ] as const satisfies readonly (readonly [LengthUnit, RegExp])[])();

/**
 * The length unit that a text names, as people write it; `undefined` if it names none.
 *
 * @example parseUnit("Inches") → "in"
 */
export function parseUnit(text: string): LengthUnit | undefined {
  const spelling = text.trim().toLowerCase().replace(/\.$/, "").replace(/\s+/g, " ");
  return spellings.find(([, pattern]) => pattern.test(spelling))?.[0];
}

/**
 * Digits behind the point that show what a gauge can read: as the model says in mm,
 * a ten-thousandth of an inch, a tenth of a thousandth. Ratios keep theirs in every unit.
 *
 * @example unitDecimals({ unit: "ratio", decimals: 2 }, "thou") → 2
 */
export function unitDecimals(
  feature: Pick<Feature, "unit" | "decimals">,
  unit: LengthUnit,
): number {
  if (feature.unit !== "mm" || unit === "mm") return feature.decimals;
  return unit === "in" ? 4 : 1;
}

/**
 * A value in whole thousandths of the feature's unit, as the state of a bench keeps it.
 *
 * Error   at most 0.0005, less than the last digit of any gauge in mm or thousandths of an inch.
 * Throws  RangeError if the value is not a finite number.
 *
 * @example toThousandths(0.43180000000000002) → 0.432
 */
export function toThousandths(value: number): number {
  checkFinite("toThousandths", value, "of the feature's unit");
  // Adding 0 turns −0, which would show its sign, into 0.
  return Math.round(value * 1000) / 1000 + 0;
}

function checkFinite(caller: string, value: number, unit: string): void {
  if (!Number.isFinite(value))
    throw new RangeError(`${caller}: value ${value} ${unit} must be a finite number`);
}
