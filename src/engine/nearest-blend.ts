import type { Blend } from "./blend.js";
import { requireFiniteTuple } from "./check.js";

/**
 * The point of the closed triangle nearest to `raw`: Euclidean projection onto the simplex.
 *
 * Domain  any three finite numbers, also huge ones and ones that do not sum to 1.
 * Error   a few units in the last place; a blend inside comes back as it is.
 * Throws  RangeError or TypeError for a number that is missing or not finite.
 * Source  sort-based projection: Held, Wolfe & Crowder (1974), Validation of subgradient
 *         optimization, Mathematical Programming 6 (cited from memory).
 *
 * @example nearestBlend([1.2, 0.3, -0.5]) → [0.95, 0.05, 0]
 */
export function nearestBlend(raw: Blend): Blend {
  requireFiniteTuple(raw, 3, "nearestBlend: raw");
  const [high, low, loud] = raw;
  const inside = high >= 0 && low >= 0 && loud >= 0;
  if (inside && Math.abs(high + low + loud - 1) <= 4 * Number.EPSILON) return [high, low, loud];
  // Adding one number to all three changes nothing, and a share more than 1 below the greatest is 0:
  // so take the greatest away and cut at −1, and nothing can overflow.
  const top = Math.max(high, low, loud);
  const shifted = raw.map((share) => Math.max(-1, share - top));
  const sorted = shifted.toSorted((a, b) => b - a);
  let threshold = 0;
  let sum = 0;
  for (let k = 0; k < 3; k += 1) {
    sum += sorted[k]!;
    const candidate = (sum - 1) / (k + 1);
    if (sorted[k]! > candidate) threshold = candidate;
  }
  return closed(shifted.map((share) => Math.max(0, share - threshold)));
}

/** Takes the rounding off the sum, so that projecting twice is projecting once. */
function closed(shares: readonly number[]): Blend {
  const sum = shares[0]! + shares[1]! + shares[2]!;
  return [shares[0]! / sum, shares[1]! / sum, shares[2]! / sum];
}
