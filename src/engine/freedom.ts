import { requireFinite } from "./check.js";
import type { Feature, Freedom, ReedModel, Values } from "./model.js";

type FeatureFreedom = Freedom[string];

/**
 * What finishing leaves free on a finished reed: cane can be taken away, not put back.
 *
 * Shape   a model and the present values → one entry for every feature that has a value
 *         (`{}` where it can go both ways).
 * Unit    the model's own units.
 * Throws  RangeError naming a value that is not finite.
 * Source  each feature's `finishing` in the model.
 *
 * @example finishingFreedom(bassoonModel, { spine: 0.56 }) → { spine: { max: 0.56 } }
 */
export function finishingFreedom(model: ReedModel, values: Values): Freedom {
  const freedom: Record<string, FeatureFreedom> = {};
  for (const feature of model.features) {
    const value = values[feature.id];
    if (value === undefined) continue;
    requireFinite(value, `finishingFreedom: feature "${feature.id}"`);
    freedom[feature.id] = ofFeature(feature, value);
  }
  return freedom;
}

function ofFeature({ finishing }: Feature, value: number): FeatureFreedom {
  if (finishing === "down") return { max: value };
  if (finishing === "up") return { min: value };
  return finishing === "fixed" ? { locked: true } : {};
}

/**
 * The least and greatest value a feature may take: its range, narrowed by what the freedom states.
 * A value that is outside already may stay or move inward, so the present value is always allowed.
 *
 * Throws  RangeError for a limit that is not finite or a least value above the greatest.
 */
export function limitsOf(
  feature: Feature,
  value: number,
  stated: FeatureFreedom | undefined,
  who: string,
): readonly [low: number, high: number] {
  if (!stated) return [Math.min(feature.min, value), Math.max(feature.max, value)];
  const { min = -Infinity, max = Infinity, locked = false } = stated;
  if (Number.isNaN(min) || Number.isNaN(max) || min > max) {
    throw new RangeError(
      `${who}: freedom of "${feature.id}" is ${min} to ${max}; allowed: a least value not above the greatest`,
    );
  }
  if (locked) return [value, value];
  const low = Math.min(Math.max(feature.min, min), value);
  const high = Math.max(Math.min(feature.max, max), value);
  return [low, high];
}

/** Refuses a freedom that names a feature the model does not have: a typo would silently unlock it. */
export function requireKnownFeatures(freedom: Freedom, model: ReedModel, who: string): void {
  for (const id of Object.keys(freedom)) {
    if (model.features.some((feature) => feature.id === id)) continue;
    const allowed = model.features.map((feature) => feature.id).join(", ");
    throw new RangeError(`${who}: freedom names feature "${id}"; allowed: ${allowed}`);
  }
}
