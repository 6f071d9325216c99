import type { Feature } from "../engine/model.js";
import type { ReadingWords } from "../reed/reading-catalogue.js";
import type { Fault } from "../reed/reading-words.js";
import { isFarOutside, outermost } from "../reed/far-outside.js";
import { type LengthUnit, lengthUnits, parseUnit, toMillimetres } from "../reed/units.js";

/** A number with what stands behind it. */
const numberThenUnit = /^([+-]?(?:\d+[.,]?\d*|[.,]\d+)(?:e[+-]?\d+)?)\s*(.*)$/is;

/** What people write for the unit of a ratio or a judgement. */
const unitless = /^(?:|-|–|—|1|ratio|0\s*[-–]\s*1)$/i;

/** How a value cell is to be read, and what is said of one that cannot be. */
interface ValueRules {
  readonly decimalComma: boolean;
  readonly words: ReadingWords["faults"];
}

/** A value cell taken apart: the number, and the unit it carries. */
export interface ValueParts {
  readonly value: number;
  /** The number as it was typed. */
  readonly typed: string;
  readonly unit: string;
}

/**
 * A value cell taken apart.
 *
 * Shape   the text of the cell, whether a comma may be the decimal mark, words for what is wrong → number and unit text, or what is wrong.
 *
 * @example valueParts("1,09 in", { decimalComma: true, words: readingWords.faults }) → { value: 1.09, typed: "1,09", unit: "in" }
 */
export function valueParts(
  text: string,
  { decimalComma, words }: ValueRules,
): ValueParts | { readonly fault: Fault } {
  const cell = text.trim().replace(/^−/, "-");
  if (cell === "") return { fault: words.missingValue };
  const [, digits, unit = ""] = numberThenUnit.exec(cell) ?? [];
  const value = Number(digits?.replace(",", "."));
  if (digits === undefined || !Number.isFinite(value)) return { fault: words.badNumber(cell) };
  if (digits.includes(",") && !decimalComma) return { fault: words.unclearComma(cell) };
  return { value, typed: digits, unit };
}

/**
 * The unit of a reading, from what is written with the value and in the unit column.
 *
 * Shape   feature, both unit texts, the unit to use when neither says anything, words for what is wrong → the unit
 *         (`undefined` for a ratio or a judgement, which has none), or what is wrong.
 */
export function readingUnit(
  feature: Feature,
  texts: readonly string[],
  otherwise: LengthUnit,
  words: ReadingWords["faults"],
): { readonly unit: LengthUnit | undefined } | { readonly fault: Fault } {
  const written = texts.map((text) => text.trim()).filter((text) => text !== "");
  if (feature.unit !== "mm") {
    const stray = written.find((text) => !unitless.test(text));
    if (stray === undefined) return { unit: undefined };
    return { fault: words.strayUnit(feature.label, stray) };
  }
  const unknown = written.find((text) => parseUnit(text) === undefined);
  if (unknown !== undefined) {
    const isDigits = /^\d+$/.test(unknown);
    return { fault: isDigits ? words.digitsForUnit(unknown) : words.unknownUnit(unknown) };
  }
  const units = new Set(written.flatMap((text) => parseUnit(text) ?? []));
  if (units.size > 1) return { fault: words.twoUnits([...units]) };
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
  { value, typed }: Pick<ValueParts, "value" | "typed">,
  unit: LengthUnit | undefined,
  words: ReadingWords["faults"],
): Fault | undefined {
  const millimetres = unit ? toMillimetres(value, unit) : value;
  if (!Number.isFinite(millimetres)) return words.badNumber(typed);
  const allowed = { ...feature, ...outermost(feature) };
  if (value < 0 && feature.min >= 0) return words.belowZero(allowed, typed);
  if (!isFarOutside(feature, millimetres)) return undefined;
  const inModelUnit = unit === undefined || unit === "mm" ? "" : ` (${rounded(millimetres)} mm)`;
  const shown = `${typed}${unit ? ` ${unit}` : ""}${inModelUnit}`;
  return words.farOutside(allowed, shown, question(feature, value, unit, words.ask));
}

/** Asks about the most likely slip: another unit, or height and width of a roundness swapped. */
function question(
  feature: Feature,
  value: number,
  unit: LengthUnit | undefined,
  ask: ReadingWords["faults"]["ask"],
): string {
  const fits = (candidate: number): boolean => candidate >= feature.min && candidate <= feature.max;
  if (unit === undefined) {
    const upsideDown = feature.unit === "ratio" && fits(1 / value);
    return upsideDown ? ask.swapped(rounded(1 / value)) : ask.misread;
  }
  const other = lengthUnits.find(
    (candidate) => candidate !== unit && fits(toMillimetres(value, candidate)),
  );
  if (other === undefined) return ask.unit;
  if (other === "mm") return ask.millimetres(value);
  return ask.otherUnit(value, other, rounded(toMillimetres(value, other), feature.decimals));
}

function rounded(value: number, decimals = 3): string {
  return String(Number(value.toFixed(decimals)));
}
