import { cross, dot, type Vector } from "./plane.js";

/** One side of a sum of segments: the segments that are parallel to it, and their sum. */
export interface Side {
  /** Indices of the segments, and whether each runs with the side's direction (+1) or against it (−1). */
  readonly members: readonly { readonly index: number; readonly sense: 1 | -1 }[];
  readonly vector: Vector;
}

/**
 * The Minkowski sum of segments from the origin: a convex polygon, symmetric about its middle.
 * Its corners run counter-clockwise from the lowest one, first along `sides` in order, then back.
 */
export interface Zonotope {
  readonly corners: readonly Vector[];
  readonly sides: readonly Side[];
}

/** Two directions closer than this (sine) are one: rounding must not make slivers. */
const parallel = 1e-12;

/**
 * Sums segments [0, 1]·g by turning them into the upper half plane and sorting them by angle.
 *
 * Shape   n vectors → at most 2n corners; 2 when all are parallel, 1 when all are 0.
 * Source  Minkowski addition of convex polygons by merging edges in order of angle (de Berg et al.,
 *         Computational Geometry, 3rd ed., section 13.3; from memory).
 */
export function sumSegments(start: Vector, segments: readonly Vector[]): Zonotope {
  const sides = mergeParallel(sortByAngle(segments));
  let [x, y] = start;
  for (const { members } of sides) {
    // A segment that was turned round begins at its other end.
    for (const { index, sense } of members) {
      if (sense < 0) {
        x += segments[index]![0];
        y += segments[index]![1];
      }
    }
  }
  const corners: Vector[] = [[x, y]];
  const walk = (sign: 1 | -1): void => {
    for (const { vector } of sides) {
      x += sign * vector[0];
      y += sign * vector[1];
      corners.push([x, y]);
    }
  };
  walk(1);
  if (sides.length > 1) walk(-1);
  if (sides.length > 1) corners.pop(); // the walk has come back to its first corner
  return { corners, sides };
}

/** +1: after turning, every side's vector points into the upper half plane, or right along its border. */
function upward([x, y]: Vector): 1 | -1 {
  return y > 0 || (y === 0 && x > 0) ? 1 : -1;
}

function sortByAngle(
  segments: readonly Vector[],
): { index: number; sense: 1 | -1; vector: Vector }[] {
  const longest = segments.reduce((most, g) => Math.max(most, Math.abs(g[0]), Math.abs(g[1])), 0);
  const turned: { index: number; sense: 1 | -1; vector: Vector; angle: number }[] = [];
  segments.forEach((g, index) => {
    if (Math.max(Math.abs(g[0]), Math.abs(g[1])) <= 1e-15 * longest) return;
    const sense = upward(g);
    const vector: Vector = [sense * g[0], sense * g[1]];
    turned.push({ index, sense, vector, angle: Math.atan2(vector[1], vector[0]) });
  });
  return turned.sort((a, b) => a.angle - b.angle);
}

function mergeParallel(
  sorted: readonly { index: number; sense: 1 | -1; vector: Vector }[],
): Side[] {
  const sides: { members: { index: number; sense: 1 | -1 }[]; vector: Vector }[] = [];
  for (const { index, sense, vector } of sorted) {
    const last = sides.at(-1);
    if (last && isParallel(last.vector, vector)) {
      last.members.push({ index, sense });
      last.vector = [last.vector[0] + vector[0], last.vector[1] + vector[1]];
    } else {
      sides.push({ members: [{ index, sense }], vector });
    }
  }
  return joinFirstAndLast(sides);
}

/** Directions just above 0 and just below π are parallel too. */
function joinFirstAndLast(
  sides: { members: { index: number; sense: 1 | -1 }[]; vector: Vector }[],
): Side[] {
  const first = sides[0];
  const last = sides.at(-1);
  if (sides.length < 2 || !first || !last || !isParallel(first.vector, last.vector)) return sides;
  const against = last.members.map(({ index, sense }) => ({ index, sense: -sense as 1 | -1 }));
  first.members.push(...against);
  first.vector = [first.vector[0] - last.vector[0], first.vector[1] - last.vector[1]];
  sides.pop();
  return sides;
}

function isParallel(a: Vector, b: Vector): boolean {
  const size = Math.sqrt(dot(a, a) * dot(b, b));
  return Math.abs(cross(a, b)) <= parallel * size;
}
