import type { Blend } from "./blend.js";
import { requireFiniteTuple } from "./check.js";

/** Two log-ratio coordinates of a blend whose shares are all above 0. */
export type LogRatio = readonly [z1: number, z2: number];

/** The coordinates in words. */
export const logRatioBasis = "z1 = ln(x1/x2)/√2, z2 = √(2/3) ln(√(x1 x2)/x3)";

const perRatio = 1 / Math.SQRT2;
const perMean = Math.sqrt(2 / 3);

/**
 * Isometric log-ratio coordinates of a blend, in which distances are Aitchison's.
 *
 * Domain  three shares above 0; their sum does not matter.
 * Throws  RangeError for a share that is not above 0.
 * Source  Egozcue et al. (2003), Isometric logratio transformations, Mathematical Geology 35 (from memory).
 *
 * @example blendToLogRatio([0.25, 0.25, 0.5])[0] → 0
 */
export function blendToLogRatio(blend: Blend): LogRatio {
  requireFiniteTuple(blend, 3, "blendToLogRatio: blend");
  if (!blend.every((share) => share > 0)) {
    throw new RangeError(
      `blendToLogRatio: blend is ${blend.join(", ")}; allowed: three shares above 0`,
    );
  }
  const [first, second, third] = blend.map(Math.log) as unknown as Blend;
  return [perRatio * (first - second), perMean * ((first + second) / 2 - third)];
}

/**
 * The inverse of `blendToLogRatio`; the shares sum to 1.
 *
 * Domain  any two finite numbers; far from 0 a share may round to 0.
 *
 * @example logRatioToBlend([0, 0]) → about [⅓, ⅓, ⅓]
 */
export function logRatioToBlend(coordinates: LogRatio): Blend {
  requireFiniteTuple(coordinates, 2, "logRatioToBlend: coordinates");
  const [z1, z2] = coordinates;
  const first = perRatio * z1 + z2 / Math.sqrt(6);
  const second = -perRatio * z1 + z2 / Math.sqrt(6);
  const third = -perMean * z2;
  const top = Math.max(first, second, third);
  const [a, b, c] = [Math.exp(first - top), Math.exp(second - top), Math.exp(third - top)];
  const sum = a + b + c;
  return [a / sum, b / sum, c / sum];
}
