import type { Feature } from "../engine/model.js";
import type { Catalogue } from "./catalogue.js";
import {
  fromMillimetres,
  parseUnit,
  toMillimetres,
  unitDecimals,
  type LengthUnit,
} from "./units.js";

/** A feature's value as the user's gauge shows it; `exact` keeps what the thousandths of the store hold. */
export function readingText(
  feature: Feature,
  value: number,
  unit: LengthUnit,
  text: Catalogue,
  exact = false,
): string {
  const shown = feature.unit === "mm" ? fromMillimetres(value, unit) : value;
  const decimals = unitDecimals(feature, unit);
  if (!exact) return text.number(shown, decimals);
  const most = feature.unit === "mm" ? { mm: 3, in: 4, thou: 1 }[unit] : 3;
  // 27.650 is 27.65: zeros behind the usual digits say nothing.
  let needed = Math.max(decimals, most);
  while (needed > decimals && isWhole(shown, needed - 1, most)) needed -= 1;
  return text.number(shown, needed);
}

/** Whether a number has no more decimals than this many, of those that are shown at most. */
function isWhole(value: number, decimals: number, most: number): boolean {
  return Number(value.toFixed(decimals)) === Number(value.toFixed(most));
}

/** The sign behind a feature's value: mm, in, thou, or nothing. */
export function unitSign(feature: Feature, unit: LengthUnit, text: Catalogue): string {
  return feature.unit === "mm" ? text.units[unit].sign : "";
}

/**
 * A feature's value with its unit, as the user's gauge shows it: "0.24 mm", "0.72".
 *
 * @example readingWithUnit(spine, 0.5, "mm", english) → "0.50 mm"
 */
export function readingWithUnit(
  feature: Feature,
  value: number,
  unit: LengthUnit,
  text: Catalogue,
  exact = false,
): string {
  return `${readingText(feature, value, unit, text, exact)} ${unitSign(feature, unit, text)}`.trim();
}

/** The unit as it is spoken. */
export function unitSpoken(feature: Feature, unit: LengthUnit, text: Catalogue): string {
  return feature.unit === "mm" ? text.units[unit].spoken : "";
}

/**
 * What a user typed → the feature's value in its own unit; undefined when it is no number.
 *
 * Domain  a decimal point or comma, blanks around it; a length may carry its own unit ("1.09 in", "43 thou").
 *
 * @example typedValue(bladeLength, "1.09 in", "mm") → 27.686
 */
export function typedValue(feature: Feature, typed: string, unit: LengthUnit): number | undefined {
  const [, digits = "", written = ""] =
    /^([-−]?(?:\d+[.,]?\d*|[.,]\d+))\s*(.*)$/.exec(typed.trim()) ?? [];
  const value = Number(digits.replace("−", "-").replace(",", "."));
  if (digits === "" || !Number.isFinite(value)) return undefined;
  if (feature.unit !== "mm") return written === "" ? value : undefined;
  const said = written === "" ? unit : parseUnit(written);
  return said && toMillimetres(value, said);
}

/** A feature's value in the all-round reed: the mean of its three corner values. */
export function allRoundValue({ corners }: Feature): number {
  return (corners.high + corners.low + corners.loud) / 3;
}
