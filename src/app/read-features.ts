import type { FeatureId, ReedModel } from "../engine/model.js";
import type { Bench } from "../reed/bench.js";
import type { Catalogue } from "../reed/catalogue.js";
import { readingWithUnit } from "../reed/reading-text.js";
import type { Reading } from "../reed/readings.js";
import type { Moment } from "./moment.js";

/** Whether a feature has been read: a value that a step should have made of it is no reading. */
export function isRead({ values, expected = [] }: Bench, feature: FeatureId): boolean {
  return values[feature] !== undefined && !expected.includes(feature);
}

/** The readings of a feature: singly, or its value as one reading of which nobody has said the place; none: not read. */
export function readingsOf({ bench, readings }: Moment, feature: FeatureId): readonly Reading[] {
  const value = bench.values[feature];
  if (value === undefined || !isRead(bench, feature)) return [];
  return readings[feature] ?? [{ place: "one", value }];
}

/** The features that have been read. */
export function readFeatures(bench: Bench): FeatureId[] {
  return Object.keys(bench.values).filter((id) => isRead(bench, id));
}

/** What a reading is likely to be: as a step should have made it, or as it was before something was done; empty: nobody knows. */
export function guessText(
  { bench, sheet }: Moment,
  model: ReedModel,
  id: FeatureId,
  text: Catalogue,
): string {
  const feature = model.features.find((one) => one.id === id)!;
  const shown = (value: number): string => readingWithUnit(feature, value, bench.unit, text, true);
  const { expected, before } = text.measure.step;
  const [now, earlier] = [bench.values[id], sheet?.before[id]];
  if (now !== undefined && !isRead(bench, id)) return expected(shown(now));
  return earlier === undefined ? "" : before(shown(earlier));
}
