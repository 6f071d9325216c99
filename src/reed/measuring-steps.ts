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
  /** The places that are read one after the other; one place may be read again. */
  readonly places: readonly Place[];
}

/** A place on the reed, as the sheet names it. */
export type Place =
  | "one"
  | "frontBlade"
  | "backBlade"
  | "frontLeft"
  | "frontRight"
  | "backLeft"
  | "backRight";

const one: readonly Place[] = ["one"];
const blades: readonly Place[] = ["frontBlade", "backBlade"];
const quarters: readonly Place[] = ["frontLeft", "frontRight", "backLeft", "backRight"];

/**
 * The guided sheet in its order: the opening before anything touches the tip, hinging last.
 *
 * Source  common practice, no source.
 */
export const measuringSteps: readonly MeasuringStep[] = [
  { feature: "openingHeight", asks: "value", places: one },
  { feature: "openingWidth", asks: "value", places: one },
  { feature: "bladeLength", asks: "value", places: blades },
  { feature: "throatWidth", asks: "value", places: one },
  { feature: "firstWire", asks: "heightAndWidth", places: one },
  { feature: "secondWire", asks: "heightAndWidth", places: one },
  { feature: "tipWidth", asks: "value", places: one },
  { feature: "tip", asks: "value", places: blades },
  { feature: "heart", asks: "value", places: blades },
  { feature: "wings", asks: "value", places: quarters },
  { feature: "spine", asks: "value", places: blades },
  { feature: "rails", asks: "value", places: quarters },
  { feature: "backRise", asks: "thicknessOverSpine", places: one },
  { feature: "hinging", asks: "picture", places: one },
];

/** The five pictures of hinging, as values of the feature. Common practice, no source. */
export const hingingPictures = [0, 0.25, 0.5, 0.75, 1] as const;
