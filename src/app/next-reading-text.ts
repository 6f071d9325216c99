import { mostUsefulReading } from "../engine/next-reading.js";
import type { Catalogue } from "../reed/catalogue.js";
import type { BenchState } from "./bench-state.js";
import { gaugeErrors } from "./gauge-errors.js";
import { readFeatures } from "./read-features.js";

/** The reading that would tighten the place most, as a sentence; that all are taken, when they are. */
export function nextReadingText({ model, present }: BenchState, text: Catalogue): string {
  const words = text.measure.summary;
  const gaugeError = gaugeErrors(model, present.readings);
  const next = mostUsefulReading(model, readFeatures(present.bench), { gaugeError });
  if (!next) return words.complete;
  const { label } = model.features.find(({ id }) => id === next.feature)!;
  return `${next.area === Infinity ? `${words.more} ` : ""}${words.suggestion(label)}`;
}
