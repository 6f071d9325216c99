import type { Blend } from "../engine/blend.js";
import { blendDistance } from "../engine/blend.js";

/**
 * The place at a share of a way, measured along it.
 *
 * Shape   places in order, share of the whole length (0…1) → a place.
 * Throws  RangeError for a way without places.
 *
 * @example alongWay([[1, 0, 0], [0, 1, 0]], 0.5) → [0.5, 0.5, 0]
 */
export function alongWay(way: readonly Blend[], share: number): Blend {
  const last = way.at(-1);
  if (!last) throw new RangeError("alongWay: a way needs at least one place");
  const lengths = way.slice(1).map((to, i) => blendDistance(way[i]!, to));
  let left = Math.max(0, share) * lengths.reduce((sum, length) => sum + length, 0);
  for (const [i, length] of lengths.entries()) {
    if (left < length) {
      const part = left / length;
      return way[i]!.map((from, k) => from + part * (way[i + 1]![k]! - from)) as unknown as Blend;
    }
    left -= length;
  }
  return last;
}
