import type { FeatureId } from "../engine/model.js";

/** Where the readings of a feature are taken: four quarters, the two blades, or one place again and again. */
export type Places = "quarters" | "blades" | "one";

// Common practice, no source: which features are read where, and how far the places may differ, mm.
const placesByFeature: ReadonlyMap<FeatureId, Places> = new Map<FeatureId, Places>([
  ["wings", "quarters"],
  ["rails", "quarters"],
  ["heart", "blades"],
  ["spine", "blades"],
  ["tip", "blades"],
  ["bladeLength", "blades"],
]);
const limits: ReadonlyMap<FeatureId, number> = new Map([
  ["wings", 0.03],
  ["rails", 0.03],
  ["heart", 0.03],
  ["spine", 0.03],
  ["bladeLength", 0.3],
]);

/**
 * Where the readings of a feature are taken.
 *
 * Source  common practice, no source.
 *
 * @example placesOf("wings") → "quarters"
 */
export function placesOf(feature: FeatureId): Places {
  return placesByFeature.get(feature) ?? "one";
}

/**
 * How far the readings of a feature differ, if so far that the reed is to be evened first.
 *
 * Shape   a feature, its single readings → largest minus smallest and the limit, or `undefined` when all is well.
 * Unit    mm.
 * Domain  any number of readings; fewer than two cannot differ, and a feature without a limit never does.
 * Throws  RangeError if a reading is not a finite number.
 * Source  common practice, no source.
 *
 * @example unevenness("wings", [0.18, 0.27, 0.23, 0.24]) → { spread: 0.09, limit: 0.03 }
 */
export function unevenness(
  feature: FeatureId,
  readings: readonly number[],
): { readonly spread: number; readonly limit: number } | undefined {
  const wrong = readings.find((reading) => !Number.isFinite(reading));
  if (wrong !== undefined)
    throw new RangeError(`unevenness: ${feature} reads ${wrong} mm, must be a finite number`);
  const limit = limits.get(feature);
  if (limit === undefined || readings.length < 2) return undefined;
  // Whole thousandths, so that 0.27 − 0.24 does not exceed 0.03 by its last binary digit.
  const sorted = readings.toSorted((a, b) => a - b);
  const spread = Math.round(((sorted.at(-1) ?? 0) - (sorted[0] ?? 0)) * 1000) / 1000;
  return spread > limit ? { spread, limit } : undefined;
}
