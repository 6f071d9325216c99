import type { Point } from "../engine/frame.js";

/** Shorter arrows than this, in distances of their numbers, get none: it would hide them. */
const shortest = 1.3;
/** Numbers nearer to one before them than this, in the same, are left out. */
const leastApart = 1.3;

/**
 * Where the numbers of arrows laid head to tail stand: beside the middle of each, on the side away from the others.
 *
 * Unit    px.
 *
 * @example stepNumbers([[[0, 0], [100, 0]]], 10) → [[50, -10]]
 */
export function stepNumbers(
  arrows: readonly (readonly [from: Point, to: Point])[],
  distance: number,
): (Point | undefined)[] {
  const middles = arrows.map(([from, to]): Point => [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2]);
  const sum = middles.reduce((all, [x, y]): Point => [all[0] + x, all[1] + y], [0, 0] as Point);
  const kept: Point[] = [];
  return arrows.map(([from, to], i) => {
    const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
    const length = Math.hypot(dx, dy);
    if (length < shortest * distance) return undefined;
    const [x, y] = middles[i]!;
    const normal: Point = [dy / length, -dx / length];
    const others: Point = [
      (sum[0] - x) / Math.max(1, arrows.length - 1) - x,
      (sum[1] - y) / Math.max(1, arrows.length - 1) - y,
    ];
    const isToward = arrows.length > 1 && normal[0] * others[0] + normal[1] * others[1] > 0;
    const side = isToward ? -distance : distance;
    const at: Point = [x + side * normal[0], y + side * normal[1]];
    const isFree = kept.every(([a, b]) => Math.hypot(a - at[0], b - at[1]) > leastApart * distance);
    if (!isFree) return undefined;
    kept.push(at);
    return at;
  });
}
