import type { FeatureId } from "../engine/model.js";

/** What a place of the sheet asks for. */
export type Asked =
  /** One number in the feature's own unit. */
  | "value"
  /** Height, then width: the feature is their ratio. */
  | "heightAndWidth"
  /** A thickness: the feature is what it exceeds the spine by. */
  | "thicknessOverSpine"
  /** One of five pictures. */
  | "picture";

/** One step of the guided sheet. */
export interface MeasuringStep {
  readonly feature: FeatureId;
  readonly asks: Asked;
  /** What most reeds have, in the feature's unit. */
  readonly usual: readonly [low: number, high: number];
}

/**
 * The guided sheet in its order: the opening before anything touches the tip, hinging last.
 *
 * Source  common practice, no source.
 */
export const measuringSteps: readonly MeasuringStep[] = [
  { feature: "openingHeight", asks: "value", usual: [0.9, 1.6] },
  { feature: "openingWidth", asks: "value", usual: [11, 13] },
  { feature: "bladeLength", asks: "value", usual: [26, 29] },
  { feature: "throatWidth", asks: "value", usual: [8, 9.3] },
  { feature: "firstWire", asks: "heightAndWidth", usual: [0.66, 0.82] },
  { feature: "secondWire", asks: "heightAndWidth", usual: [0.88, 1] },
  { feature: "tipWidth", asks: "value", usual: [14, 16] },
  { feature: "tip", asks: "value", usual: [0.08, 0.13] },
  { feature: "heart", asks: "value", usual: [0.42, 0.5] },
  { feature: "wings", asks: "value", usual: [0.19, 0.27] },
  { feature: "spine", asks: "value", usual: [0.5, 0.62] },
  { feature: "rails", asks: "value", usual: [0.34, 0.46] },
  { feature: "backRise", asks: "thicknessOverSpine", usual: [0.05, 0.22] },
  { feature: "hinging", asks: "picture", usual: [0, 1] },
];

/** The five pictures of hinging, as values of the feature. Common practice, no source. */
export const hingingPictures = [0, 0.25, 0.5, 0.75, 1] as const;
