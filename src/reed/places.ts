import type { FeatureId } from "../engine/model.js";

/** A place on the reed, as the sheet names it; "one" where a feature has one place, or nobody has said which of several. */
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

const placesByFeature: Readonly<Record<FeatureId, readonly Place[]>> = {
  wings: quarters,
  rails: quarters,
  heart: blades,
  spine: blades,
  tip: blades,
  bladeLength: blades,
};

/**
 * The places at which a feature is read, in the order of the sheet.
 *
 * Source  common practice, no source.
 *
 * @example placesOf("heart") → ["frontBlade", "backBlade"]
 */
export function placesOf(feature: FeatureId): readonly Place[] {
  return Object.hasOwn(placesByFeature, feature) ? placesByFeature[feature]! : one;
}
