import type { Blend } from "./blend.js";
import { requireFinite, requireHolds, shown } from "./check.js";
import { nearestBlend } from "./nearest-blend.js";

/** Where qualities are stated: the corners, the middles of the edges, the centre, in this order. */
export const qualityPlaces = [
  "high",
  "low",
  "loud",
  "high-low",
  "low-loud",
  "loud-high",
  "centre",
] as const;

/** One of the seven places. */
export type QualityPlace = (typeof qualityPlaces)[number];

/** A number for each of the seven places, in their order: 0 poor, 10 excellent. */
export type SevenValues = readonly [
  high: number,
  low: number,
  loud: number,
  highLow: number,
  lowLoud: number,
  loudHigh: number,
  centre: number,
];

/** Something that a player hears or feels. */
export interface Quality {
  readonly id: string;
  readonly label: string;
  /** What it means, in one sentence. */
  readonly says: string;
  readonly values: SevenValues;
}

/** Somebody's judgement of what reeds sound and feel like over the triangle. */
export interface Qualities {
  readonly $comment?: string;
  readonly places: readonly QualityPlace[];
  readonly qualities: readonly Quality[];
}

/**
 * The six shape functions of the quadratic triangle and the cubic bubble.
 *
 * Shape   a blend → corner functions λ(2λ − 1), edge functions 4λλ' in the order of `qualityPlaces`, and 27λλ'λ''.
 * Domain  the whole plane; the first six sum to 1 everywhere, the bubble is 0 on the border and 1 at the centre.
 * Source  six-node triangle: Zienkiewicz & Taylor, The Finite Element Method, vol. 1 (from memory).
 *
 * @example triangleShapes([0.5, 0.5, 0]) → [0, 0, 0, 1, 0, 0, 0]
 */
export function triangleShapes([high, low, loud]: Blend): SevenValues {
  return [
    high * (2 * high - 1),
    low * (2 * low - 1),
    loud * (2 * loud - 1),
    4 * high * low,
    4 * low * loud,
    4 * loud * high,
    27 * high * low * loud,
  ];
}

/**
 * One quality at a place of the triangle: the smooth surface through its seven values.
 *
 * Shape   seven values, a blend → a number; contours of it can be drawn over the triangle.
 * Unit    that of the values, 0 poor … 10 excellent; between the places it may go a little beyond both.
 * Domain  every finite blend; outside the triangle the nearest place inside counts.
 * Error   the seven values and every quadratic come back to rounding (qualities.test.ts).
 * Throws  RangeError or TypeError for a number that is missing or not finite.
 *
 * @example qualityAt([9, 3, 4, 6.5, 3.5, 7, 6.5], [0, 0.5, 0.5]) → 3.5
 */
export function qualityAt(values: SevenValues, blend: Blend): number {
  requireSeven(values, "qualityAt: values");
  return surface(values, triangleShapes(nearestBlend(blend)));
}

/**
 * Every quality at a place of the triangle.
 *
 * Shape   qualities, a blend → one value a quality, in their order.
 * Unit    0 poor … 10 excellent.
 * Domain  every finite blend; outside the triangle the nearest place inside counts.
 * Throws  RangeError or TypeError for a number that is missing or not finite.
 *
 * @example qualitiesAt(bassoonQualities, [1, 0, 0])[0] → { id: "highEntries", value: 9 }
 */
export function qualitiesAt(
  qualities: Qualities,
  blend: Blend,
): { readonly id: string; readonly value: number }[] {
  requireHolds(qualities, "qualities", "qualitiesAt: qualities", "qualities from readQualities");
  const shapes = triangleShapes(nearestBlend(blend));
  return qualities.qualities.map(({ id, values }) => {
    requireSeven(values, `qualitiesAt: values of "${id}"`);
    return { id, value: surface(values, shapes) };
  });
}

/** The six-node triangle, and as much of the bubble as the value at the centre departs from it. */
function surface(values: SevenValues, shapes: SevenValues): number {
  let sum = 0;
  for (let node = 0; node < 6; node += 1) sum += values[node]! * shapes[node]!;
  const corners = values[0] + values[1] + values[2];
  const edges = values[3] + values[4] + values[5];
  // At the centre the corner functions are −1/9 and the edge functions 4/9.
  return sum + shapes[6] * (values[6] - (4 * edges - corners) / 9);
}

function requireSeven(values: unknown, name: string): void {
  if (!Array.isArray(values) || values.length !== qualityPlaces.length) {
    throw new TypeError(`${name} is ${shown(values)}; allowed: 7 finite numbers`);
  }
  values.forEach((value, index) => requireFinite(value, `${name}[${index}]`));
}
