import { polygonArea, polygonHull } from "d3";
import { describe, expect, test } from "vitest";
import {
  bassoonModel,
  blendToPoint,
  compileModel,
  featureReach,
  place,
  pulls,
  type BlendMap,
  type Feature,
  type Frame,
  type Freedom,
  type Point,
  type Values,
} from "../../src/lib/engine.js";
import { between, randomMap, randomValues, seeded, type Random } from "./random-model.js";

const frame: Frame = [
  [0.5, Math.sqrt(3) / 2],
  [0, 0],
  [1, 0],
];

interface Problem {
  readonly map: BlendMap;
  readonly values: Values;
  readonly freedom: Freedom;
}

const limitsOf = ({ id, min, max }: Feature, { values, freedom }: Problem): [number, number] => {
  const value = values[id] ?? NaN;
  const stated = freedom[id] ?? {};
  if (stated.locked === true) return [value, value];
  return [Math.max(min, stated.min ?? min), Math.min(max, stated.max ?? max)];
};

function randomProblem(random: Random, map: BlendMap): Problem {
  const values = randomValues(random, map.model);
  const freedom = Object.fromEntries(
    map.model.features.map(({ id, min, max }) => {
      const value = values[id] ?? NaN;
      const kind = random();
      if (kind < 0.15) return [id, { locked: true }];
      if (kind < 0.3) return [id, { max: value }];
      if (kind < 0.45)
        return [id, { min: between(random, min, value), max: between(random, value, max) }];
      return [id, {}];
    }),
  );
  return { map, values, freedom };
}

function reachPoints({ map, values, freedom }: Problem): Point[] {
  return featureReach(map, values, freedom).polygon.map((blend) => blendToPoint(blend, frame));
}

/** The points of all 2ⁿ reeds with every feature at one of its limits. */
function cornerPoints(problem: Problem): [number, number][] {
  const { map } = problem;
  const limits = map.model.features.map((feature) => limitsOf(feature, problem));
  return Array.from({ length: 2 ** limits.length }, (_, setting) => {
    const values = Object.fromEntries(
      map.model.features.map(({ id }, j) => [id, limits[j]?.[(setting >> j) & 1] ?? NaN]),
    );
    const [x, y] = blendToPoint(place(map, values).raw, frame);
    return [x, y];
  });
}

/** The arrow of each feature from its least to its greatest value, in the drawing. */
function arrows(problem: Problem): Point[] {
  const [originX, originY] = blendToPoint([0, 0, 0], frame);
  return pulls(problem.map).map(({ perUnit }, j) => {
    const [low, high] = limitsOf(problem.map.model.features[j] as Feature, problem);
    const [x, y] = blendToPoint(perUnit, frame);
    return [(x - originX) * (high - low), (y - originY) * (high - low)];
  });
}

const cross = (a: Point, b: Point): number => a[0] * b[1] - a[1] * b[0];

/** Twice the signed area of each corner: all positive in a strictly convex polygon that runs counter-clockwise. */
function turns(polygon: readonly Point[]): number[] {
  const at = (i: number): Point => polygon[i % polygon.length] as Point;
  return polygon.map((_, i) => {
    const [a, b, c] = [at(i), at(i + 1), at(i + 2)];
    return cross([b[0] - a[0], b[1] - a[1]], [c[0] - b[0], c[1] - b[1]]);
  });
}

const area = (polygon: readonly Point[]): number =>
  Math.abs(polygonArea(polygon.map(([x, y]): [number, number] => [x, y])));

const sumOfDeterminants = (vectors: readonly Point[]): number =>
  vectors.reduce(
    (sum, a, i) => sum + vectors.slice(i + 1).reduce((part, b) => part + Math.abs(cross(a, b)), 0),
    0,
  );

// Positions are sums of up to 14 arrows of a few sides each; a thousand times their rounding.
const rounding = 1e-11;

describe("reach by features", () => {
  test("is the hull of all corner settings, for 200 random reeds of 2 to 10 features and 5 of 12", () => {
    for (let seed = 1; seed <= 205; seed += 1) {
      const random = seeded(seed);
      const count = seed > 200 ? 12 : 2 + Math.floor(9 * random());
      const problem = randomProblem(random, randomMap(random, count));
      const polygon = reachPoints(problem);
      const hull = polygonHull(cornerPoints(problem));
      const free = arrows(problem).filter(([x, y]) => Math.hypot(x, y) > 0).length;
      if (free < 2 || hull === null) {
        expect(polygon.length, `seed ${seed}`).toBe(free + 1);
        continue;
      }
      // Every corner of the hull is a corner of the polygon, and both cover the same area: they are one.
      for (const [x, y] of hull) {
        const gap = Math.min(...polygon.map((corner) => Math.hypot(corner[0] - x, corner[1] - y)));
        expect(gap, `seed ${seed}`).toBeLessThanOrEqual(rounding);
      }
      expect(area(polygon) / area(hull), `seed ${seed}`).toBeCloseTo(1, 10);
      expect(Math.min(...turns(polygon)), `seed ${seed}`).toBeGreaterThan(0);
      expect(polygon.length, `seed ${seed}`).toBeLessThanOrEqual(2 * free);
    }
  });

  test("has the area Σ |det| of its arrows, for 300 random reeds of 2 to 40 features", () => {
    for (let seed = 1001; seed <= 1300; seed += 1) {
      const random = seeded(seed);
      const problem = randomProblem(random, randomMap(random, 2 + Math.floor(39 * random())));
      const expected = sumOfDeterminants(arrows(problem));
      const polygon = reachPoints(problem);
      const found = polygon.length > 2 ? area(polygon) : 0;
      const gap = Math.abs(found - expected);
      expect(gap, `seed ${seed}`).toBeLessThanOrEqual(1e-11 * Math.max(1, expected));
    }
  });

  test("has the area Σ |det| for the bassoon, whole and with locks", () => {
    for (let seed = 2001; seed <= 2050; seed += 1) {
      const problem = randomProblem(seeded(seed), compileModel(bassoonModel));
      const expected = sumOfDeterminants(arrows(problem));
      expect(area(reachPoints(problem)) / expected, `seed ${seed}`).toBeCloseTo(1, 10);
    }
  });

  test("is one point with nothing free and two with one feature free", () => {
    const map = compileModel(bassoonModel);
    const values = randomValues(seeded(7), bassoonModel);
    const locked = Object.fromEntries(map.features.map((id) => [id, { locked: true }]));
    const [only, ...others] = featureReach(map, values, locked).polygon;
    expect(others).toEqual([]);
    place(map, values).raw.forEach((share, k) => expect(only?.[k]).toBeCloseTo(share, 12));
    expect(featureReach(map, values, { ...locked, spine: {} }).polygon).toHaveLength(2);
  });

  test("merges parallel arrows: a feature, the same in inches and the same counted backwards make one side", () => {
    const random = seeded(11);
    const { model } = randomMap(random, 4);
    const first = model.features[0] as Feature;
    const rescaled = (id: string, to: (value: number) => number): Feature => {
      const { high, low, loud } = first.corners;
      const [min, max] = [to(first.min), to(first.max)].toSorted((a, b) => a - b) as [
        number,
        number,
      ];
      return { ...first, id, min, max, corners: { high: to(high), low: to(low), loud: to(loud) } };
    };
    const twins = [
      rescaled("inInches", (value) => value / 25.4),
      rescaled("backwards", (value) => 100 - value),
    ];
    const map = compileModel({ ...model, features: [...model.features, ...twins] });
    const values = randomValues(random, map.model);
    const polygon = featureReach(map, values, {}).polygon.map((blend) =>
      blendToPoint(blend, frame),
    );
    expect(polygon).toHaveLength(8);
    expect(Math.min(...turns(polygon))).toBeGreaterThan(0);
  });
});
