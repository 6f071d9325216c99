import type { FeatureId } from "../engine/model.js";
import { placesOf } from "./uneven.js";

/** Fewer repeats say too little about their own scatter. */
const fewestRepeats = 3;

/** What several readings of a feature come to. */
export interface ReadingsSummary {
  readonly mean: number;
  /** 1 standard deviation of the mean, where the readings are repeats and enough of them. */
  readonly gaugeError?: number;
}

/**
 * The mean of the readings of a feature, and how sure repeats make it.
 *
 * The four readings of wings and rails are four places, not repeats: their scatter is unevenness.
 *
 * Shape   a feature, its single readings → their mean and, from three repeats on, its standard error.
 * Unit    the feature's unit.
 * Throws  RangeError if there is no reading, or one is not a finite number.
 * Source  standard error of a mean, s/√n with s over n − 1: JCGM 100:2008, 4.2.
 *
 * @example readingsSummary("throatWidth", [8, 9, 10]) → { mean: 9, gaugeError: 0.5773502691896258 }
 */
export function readingsSummary(feature: FeatureId, readings: readonly number[]): ReadingsSummary {
  const count = readings.length;
  if (count === 0 || !readings.every(Number.isFinite)) {
    throw new RangeError(
      `readingsSummary: ${feature} reads [${readings.join(", ")}], must be one finite number or more`,
    );
  }
  const mean = readings.reduce((sum, reading) => sum + reading, 0) / count;
  if (count < fewestRepeats || placesOf(feature) === "quarters") return { mean };
  const squares = readings.reduce((sum, reading) => sum + (reading - mean) ** 2, 0);
  return { mean, gaugeError: Math.sqrt(squares / (count - 1) / count) };
}
