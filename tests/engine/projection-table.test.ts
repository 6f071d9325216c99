import { describe, expect, test } from "vitest";
import {
  blendToPoint,
  nearestBlend,
  pointToBlend,
  type Blend,
  type Frame,
  type Point,
} from "../../src/lib/engine.js";
import { projections, squaredDistance } from "../tables/triangle-geometry.js";
import { between, seeded } from "./random-model.js";

const equilateral = (side: number): Frame => [
  [side / 2, (side * Math.sqrt(3)) / 2],
  [0, 0],
  [side, 0],
];

function doubleArea([ax, ay]: Point, [bx, by]: Point, [cx, cy]: Point): number {
  return (bx - ax) * (cy - ay) - (cx - ax) * (by - ay);
}

// Shares below 2 in size and three additions: a handful of units in the last place.
const rounding = 1e-15;

describe("nearest blend", () => {
  test.each(projections)("of %j is %j", (raw, nearest) => {
    nearestBlend(raw).forEach((share, k) => {
      expect(Math.abs(share - (nearest[k] ?? NaN))).toBeLessThanOrEqual(rounding);
    });
  });

  test("is the nearest point of the equilateral drawing: nothing on a fine grid is nearer", () => {
    const frame = equilateral(1);
    const away = (a: Blend, b: Blend): number => {
      const [[ax, ay], [bx, by]] = [blendToPoint(a, frame), blendToPoint(b, frame)];
      return Math.hypot(ax - bx, ay - by);
    };
    for (const [raw] of projections) {
      const nearest = away(raw, nearestBlend(raw));
      for (let i = 0; i <= 60; i += 1) {
        for (let j = 0; j <= 60 - i; j += 1) {
          const other: Blend = [i / 60, j / 60, (60 - i - j) / 60];
          expect(away(raw, other)).toBeGreaterThanOrEqual(nearest - rounding);
        }
      }
    }
  });
});

test("two blends lie as far apart in the drawing as the formula says", () => {
  const { from, to, side, squared } = squaredDistance;
  const [[ax, ay], [bx, by]] = [
    blendToPoint(from, equilateral(side)),
    blendToPoint(to, equilateral(side)),
  ];
  expect((ax - bx) ** 2 + (ay - by) ** 2).toBeCloseTo(squared, 14);
});

describe("Viviani: a share is the signed distance to the opposite side by the height", () => {
  const seed = 1660;
  const random = seeded(seed);
  const points = Array.from({ length: 200 }, (): Point => [
    between(random, -20, 30),
    between(random, -20, 30),
  ]);

  // Heights of about 8 and points up to 30 away: shares up to 5, so 1e-13 is far above rounding.
  test.each([
    ["equilateral", equilateral(10)],
    [
      "the other winding",
      [
        [0, 0],
        [5, 8],
        [10, 0],
      ] as Frame,
    ],
  ])("in the %s frame, inside and outside", (_name, frame) => {
    const [high, low, loud] = frame;
    const turn = Math.sign(doubleArea(high, low, loud));
    const heightOver = (a: Point, b: Point, point: Point): number =>
      (turn * doubleArea(point, a, b)) / Math.hypot(b[0] - a[0], b[1] - a[1]);
    for (const point of points) {
      const shares = pointToBlend(point, frame);
      const expected = [
        heightOver(low, loud, point) / heightOver(low, loud, high),
        heightOver(loud, high, point) / heightOver(loud, high, low),
        heightOver(high, low, point) / heightOver(high, low, loud),
      ];
      expected.forEach((share, k) => expect(shares[k]).toBeCloseTo(share, 12));
      expect(shares[0] + shares[1] + shares[2]).toBeCloseTo(1, 13);
    }
  });
});
