import type { Point } from "../../src/engine/frame.js";

/** The corners of a path of straight lines. */
export function pathPoints(path: string): Point[] {
  return [...path.matchAll(/[ML](-?[\d.]+),(-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);
}
