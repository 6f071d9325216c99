import type { Feature, FeatureId, ReedModel } from "../engine/model.js";
import { isFarOutside } from "./far-outside.js";
import { lengthUnits, toMillimetres, toThousandths, type LengthUnit } from "./units.js";

/** A reading that looks like a slip: what it may have been, and the value that it then is. */
export interface SlipQuestion {
  readonly kind: "unit" | "otherFeature" | "upsideDown" | "riseItself" | "thicknessItself" | "far";
  /** What the reading would be; undefined where only the person can know. */
  readonly value?: number;
  /** The unit that the gauge may have shown. */
  readonly unit?: LengthUnit;
  /** The feature that may have been read instead. */
  readonly feature?: FeatureId;
}

/** A number as the person read it: the value in the feature's unit, and the unit it was typed in. */
export interface Typed {
  readonly value: number;
  readonly unit: LengthUnit;
}

/**
 * What a reading may have been, when it is far from what a reed has; none forbids, each asks.
 *
 * Shape   model, feature, what was typed → questions, the likeliest first; empty when the reading is usual.
 * Unit    the feature's own; the question's value too.
 * Source  common practice, no source: the usual slips of measuring.
 *
 * @example slipQuestions(bassoonModel, tip, { value: 0.0043, unit: "mm" })[0].kind → "unit"
 */
export function slipQuestions(
  model: ReedModel,
  feature: Feature,
  { value, unit }: Typed,
): SlipQuestion[] {
  // No back rises so far above its spine: that is how thick the blade is there.
  if (feature.id === "backRise" && value > leastThickness(model))
    return [{ kind: "thicknessItself" }];
  if (!isStrange(feature, value)) return [];
  const found = [
    ...upsideDown(feature, value),
    ...otherUnits(feature, value, unit),
    ...otherFeatures(model, feature, value),
  ];
  return found.length > 0 ? found : [{ kind: "far" }];
}

function leastThickness({ features }: ReedModel): number {
  return features.find(({ id }) => id === "spine")?.min ?? Infinity;
}

/** Outside what reeds have: rather a slip than a reed, and in any case worth a second look. */
function isStrange(feature: Feature, value: number): boolean {
  if (value < 0 && feature.min >= 0) return true;
  if (feature.unit === "ratio" && value > 0 && isUsual(feature, 1 / value) && value > feature.max)
    return true;
  return !isUsual(feature, value);
}

function upsideDown(feature: Feature, value: number): SlipQuestion[] {
  const turned = value > 0 ? toThousandths(1 / value) : 0;
  return feature.unit === "ratio" && isUsual(feature, turned)
    ? [{ kind: "upsideDown", value: turned }]
    : [];
}

/** The digits as they were typed, read in another unit. */
function otherUnits(feature: Feature, value: number, unit: LengthUnit): SlipQuestion[] {
  if (feature.unit !== "mm") return [];
  const digits = value / toMillimetres(1, unit);
  return lengthUnits
    .filter((other) => other !== unit)
    .map((other) => ({ other, read: toThousandths(toMillimetres(digits, other)) }))
    .filter(({ read }) => isUsual(feature, read))
    .map(({ other, read }) => ({ kind: "unit", value: read, unit: other }));
}

/** Openings are mixed up: the height typed for the width, the tip's width for that of the gap. */
const mixedUp: Readonly<Record<FeatureId, readonly FeatureId[]>> = {
  openingHeight: ["openingWidth"],
  openingWidth: ["openingHeight", "tipWidth"],
};

function otherFeatures(model: ReedModel, feature: Feature, value: number): SlipQuestion[] {
  const others = mixedUp[feature.id] ?? [];
  return others
    .map((id) => model.features.find((one) => one.id === id))
    .filter((other) => other !== undefined && isUsual(other, value))
    .map((other) => ({ kind: "otherFeature", feature: other!.id }));
}

/**
 * The rise of the back from a thickness read 24 mm behind the tip, with a question where the number cannot be one.
 *
 * Shape   the feature of the rise, spine and what was typed, mm → rise, and a question or none.
 *
 * @example riseFrom(backRise, 0.56, { value: 0.7, unit: "mm" }).rise → 0.14
 */
export function riseFrom(
  feature: Feature,
  spine: number,
  { value, unit }: Typed,
): { readonly rise: number; readonly questions: SlipQuestion[] } {
  const rise = toThousandths(value - spine);
  if (isUsual(feature, rise) || (rise < 0 && rise > -0.05)) return { rise, questions: [] };
  const questions: SlipQuestion[] = [];
  if (isUsual(feature, value)) questions.push({ kind: "riseItself", value });
  const digits = value / toMillimetres(1, unit);
  for (const other of lengthUnits.filter((one) => one !== unit)) {
    const read = toThousandths(toMillimetres(digits, other) - spine);
    if (isUsual(feature, read)) questions.push({ kind: "unit", value: read, unit: other });
  }
  if (questions.length > 0) return { rise, questions };
  return { rise, questions: isFarOutside(feature, rise) ? [{ kind: "far" }] : [] };
}

function isUsual({ min, max }: Feature, value: number): boolean {
  return value >= min && value <= max;
}
