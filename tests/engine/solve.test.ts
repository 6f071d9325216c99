import { describe, expect, test } from "vitest";
import {
  bassoonModel,
  compileModel,
  featureReach,
  finishingFreedom,
  place,
  pulls,
  solveFor,
  type Blend,
  type BlendMap,
  type Freedom,
  type Solution,
  type Values,
} from "../../src/lib/engine.js";
import { deepFreeze } from "../../src/reed/deep-freeze.js";
import { allRoundReed, greatestGap, randomShares } from "./mixed-reeds.js";
import { depthInside, toPoints } from "./polygons.js";
import { between, randomMap, randomValues, seeded, type Random } from "./random-model.js";

const bassoon = compileModel(bassoonModel);
const allRound = allRoundReed(bassoonModel);

interface Problem {
  readonly seed: number;
  readonly map: BlendMap;
  readonly values: Record<string, number>;
  readonly freedom: Freedom;
  readonly limits: Readonly<Record<string, readonly [low: number, high: number]>>;
  readonly reluctance: Readonly<Record<string, number>>;
  readonly random: Random;
}

function randomProblem(seed: number): Problem {
  const random = seeded(seed);
  const map = seed % 2 === 0 ? bassoon : randomMap(random, 4 + Math.floor(14 * random()));
  const values = randomValues(random, map.model);
  const drawn = map.model.features.map(({ id, min, max }) => {
    const value = values[id]!;
    const kind = Math.floor(6 * random());
    const stated = [{ locked: true }, { max: value }, { min: value }, {}, {}, {}][kind]!;
    const ends = [
      [value, value],
      [min, value],
      [value, max],
    ][kind] ?? [min, max];
    return { id, stated, ends: ends as [number, number] };
  });
  return {
    seed,
    map,
    values,
    freedom: Object.fromEntries(drawn.map(({ id, stated }) => [id, stated])),
    limits: Object.fromEntries(drawn.map(({ id, ends }) => [id, ends])),
    reluctance: Object.fromEntries(drawn.map(({ id }) => [id, between(random, 0.05, 3)])),
    random,
  };
}

const problems = Array.from({ length: 300 }, (_, i) => randomProblem(i + 1));

/** The point of a recipe within the limits, so a target that can be reached. */
function reachableTarget({ map, limits, random }: Problem): Blend {
  const recipe = Object.entries(limits).map(([id, [low, high]]) => [
    id,
    between(random, low, high),
  ]);
  return place(map, Object.fromEntries(recipe)).raw;
}

const halfSpreadOf = (map: BlendMap, id: string): number => {
  const all = Object.values(map.model.features.find((one) => one.id === id)!.corners);
  return (Math.max(...all) - Math.min(...all)) / 2;
};

/** A triple in two orthonormal coordinates of the plane Σ = 0. */
const plane = ([high = NaN, low = NaN, loud = NaN]: readonly number[]): [number, number] => [
  (high - low) / Math.SQRT2,
  (high + low - 2 * loud) / Math.sqrt(6),
];

/** Moves per z with their pulls, reluctances and ends: all that optimality speaks of. */
function movesOf(problem: Problem, { values }: Solution) {
  return pulls(problem.map).map(({ feature, perUnit }) => {
    const s = halfSpreadOf(problem.map, feature);
    const [low, high] = problem.limits[feature]!;
    const value = values[feature]!;
    return {
      feature,
      move: (value - problem.values[feature]!) / s,
      arrow: plane(perUnit.map((part) => part * s)),
      k: problem.reluctance[feature]!,
      atLow: value === low,
      atHigh: value === high,
    };
  });
}

type Move = ReturnType<typeof movesOf>[number];

/** The multiplier from the features away from their ends: 2 k m = p · μ, in the least-squares sense. */
function multiplierOf(free: readonly Move[]): [number, number] {
  let [xx, xy, yy, bx, by] = [0, 0, 0, 0, 0];
  for (const {
    arrow: [x, y],
    k,
    move,
  } of free) {
    xx += x * x;
    xy += x * y;
    yy += y * y;
    bx += x * 2 * k * move;
    by += y * 2 * k * move;
  }
  const determinant = xx * yy - xy * xy;
  return [(yy * bx - xy * by) / determinant, (xx * by - xy * bx) / determinant];
}

describe("the recipe for a point in reach", () => {
  test("lies at the point, within every limit, and locked features have the very number they had", () => {
    for (const problem of problems) {
      const { seed, map, values, freedom, limits, reluctance } = problem;
      const target = reachableTarget(problem);
      const answer = solveFor(map, values, target, freedom, { reluctance });
      expect(answer.reached, `seed ${seed}`).toBe(true);
      expect(answer.limits, `seed ${seed}`).toEqual([]);
      const { raw } = place(map, answer.values);
      // The engine promises 1e-9 to the target.
      expect(greatestGap(raw, target), `seed ${seed}`).toBeLessThanOrEqual(1e-9);
      expect(greatestGap(raw, answer.blend), `seed ${seed}`).toBeLessThanOrEqual(1e-11);
      for (const [id, [low, high]] of Object.entries(limits)) {
        const value = answer.values[id]!;
        expect(value >= low && value <= high, `seed ${seed}: ${id} ${value}`).toBe(true);
        if (freedom[id]?.locked) expect(value, `seed ${seed}: ${id}`).toBe(values[id]);
      }
    }
  });

  test("is the nearest one: Karush, Kuhn and Tucker hold", () => {
    let checked = 0;
    for (const problem of problems) {
      const { seed, map, values, freedom, reluctance } = problem;
      const answer = solveFor(map, values, reachableTarget(problem), freedom, { reluctance });
      const moves = movesOf(problem, answer);
      const free = moves.filter(({ atLow, atHigh }) => !atLow && !atHigh);
      if (free.length < 3) continue;
      checked += 1;
      const [mx, my] = multiplierOf(free);
      const size = Math.max(1, Math.hypot(mx, my));
      for (const {
        feature,
        move,
        arrow: [x, y],
        k,
        atLow,
        atHigh,
      } of moves) {
        // What the feature would move if nothing stopped it, less what it moves. Targets are met within 1e-12,
        // pulls are about a tenth, so multipliers are good to 1e-10 of their size; tenfold is allowed.
        const wish = (x * mx + y * my) / (2 * k) - move;
        const allowed = 1e-9 * size;
        if (!atHigh) expect(wish, `seed ${seed}: ${feature}`).toBeLessThanOrEqual(allowed);
        if (!atLow) expect(wish, `seed ${seed}: ${feature}`).toBeGreaterThanOrEqual(-allowed);
      }
    }
    expect(checked).toBeGreaterThan(200);
  });

  test("is the reed itself, to the last digit inside reach, when the target is where it lies", () => {
    for (const { seed, map, values, freedom } of problems) {
      const present = place(map, values).raw;
      const answer = solveFor(map, values, present, freedom);
      expect(answer.reached, `seed ${seed}`).toBe(true);
      const moved = map.features.map(
        (id) => (answer.values[id]! - values[id]!) / halfSpreadOf(map, id),
      );
      // On the border of reach the recipe is read off a side, and may come back a rounding off.
      expect(Math.max(...moved.map(Math.abs)), `seed ${seed}`).toBeLessThanOrEqual(1e-9);
      const polygon = toPoints(featureReach(map, values, freedom).polygon);
      const isInside = polygon.length > 2 && depthInside(polygon, toPoints([present])[0]!) > 1e-6;
      expect(isInside ? answer.values : values, `seed ${seed}`).toEqual(values);
    }
  });

  test("a feature moves less, the more reluctant it is", () => {
    const target: Blend = [0.5, 0.3, 0.2];
    const moved = (reluctance: Record<string, number>): number =>
      Math.abs(
        solveFor(bassoon, allRound, target, {}, { reluctance }).values["spine"]! -
          allRound["spine"]!,
      );
    expect(moved({ spine: 10 })).toBeLessThan(moved({}) / 5);
    expect(moved({ spine: 0.1 })).toBeGreaterThan(moved({}));
    expect(moved({ spine: 1 })).toBe(moved({}));
  });
});

/** Points along the sides of the reach, `steps` to a side. */
function borderSamples(polygon: readonly Blend[], steps: number): Blend[] {
  return polygon.flatMap((from, i) => {
    const to = polygon[(i + 1) % polygon.length]!;
    return Array.from({ length: steps }, (_, s): Blend => {
      const t = s / steps;
      return [0, 1, 2].map((k) => from[k]! + t * (to[k]! - from[k]!)) as unknown as Blend;
    });
  });
}

const distance = (a: Blend, b: Blend): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

describe("a target out of reach", () => {
  /** Far outside: shares of 5 to 30. */
  const farTarget = (random: Random): Blend => {
    const shares = randomShares(random, -1, 1);
    const size = between(random, 30, 60);
    return shares.map((share) => 1 / 3 + size * (share - 1 / 3)) as unknown as Blend;
  };
  const cases = problems.slice(0, 120).map((problem) => {
    const { map, values, freedom, random, reluctance } = problem;
    const target = farTarget(random);
    const answer = solveFor(map, values, target, freedom, { reluctance });
    return { problem, target, answer, polygon: featureReach(map, values, freedom).polygon };
  });

  test("is moved to the nearest point of the border: no point of a fine sampling is nearer", () => {
    for (const { problem, target, answer, polygon } of cases) {
      const { seed, map } = problem;
      const name = `seed ${seed}`;
      const gap = distance(answer.blend, target);
      const sampled = borderSamples(polygon, 400);
      const nearest = sampled.reduce((a, b) =>
        distance(a, target) <= distance(b, target) ? a : b,
      );
      // Rounding of distances of up to 100.
      expect(gap, name).toBeLessThanOrEqual(distance(nearest, target) + 1e-10);
      // The nearest sample lies within one step of the nearest point.
      const sides = polygon.map((from, i) => distance(from, polygon[(i + 1) % polygon.length]!));
      const step = Math.max(...sides) / 400;
      expect(distance(answer.blend, nearest), name).toBeLessThanOrEqual(step + 1e-9);
      expect(greatestGap(place(map, answer.values).raw, answer.blend), name).toBeLessThanOrEqual(
        1e-10,
      );
    }
  });

  test("is not reached, and what holds it back is named: every one of them at a limit", () => {
    for (const { problem, answer } of cases) {
      const { seed, limits } = problem;
      expect(answer.reached, `seed ${seed}`).toBe(false);
      expect(answer.limits.length, `seed ${seed}`).toBeGreaterThan(0);
      for (const id of answer.limits) {
        expect(limits[id], `seed ${seed}: ${id}`).toContain(answer.values[id]);
      }
    }
  });

  test("brings features to their limits to the last digit: none stops a rounding before its end", () => {
    for (const { problem, answer } of cases) {
      const { seed, limits, map } = problem;
      const near = map.features.filter((id) => {
        const gaps = limits[id]!.map((end) => Math.abs(answer.values[id]! - end));
        return Math.min(...gaps) <= 1e-9 * halfSpreadOf(map, id);
      });
      expect(near.length, `seed ${seed}`).toBeGreaterThanOrEqual(map.features.length - 1);
      for (const id of near) expect(limits[id], `seed ${seed}: ${id}`).toContain(answer.values[id]);
    }
  });

  test("with spine and tip width alone free, both stop at a limit, and both are named", () => {
    const others = bassoon.features.filter((id) => id !== "spine" && id !== "tipWidth");
    const freedom = Object.fromEntries(others.map((id) => [id, { locked: true }]));
    const { values, limits } = solveFor(bassoon, allRound, [-2, 5, -2], freedom);
    expect(values["spine"]).toBe(0.42);
    expect(values["tipWidth"]).toBe(16.8);
    expect(limits).toContain("spine");
    expect(limits).toContain("tipWidth");
  });

  test("leaves locked features the very number they had", () => {
    for (const { problem, answer } of cases) {
      const { seed, freedom, values } = problem;
      const locked = Object.keys(freedom).filter((id) => freedom[id]!.locked);
      const moved = locked.filter((id) => answer.values[id] !== values[id]);
      expect(moved, `seed ${seed}`).toEqual([]);
    }
  });
});

test("a target on a corner of reach is reached, with every free feature at a limit", () => {
  for (const { seed, map, values, freedom, limits } of problems.slice(0, 60)) {
    for (const corner of featureReach(map, values, freedom).polygon) {
      const answer = solveFor(map, values, corner, freedom);
      expect(answer.reached, `seed ${seed}`).toBe(true);
      expect(greatestGap(answer.blend, corner), `seed ${seed}`).toBeLessThanOrEqual(1e-9);
      const between0 = map.features.filter((id) => !limits[id]!.includes(answer.values[id]!));
      // Two sides meet in a corner: the feature of the nearer side may stop a rounding before its end.
      for (const id of between0) {
        const gaps = limits[id]!.map((end) => Math.abs(end - answer.values[id]!));
        expect(
          Math.min(...gaps) / halfSpreadOf(map, id),
          `seed ${seed}: ${id}`,
        ).toBeLessThanOrEqual(1e-7);
      }
    }
  }
});

describe("on a finished reed", () => {
  test("nothing grows that only a knife could shrink, and the throat stays", () => {
    for (let seed = 1; seed <= 40; seed += 1) {
      const random = seeded(seed);
      const values = randomValues(random, bassoonModel);
      const target = randomShares(random, -0.2, 0.9);
      const answer = solveFor(bassoon, values, target, finishingFreedom(bassoonModel, values));
      const against = bassoonModel.features.filter(({ id, finishing }) => {
        const change = answer.values[id]! - values[id]!;
        return (finishing === "down" && change > 0) || (finishing === "fixed" && change !== 0);
      });
      expect(
        against.map(({ id }) => id),
        `seed ${seed}`,
      ).toEqual([]);
    }
  });
});

describe("arguments", () => {
  const target: Blend = [0.4, 0.3, 0.3];

  test("a frozen reed will do, and what the map does not know comes back as it was", () => {
    const values: Values = deepFreeze({ ...allRound, bore: 4.2 });
    const answer = solveFor(bassoon, values, deepFreeze(target), deepFreeze({}));
    expect(answer.values["bore"]).toBe(4.2);
    expect(answer.values).not.toBe(values);
    expect(answer.values["spine"]).not.toBe(values["spine"]);
  });

  test("a feature that was left out of the map comes back as it was", () => {
    const map = compileModel(bassoonModel, { features: ["spine", "tipWidth", "throatWidth"] });
    const answer = solveFor(map, allRound, target, {});
    expect(answer.reached).toBe(true);
    expect(answer.values["rails"]).toBe(allRound["rails"]);
  });

  test("bad ones are refused by name", () => {
    const call =
      (where: Blend, freedom: Freedom = {}, reluctance: Record<string, number> = {}) =>
      () =>
        solveFor(bassoon, allRound, where, freedom, { reluctance });
    expect(call([0.5, 0.5, 0.5])).toThrow(/target 0.5, 0.5, 0.5 sums to 1.5/);
    expect(call([NaN, 0.5, 0.5])).toThrow(/solveFor: target\[0\] is NaN/);
    expect(call(target, { bore: {} })).toThrow(/freedom names feature "bore"/);
    expect(call(target, {}, { bore: 1 })).toThrow(/reluctance names feature "bore"/);
    expect(call(target, {}, { spine: 0.005 })).toThrow(/reluctance.spine is 0.005/);
    expect(call(target, {}, { spine: NaN })).toThrow(/reluctance.spine is NaN/);
    expect(call(target, {}, { spine: Infinity })).toThrow(/reluctance.spine is Infinity/);
    expect(() => solveFor(bassoon, { spine: 0.5 }, target, {})).toThrow(
      /solveFor: no value for feature "bladeLength"/,
    );
  });
});
