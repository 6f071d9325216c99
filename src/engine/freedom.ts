import { requireKeyed, requireReadable, shown } from "./check.js";
import { requireModel } from "./compile.js";
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
  requireModel(model, "finishingFreedom");
  requireKeyed(values, "finishingFreedom: values");
  const freedom: Record<string, FeatureFreedom> = {};
  for (const feature of model.features) {
    const value = values[feature.id];
    if (value === undefined) continue;
    requireReadable(value, `finishingFreedom: feature "${feature.id}"`);
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
 */
export function limitsOf(
  feature: Feature,
  value: number,
  stated: FeatureFreedom | undefined,
): readonly [low: number, high: number] {
  if (!stated) return [Math.min(feature.min, value), Math.max(feature.max, value)];
  const { min = -Infinity, max = Infinity, locked = false } = stated;
  if (locked) return [value, value];
  const low = Math.min(Math.max(feature.min, min), value);
  const high = Math.max(Math.min(feature.max, max), value);
  return [low, high];
}

/**
 * Refuses a freedom that names a feature the model does not have, a key that does not exist (a typo would silently
 * unlock it), a limit that is no number, or a least value above the greatest. Infinite limits state nothing.
 */
export function requireFreedom(freedom: Freedom, model: ReedModel, who: string): void {
  requireKeyed(freedom, `${who}: freedom`);
  for (const [id, stated] of Object.entries(freedom)) {
    if (!model.features.some((feature) => feature.id === id)) {
      const allowed = model.features.map((feature) => feature.id).join(", ");
      throw new RangeError(`${who}: freedom names feature "${id}"; allowed: ${allowed}`);
    }
    requireLimits(stated, `${who}: freedom.${id}`);
  }
}

function requireLimits(stated: unknown, name: string): void {
  requireKeyed(stated, name);
  for (const [key, value] of Object.entries(stated as Readonly<Record<string, unknown>>)) {
    if (key === "locked") {
      if (value === undefined || typeof value === "boolean") continue;
      throw new TypeError(`${name}.locked is ${shown(value)}; allowed: true or false`);
    }
    if (key !== "min" && key !== "max") {
      throw new RangeError(`${name} has "${key}"; allowed: min, max, locked`);
    }
    if (value !== undefined && (typeof value !== "number" || Number.isNaN(value))) {
      throw new TypeError(`${name}.${key} is ${shown(value)}; allowed: a number`);
    }
  }
  const { min = -Infinity, max = Infinity } = stated as FeatureFreedom;
  if (min <= max) return;
  throw new RangeError(
    `${name} is ${min} to ${max}; allowed: a least value not above the greatest`,
  );
}
