import { describe, expect, test } from "vitest";
import {
  bassoonModel,
  blendToPoint,
  compileModel,
  place,
  placeMany,
  type Blend,
  type BlendMap,
  type Feature,
  type Frame,
  type Point,
  type ReedModel,
  type Values,
} from "../../src/lib/engine.js";
import { deepFreeze } from "../../src/reed/deep-freeze.js";
import { allRoundReed, gaussian, greatestGap, mixedReed, randomShares } from "./mixed-reeds.js";
import { between, randomMap, randomValues, seeded, type Random } from "./random-model.js";

const bassoon = compileModel(bassoonModel);

/** A map for some of the features, drawn again until they separate the purposes. */
function partialMap(random: Random, model: ReedModel): BlendMap {
  for (;;) {
    const features = model.features.map(({ id }) => id).filter(() => random() < 0.6);
    try {
      return compileModel(model, { features });
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
    }
  }
}

interface Case {
  readonly seed: number;
  readonly map: BlendMap;
  readonly random: Random;
}

/** The shipped model, made-up ones, and parts of both. */
const cases: readonly Case[] = Array.from({ length: 400 }, (_, i) => {
  const random = seeded(i + 1);
  const whole = i % 2 === 0 ? bassoon : randomMap(random, 2 + Math.floor(18 * random()));
  const map = i % 4 < 2 ? whole : partialMap(random, whole.model);
  return { seed: i + 1, map, random };
});

// Condition up to 50, shares up to 6, z up to a few tens: far below the 1e-10 that the engine promises.
const promised = 1e-10;

test("a reed mixed from the corner reeds, with any signs, lands at its mix", () => {
  for (const { seed, map, random } of cases) {
    const shares = randomShares(random);
    const { raw, mismatch } = place(map, mixedReed(map.model, shares));
    expect(greatestGap(raw, shares), `seed ${seed}`).toBeLessThanOrEqual(promised);
    expect(mismatch, `seed ${seed}`).toBeLessThanOrEqual(promised);
  }
});

test("moves add, and their order does not matter", () => {
  for (const { seed, map, random } of cases) {
    const [start, end] = [randomValues(random, map.model), randomValues(random, map.model)];
    const shuffled = map.features.toSorted(() => random() - 0.5);
    const origin = place(map, start).raw;
    const singly = [0, 0, 0];
    let onTheWay = start;
    for (const id of shuffled) {
      const alone = place(map, { ...start, [id]: end[id] ?? NaN }).raw;
      alone.forEach((share, k) => (singly[k]! += share - (origin[k] ?? NaN)));
      onTheWay = { ...onTheWay, [id]: end[id] ?? NaN };
    }
    const expected = origin.map((share, k) => share + (singly[k] ?? NaN));
    const there = place(map, end).raw;
    expect(greatestGap(there, expected), `seed ${seed}`).toBeLessThanOrEqual(promised);
    expect(greatestGap(place(map, onTheWay).raw, there), `seed ${seed}`).toBe(0);
  }
});

test("the unit of a feature does not matter: inches, another zero, counted backwards", () => {
  for (const { seed, map, random } of cases) {
    const index = Math.floor(random() * map.features.length);
    const changed = map.features[index] ?? "";
    const factor = [1 / 25.4, 1000, -1, -3][seed % 4] ?? 1;
    const shift = between(random, -50, 50) * Math.abs(factor);
    const to = (value: number): number => factor * value + shift;
    const convert = (feature: Feature): Feature => {
      const { high, low, loud } = feature.corners;
      return { ...feature, corners: { high: to(high), low: to(low), loud: to(loud) } };
    };
    const features = map.model.features.map((one) => (one.id === changed ? convert(one) : one));
    const other = compileModel({ ...map.model, features }, { features: map.features });
    const values = randomValues(random, map.model);
    const before = place(map, values);
    const after = place(other, { ...values, [changed]: to(values[changed] ?? NaN) });
    // A shift of up to 50 units on features of hundredths costs four digits.
    expect(greatestGap(after.raw, before.raw), `seed ${seed}`).toBeLessThanOrEqual(1e-9);
    expect(Math.abs(after.mismatch - before.mismatch), `seed ${seed}`).toBeLessThanOrEqual(1e-9);
  }
});

/** One row a measured feature, straight from engine.md section 2. */
function rowsOf(map: BlendMap, values: Values) {
  return map.features.map((id) => {
    const feature = map.model.features.find((one) => one.id === id) as Feature;
    const corners = [feature.corners.high, feature.corners.low, feature.corners.loud];
    const m = corners.reduce((sum, corner) => sum + corner, 0) / 3;
    const s = (Math.max(...corners) - Math.min(...corners)) / 2;
    const d = corners.map((corner) => (corner - m) / s);
    return { w: feature.weight, z: ((values[id] ?? NaN) - m) / s, d };
  });
}

/** Gaussian elimination with the greatest pivot. */
function solveEquations(
  matrix: readonly (readonly number[])[],
  right: readonly number[],
): number[] {
  const rows = matrix.map((row, i) => [...row, right[i] ?? NaN]);
  const n = rows.length;
  for (let column = 0; column < n; column += 1) {
    const rest = rows.slice(column);
    const pivot = rest.toSorted((a, b) => Math.abs(b[column]!) - Math.abs(a[column]!))[0]!;
    rows.splice(rows.indexOf(pivot), 1);
    rows.splice(column, 0, pivot);
    rows.forEach((row, r) => {
      if (r === column) return;
      const factor = row[column]! / pivot[column]!;
      for (let c = column; c <= n; c += 1) row[c]! -= factor * pivot[c]!;
    });
  }
  return rows.map((row, r) => row[n]! / row[r]!);
}

/** The constrained least-squares problem with one multiplier for Σ λ = 1. */
function byNormalEquations(map: BlendMap, values: Values): number[] {
  const rows = rowsOf(map, values);
  const indices = [0, 1, 2];
  const normal = indices.map((r) => [
    ...indices.map((c) => rows.reduce((sum, { w, d }) => sum + w * d[r]! * d[c]!, 0)),
    1,
  ]);
  const right = indices.map((r) => rows.reduce((sum, { w, z, d }) => sum + w * z * d[r]!, 0));
  return solveEquations([...normal, [1, 1, 1, 0]], [...right, 1]).slice(0, 3);
}

/** The formula of section 2 with a basis turned by an angle and, on request, turned over. */
function byBasis(map: BlendMap, values: Values, angle: number, over: boolean): number[] {
  const first = [Math.SQRT1_2, -Math.SQRT1_2, 0];
  const second = [1, 1, -2].map((part) => (over ? -part : part) / Math.sqrt(6));
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const basis = [
    first.map((part, k) => cos * part + sin * second[k]!),
    first.map((part, k) => -sin * part + cos * second[k]!),
  ];
  const rows = rowsOf(map, values).map(({ w, z, d }) => {
    const e = basis.map((axis) => axis.reduce((sum, part, k) => sum + part * d[k]!, 0));
    return { w, z, e };
  });
  const g = [0, 1].map((r) =>
    [0, 1].map((c) => rows.reduce((sum, { w, e }) => sum + w * e[r]! * e[c]!, 0)),
  );
  const right = [0, 1].map((r) => rows.reduce((sum, { w, z, e }) => sum + w * z * e[r]!, 0));
  const y = solveEquations(g, right);
  return [0, 1, 2].map((k) => 1 / 3 + y[0]! * basis[0]![k]! + y[1]! * basis[1]![k]!);
}

describe("the point is the least-squares mix of the corner reeds", () => {
  test("by the normal equations solved directly", () => {
    for (const { seed, map, random } of cases) {
      const values = randomValues(random, map.model);
      const gap = greatestGap(place(map, values).raw, byNormalEquations(map, values));
      expect(gap, `seed ${seed}`).toBeLessThanOrEqual(promised);
    }
  });

  test("in any orthonormal basis of the plane", () => {
    for (const { seed, map, random } of cases) {
      const values = randomValues(random, map.model);
      const expected = byBasis(map, values, between(random, 0, 2 * Math.PI), random() < 0.5);
      const gap = greatestGap(place(map, values).raw, expected);
      expect(gap, `seed ${seed}`).toBeLessThanOrEqual(promised);
    }
  });
});

const unit: Frame = [
  [0.5, Math.sqrt(3) / 2],
  [0, 0],
  [1, 0],
];

/** Distance of a point from a segment. */
function toSegment([x, y]: Point, [ax, ay]: Point, [bx, by]: Point): number {
  const t = ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / ((bx - ax) ** 2 + (by - ay) ** 2);
  const cut = Math.min(1, Math.max(0, t));
  return Math.hypot(x - ax - cut * (bx - ax), y - ay - cut * (by - ay));
}

describe("beyond and mismatch", () => {
  test("beyond is the distance to the drawn triangle of side 1, and 0 inside it", () => {
    let outside = 0;
    for (const { seed, map, random } of cases) {
      const shares = randomShares(random, -0.5, 1);
      const placed = place(map, mixedReed(map.model, shares));
      const point = blendToPoint(placed.raw, unit);
      const isOutside = Math.min(...shares) < 0;
      outside += isOutside ? 1 : 0;
      const [a, b, c] = unit;
      const expected = Math.min(
        toSegment(point, a, b),
        toSegment(point, b, c),
        toSegment(point, c, a),
      );
      const gap = Math.abs(placed.beyond - (isOutside ? expected : 0));
      expect(gap, `seed ${seed}`).toBeLessThanOrEqual(promised);
      if (!isOutside) expect(greatestGap(placed.blend, placed.raw)).toBeLessThanOrEqual(1e-15);
    }
    expect(outside).toBeGreaterThan(50);
    expect(outside).toBeLessThan(350);
  });

  test("mismatch is the weighted root mean square of what no mix explains", () => {
    for (const { seed, map, random } of cases) {
      const values = randomValues(random, map.model);
      const { raw, mismatch } = place(map, values);
      const rows = rowsOf(map, values);
      const rest = rows.map(({ w, z, d }) => ({
        w,
        r: z - d.reduce((sum, part, k) => sum + part * raw[k as 0 | 1 | 2], 0),
      }));
      const squares = rest.reduce((sum, { w, r }) => sum + w * r * r, 0);
      const weights = rest.reduce((sum, { w }) => sum + w, 0);
      expect(Math.abs(mismatch - Math.sqrt(squares / weights)), `seed ${seed}`).toBeLessThanOrEqual(
        promised,
      );
    }
  });

  test("single readings of the usual gauge error give a mismatch of 0.28 in the middle and 0.40 in one case of twenty", () => {
    const random = seeded(95);
    const allRound = allRoundReed(bassoonModel);
    const found = Array.from({ length: 10_000 }, () => {
      const read = bassoonModel.features.map(({ id, gaugeError }) => [
        id,
        (allRound[id] ?? NaN) + gaugeError * gaussian(random),
      ]);
      return place(bassoon, Object.fromEntries(read)).mismatch;
    }).toSorted((a, b) => a - b);
    // Two decimals are stated: 0.005; the sample's quantiles are off by 0.001 and 0.002 (1 sd), twice that is added.
    expect(Math.abs(found[5000]! - 0.28), `median ${found[5000]}`).toBeLessThanOrEqual(0.007);
    expect(Math.abs(found[9500]! - 0.4), `95 % ${found[9500]}`).toBeLessThanOrEqual(0.009);
  });
});

describe("many reeds at once", () => {
  test("lie where each of them lies", () => {
    for (const { seed, map, random } of cases.slice(0, 60)) {
      const reeds = Array.from({ length: 7 }, () => randomValues(random, map.model));
      const rows = new Float64Array(reeds.flatMap((reed) => map.features.map((id) => reed[id]!)));
      const found = placeMany(map, rows);
      const expected = reeds.flatMap((reed) => [...place(map, reed).raw]);
      expect(greatestGap(found, expected), `seed ${seed}`).toBeLessThanOrEqual(promised);
    }
  });

  const reed = new Float64Array(bassoon.features.map((id) => allRoundReed(bassoonModel)[id]!));

  test("are written into the array that is given", () => {
    const out = new Float64Array(3);
    expect(placeMany(bassoon, reed, out)).toBe(out);
    expect(greatestGap(out, [1 / 3, 1 / 3, 1 / 3])).toBeLessThanOrEqual(1e-13);
  });

  test("must fit the map, and a value that is not finite is named with its row", () => {
    expect(() => placeMany(bassoon, new Float64Array(15))).toThrow(/rows has 15 numbers.*14/);
    expect(() => placeMany(bassoon, reed, new Float64Array(2))).toThrow(/out has 2 numbers/);
    const broken = new Float64Array([...reed, ...reed]);
    broken[14 + 7] = NaN;
    expect(() => placeMany(bassoon, broken)).toThrow(/row 1.*"spine" is NaN/);
  });
});

describe("arguments", () => {
  const allRound = allRoundReed(bassoonModel);

  test("a missing value is an error that names the feature", () => {
    const { spine: _spine, ...others } = allRound;
    expect(() => place(bassoon, others)).toThrow(RangeError);
    expect(() => place(bassoon, others)).toThrow(/no value for feature "spine"/);
  });

  test.each([NaN, Infinity, -Infinity])("%d is refused, naming the feature", (bad) => {
    expect(() => place(bassoon, { ...allRound, tip: bad })).toThrow(/feature "tip" is/);
  });

  test("extra keys are ignored, whatever they hold", () => {
    const extra = { ...allRound, story: NaN, bore: 12 };
    expect(place(bassoon, extra)).toEqual(place(bassoon, allRound));
  });

  test("a deeply frozen model and reed will do: nothing is written to", () => {
    const random = seeded(3);
    const model = deepFreeze(randomMap(random, 6).model);
    const map = deepFreezeMap(compileModel(model));
    const values = deepFreeze(randomValues(random, model));
    const copy = structuredClone(values);
    const first = place(map, values);
    expect(place(map, values)).toEqual(first);
    expect(values).toEqual(copy);
  });

  test("very large values give finite shares inside the triangle, and larger ones are refused by name", () => {
    const far = (size: number) => Object.fromEntries(bassoon.features.map((id) => [id, size]));
    const { blend, beyond }: { blend: Blend; beyond: number } = place(bassoon, far(1e9));
    for (const share of blend) expect(share >= 0 && share <= 1).toBe(true);
    expect(beyond).toBeGreaterThan(1e6);
    expect(() => place(bassoon, far(1e10))).toThrow(
      /bladeLength" is 10000000000; allowed: at most/,
    );
  });
});

/** A typed array cannot be frozen; everything else of the map is. */
function deepFreezeMap(map: BlendMap): BlendMap {
  for (const one of map.mapped) deepFreeze(one);
  return Object.freeze(map);
}
