import type { Feature } from "../engine/model.js";
import type { Catalogue } from "../reed/catalogue.js";
import { readingText, unitSign, unitSpoken } from "../reed/reading-text.js";
import type { LengthUnit } from "../reed/units.js";

/** What a row of the recipe is about. */
export interface RowSubject {
  readonly feature: Feature;
  readonly value: number | undefined;
  readonly locked: boolean;
  readonly unit: LengthUnit;
  readonly text: Catalogue;
}

/** The value as the gauge shows it; empty where nothing was measured. */
export function shownValue({ feature, value, unit, text }: RowSubject): string {
  return value === undefined ? "" : readingText(feature, value, unit, text);
}

/** The unit as it is spoken, and whether the feature is locked. */
export function spokenState({ feature, value, locked, unit, text }: RowSubject): string {
  if (value === undefined) return text.recipe.notMeasured;
  const parts = [unitSpoken(feature, unit, text), locked ? text.recipe.locked : ""];
  return parts.filter(Boolean).join(", ");
}

/** Both ends of the slider. */
export function sliderRange({ feature, unit, text }: RowSubject): [low: string, high: string] {
  return [
    readingText(feature, feature.min, unit, text),
    readingText(feature, feature.max, unit, text),
  ];
}

/** How far the slider goes, as a sentence. */
export function rangeText(subject: RowSubject): string {
  const { feature, unit, text } = subject;
  return text.recipe.range(...sliderRange(subject), unitSign(feature, unit, text));
}

/** That the value is beyond the slider; empty where it is not. */
export function outsideText(subject: RowSubject): string {
  const { feature, value, unit, text } = subject;
  if (value === undefined || (value >= feature.min && value <= feature.max)) return "";
  return text.recipe.outside(...sliderRange(subject), unitSign(feature, unit, text));
}
