import { describe, expect, test } from "vitest";
import {
  actionReach,
  bassoonActions,
  bassoonModel,
  compileModel,
  featureReach,
  finishingFreedom,
  place,
  type Actions,
  type BlendMap,
  type Freedom,
  type Values,
} from "../../src/lib/engine.js";
import { allRoundReed, greatestGap } from "./mixed-reeds.js";
import { clippedToTriangle, depthInside, signedArea, toPoints, triangleArea } from "./polygons.js";
import { randomMap, randomValues, seeded, type Random } from "./random-model.js";

const bassoon = compileModel(bassoonModel);
const allRound = allRoundReed(bassoonModel);
const cornerReed = (id: "high" | "low" | "loud"): Values =>
  Object.fromEntries(bassoonModel.features.map((feature) => [feature.id, feature.corners[id]]));
const lockAll = (ids: readonly string[]): Freedom =>
  Object.fromEntries(ids.map((id) => [id, { locked: true }]));
const finished = (values: Values): Freedom => finishingFreedom(bassoonModel, values);

// Positions are sums of up to 20 arrows of a few sides each; a thousand times their rounding.
const rounding = 1e-11;

describe("what finishing leaves free", () => {
  const freedom = finished(allRound);

  test.each(bassoonModel.features.map(({ id, finishing }) => ({ id, finishing })))(
    "$id: $finishing",
    ({ id, finishing }) => {
      const value = allRound[id]!;
      const expected = {
        both: {},
        down: { max: value },
        up: { min: value },
        fixed: { locked: true },
      };
      expect(freedom[id]).toEqual(expected[finishing]);
    },
  );

  test("says nothing of a feature that was not measured, and refuses NaN by name", () => {
    expect(finishingFreedom(bassoonModel, { spine: 0.56 })).toEqual({ spine: { max: 0.56 } });
    expect(() => finishingFreedom(bassoonModel, { spine: NaN })).toThrow(/"spine" is NaN/);
  });

  test("goes up where the model says up", () => {
    const features = bassoonModel.features.map((one) => ({ ...one, finishing: "up" as const }));
    const model = { ...bassoonModel, features };
    expect(finishingFreedom(model, { tip: 0.1 })).toEqual({ tip: { min: 0.1 } });
  });
});

/** Locks, one-way limits, narrowed ranges, and now and then a value outside its range. */
function randomProblem(random: Random, map: BlendMap) {
  const values = randomValues(random, map.model);
  const outside = map.model.features[Math.floor(random() * map.model.features.length)]!;
  if (random() < 0.3) values[outside.id] = outside.max + 0.2 * (outside.max - outside.min);
  const limits: Record<string, [number, number]> = {};
  const freedom: Record<string, { min?: number; max?: number; locked?: boolean }> = {};
  for (const { id, min, max } of map.model.features) {
    const value = values[id]!;
    const kind = Math.floor(5 * random());
    freedom[id] = [{ locked: true }, { max: value }, { min: value }, {}, {}][kind]!;
    const [low, high] = [Math.min(min, value), Math.max(max, value)];
    limits[id] =
      kind === 0 ? [value, value] : [kind === 2 ? value : low, kind === 1 ? value : high];
  }
  return { map, values, freedom, limits };
}

const problems = Array.from({ length: 120 }, (_, i) => {
  const random = seeded(i + 1);
  const map = i % 3 === 0 ? bassoon : randomMap(random, 3 + Math.floor(15 * random()));
  return { seed: i + 1, random, ...randomProblem(random, map) };
});

describe("reach by features", () => {
  test("holds the point of every recipe within the limits", () => {
    for (const { seed, random, map, values, freedom, limits } of problems) {
      const polygon = toPoints(featureReach(map, values, freedom).polygon);
      if (polygon.length < 3) continue;
      for (let i = 0; i < 60; i += 1) {
        const recipe = Object.entries(limits).map(([id, [low, high]]) => {
          const share = i % 2 === 0 ? random() : Math.round(random());
          return [id, low + share * (high - low)];
        });
        const [point] = toPoints([place(map, Object.fromEntries(recipe)).raw]);
        expect(depthInside(polygon, point!), `seed ${seed}`).toBeGreaterThanOrEqual(-rounding);
      }
    }
  });

  test("runs counter-clockwise, with no corner twice, and is symmetric about its middle", () => {
    for (const { seed, map, values, freedom } of problems) {
      const polygon = toPoints(featureReach(map, values, freedom).polygon);
      if (polygon.length < 3) continue;
      expect(signedArea(polygon), `seed ${seed}`).toBeGreaterThan(0);
      const half = polygon.length / 2;
      expect(Number.isInteger(half), `seed ${seed}`).toBe(true);
      const middles = polygon.slice(0, half).map(([x, y], i) => {
        const [ox, oy] = polygon[i + half]!;
        return [(x + ox) / 2, (y + oy) / 2];
      });
      for (const middle of middles) {
        expect(greatestGap(middle, middles[0]!), `seed ${seed}`).toBeLessThanOrEqual(rounding);
      }
      const written = polygon.map((corner) => corner.map((one) => one.toFixed(11)).join(" "));
      expect(new Set(written).size, `seed ${seed}`).toBe(polygon.length);
    }
  });

  test("a locked feature does not widen it: its range does not matter", () => {
    for (const { seed, map, values, freedom } of problems) {
      const locked = Object.keys(freedom).filter((id) => freedom[id]!.locked);
      const features = map.model.features.map((one) =>
        locked.includes(one.id) ? { ...one, min: one.min - 9, max: one.max + 9 } : one,
      );
      const wide = compileModel({ ...map.model, features });
      expect(featureReach(wide, values, freedom), `seed ${seed}`).toEqual(
        featureReach(map, values, freedom),
      );
    }
  });

  test("with nothing free is the reed's point, with one feature free the ends of its way", () => {
    const locks = lockAll(bassoon.features);
    const [only, ...others] = featureReach(bassoon, allRound, locks).polygon;
    expect(others).toEqual([]);
    expect(greatestGap(only!, place(bassoon, allRound).raw)).toBeLessThanOrEqual(rounding);
    const { polygon } = featureReach(bassoon, allRound, { ...locks, spine: {} });
    const ends = bassoonModel.features
      .filter(({ id }) => id === "spine")
      .flatMap(({ min, max }) => [min, max])
      .map((spine) => place(bassoon, { ...allRound, spine }).raw);
    expect(polygon).toHaveLength(2);
    for (const end of ends) {
      const gaps = polygon.map((corner) => greatestGap(corner, end));
      expect(Math.min(...gaps)).toBeLessThanOrEqual(rounding);
    }
  });

  test.each([
    [0.8, 0.42],
    [0.3, 0.72],
  ])("a spine of %d, outside its range, may stay there or move inward, up to %d", (spine, end) => {
    const values = { ...allRound, spine };
    const others: Freedom = lockAll(bassoon.features.filter((id) => id !== "spine"));
    const ends = [spine, end].map((there) => place(bassoon, { ...values, spine: there }).raw);
    for (const freedom of [
      others,
      { ...others, spine: {} },
      { ...others, spine: { min: 0, max: 9 } },
    ]) {
      const { polygon } = featureReach(bassoon, values, freedom);
      expect(polygon).toHaveLength(2);
      for (const expected of ends) {
        const gaps = polygon.map((corner) => greatestGap(corner, expected));
        expect(Math.min(...gaps), JSON.stringify(freedom["spine"])).toBeLessThanOrEqual(rounding);
      }
    }
  });

  test("merges the sides of parallel pulls", () => {
    const twin = bassoonModel.features.map((one) => ({ ...one, id: `${one.id}Again` }));
    const model = { ...bassoonModel, features: [...bassoonModel.features, ...twin] };
    const values = allRoundReed(model);
    const { polygon } = featureReach(compileModel(model), values, {});
    expect(polygon).toHaveLength(featureReach(bassoon, allRound, {}).polygon.length);
  });

  test("refuses an unknown feature, an impossible limit and a missing value by name", () => {
    const call =
      (freedom: Freedom, values: Values = allRound) =>
      () =>
        featureReach(bassoon, values, freedom);
    expect(call({ bore: {} })).toThrow(/freedom names feature "bore"/);
    expect(call({ spine: { min: 0.6, max: 0.5 } })).toThrow(/freedom\.spine is 0\.6 to 0\.5/);
    expect(call({ spine: { min: NaN } })).toThrow(/freedom\.spine\.min is NaN/);
    expect(call({}, { spine: 0.5 })).toThrow(/featureReach: no value for feature "bladeLength"/);
  });
});

const only = (...ids: string[]): Actions => ({
  ...bassoonActions,
  actions: bassoonActions.actions.filter(({ id }) => ids.includes(id)),
});
const without = (feature: string): Actions => ({
  ...bassoonActions,
  actions: bassoonActions.actions.filter(({ effects }) => !(feature in effects)),
});
const shareOfTriangle = (values: Values, freedom: Freedom): number => {
  const { polygon } = actionReach(bassoon, values, bassoonActions, freedom, { amounts: "max" });
  return signedArea(clippedToTriangle(toPoints(polygon))) / triangleArea;
};

const reeds = Array.from({ length: 40 }, (_, i) => {
  const random = seeded(500 + i);
  return { seed: 500 + i, random, values: randomValues(random, bassoonModel) };
});

describe("reach by hand", () => {
  // Measured figures; a change of model or actions is to be seen. A loud reed has cane left to take, so its
  // reach is as large as the all-round reed's; the other two corners have little left.
  test.each([
    ["all-round", allRound, 0.752],
    ["high corner", cornerReed("high"), 0.057],
    ["low corner", cornerReed("low"), 0.13],
    ["loud corner", cornerReed("loud"), 0.757],
  ] as const)("of the %s reed covers its share of the triangle", (_name, values, share) => {
    expect(shareOfTriangle(values, finished(values))).toBeCloseTo(share, 3);
  });

  test("keeps a limit of one's own that is narrower than the present value, and a lock at it", () => {
    const wings = allRound["wings"]!;
    const free = shareOfTriangle(allRound, finished(allRound));
    const at = (limit: Freedom[string]): number =>
      shareOfTriangle(allRound, { ...finished(allRound), wings: limit });
    expect(at({ max: wings + 1e-12 })).toBeCloseTo(free, 9); // finishing's own, but for rounding
    expect(at({ locked: true })).toBeLessThan(free - 0.01);
  });

  test("holds the present point", () => {
    for (const { seed, values } of reeds) {
      const polygon = toPoints(
        actionReach(bassoon, values, bassoonActions, finished(values)).polygon,
      );
      const [point] = toPoints([place(bassoon, values).raw]);
      expect(depthInside(polygon, point!), `seed ${seed}`).toBeGreaterThanOrEqual(-rounding);
    }
  });

  test("with easy amounts lies within that with the most that is possible, and is the usual one", () => {
    for (const { seed, values } of reeds) {
      const freedom = finished(values);
      const reach = (amounts: "easy" | "max") =>
        actionReach(bassoon, values, bassoonActions, freedom, { amounts });
      const most = toPoints(reach("max").polygon);
      for (const corner of toPoints(reach("easy").polygon)) {
        expect(depthInside(most, corner), `seed ${seed}`).toBeGreaterThanOrEqual(-rounding);
      }
      expect(actionReach(bassoon, values, bassoonActions, freedom)).toEqual(reach("easy"));
    }
  });

  test("locking a feature takes away every action that touches it, and enlarges nothing", () => {
    for (const { seed, values } of reeds.slice(0, 15)) {
      const freedom = finished(values);
      const free = toPoints(actionReach(bassoon, values, bassoonActions, freedom).polygon);
      for (const id of bassoon.features) {
        const locked = { ...freedom, [id]: { locked: true } };
        const reach = actionReach(bassoon, values, bassoonActions, locked);
        expect(reach, `seed ${seed}: ${id}`).toEqual(
          actionReach(bassoon, values, without(id), freedom),
        );
        for (const corner of toPoints(reach.polygon)) {
          expect(depthInside(free, corner), `seed ${seed}: ${id}`).toBeGreaterThanOrEqual(
            -rounding,
          );
        }
      }
    }
  });

  test("a clip stays possible though it raises readings that the knife can only lower", () => {
    const { polygon } = actionReach(bassoon, allRound, only("clipTip"), finished(allRound));
    const clip = bassoonActions.actions.find(({ id }) => id === "clipTip")!;
    const clipped = Object.fromEntries(
      bassoon.features.map((id) => [id, allRound[id]! + clip.easy * (clip.effects[id] ?? 0)]),
    );
    expect(polygon).toHaveLength(2);
    const gaps = polygon.map((corner) => greatestGap(corner, place(bassoon, clipped).raw));
    expect(Math.min(...gaps)).toBeLessThanOrEqual(rounding);
  });

  test("an action goes no further than the range of what it touches", () => {
    const range = bassoonModel.features.find(({ id }) => id === "spine")!;
    const values: Values = { ...allRound, spine: range.min + 0.005 };
    const { polygon } = actionReach(bassoon, values, only("thinSpine"), {});
    // Half a unit is left: −0.005 of spine, and its by-effects in proportion.
    const thinned = {
      ...values,
      spine: range.min,
      backRise: values["backRise"]! + 0.005,
      openingHeight: values["openingHeight"]! - 0.005,
    };
    const gaps = polygon.map((corner) => greatestGap(corner, place(bassoon, thinned).raw));
    expect(polygon).toHaveLength(2);
    expect(Math.min(...gaps)).toBeLessThanOrEqual(rounding);
  });

  test("with everything locked is the reed's point", () => {
    const { polygon } = actionReach(bassoon, allRound, bassoonActions, lockAll(bassoon.features));
    expect(polygon).toHaveLength(1);
    expect(greatestGap(polygon[0]!, place(bassoon, allRound).raw)).toBeLessThanOrEqual(rounding);
  });

  test("refuses amounts that it does not know, and an action on an unknown feature", () => {
    const amounts = "all" as "easy";
    expect(() => actionReach(bassoon, allRound, bassoonActions, {}, { amounts })).toThrow(
      /amounts is "all"; allowed: "easy", "max"/,
    );
    const [first] = only("thinTip").actions;
    const actions = { ...bassoonActions, actions: [{ ...first!, effects: { bore: 1 } }] };
    expect(() => actionReach(bassoon, allRound, actions, {})).toThrow(/feature "bore"/);
    expect(() => actionReach(bassoon, allRound, bassoonActions, { bore: {} })).toThrow(/"bore"/);
  });
});
