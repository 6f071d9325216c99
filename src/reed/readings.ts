import type { FeatureId } from "../engine/model.js";
import { placesOf, type Place } from "./places.js";

/** One reading, and where it was taken: "one" where a feature has one place, or nobody has said which of several. */
export interface Reading {
  readonly place: Place;
  /** In the feature's own unit. */
  readonly value: number;
}

/** The single readings of each feature that was read. */
export type Readings = Readonly<Record<FeatureId, readonly Reading[]>>;

/** Single readings as a table lists them: without their places. */
export type ListedReadings = Readonly<Record<FeatureId, readonly number[]>>;

/** Fewer repeats say too little about their own scatter. */
const fewestRepeats = 3;

/**
 * Readings without places, as a table has them: taken in the order of the sheet where that reads each place equally
 * often; otherwise nobody has said which is which.
 *
 * @example inOrder("heart", [0.45, 0.46]) → [{ place: "frontBlade", value: 0.45 }, { place: "backBlade", value: 0.46 }]
 */
export function inOrder(feature: FeatureId, values: readonly number[]): Reading[] {
  const places = placesOf(feature);
  const known = values.length % places.length === 0;
  return values.map((value, i) => ({ place: known ? places[i % places.length]! : "one", value }));
}

/** Every feature's readings, each with its place. */
export function placedReadings(listed: ListedReadings): Readings {
  return Object.fromEntries(Object.entries(listed).map(([id, all]) => [id, inOrder(id, all)]));
}

/** The readings of each place, in the order in which the places were first read. */
export function byPlace(readings: readonly Reading[]): ReadonlyMap<Place, readonly number[]> {
  const all = new Map<Place, number[]>();
  for (const { place, value } of readings) all.set(place, [...(all.get(place) ?? []), value]);
  return all;
}

/**
 * What several readings of a feature come to: the mean over its places of the mean of each, so that a place that was
 * read more often does not count for more.
 *
 * Unit    the feature's own.
 * Throws  RangeError if there is no reading, or one is not a finite number.
 *
 * @example meanReading("throatWidth", [{ place: "one", value: 8 }, { place: "one", value: 9 }]) → 8.5
 */
export function meanReading(feature: FeatureId, readings: readonly Reading[]): number {
  const values = readings.map(({ value }) => value);
  if (values.length === 0 || !values.every(Number.isFinite)) {
    throw new RangeError(
      `meanReading: ${feature} reads [${values.join(", ")}], must be one finite number or more`,
    );
  }
  return mean([...byPlace(readings).values()].map(mean));
}

/**
 * How sure repeats make the mean of a feature: from the scatter within each place, never from the differences between
 * places, and from what the gauge cannot show.
 *
 * Shape   a feature with the step of its gauge, its readings → 1 standard deviation of the mean; undefined unless every
 *         place was read three times or more: then the gauge's usual error holds.
 * Unit    the feature's own.
 * Source  JCGM 100:2008, 4.2.3: s²/n with s over n − 1; F.2.2.1: steps of δ add δ²/12; 5.1.2: the mean of P places has
 *         the sum of their variances over P².
 *
 * @example repeatsError({ id: "throatWidth", step: 0 }, inOrder("throatWidth", [8, 9, 10])) → 0.5773502691896258
 */
export function repeatsError(
  { id, step }: { readonly id: FeatureId; readonly step: number },
  readings: readonly Reading[],
): number | undefined {
  const read = byPlace(readings);
  const places = placesOf(id).map((place) => read.get(place) ?? []);
  // A reading of which nobody has said the place may be of any of them.
  if (read.size !== places.length) return undefined;
  if (places.some((all) => all.length < fewestRepeats)) return undefined;
  const variances = places.map((all) => {
    const squares = all.map((one) => (one - mean(all)) ** 2);
    return sum(squares) / (all.length - 1) / all.length + step ** 2 / 12;
  });
  return Math.sqrt(sum(variances)) / places.length;
}

/** The place that is to be read next: the first of those that were read least often. */
export function nextPlace(feature: FeatureId, readings: readonly Reading[]): Place {
  const places = placesOf(feature);
  const read = byPlace(readings);
  const times = (place: Place): number => read.get(place)?.length ?? 0;
  return places.reduce((least, place) => (times(place) < times(least) ? place : least));
}

/** Whether every place of a feature has been read; a reading of which nobody has said the place stands for all of them. */
export function isEveryPlaceRead(feature: FeatureId, readings: readonly Reading[]): boolean {
  const read = byPlace(readings);
  return read.has("one") || placesOf(feature).every((place) => read.has(place));
}

const sum = (all: readonly number[]): number => all.reduce((total, one) => total + one, 0);

const mean = (all: readonly number[]): number => sum(all) / all.length;
