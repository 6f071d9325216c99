import { describe, expect, test } from "vitest";
import {
  bassoonActions,
  bassoonModel,
  compileModel,
  finishingFreedom,
  handStandIns,
  place,
  pulls,
  standIns,
  type Actions,
  type BlendMap,
  type FeatureChange,
  type Freedom,
  type StandInRequest,
  type Triple,
  type Values,
} from "../../src/lib/engine.js";
import { allRoundReed, greatestGap } from "./mixed-reeds.js";
import { between, randomMap, randomValues, seeded } from "./random-model.js";

const bassoon = compileModel(bassoonModel);
const allRound = allRoundReed(bassoonModel);
const length = (triple: Triple): number => Math.hypot(...triple);
const perUnit = (map: BlendMap, feature: string): Triple =>
  pulls(map).find((pull) => pull.feature === feature)!.perUnit;

/** The reed after some changes. */
function changed(values: Values, changes: readonly FeatureChange[]): Values {
  const after: Record<string, number> = { ...values };
  for (const { feature, change } of changes) after[feature]! += change;
  return after;
}

/** How the point moves. */
function moved(map: BlendMap, before: Values, after: Values): Triple {
  const [from, to] = [place(map, before).raw, place(map, after).raw];
  return [to[0] - from[0], to[1] - from[1], to[2] - from[2]];
}

const cases = Array.from({ length: 80 }, (_, i) => {
  const random = seeded(i + 1);
  const map = i % 2 === 0 ? bassoon : randomMap(random, 4 + Math.floor(10 * random()));
  const values = randomValues(random, map.model);
  const asked = map.model.features[Math.floor(random() * map.model.features.length)]!;
  const freedom: Record<string, { min?: number; max?: number; locked?: boolean }> = {};
  for (const { id } of map.model.features) {
    const kind = Math.floor(6 * random());
    freedom[id] = [{ locked: true }, { max: values[id]! }, { min: values[id]! }, {}, {}, {}][kind]!;
  }
  const change = between(random, -0.4, 0.4) * (asked.max - asked.min);
  const request: StandInRequest = {
    feature: asked.id,
    change,
    mode: i % 3 === 0 ? "offset" : "instead",
  };
  // The move that stand-ins should make.
  const sign = request.mode === "instead" ? 1 : -1;
  const wanted = perUnit(map, asked.id).map((part) => sign * change * part) as unknown as Triple;
  return { seed: i + 1, map, values, freedom, request, wanted };
});

describe("laws, on random models and on the shipped one", () => {
  test("a pair makes or cancels the move exactly", () => {
    let pairs = 0;
    for (const { seed, map, values, request, wanted, freedom } of cases) {
      for (const pair of standIns(map, values, request, freedom).pairs) {
        pairs += 1;
        const made = moved(map, values, changed(values, pair.changes));
        expect(greatestGap(made, wanted), `seed ${seed}`).toBeLessThan(1e-9);
      }
    }
    expect(pairs).toBeGreaterThan(200);
  });

  test("with an offset the point comes back to where it was", () => {
    for (const { seed, map, values, request, freedom } of cases) {
      if (request.mode !== "offset") continue;
      const happened = changed(values, [request]);
      for (const { changes } of standIns(map, values, request, freedom).pairs) {
        const after = place(map, changed(happened, changes)).raw;
        expect(greatestGap(after, place(map, values).raw), `seed ${seed}`).toBeLessThan(1e-9);
      }
    }
  });

  test("a single's leftover is what is asked for minus what it makes, and never worse than nothing", () => {
    for (const { seed, map, values, request, wanted, freedom } of cases) {
      for (const single of standIns(map, values, request, freedom).singles) {
        const made = moved(map, values, changed(values, [single]));
        const left = wanted.map((part, k) => part - made[k]!);
        expect(greatestGap(single.leftover, left), `seed ${seed}`).toBeLessThan(1e-10);
        expect(length(single.leftover)).toBeLessThanOrEqual(length(wanted) * (1 + 1e-12));
        const sine = length(single.leftover) / length(wanted);
        expect(Math.hypot(sine, single.likeness)).toBeCloseTo(1, 9);
      }
    }
  });

  test("no other amount of a single leaves less", () => {
    for (const { map, values, request, wanted } of cases.slice(0, 20)) {
      for (const { feature, change, leftover } of standIns(map, values, request, {}).singles) {
        for (const factor of [0.9, 1.1]) {
          const made = perUnit(map, feature).map((part) => factor * change * part);
          const left = wanted.map((part, k) => part - made[k]!) as unknown as Triple;
          expect(length(left)).toBeGreaterThanOrEqual(length(leftover) * (1 - 1e-12));
        }
      }
    }
  });

  test("instead and offset are opposite", () => {
    for (const { map, values, request } of cases) {
      const instead = standIns(map, values, { ...request, mode: "instead" }, {}).singles;
      const offset = standIns(map, values, { ...request, mode: "offset" }, {}).singles;
      for (const one of instead) {
        const other = offset.find(({ feature }) => feature === one.feature)!;
        expect(other.change).toBeCloseTo(-one.change, 12);
        expect(other.likeness).toBeCloseTo(one.likeness, 12);
        expect(
          greatestGap(
            other.leftover,
            one.leftover.map((part) => -part),
          ),
        ).toBeLessThan(1e-12);
      }
    }
  });

  test("locked features and the asked one are never proposed; every other one is", () => {
    for (const { map, values, request, freedom } of cases) {
      const { singles, pairs } = standIns(map, values, request, freedom);
      const expected = map.features.filter((id) => id !== request.feature && !freedom[id]?.locked);
      expect(singles.map(({ feature }) => feature).toSorted()).toEqual(expected.toSorted());
      for (const { feature } of pairs.flatMap(({ changes }) => [...changes]))
        expect(expected).toContain(feature);
    }
  });

  test("what is possible ends at the limits, and pairs keep them", () => {
    for (const { seed, map, values, request, freedom } of cases) {
      const { singles, pairs } = standIns(map, values, request, freedom);
      const limits = (id: string): [number, number] => {
        const { min, max } = map.model.features.find((one) => one.id === id)!;
        return [Math.max(min, freedom[id]?.min ?? min), Math.min(max, freedom[id]?.max ?? max)];
      };
      for (const { feature, change, possible } of singles) {
        const [low, high] = limits(feature);
        const end = values[feature]! + possible * change;
        const whole = values[feature]! + change;
        const slack = 1e-9 * Math.abs(high - low) + 1e-12;
        expect(end, `seed ${seed}, ${feature}`).toBeGreaterThanOrEqual(low - slack);
        expect(end, `seed ${seed}, ${feature}`).toBeLessThanOrEqual(high + slack);
        if (possible < 1) expect(whole < low || whole > high).toBe(true);
      }
      for (const { feature, change } of pairs.flatMap(({ changes }) => [...changes])) {
        const [low, high] = limits(feature);
        const end = values[feature]! + change;
        expect(end >= low - 1e-9 * high && end <= high + 1e-9 * high, `seed ${seed}`).toBe(true);
      }
    }
  });

  test("sorted by what is left over, then by size; pairs by their total change", () => {
    for (const { map, values, request, freedom } of cases) {
      const { singles, pairs } = standIns(map, values, request, freedom);
      const left = singles.map((one) => length(one.leftover));
      for (let i = 1; i < left.length; i += 1)
        expect(left[i]).toBeGreaterThanOrEqual(left[i - 1]! - 1e-12);
      const spreads = (id: string): number => {
        const { high, low, loud } = map.model.features.find((one) => one.id === id)!.corners;
        return (Math.max(high, low, loud) - Math.min(high, low, loud)) / 2;
      };
      const sizes = pairs.map(({ changes }) =>
        changes.reduce((sum, { feature, change }) => sum + Math.abs(change) / spreads(feature), 0),
      );
      for (let i = 1; i < sizes.length; i += 1)
        expect(sizes[i]).toBeGreaterThanOrEqual(sizes[i - 1]! - 1e-9);
    }
  });

  test("every pair of pulls at an angle of sine 0.2 or more is there when nothing limits it", () => {
    const { map, values } = cases[0]!;
    const request = { feature: "bladeLength", change: -0.02, mode: "instead" } as const;
    const wide = Object.fromEntries(map.features.map((id) => [id, {}]));
    const inside = allRoundReed(map.model);
    const { pairs } = standIns(map, inside, request, wide);
    const ids = map.features.filter((id) => id !== "bladeLength");
    const separate = ids.flatMap((a, i) =>
      ids.slice(i + 1).filter((b) => {
        const [p, q] = [perUnit(map, a), perUnit(map, b)];
        const cosine = p.reduce((sum, part, k) => sum + part * q[k]!, 0) / length(p) / length(q);
        return Math.sqrt(1 - cosine * cosine) >= 0.2;
      }),
    );
    expect(pairs).toHaveLength(separate.length);
    expect(values).not.toBe(inside);
  });
});

// Section "Stand-ins" of the design, told to two digits.
describe("first-wire rounding for a shorter blade", () => {
  const request = { feature: "bladeLength", change: -0.5, mode: "instead" } as const;
  const hands = handStandIns(bassoon, allRound, request, bassoonActions, {});
  const likeness = (id: string): number => hands.find((one) => one.id === id)!.likeness;

  test("as a feature it is a near-perfect stand-in", () => {
    const { singles } = standIns(bassoon, allRound, request, {});
    const single = singles.find(({ feature }) => feature === "firstWire")!;
    expect(single.likeness.toFixed(2)).toBe("0.97");
    expect(single.change).toBeGreaterThan(0);
  });

  test("as a squeeze it also opens the tip", () => {
    expect(likeness("roundFirstWire").toFixed(2)).toBe("0.74");
    const squeeze = hands.find(({ id }) => id === "roundFirstWire")!;
    const opening = squeeze.changes.find(({ feature }) => feature === "openingHeight")!;
    expect(opening.change).toBeGreaterThan(0);
  });

  test("rounding both wires is the real stand-in", () => {
    expect(likeness("roundBothWires").toFixed(2)).toBe("0.99");
    expect(hands.map(({ id }) => id).indexOf("roundBothWires")).toBeLessThan(
      hands.map(({ id }) => id).indexOf("roundFirstWire"),
    );
  });

  test("flattening both wires stands in for a longer one", () => {
    const longer = { ...request, change: 0.5 };
    const [first] = handStandIns(bassoon, allRound, longer, bassoonActions, {}).filter(({ id }) =>
      id.endsWith("BothWires"),
    );
    expect(first!.id).toBe("flattenBothWires");
    expect(first!.likeness.toFixed(2)).toBe("0.99");
  });
});

// Colwell & Hewitt, The Teaching of Instrumental Music, 5th ed., p. 169: the first wire squeezed top and bottom
// closes the tip, the second wire acts the other way.
test("first- and second-wire squeezes act on the opening in opposite ways", () => {
  const opens = (id: string): number =>
    bassoonActions.actions.find((action) => action.id === id)!.effects["openingHeight"]!;
  expect(opens("flattenFirstWire")).toBeLessThan(0);
  expect(opens("flattenSecondWire")).toBeGreaterThan(0);
  expect(opens("roundFirstWire")).toBeGreaterThan(0);
  expect(opens("roundSecondWire")).toBeLessThan(0);
});

describe("by hand", () => {
  const finished = (values: Values): Freedom => finishingFreedom(bassoonModel, values);

  test("whole units leave no more than nothing does, and what is told is what happens", () => {
    for (const { seed, map, values, request, wanted } of cases) {
      if (map !== bassoon) continue;
      for (const one of handStandIns(map, values, request, bassoonActions, {})) {
        expect(Number.isInteger(one.amount) && one.amount > 0).toBe(true);
        const made = moved(map, values, changed(values, one.changes));
        const left = wanted.map((part, k) => part - made[k]!);
        expect(greatestGap(one.leftover, left), `seed ${seed}`).toBeLessThan(1e-10);
        expect(length(one.leftover)).toBeLessThan(length(wanted) * (1 + 1e-12));
      }
    }
  });

  test("what is possible stops at an easy sitting, and at finishing: nobody thickens a tip", () => {
    const request = { feature: "throatWidth", change: -0.6, mode: "instead" } as const;
    const hands = handStandIns(bassoon, allRound, request, bassoonActions, finished(allRound));
    for (const { actions, amount, possible } of hands) {
      for (const id of actions) {
        const { easy } = bassoonActions.actions.find((action) => action.id === id)!;
        expect(amount * possible).toBeLessThanOrEqual(easy + 1e-12);
      }
    }
    const thin = { ...allRound, tip: 0.06 };
    const tip = handStandIns(
      bassoon,
      thin,
      { feature: "spine", change: -0.05, mode: "instead" },
      bassoonActions,
      finished(thin),
    ).find(({ id }) => id === "thinTip");
    expect(tip!.possible).toBeCloseTo(0, 12);
  });

  test("instead of a change nothing is proposed that makes it, also not in passing", () => {
    for (const { map, values, request } of cases) {
      if (map !== bassoon) continue;
      const { feature, change } = request;
      const instead = { ...request, mode: "instead" } as const;
      for (const { changes } of handStandIns(map, values, instead, bassoonActions, {}))
        for (const one of changes)
          if (one.feature === feature) expect(one.change * change).toBeLessThanOrEqual(0);
    }
    // Dusting thins the rails, among others: no way to do without thinner rails.
    const request = { feature: "rails", change: -0.04, mode: "instead" } as const;
    const ids = handStandIns(bassoon, allRound, request, bassoonActions, {}).map(({ id }) => id);
    expect(ids).not.toContain("dustBlade");
    expect(ids.length).toBeGreaterThan(0);
  });

  test("nothing touches a locked feature, is after an unmeasured one, or repeats the request", () => {
    const request = { feature: "bladeLength", change: -0.5, mode: "instead" } as const;
    const locked = { openingHeight: { locked: true } };
    const ids = (map: BlendMap, freedom: Freedom): string[] =>
      handStandIns(map, allRound, request, bassoonActions, freedom).map(({ id }) => id);
    expect(ids(bassoon, {})).not.toContain("clipTip");
    for (const id of ids(bassoon, locked)) {
      const { effects } = bassoonActions.actions.find((action) => action.id === id)!;
      expect(effects).not.toHaveProperty("openingHeight");
    }
    const features = bassoonModel.features.map(({ id }) => id).filter((id) => id !== "firstWire");
    const without = ids(compileModel(bassoonModel, { features }), {});
    expect(without).not.toContain("roundFirstWire");
    expect(without).not.toContain("roundBothWires");
    expect(without).toContain("roundSecondWire");
  });
});

describe("wrong arguments are named", () => {
  const request = { feature: "spine", change: 0.02, mode: "instead" } as const;
  test.each<[() => unknown, RegExp]>([
    [() => standIns(undefined as never, allRound, request, {}), /map is undefined/],
    [() => standIns(bassoon, {}, request, {}), /standIns: no value for feature "bladeLength"/],
    [() => standIns(bassoon, allRound, undefined as never, {}), /request is undefined/],
    [
      () => standIns(bassoon, allRound, { ...request, feature: "bark" }, {}),
      /request\.feature is "bark"; allowed: bladeLength/,
    ],
    [() => standIns(bassoon, allRound, { ...request, change: NaN }, {}), /change is NaN/],
    [
      () => standIns(bassoon, allRound, { ...request, mode: "for" as never }, {}),
      /mode is "for"; allowed: "instead", "offset"/,
    ],
    [() => standIns(bassoon, allRound, request, { bark: {} }), /names feature "bark"/],
    [() => handStandIns(bassoon, allRound, request, {} as Actions, {}), /without actions/],
  ])("%#", (call, message) => {
    expect(call).toThrow(message);
  });

  test("a change of 0 asks for nothing", () => {
    const { singles } = standIns(bassoon, allRound, { ...request, change: 0 }, {});
    const other = standIns(bassoon, allRound, request, {}).singles;
    for (const { feature, change, possible, likeness } of singles) {
      expect([change, possible]).toEqual([0, 1]);
      expect(likeness).toBe(other.find((one) => one.feature === feature)!.likeness);
    }
    expect(handStandIns(bassoon, allRound, { ...request, change: 0 }, bassoonActions, {})).toEqual(
      [],
    );
  });
});
