import { requireFinite, requireFiniteTuple } from "./check.js";

/** Three shares in the order high, low, loud; they sum to 1, and one is negative outside the triangle. */
export type Blend = readonly [high: number, low: number, loud: number];

/** Where the all-round reed lies. */
export const centreBlend: Blend = [1 / 3, 1 / 3, 1 / 3];

/** Distance between two blends in share space; divide by √2 for sides of the triangle. */
export function blendDistance(a: Blend, b: Blend): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}

/**
 * The blend with one share set, the other two sharing the rest in proportion to what they were
 * (equally where both were 0), so that the sum stays 1.
 *
 * Domain  share is cut to 0…1; the others count as at least 0.
 * Throws  RangeError for a number that is not finite.
 *
 * @example withShare([0.5, 0.25, 0.25], 0, 0.6) → [0.6, 0.2, 0.2]
 */
export function withShare(blend: Blend, index: 0 | 1 | 2, share: number): Blend {
  requireFiniteTuple(blend, 3, "withShare: blend");
  requireFinite(share, "withShare: share");
  const set = Math.min(1, Math.max(0, share));
  const others = blend.map((value, k) => (k === index ? 0 : Math.max(0, value)));
  const sum = others[0]! + others[1]! + others[2]!;
  const rest = (k: number): number => (1 - set) * (sum > 0 ? others[k]! / sum : 0.5);
  return [0, 1, 2].map((k) => (k === index ? set : rest(k))) as unknown as Blend;
}
