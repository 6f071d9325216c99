import type { Feature } from "../engine/model.js";
import { isFarOutside } from "../reed/far-outside.js";
import { type LengthUnit, lengthUnits, parseUnit, toMillimetres } from "../reed/units.js";
import { type Fault, quoted } from "./reading-problem.js";

/** A number with what stands behind it. */
const numberThenUnit = /^([+-]?(?:\d+[.,]?\d*|[.,]\d+)(?:e[+-]?\d+)?)\s*(.*)$/is;

/** What people write for the unit of a ratio or a judgement. */
const unitless = /^(?:|-|–|—|1|ratio|0\s*[-–]\s*1)$/i;

const lengthsAllowed = "mm, in or thou";

/** A value cell taken apart: the number, and the unit it carries. */
export interface ValueParts {
  readonly value: number;
  readonly unit: string;
}

/**
 * A value cell taken apart.
 *
 * Shape   the text of the cell, whether a comma may be the decimal mark → number and unit text, or what is wrong.
 *
 * @example valueParts("1,09 in", true) → { value: 1.09, unit: "in" }
 */
export function valueParts(
  text: string,
  decimalComma: boolean,
): ValueParts | { readonly fault: Fault } {
  const cell = text.trim().replace(/^−/, "-");
  const allowed = "a number, with or without a unit behind it";
  if (cell === "") return { fault: { why: "the value is missing", allowed } };
  const [, digits, unit = ""] = numberThenUnit.exec(cell) ?? [];
  const value = Number(digits?.replace(",", "."));
  if (digits === undefined || !Number.isFinite(value))
    return { fault: { why: `${quoted(cell)} is no number`, allowed } };
  if (digits.includes(",") && !decimalComma) {
    const why = `the comma in ${quoted(cell)} may be a decimal mark or part the thousands`;
    return {
      fault: {
        why,
        allowed: "a decimal point, or a decimal comma with a tab or semicolon between the columns",
      },
    };
  }
  return { value, unit };
}

/**
 * The unit of a reading, from what is written with the value and in the unit column.
 *
 * Shape   feature, both unit texts, the unit to use when neither says anything → the unit
 *         (`undefined` for a ratio or a judgement, which has none), or what is wrong.
 */
export function readingUnit(
  feature: Feature,
  texts: readonly string[],
  otherwise: LengthUnit,
): { readonly unit: LengthUnit | undefined } | { readonly fault: Fault } {
  const written = texts.map((text) => text.trim()).filter((text) => text !== "");
  if (feature.unit !== "mm") {
    const stray = written.find((text) => !unitless.test(text));
    if (stray === undefined) return { unit: undefined };
    return {
      fault: {
        why: `${feature.label} has no unit, but ${quoted(stray)} is given`,
        allowed: "no unit",
      },
    };
  }
  const unknown = written.find((text) => parseUnit(text) === undefined);
  if (unknown !== undefined) {
    const comma = /^\d+$/.test(unknown)
      ? " (a decimal comma needs a tab or semicolon between the columns)"
      : "";
    return {
      fault: { why: `${quoted(unknown)} is no unit of length${comma}`, allowed: lengthsAllowed },
    };
  }
  const units = new Set(written.map(parseUnit));
  if (units.size > 1) {
    return {
      fault: {
        why: `the value says ${[...units].join(", but the unit column ")}`,
        allowed: "one unit",
      },
    };
  }
  return { unit: [...units][0] ?? otherwise };
}

/**
 * What makes a value impossible for its feature, if anything.
 *
 * A value outside the model's range is unusual and stays; one far outside is asked about.
 *
 * Unit    the value as it was written, with its unit (`undefined` for features without one).
 */
export function valueFault(
  feature: Feature,
  value: number,
  unit: LengthUnit | undefined,
): Fault | undefined {
  const millimetres = unit ? toMillimetres(value, unit) : value;
  const allowed = `${feature.min} to ${feature.max}${unit ? " mm" : ""}, or a little beyond`;
  if (value < 0 && feature.min >= 0)
    return { why: `${feature.label} cannot be ${value}, below 0`, allowed };
  if (!isFarOutside(feature, millimetres)) return undefined;
  const inModelUnit = unit === undefined || unit === "mm" ? "" : ` (${rounded(millimetres)} mm)`;
  const shown = `${feature.label} ${value}${unit ? ` ${unit}` : ""}${inModelUnit}`;
  const range = `${feature.min} to ${feature.max}${unit ? " mm" : ""}`;
  return { why: `${shown} is far outside ${range}`, allowed, ask: question(feature, value, unit) };
}

/** Asks about the most likely slip: another unit, or height and width of a roundness swapped. */
function question(feature: Feature, value: number, unit: LengthUnit | undefined): string {
  const fits = (candidate: number): boolean => candidate >= feature.min && candidate <= feature.max;
  if (unit === undefined) {
    const upsideDown = feature.unit === "ratio" && fits(1 / value);
    return upsideDown
      ? `were height and width swapped (${rounded(1 / value)})`
      : "is it read rightly";
  }
  const other = lengthUnits.find(
    (candidate) => candidate !== unit && fits(toMillimetres(value, candidate)),
  );
  if (other === undefined) return "is the unit right";
  if (other === "mm") return `is the unit right, for ${value} mm would fit`;
  const converted = rounded(toMillimetres(value, other), feature.decimals);
  return `is the unit right, for ${value} ${other} would be ${converted} mm`;
}

function rounded(value: number, decimals = 3): string {
  return String(Number(value.toFixed(decimals)));
}
