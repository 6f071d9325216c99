import type { FeatureId, ReedModel } from "../engine/model.js";
import { repeatsError, type Readings } from "../reed/readings.js";

/** Readings that were repeated often enough say more of the gauge than its usual error does. */
export function gaugeErrors(model: ReedModel, readings: Readings): Record<FeatureId, number> {
  const errors: Record<FeatureId, number> = {};
  for (const feature of model.features) {
    const error = repeatsError(feature, readings[feature.id] ?? []);
    if (error !== undefined) errors[feature.id] = error;
  }
  return errors;
}
