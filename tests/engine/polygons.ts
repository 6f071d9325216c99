import { blendToPoint, type Blend, type Frame, type Point } from "../../src/lib/engine.js";

/** The equilateral drawing of side 1, y up. */
const unit: Frame = [
  [0.5, Math.sqrt(3) / 2],
  [0, 0],
  [1, 0],
];

export const triangleArea = Math.sqrt(3) / 4;

export function toPoints(polygon: readonly Blend[]): Point[] {
  return polygon.map((blend) => blendToPoint(blend, unit));
}

const cross = (a: Point, b: Point, c: Point): number =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

/** Positive when the corners run counter-clockwise. */
export function signedArea(polygon: readonly Point[]): number {
  const first = polygon[0];
  if (!first) return 0;
  const at = (i: number): Point => polygon[i % polygon.length] ?? first;
  return polygon.reduce((sum, corner, i) => sum + cross(first, corner, at(i + 1)) / 2, 0);
}

/** How far a point lies inside a convex polygon that runs counter-clockwise; negative outside. */
export function depthInside(polygon: readonly Point[], point: Point): number {
  const depths = polygon.map((a, i) => {
    const b = polygon[(i + 1) % polygon.length] ?? a;
    return cross(a, b, point) / Math.hypot(b[0] - a[0], b[1] - a[1]);
  });
  return Math.min(...depths);
}

/** The part of a convex polygon inside the triangle: Sutherland and Hodgman (1974), Comm. ACM 17. */
export function clippedToTriangle(polygon: readonly Point[]): Point[] {
  const [high, low, loud] = unit;
  const sides: readonly (readonly [Point, Point])[] = [
    [low, loud],
    [loud, high],
    [high, low],
  ];
  return sides.reduce<Point[]>((kept, [a, b]) => clippedBySide(kept, a, b), [...polygon]);
}

function clippedBySide(polygon: readonly Point[], a: Point, b: Point): Point[] {
  return polygon.flatMap((from, i) => {
    const to = polygon[(i + 1) % polygon.length] ?? from;
    const [here, there] = [cross(a, b, from), cross(a, b, to)];
    const t = here / (here - there);
    const crossing: Point = [from[0] + t * (to[0] - from[0]), from[1] + t * (to[1] - from[1])];
    const kept = here >= 0 ? [from] : [];
    return here * there < 0 ? [...kept, crossing] : kept;
  });
}
