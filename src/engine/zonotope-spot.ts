import { cross, dot, type Vector } from "./plane.js";
import type { Zonotope } from "./zonotope.js";

/** The place of a zonotope's border nearest to a point, and where every segment stands there. */
export interface ZonotopeSpot {
  readonly point: Vector;
  /** Distance of the asked point inside the border; negative outside. */
  readonly depth: number;
  /** Segments that stand at one of their ends. */
  readonly settled: readonly { readonly index: number; readonly end: "low" | "high" }[];
  /** Segments parallel to the side: they may stand anywhere that adds up to the point. */
  readonly sliding: readonly number[];
  readonly direction: Vector;
}

/**
 * The nearest place on the border, read together with the segments' ends: side k of the walk up has the
 * segments before it at their far end and those after it at their near end; the walk back is the mirror.
 *
 * Shape   a zonotope, a point → a spot. A zonotope of one corner has neither settled nor sliding segments.
 */
export function nearestOnZonotope({ corners, sides }: Zonotope, asked: Vector): ZonotopeSpot {
  const first = corners[0]!;
  if (sides.length === 0) {
    const depth = -distance(asked, first);
    return { point: first, depth, settled: [], sliding: [], direction: [0, 0] };
  }
  const count = sides.length;
  const edges = count === 1 ? 1 : 2 * count;
  let best = { edge: 0, point: first, distance: Infinity };
  let inside = edges > 1;
  for (let edge = 0; edge < edges; edge += 1) {
    const from = corners[edge]!;
    const to = corners[(edge + 1) % corners.length]!;
    const point = nearestOnSegment(from, to, asked);
    const gap = distance(point, asked);
    if (gap < best.distance) best = { edge, point, distance: gap };
    inside &&=
      cross([to[0] - from[0], to[1] - from[1]], [asked[0] - from[0], asked[1] - from[1]]) >= 0;
  }
  const side = best.edge % count;
  const back = best.edge >= count;
  const settled = sides.flatMap(({ members }, i) =>
    i === side
      ? []
      : members.map(({ index, sense }) => {
          const far = i < side !== back;
          return { index, end: far === sense > 0 ? ("high" as const) : ("low" as const) };
        }),
  );
  return {
    point: best.point,
    depth: inside ? best.distance : -best.distance,
    settled,
    sliding: sides[side]!.members.map(({ index }) => index),
    direction: sides[side]!.vector,
  };
}

function nearestOnSegment(from: Vector, to: Vector, asked: Vector): Vector {
  const way: Vector = [to[0] - from[0], to[1] - from[1]];
  const share = dot([asked[0] - from[0], asked[1] - from[1]], way) / dot(way, way);
  const cut = Math.min(1, Math.max(0, share));
  return [from[0] + cut * way[0], from[1] + cut * way[1]];
}

function distance(a: Vector, b: Vector): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}
