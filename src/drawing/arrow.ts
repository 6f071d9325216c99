import type { Point } from "../engine/frame.js";
import { round } from "./triangle-layout.js";

/** A shaft and a head, as two path strings. */
export interface Arrow {
  readonly shaft: string;
  readonly head: string;
}

/**
 * An arrow from one point to another; undefined when it is too short to have a direction on screen.
 *
 * Unit    px. The head is at most half the arrow.
 */
export function arrow(from: Point, to: Point, headLength: number): Arrow | undefined {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.hypot(dx, dy);
  if (length < 0.75) return undefined;
  const [ux, uy] = [dx / length, dy / length];
  const head = Math.min(headLength, length);
  const half = head * 0.45;
  const neck: Point = [to[0] - head * ux, to[1] - head * uy];
  const left: Point = [neck[0] - half * uy, neck[1] + half * ux];
  const right: Point = [neck[0] + half * uy, neck[1] - half * ux];
  return {
    shaft: `M${pair(from)}L${pair(neck)}`,
    head: `M${pair(to)}L${pair(left)}L${pair(right)}Z`,
  };
}

function pair([x, y]: Point): string {
  return `${round(x)},${round(y)}`;
}
