import type { Blend } from "./blend.js";
import { requireFinite, requireFiniteTuple, requireRows, shown } from "./check.js";

/** A place in a drawing, in any one length unit. */
export type Point = readonly [x: number, y: number];

/** The three corners of a drawn triangle, in the order of a blend; any winding, any shape. */
export type Frame = readonly [high: Point, low: Point, loud: Point];

/** Twice the signed area of a triangle; positive when a, b, c run counter-clockwise with y up. */
export function doubleArea(a: Point, b: Point, c: Point): number {
  return (b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1]);
}

function requireFrame(frame: Frame, who: string): void {
  if (!Array.isArray(frame) || frame.length !== 3) {
    throw new TypeError(`${who}: frame is ${shown(frame)}; allowed: three points`);
  }
  for (let k = 0; k < 3; k += 1) requireFiniteTuple(frame[k], 2, `${who}: frame[${k}]`);
}

/**
 * The point of a drawing at which a blend lies.
 *
 * Shape   one blend, one frame → one point.
 * Unit    dimensionless → the frame's length unit.
 * Domain  every finite blend; shares outside 0…1 lie outside the triangle.
 * Error   exact at the corners; a few units in the last place elsewhere.
 * Throws  RangeError or TypeError for a number that is missing or not finite.
 *
 * @example blendToPoint([0.5, 0.25, 0.25], [[0, 0], [4, 0], [0, 4]]) → [1, 1]
 */
export function blendToPoint(blend: Blend, frame: Frame): Point {
  requireFiniteTuple(blend, 3, "blendToPoint: blend");
  requireFrame(frame, "blendToPoint");
  const [high, low, loud] = frame;
  const x = blend[0] * high[0] + blend[1] * low[0] + blend[2] * loud[0];
  const y = blend[0] * high[1] + blend[1] * low[1] + blend[2] * loud[1];
  if (Number.isFinite(x + y)) return [x, y];
  throw new RangeError(
    `blendToPoint: blend ${blend.join(", ")} is too large for this frame; allowed: a place that can be computed`,
  );
}

/**
 * The blend at a point of the drawing: its barycentric coordinates, unclamped.
 *
 * Shape   one point, one frame → three shares in the order high, low, loud.
 * Unit    any one length unit → dimensionless.
 * Domain  the whole plane; a negative share says that the point lies beyond the opposite side.
 * Error   at most 1e-12 per share for a frame no flatter than 1 : 100 (measured in frame.test.ts).
 * Throws  RangeError if the corners lie on one line, or a number is not finite.
 *
 * @example pointToBlend([1, 1], [[0, 0], [4, 0], [0, 4]]) → [0.5, 0.25, 0.25]
 */
export function pointToBlend(point: Point, frame: Frame): Blend {
  requireFiniteTuple(point, 2, "pointToBlend: point");
  requireFrame(frame, "pointToBlend");
  // In units of the longest side, seen from one corner, no size of frame can overflow or vanish.
  const [high, low, loud] = frame;
  const longest = Math.max(sideLength(high, low), sideLength(low, loud), sideLength(loud, high));
  const seen = ([x, y]: Point): Point => [(x - low[0]) / longest, (y - low[1]) / longest];
  const corners = [seen(high), [0, 0], seen(loud)] as const;
  const whole = doubleArea(...corners);
  // A frame that is flat but for rounding has no inverse either: its area is noise.
  if (!(Math.abs(whole) > 1e-12)) {
    const told = frame.map((corner) => corner.join(", ")).join("; ");
    throw new RangeError(`pointToBlend: the frame is flat, its corners ${told} lie on one line`);
  }
  const at = seen(point);
  const a = doubleArea(at, corners[1], corners[2]) / whole;
  const b = doubleArea(corners[0], at, corners[2]) / whole;
  const blend: Blend = [a, b, 1 - a - b];
  if (blend.every(Number.isFinite)) return blend;
  throw new RangeError(
    `pointToBlend: point ${point.join(", ")} is too far from the frame; allowed: a place that can be computed`,
  );
}

function sideLength(a: Point, b: Point): number {
  return Math.hypot(b[0] - a[0], b[1] - a[1]);
}

/**
 * Many blends to points at once.
 *
 * Shape   n rows of 3 shares → n rows of x, y; written into `out` where it is given.
 * Unit    dimensionless → the frame's length unit.
 * Throws  RangeError when a length does not fit or a share is not finite (the row is named); `out` then holds
 *         what was computed so far.
 *
 * @example blendsToPoints(new Float64Array([1, 0, 0]), [[0, 0], [4, 0], [0, 4]]) → Float64Array [0, 0]
 */
export function blendsToPoints(
  shares: Float64Array,
  frame: Frame,
  out: Float64Array = new Float64Array(Math.ceil((shares?.length ?? 0) / 3) * 2),
): Float64Array {
  requireRows(shares, "blendsToPoints: shares");
  requireRows(out, "blendsToPoints: out");
  requireFrame(frame, "blendsToPoints");
  const count = shares.length / 3;
  if (!Number.isInteger(count)) {
    throw new RangeError(`blendsToPoints: shares has ${shares.length} numbers; allowed: rows of 3`);
  }
  if (out.length < count * 2) {
    throw new RangeError(
      `blendsToPoints: out has ${out.length} numbers; allowed: at least ${count * 2}`,
    );
  }
  const [[hx, hy], [lx, ly], [fx, fy]] = frame;
  let alarm = 0; // stays 0 until a share is infinite or NaN: one multiplication a row instead of three tests
  for (let row = 0, from = 0, to = 0; row < count; row += 1, from += 3, to += 2) {
    const high = shares[from]!;
    const low = shares[from + 1]!;
    const loud = shares[from + 2]!;
    alarm += (high + low + loud) * 0;
    out[to] = high * hx + low * lx + loud * fx;
    out[to + 1] = high * hy + low * ly + loud * fy;
  }
  if (alarm !== 0) reportShare(shares);
  return out;
}

function reportShare(shares: Float64Array): void {
  for (let i = 0; i < shares.length; i += 1) {
    requireFinite(shares[i], `blendsToPoints: shares, row ${Math.floor(i / 3)}, column ${i % 3}`);
  }
}
