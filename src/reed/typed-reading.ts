import type { Feature } from "../engine/model.js";
import type { Catalogue } from "./catalogue.js";
import { isFarOutside } from "./far-outside.js";
import { readingText, typedValue, unitSign } from "./reading-text.js";
import type { LengthUnit } from "./units.js";

/**
 * What was typed for a feature: a value in its own unit, or what is wrong with it and which value still counts.
 *
 * Shape   feature, text, value before (undefined: none), unit of lengths → a value, or undefined with a sentence.
 * Domain  any text; never throws.
 *
 * @example typedReading(spine, "0.5", undefined, "mm", english) → { value: 0.5, problem: "" }
 */
export function typedReading(
  feature: Feature,
  typed: string,
  before: number | undefined,
  unit: LengthUnit,
  text: Catalogue,
): { readonly value: number | undefined; readonly problem: string } {
  const words = text.recipe;
  const sign = unitSign(feature, unit, text);
  const usual = [feature.min, feature.max].map((end) => readingText(feature, end, unit, text));
  const range = [usual[0]!, usual[1]!, sign] as const;
  const stays =
    before === undefined
      ? ""
      : ` ${words.stays(`${readingText(feature, before, unit, text, true)} ${sign}`.trim())}`;
  const value = typedValue(feature, typed, unit);
  if (value === undefined) return { value, problem: words.badNumber(typed, ...range) + stays };
  const impossible = isFarOutside(feature, value) || (value < 0 && feature.min >= 0);
  if (impossible) return { value: undefined, problem: words.farOff(typed, ...range) + stays };
  return { value, problem: "" };
}
