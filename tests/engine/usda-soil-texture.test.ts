import { describe, expect, test } from "vitest";
import {
  blendToPoint,
  pointToBlend,
  type Blend,
  type Frame,
  type Point,
} from "../../src/lib/engine.js";
import {
  textureAreas,
  textureExamples,
  texturePolygons,
  textureRules,
} from "../tables/usda-soil-texture.js";

// Both windings, a scalene, a flat and a far-off one: a mixed-up corner or sign shows in at least one of them.
const frames: readonly (readonly [name: string, frame: Frame])[] = [
  [
    "equilateral",
    [
      [0, 0],
      [1, 0],
      [0.5, Math.sqrt(3) / 2],
    ],
  ],
  [
    "screen, y down",
    [
      [320, 40],
      [20, 560],
      [620, 560],
    ],
  ],
  [
    "scalene",
    [
      [-3, 7],
      [11, -2],
      [4, 13],
    ],
  ],
  [
    "flat and far off",
    [
      [1000, 1000],
      [1400, 1003],
      [1200, 1010],
    ],
  ],
];

const names = Object.keys(texturePolygons);
const percents = (sand: number, silt: number, clay: number): Blend => [
  sand / 100,
  silt / 100,
  clay / 100,
];

function polygonIn(frame: Frame, name: string): Point[] {
  return (texturePolygons[name] ?? []).map(([clay, sand, silt]) =>
    blendToPoint(percents(sand, silt, clay), frame),
  );
}

const sidesOf = (polygon: readonly Point[]): [Point, Point][] =>
  polygon.map((point, i) => [point, polygon[(i + 1) % polygon.length] ?? point]);

/** Crossing-number test. */
function contains(polygon: readonly Point[], [x, y]: Point): boolean {
  const crossings = sidesOf(polygon).filter(
    ([[ax, ay], [bx, by]]) => ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax),
  );
  return crossings.length % 2 === 1;
}

/** Shoelace formula. */
function areaOf(polygon: readonly Point[]): number {
  const doubled = sidesOf(polygon).map(([[ax, ay], [bx, by]]) => ax * by - bx * ay);
  return Math.abs(doubled.reduce((sum, part) => sum + part, 0)) / 2;
}

const byRule = (sand: number, silt: number, clay: number): string[] =>
  Object.keys(textureRules).filter((name) => textureRules[name]?.(sand, silt, clay));
const byPolygon = (frame: Frame, point: Point): string[] =>
  names.filter((name) => contains(polygonIn(frame, name), point));

describe.each(frames)("in the frame %s", (_name, frame) => {
  test.each(textureExamples)(
    "%d %% sand, %d %% silt, %d %% clay is %s",
    (sand, silt, clay, name) => {
      const point = blendToPoint(percents(sand, silt, clay), frame);
      expect(byPolygon(frame, point)).toEqual([name]);
      // The table's shares are whole percents, so rounding to a millionth takes the round trip's last digits off.
      const [a, i, c] = pointToBlend(point, frame).map((share) => Math.round(share * 1e8) / 1e6);
      expect([a, i, c]).toEqual([sand, silt, clay]);
      expect(byRule(a ?? NaN, i ?? NaN, c ?? NaN)).toEqual([name]);
    },
  );

  // The table prints two decimals: half a unit of the last one, and 1e-9 for the frame's rounding.
  test.each(names)("%s takes its printed share of the triangle", (name) => {
    const percent = (100 * areaOf(polygonIn(frame, name))) / areaOf(frame);
    expect(Math.abs(percent - (textureAreas[name] ?? NaN))).toBeLessThanOrEqual(0.005 + 1e-9);
  });

  test("the classes fill the triangle", () => {
    const filled = names.reduce((sum, name) => sum + areaOf(polygonIn(frame, name)), 0);
    expect(filled / areaOf(frame)).toBeCloseTo(1, 12);
  });

  // Offsets of 0.30 and 0.21 keep every probe off every border: the borders' coefficients are 1, 1.5 and 2.
  test("rules and polygons give one and the same class all over the triangle", () => {
    for (let sand = 0; sand < 99; sand += 3) {
      for (let silt = 0; silt < 99 - sand; silt += 3) {
        const probe = [sand + 0.3, silt + 0.21, 99.49 - sand - silt] as const;
        const point = blendToPoint(percents(...probe), frame);
        const [a, i, c] = pointToBlend(point, frame);
        const ruled = byRule(100 * a, 100 * i, 100 * c);
        expect(ruled, `at ${probe.join(", ")}`).toHaveLength(1);
        expect(byPolygon(frame, point), `at ${probe.join(", ")}`).toEqual(ruled);
      }
    }
  });
});
