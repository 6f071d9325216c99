import type { FeatureId } from "../engine/model.js";
import { readingsSummary } from "../reed/repeats.js";
import type { Moment } from "./moment.js";

/** Three or more readings of one place say more of the gauge than its usual error does. */
export function gaugeErrors(readings: Moment["readings"]): Record<FeatureId, number> {
  const errors: Record<FeatureId, number> = {};
  for (const [id, all] of Object.entries(readings)) {
    const { gaugeError } = readingsSummary(id, all);
    if (gaugeError !== undefined) errors[id] = gaugeError;
  }
  return errors;
}
