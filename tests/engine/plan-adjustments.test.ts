import { describe, expect, test } from "vitest";
import {
  bassoonActions,
  bassoonModel,
  certaintyEllipse,
  compileModel,
  finishingFreedom,
  place,
  planAdjustments,
  planNotes,
  readingsAfter,
  restOfSitting,
  type Action,
  type Actions,
  type Adjustments,
  type Blend,
  type Freedom,
  type Plan,
  type ReedModel,
  type Values,
} from "../../src/lib/engine.js";
import { demoReeds } from "../../src/reed/demo-reeds.js";
import { targets } from "../../src/reed/targets.js";
import { allRoundReed, greatestGap, mixedReed } from "./mixed-reeds.js";
import { after, bruteForcePlan } from "./plan-brute-force.js";
import { between, randomMap, seeded } from "./random-model.js";

const map = compileModel(bassoonModel);
const allRound = allRoundReed(bassoonModel);
const actionOf = (id: string): Action => bassoonActions.actions.find((one) => one.id === id)!;
const only = (...ids: string[]): Actions => ({ ...bassoonActions, actions: ids.map(actionOf) });
const without = (id: string): Actions => ({
  ...bassoonActions,
  actions: bassoonActions.actions.filter((one) => one.id !== id),
});
const reedOf = (name: string): Values => demoReeds.find(({ reed }) => reed === name)!.readings;
const targetOf = (id: string): Blend => targets.find((one) => one.id === id)!.blend;
const idsOf = ({ steps }: Plan): string[] => steps.map(({ action }) => action);

const pairs = demoReeds.flatMap(({ reed, readings }) =>
  targets.map(({ id, blend }) => ({ reed, readings, id, blend })),
);
const planned = pairs.map((pair) => ({
  ...pair,
  ...planAdjustments(map, pair.readings, pair.blend, bassoonActions),
}));

/** Whether every feature ends within its range, or no farther outside than it was. */
const withinRanges =
  (model: ReedModel, before: Values) =>
  (values: Values): boolean =>
    model.features.every(({ id, min, max }) => {
      const [value, was] = [values[id]!, before[id]!];
      return value >= Math.min(min, was) - 1e-9 && value <= Math.max(max, was) + 1e-9;
    });

describe("against plain brute force, all demo reeds × all targets", () => {
  test.each(planned)("$reed for $id", ({ readings, blend, plans, reached }) => {
    const found = bruteForcePlan({
      map,
      values: readings,
      target: blend,
      actions: bassoonActions.actions,
      radius: 0.08,
      mostMoves: 4,
      allows: withinRanges(bassoonModel, readings),
    });
    expect(found.count).toBeGreaterThan(100_000);
    expect(reached).toBe(found.leastCost < Infinity);
    if (!reached) {
      expect(plans[0]!.distance).toBeCloseTo(found.leastDistance, 9);
      return;
    }
    expect(plans[0]!.cost).toBeCloseTo(found.leastCost, 9);
    expect(Math.min(...plans.map(({ steps }) => steps.length))).toBe(found.fewestMoves);
    const undoable = plans.find(({ kind }) => kind === "undoable");
    expect(undoable?.cost ?? Infinity).toBe(found.leastUndoableCost);
  });
});

// Made-up models and actions: many small effects, ranges that bind, reeds anywhere in them.
describe("against plain brute force, seeded models and actions", () => {
  test.each(Array.from({ length: 40 }, (_, i) => i + 1))("seed %d", (seed) => {
    const random = seeded(seed);
    const made = randomMap(random, 5);
    const { features } = made.model;
    const actions = Array.from({ length: 7 }, (_, i): Action => {
      const touched = features.filter(() => random() < 0.5);
      const effects = [features[i % 5]!, ...touched].map(({ id, min, max }) => [
        id,
        between(random, -0.1, 0.1) * (max - min),
      ]);
      return {
        ...actionOf("thinTip"),
        id: `action${i}`,
        easy: 1 + Math.floor(3 * random()),
        cost: between(random, 0.5, 3),
        reversible: random() < 0.5,
        effects: Object.fromEntries(effects) as Record<string, number>,
      };
    });
    const main = ({ effects }: Action): string => Object.keys(effects)[0]!;
    // Opposite pairs are told by what they are after; brute force knows names only, so none is left in.
    const fair = actions.filter((a, i) => !actions.slice(0, i).some((b) => main(a) === main(b)));
    const values = Object.fromEntries(
      features.map(({ id, min, max }) => [id, between(random, min, max)]),
    );
    const start = place(made, values).raw;
    const goal = place(
      made,
      after(values, [
        { action: fair[0]!, amount: 1 },
        { action: fair[2]!, amount: 1 },
      ]),
    );
    const target = start.map((share, k) => (share + 3 * goal.raw[k]!) / 4) as unknown as Blend;
    const radius = 0.4 * Math.hypot(...start.map((share, k) => share - target[k]!));
    const set = { actions: fair, cautions: {}, rules: [], housekeeping: [] };
    const { plans, reached } = planAdjustments(made, values, target, set, { radius });
    const allows = withinRanges(made.model, values);
    const found = bruteForcePlan({
      map: made,
      values,
      target,
      actions: fair,
      radius,
      mostMoves: 4,
      allows,
    });
    expect(reached).toBe(found.leastCost < Infinity);
    if (reached) expect(plans[0]!.cost).toBeCloseTo(found.leastCost, 9);
    else expect(plans[0]!.distance).toBeCloseTo(found.leastDistance, 9);
  });
});

describe("a plan keeps the rules of the actions file", () => {
  const all = planned.flatMap(({ plans }) => plans);
  const never = [
    ["roundFirstWire", "flattenFirstWire"],
    ["roundSecondWire", "flattenSecondWire"],
    ["cutHinges", "softenHinges"],
    ["thinHeart", "thinSpine"],
  ];

  test("at most four moves, whole units within easy, no action twice, no forbidden pair", () => {
    expect(all.length).toBeGreaterThan(48);
    for (const plan of all) {
      const ids = idsOf(plan);
      expect(ids.length).toBeLessThanOrEqual(4);
      expect(new Set(ids).size).toBe(ids.length);
      for (const { action, amount, reversible } of plan.steps) {
        expect(Number.isInteger(amount)).toBe(true);
        expect(amount >= 1 && amount <= actionOf(action).easy).toBe(true);
        expect(reversible).toBe(actionOf(action).reversible);
      }
      for (const [a = "", b = ""] of never) expect(ids.includes(a) && ids.includes(b)).toBe(false);
    }
  });

  test("reversible first, then in the order of the actions; a clip only before the tip is thinned", () => {
    for (const plan of all) {
      const ids = idsOf(plan).filter((id) => id !== "clipTip");
      const orders = ids.map((id) => actionOf(id).order);
      expect(orders).toEqual(orders.toSorted((a, b) => a - b));
      const clip = idsOf(plan).indexOf("clipTip");
      const tip = idsOf(plan).findIndex((id) => id === "thinTip" || id === "thinTipCorners");
      if (clip >= 0 && tip >= 0) expect(clip).toBe(tip - 1);
      else if (clip >= 0) expect(actionOf(idsOf(plan)[clip + 1] ?? "clipTip").order).toBe(5);
    }
  });

  test("the tip is thinned after the clip, and read again before it", () => {
    // Only these two are offered, and the target is where both together lead.
    const both = [
      { action: actionOf("thinTip"), amount: 2 },
      { action: actionOf("clipTip"), amount: 3 },
    ];
    const target = place(map, after(allRound, both)).raw;
    const found = planAdjustments(map, allRound, target, only("thinTip", "clipTip"), {
      radius: 0.001,
    });
    expect(found.reached).toBe(true);
    expect(idsOf(found.plans[0]!)).toEqual(["clipTip", "thinTip"]);
    const notes = planNotes(map, allRound, bassoonActions, found.plans[0]!);
    expect(notes.steps.map(({ readFirst }) => readFirst)).toEqual([[], ["tip"]]);
  });

  test("dusting and thinning the spine may meet: dusting is not thinning the heart", () => {
    const both = [
      { action: actionOf("dustBlade"), amount: 2 },
      { action: actionOf("thinSpine"), amount: 2 },
    ];
    const target = place(map, after(allRound, both)).raw;
    const set = only("dustBlade", "thinSpine");
    expect(planAdjustments(map, allRound, target, set, { radius: 1e-6 }).reached).toBe(true);
    const heart = [{ action: actionOf("thinHeart"), amount: 2 }, both[1]!];
    const other = planAdjustments(
      map,
      allRound,
      place(map, after(allRound, heart)).raw,
      only("thinHeart", "thinSpine"),
      { radius: 1e-6 },
    );
    expect(other.reached).toBe(false);
    expect(other.obstacle).toBe("rules");
  });

  test("a reed less than three playings old gets wire moves and dusting only", () => {
    for (const { readings, blend } of pairs) {
      const { plans } = planAdjustments(map, readings, blend, bassoonActions, { playings: 2 });
      for (const { action, reversible } of plans.flatMap(({ steps }) => steps))
        expect(reversible || action === "dustBlade").toBe(true);
    }
    const third = planAdjustments(map, reedOf("Bittern"), targetOf("continuo"), bassoonActions, {
      playings: 3,
    });
    expect(third.plans.some((plan) => idsOf(plan).includes("clipTip"))).toBe(true);
  });
});

describe("what a plan tells of its end is so", () => {
  test("values, blend, distance and cost follow from the steps", () => {
    for (const { readings, blend, plans, reached } of planned) {
      for (const plan of plans) {
        const moves = plan.steps.map(({ action, amount }) => ({
          action: actionOf(action),
          amount,
        }));
        const expected = after(readings, moves);
        for (const id of map.features) expect(plan.values[id]).toBeCloseTo(expected[id]!, 12);
        expect(greatestGap(plan.blend, place(map, expected).raw)).toBeLessThan(1e-12);
        const gaps = plan.blend.map((share, k) => share - blend[k]!);
        expect(plan.distance).toBeCloseTo(Math.hypot(...gaps), 12);
        expect(reached).toBe(plan.distance <= 0.08 + 1e-12);
        const cost = moves.reduce((sum, { action, amount }) => sum + amount * action.cost, 0);
        expect(plan.cost).toBeCloseTo(cost, 12);
      }
    }
  });

  test("one to three plans in order of cost, each of another kind, none dominated", () => {
    for (const { plans, reached } of planned) {
      expect(plans.length >= 1 && plans.length <= 3).toBe(true);
      if (!reached) expect(plans).toHaveLength(1);
      expect(new Set(plans.map(({ kind }) => kind)).size).toBe(plans.length);
      const costs = plans.map(({ cost }) => cost);
      expect(costs).toEqual(costs.toSorted((a, b) => a - b));
      for (const a of plans) {
        for (const b of plans) {
          if (a === b) continue;
          const undo = (plan: Plan): boolean => plan.steps.every(({ reversible }) => reversible);
          const noWorse =
            a.cost <= b.cost &&
            a.steps.length <= b.steps.length &&
            Number(undo(a)) >= Number(undo(b));
          expect(noWorse, `${a.kind} dominates ${b.kind}`).toBe(false);
        }
      }
      for (const plan of plans.filter(({ kind }) => kind === "undoable"))
        expect(plan.steps.every(({ reversible }) => reversible)).toBe(true);
    }
  });

  test("there are plans of each kind among the demo reeds", () => {
    const kinds = planned.flatMap(({ plans, reached }) => (reached ? plans : []));
    expect(new Set(kinds.map(({ kind }) => kind)).size).toBe(3);
  });

  test("its ellipse is that of the readings, and wider by a fifth of every effect", () => {
    const effects = actionOf("clipTip").effects;
    const target = place(map, after(allRound, [{ action: actionOf("clipTip"), amount: 3 }])).raw;
    const { plans } = planAdjustments(map, allRound, target, only("clipTip"), { radius: 1e-6 });
    const plain = certaintyEllipse(map).covariance;
    const half = (id: string): number => map.byId.get(id)!.halfSpread;
    plans[0]!.ellipse.covariance.forEach((row, r) =>
      row.forEach((part, c) => {
        const added = Object.entries(effects).reduce((sum, [id, effect]) => {
          const { pull } = map.byId.get(id)!;
          return sum + ((0.2 * 3 * effect) / half(id)) ** 2 * pull[r]! * pull[c]!;
        }, 0);
        expect(part).toBeCloseTo(plain[r]![c]! + added, 14);
      }),
    );
    const there = planAdjustments(map, allRound, [1 / 3, 1 / 3, 1 / 3], bassoonActions);
    expect(there.plans[0]!.ellipse).toEqual(certaintyEllipse(map));
  });
});

describe("laws", () => {
  const cost = ({ plans, reached }: Adjustments): number => (reached ? plans[0]!.cost : Infinity);

  test.each(bassoonActions.actions.map(({ id }) => id))(
    "with %s there is never a dearer plan than without",
    (id) => {
      for (const { readings, blend, plans, reached } of planned) {
        const less = planAdjustments(map, readings, blend, without(id));
        expect(cost({ plans, reached })).toBeLessThanOrEqual(cost(less) + 1e-9);
        if (!reached)
          expect(plans[0]!.distance).toBeLessThanOrEqual(less.plans[0]!.distance + 1e-9);
      }
    },
  );

  test("more moves and a larger zone are never dearer", () => {
    for (const { readings, blend } of pairs) {
      const at = (options: { mostMoves?: number; radius?: number }): number =>
        cost(planAdjustments(map, readings, blend, bassoonActions, options));
      expect(at({ mostMoves: 4 })).toBeLessThanOrEqual(at({ mostMoves: 3 }));
      expect(at({ mostMoves: 3 })).toBeLessThanOrEqual(at({ mostMoves: 1 }));
      expect(at({ radius: 0.12 })).toBeLessThanOrEqual(at({ radius: 0.08 }));
    }
  });

  test("no step touches a locked feature, and stated limits hold at the end", () => {
    for (const { readings, blend } of pairs) {
      const freedom: Freedom = {
        openingWidth: { locked: true },
        firstWire: { max: readings["firstWire"]! + 0.02, min: readings["firstWire"]! - 0.01 },
        openingHeight: { max: readings["openingHeight"]! + 0.03 },
        wings: { min: readings["wings"]! - 0.015 },
      };
      const { plans } = planAdjustments(map, readings, blend, bassoonActions, { freedom });
      for (const { steps, values } of plans) {
        for (const { action } of steps)
          expect(actionOf(action).effects).not.toHaveProperty("openingWidth");
        for (const [id, { min = -Infinity, max = Infinity }] of Object.entries(freedom)) {
          expect(values[id]).toBeGreaterThanOrEqual(min - 1e-9);
          expect(values[id]).toBeLessThanOrEqual(max + 1e-9);
        }
      }
    }
  });

  test("with what finishing leaves free the plans are the same: by-effects may raise what a knife lowers", () => {
    for (const { readings, blend, plans } of planned) {
      const freedom = finishingFreedom(bassoonModel, readings);
      const finished = planAdjustments(map, readings, blend, bassoonActions, { freedom });
      expect(finished.plans).toEqual(plans);
    }
  });

  test("ranges hold: a tip at its thinnest is thinned only as far as a clip thickens it", () => {
    const thin = { ...allRound, tip: 0.06 };
    const wanted = [{ action: actionOf("thinTip"), amount: 1 }];
    const target = place(map, after(thin, wanted)).raw;
    const alone = planAdjustments(map, thin, target, only("thinTip"), { radius: 1e-6 });
    expect(alone.reached).toBe(false);
    expect(alone.plans[0]!.steps).toEqual([]);
    const both = [{ action: actionOf("clipTip"), amount: 3 }, ...wanted];
    const set = only("thinTip", "clipTip");
    const end = place(map, after(thin, both)).raw;
    expect(planAdjustments(map, thin, end, set, { radius: 1e-6 }).reached).toBe(true);
  });

  test("a value outside its range may move inward, not farther out", () => {
    const tall = { ...allRound, openingHeight: 2.3 };
    const set = only("roundFirstWire", "flattenFirstWire");
    for (const [id, reached] of [
      ["roundFirstWire", false],
      ["flattenFirstWire", true],
    ] as const) {
      const target = place(map, after(tall, [{ action: actionOf(id), amount: 2 }])).raw;
      expect(planAdjustments(map, tall, target, set, { radius: 1e-6 }).reached).toBe(reached);
    }
  });
});

describe("edges", () => {
  test("a reed that is there already needs nothing", () => {
    const { plans, reached } = planAdjustments(map, allRound, [0.34, 0.33, 0.33], bassoonActions);
    expect(reached).toBe(true);
    expect(plans).toHaveLength(1);
    expect(plans[0]).toMatchObject({ kind: "undoable", steps: [], cost: 0, values: allRound });
  });

  test("no action at all leaves the reed where it is", () => {
    const { plans, reached, obstacle } = planAdjustments(map, allRound, [1, 0, 0], only());
    expect([plans[0]!.steps, reached, obstacle]).toEqual([[], false, "reach"]);
  });

  test("the obstacle: reach, stated freedom, easy amounts, or the rules", () => {
    const corner = mixedReed(bassoonModel, [1, 0, 0]);
    const far = planAdjustments(map, corner, [0, 0, 1], bassoonActions);
    expect(far.obstacle).toBe("reach");
    const flat = [{ action: actionOf("flattenFirstWire"), amount: 8 }];
    const target = place(map, after(allRound, flat)).raw;
    const plan = (freedom: Freedom): Adjustments =>
      planAdjustments(map, allRound, target, only("flattenFirstWire"), { freedom, radius: 0.01 });
    expect(plan({}).obstacle).toBe("easy");
    expect(plan({ firstWire: { locked: true } }).obstacle).toBe("freedom");
    const easier = place(
      map,
      after(allRound, [{ action: actionOf("flattenFirstWire"), amount: 1.5 }]),
    ).raw;
    const between2 = planAdjustments(map, allRound, easier, only("flattenFirstWire"), {
      radius: 1e-4,
    });
    expect(between2.obstacle).toBe("rules");
    expect(planned.every(({ reached, obstacle }) => reached === (obstacle === undefined))).toBe(
      true,
    );
  });

  test("what was not measured is not worked on, and stays unknown", () => {
    const features = ["throatWidth", "tipWidth", "spine", "firstWire"];
    const small = compileModel(bassoonModel, { features });
    const values = Object.fromEntries(features.map((id) => [id, allRound[id]!]));
    const { plans } = planAdjustments(small, values, [0.5, 0.25, 0.25], bassoonActions);
    expect(Object.keys(plans[0]!.values)).toEqual(features);
    for (const { action } of plans[0]!.steps)
      expect(features).toContain(Object.keys(actionOf(action).effects)[0]);
  });

  const target: Blend = [0.5, 0.25, 0.25];
  const plan = planAdjustments as unknown as (...given: unknown[]) => unknown;
  test.each([
    [[undefined], /map is undefined/],
    [[map, {}, target, bassoonActions], /no value for feature "bladeLength"/],
    [[map, allRound, [0.5, 0.5, 0.5], bassoonActions], /target 0.5, 0.5, 0.5 sums to 1.5/],
    [[map, allRound, target, undefined], /actions is undefined/],
    [[map, allRound, target, bassoonActions, { radius: -1 }], /radius is -1; allowed: 0 to 2/],
    [[map, allRound, target, bassoonActions, { coverage: 1 }], /coverage is 1; allowed/],
    [
      [map, allRound, target, bassoonActions, { mostMoves: 2.5 }],
      /mostMoves is 2.5; allowed: a whole/,
    ],
    [
      [map, allRound, target, bassoonActions, { mostMoves: 40 }],
      /mostMoves is 40; allowed: 0 to 6/,
    ],
    [
      [map, allRound, target, bassoonActions, { playings: -1 }],
      /playings is -1; allowed: 0 or more/,
    ],
    [[map, allRound, target, bassoonActions, { freedom: { bark: {} } }], /feature "bark"/],
    [[map, allRound, target, bassoonActions, { gaugeError: { tip: -1 } }], /gaugeError\.tip is -1/],
  ])("a wrong argument is named %#", (given, message) => {
    expect(() => plan(...given)).toThrow(message);
  });
});

describe("what a step needs to be told", () => {
  const notesFor = (...ids: [string, number][]) =>
    planNotes(map, allRound, bassoonActions, {
      steps: ids.map(([action, amount]) => ({
        action,
        amount,
        reversible: actionOf(action).reversible,
      })),
    });

  test("arrows lie head to tail, and the expected readings are those after each step", () => {
    for (const { readings, plans } of planned) {
      for (const plan of plans) {
        const { steps } = planNotes(map, readings, bassoonActions, plan);
        let at = place(map, readings).raw;
        for (const { from, to, values } of steps) {
          expect(greatestGap(from, at)).toBeLessThan(1e-12);
          expect(greatestGap(to, place(map, values).raw)).toBeLessThan(1e-12);
          at = to;
        }
        expect(greatestGap(at, plan.blend)).toBeLessThan(1e-12);
      }
    }
  });

  test("a move smaller than the gauge error is told by strokes and by ear", () => {
    const isBelow = (id: string, amount: number): boolean =>
      notesFor([id, amount]).steps[0]!.isBelowGauge;
    expect(isBelow("roundFirstWire", 1)).toBe(true); // 0.01 against 0.02
    expect(isBelow("roundFirstWire", 2)).toBe(false);
    expect(isBelow("thinTip", 1)).toBe(false); // 0.01 against 0.01
    expect(isBelow("thinTipCorners", 2)).toBe(true); // 0.006 against 0.01
    expect(isBelow("thinHeart", 1)).toBe(true); // 0.01 against 0.015
    expect(isBelow("cutHinges", 2)).toBe(true); // 0.1 against 0.15
    expect(isBelow("thinWings", 3)).toBe(false);
  });

  test("a caution is told in full once", () => {
    const { steps } = notesFor(["roundFirstWire", 2], ["flattenSecondWire", 2], ["thinTip", 1]);
    expect(steps.map(({ isNewCaution }) => isNewCaution)).toEqual([true, false, true]);
  });

  test("after a wire move: the opening and both wires", () => {
    expect(readingsAfter(bassoonModel, actionOf("roundFirstWire"))).toEqual([
      "openingHeight",
      "openingWidth",
      "firstWire",
      "secondWire",
    ]);
  });

  test("after thinning: the opening and that place", () => {
    expect(readingsAfter(bassoonModel, actionOf("thinTip"))).toEqual([
      "openingHeight",
      "openingWidth",
      "tip",
    ]);
    expect(readingsAfter(bassoonModel, actionOf("thinSpine"))).toEqual([
      "openingHeight",
      "openingWidth",
      "spine",
      "backRise",
    ]);
  });

  test("after a clip: every gauge place, and what the clip makes shorter", () => {
    expect(readingsAfter(bassoonModel, actionOf("clipTip")).toSorted()).toEqual(
      [
        "openingHeight",
        "openingWidth",
        "bladeLength",
        "tipWidth",
        "heart",
        "wings",
        "spine",
        "rails",
        "tip",
        "backRise",
      ].toSorted(),
    );
  });

  test("everything that an action changes is read again", () => {
    for (const action of bassoonActions.actions)
      expect(readingsAfter(bassoonModel, action)).toEqual(
        expect.arrayContaining(Object.keys(action.effects)),
      );
  });

  test("a plan that is shorter than the readings are sure says: measure again first", () => {
    // Common sense of the figures: a flat 0.01 of one wire is a third of its gauge error, a long plan is not.
    expect(notesFor(["flattenSecondWire", 1]).measureFirst).toBe(true);
    expect(
      notesFor(["roundFirstWire", 4], ["roundSecondWire", 4], ["clipTip", 3], ["thinWings", 3])
        .measureFirst,
    ).toBe(false);
    expect(notesFor().measureFirst).toBe(false);
  });

  test("an unknown action is named", () => {
    expect(() =>
      planNotes(map, allRound, bassoonActions, {
        steps: [{ action: "boil", amount: 1, reversible: true }],
      }),
    ).toThrow(/action "boil"; allowed: roundFirstWire/);
  });
});

describe("what is left of a sitting", () => {
  const idsLeft = (...done: string[]): string[] =>
    restOfSitting(bassoonActions, done).actions.actions.map(({ id }) => id);

  test("nothing is done twice, nothing against what was done, one of heart and spine", () => {
    const left = idsLeft("roundFirstWire", "thinHeart");
    for (const id of ["roundFirstWire", "flattenFirstWire", "thinHeart", "thinSpine"])
      expect(left).not.toContain(id);
    expect(left).toHaveLength(bassoonActions.actions.length - 4);
    expect(idsLeft()).toHaveLength(bassoonActions.actions.length);
  });

  test("a thinned tip is not clipped; a clipped one may be thinned", () => {
    expect(idsLeft("thinTip")).not.toContain("clipTip");
    expect(idsLeft("clipTip")).toContain("thinTip");
  });

  test("four moves are all", () => {
    const four = ["roundFirstWire", "roundSecondWire", "thinWings", "clipTip"];
    expect(restOfSitting(bassoonActions, four.slice(0, 1)).mostMoves).toBe(3);
    expect(restOfSitting(bassoonActions, four).mostMoves).toBe(0);
    expect(restOfSitting(bassoonActions, [...four, "thinBack"]).mostMoves).toBe(0);
  });
});
