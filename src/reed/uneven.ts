import type { FeatureId } from "../engine/model.js";
import { placesOf, type Place } from "./places.js";
import { byPlace, meanReading, type Reading } from "./readings.js";

/** How far the places of a feature differ. */
export interface Unevenness {
  readonly spread: number;
  readonly limit: number;
  /** The place with the largest reading; absent where nobody has said which is which. */
  readonly largest?: Place;
}

// Common practice, no source: how far the places may differ, mm.
const limits: ReadonlyMap<FeatureId, number> = new Map([
  ["wings", 0.03],
  ["rails", 0.03],
  ["heart", 0.03],
  ["spine", 0.03],
  ["bladeLength", 0.3],
]);

/**
 * How far the places of a feature differ, if so far that the reed is to be evened first. Repeats of one place count by
 * their mean: their scatter is the gauge's.
 *
 * Shape   a feature, its single readings → largest minus smallest and the limit, or `undefined` when all is well.
 * Unit    mm.
 * Domain  any number of readings; fewer than two places cannot differ, and a feature without a limit never does.
 * Throws  RangeError if a reading is not a finite number.
 * Source  common practice, no source.
 *
 * @example unevenness("heart", [{ place: "frontBlade", value: 0.5 }, { place: "backBlade", value: 0.45 }]) → { spread: 0.05, limit: 0.03, largest: "frontBlade" }
 */
export function unevenness(
  feature: FeatureId,
  readings: readonly Reading[],
): Unevenness | undefined {
  const wrong = readings.find(({ value }) => !Number.isFinite(value));
  if (wrong)
    throw new RangeError(`unevenness: ${feature} reads ${wrong.value} mm, must be a finite number`);
  const limit = limits.get(feature);
  const sorted = placesRead(feature, readings).toSorted((a, b) => a.value - b.value);
  const [least, most] = [sorted[0], sorted.at(-1)];
  if (limit === undefined || !least || !most) return undefined;
  // Whole thousandths, so that 0.27 − 0.24 does not exceed 0.03 by its last binary digit.
  const spread = Math.round((most.value - least.value) * 1000) / 1000;
  if (spread <= limit) return undefined;
  return { spread, limit, ...(most.place === "one" ? {} : { largest: most.place }) };
}

/** One reading a place; where nobody has said which is which, each may be another place. */
function placesRead(feature: FeatureId, readings: readonly Reading[]): readonly Reading[] {
  const unsaid = placesOf(feature).length > 1 && readings.some(({ place }) => place === "one");
  if (unsaid) return readings;
  return [...byPlace(readings).keys()].map((place) => ({
    place,
    value: meanReading(
      feature,
      readings.filter((one) => one.place === place),
    ),
  }));
}
