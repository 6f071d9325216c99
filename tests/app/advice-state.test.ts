import { describe, expect, test } from "vitest";
import { today, trialOf } from "../../src/app/advice-state.js";
import {
  reduce,
  startState,
  type BenchAction,
  type BenchState,
} from "../../src/app/bench-state.js";
import { leftoverOf, firstRequest, standInList } from "../../src/app/stand-in-list.js";
import { planner } from "../../src/app/plan-view.js";
import { blendDistance } from "../../src/engine/blend.js";
import { compileModel } from "../../src/engine/compile.js";
import { place } from "../../src/engine/place.js";
import { valuesAfter } from "../../src/engine/plan-end.js";
import { standIns } from "../../src/engine/stand-ins.js";
import { bassoonActions, bassoonModel } from "../../src/reed/bassoon.js";
import { english } from "../../src/reed/catalogue.js";
import { deepFreeze } from "../../src/reed/deep-freeze.js";
import { inOrder, placedReadings } from "../../src/reed/readings.js";
import { demoReeds } from "../../src/reed/demo-reeds.js";
import { shownValues } from "../../src/reed/tried.js";
import { targetRadius, targets } from "../../src/reed/targets.js";

const map = compileModel(bassoonModel);

function run(state: BenchState, ...actions: readonly BenchAction[]): BenchState {
  return actions.reduce((before, action) => deepFreeze(reduce(before, deepFreeze(action))), state);
}
function benchOf(name: string): BenchState {
  const { reed, readings } = demoReeds.find((one) => one.reed === name)!;
  return run(startState(bassoonModel), { type: "reed-loaded", reed, values: readings });
}
const bittern = benchOf("Bittern");
const shown = (state: BenchState) => shownValues(state.present.bench);
/** The same reed as one of one's own, with what was measured of it. */
const ownReed = (left: readonly string[] = []): BenchState => {
  const { values } = bittern.present.bench;
  const measured = Object.entries(values).filter(([id]) => !left.includes(id));
  const bench = { ...bittern.present.bench, reed: "Sedge", values: Object.fromEntries(measured) };
  return startState(bassoonModel, deepFreeze(bench));
};
const ask = (
  feature: string,
  change: number,
  mode: "instead" | "offset" = "instead",
): BenchAction => ({
  type: "stand-ins-asked",
  request: { feature, change, mode },
});
const tryIt = (what: string, feature: string, change: number): BenchAction => ({
  type: "stand-in-tried",
  what,
  changes: [{ feature, change }],
});

describe("a stand-in that is tried", () => {
  const asked = run(bittern, ask("bladeLength", -0.6));
  const tried = run(asked, tryIt("feature secondWire", "secondWire", 0.04));

  test("is shown over what the reed has, and one step of undo", () => {
    expect(shown(tried)["secondWire"]).toBe(0.94);
    expect(tried.present.bench.values).toBe(bittern.present.bench.values);
    expect(tried.past.length).toBe(bittern.past.length + 1);
    expect(trialOf(tried)?.what).toBe("feature secondWire");
    expect(run(tried, { type: "undo" }).present).toEqual(bittern.present);
  });

  test("taken back leaves the reed as it was, and undo brings the trial back", () => {
    const back = run(tried, { type: "trial-ended" });
    expect(back.present).toEqual(bittern.present);
    expect(trialOf(back)).toBeUndefined();
    expect(shown(run(back, { type: "undo" }))["secondWire"]).toBe(0.94);
  });

  test("gives way to another one, which is laid over what the reed has", () => {
    const other = run(tried, tryIt("b", "firstWire", 0.02));
    expect(other.present.bench.tried).toEqual({ firstWire: 0.72 });
    expect(trialOf(other)?.what).toBe("b");
  });

  test("is taken back by another question and by closing the list", () => {
    for (const next of [ask("tip", 0.01), { type: "stand-ins-asked", request: undefined } as const])
      expect(shown(run(tried, next))).toEqual(bittern.present.bench.values);
  });

  test("stays tried when something else is tried too, and is a stand-in no more", () => {
    const changed = run(tried, { type: "value-set", feature: "tip", value: 0.12 });
    expect(trialOf(changed)).toBeUndefined();
    expect(shown(run(changed, { type: "trial-ended" }))).toMatchObject({
      secondWire: 0.94,
      tip: 0.12,
    });
  });

  test("is still one when only the look of the bench changes, and taken back keeps the look", () => {
    const inches = run(tried, { type: "unit-set", unit: "in" }, { type: "page-set", page: "plan" });
    expect(trialOf(inches)?.what).toBe("feature secondWire");
    expect(run(inches, { type: "trial-ended" }).present.bench).toMatchObject({
      unit: "in",
      page: "plan",
    });
  });

  test("leaves over what the engine says it leaves over", () => {
    const request = { feature: "bladeLength", change: -0.6, mode: "instead" } as const;
    const single = standIns(map, bittern.present.bench.values, request, {}).singles[0]!;
    const state = run(asked, tryIt("x", single.feature, single.change));
    const { from, to } = leftoverOf(state)!;
    // The bench keeps whole thousandths: what is left over differs by what that moves the point.
    single.leftover.forEach((left, k) => expect(to[k]! - from[k]!).toBeCloseTo(left, 2));
    expect(leftoverOf(asked)).toBeUndefined();
  });
});

describe("the list of stand-ins", () => {
  test("stays as it is while one of it is tried, also where that uses up what the reed allows", () => {
    for (const { reed } of demoReeds) {
      for (const { id: feature, step } of bassoonModel.features) {
        const asked = run(benchOf(reed), ask(feature, -8 * step));
        const before = standInList(asked, english)!;
        for (const { id, changes } of [...before.hands, ...before.features]) {
          const tried = run(asked, { type: "stand-in-tried", what: id, changes });
          expect(standInList(tried, english), `${reed} ${feature} ${id}`).toEqual(before);
        }
      }
    }
    const { hands, features, sentence } = standInList(
      run(bittern, ask("bladeLength", -0.6)),
      english,
    )!;
    expect(hands.length).toBeGreaterThan(0);
    expect(features.length).toBeGreaterThan(0);
    expect(sentence).toBe("Instead of a blade shorter by 0.6 mm:");
  });

  test("has what its reed does not allow without a way to try it, and never more than a limit", () => {
    const asked = run(bittern, ask("firstWire", 0.05));
    const list = standInList(asked, english)!;
    const values = bittern.present.bench.values;
    for (const { changes } of [...list.features, ...list.pairs]) {
      for (const { feature, change } of changes) {
        const { finishing, min, max } = bassoonModel.features.find(({ id }) => id === feature)!;
        if (finishing === "down") expect(change, feature).toBeLessThanOrEqual(1e-9);
        const after = values[feature]! + change;
        expect(after, feature).toBeGreaterThanOrEqual(min - 1e-9);
        expect(after, feature).toBeLessThanOrEqual(max + 1e-9);
      }
    }
  });

  test("never proposes a locked feature or one that is not measured", () => {
    const asked = run(
      ownReed(["firstWire"]),
      { type: "lock-set", feature: "secondWire", locked: true },
      ask("bladeLength", -0.6),
    );
    const list = standInList(asked, english)!;
    const touched = [...list.features, ...list.pairs].flatMap(({ changes }) =>
      changes.map(({ feature }) => feature),
    );
    expect(touched).not.toContain("secondWire");
    expect(touched).not.toContain("firstWire");
    expect(list.hands.map(({ id }) => id)).not.toContain("roundBothWires");
  });

  test("never has hands do instead of a change what makes that change", () => {
    const making: string[] = [];
    for (const { reed } of demoReeds) {
      for (const { id: feature, step } of bassoonModel.features) {
        for (const change of [-3 * step, 3 * step]) {
          const { hands } = standInList(run(benchOf(reed), ask(feature, change)), english)!;
          for (const { id, changes } of hands)
            if (changes.some((one) => one.feature === feature && one.change * change > 0))
              making.push(`${reed} ${feature} ${id}`);
        }
      }
    }
    expect(making).toEqual([]);
  });

  test("cannot be made for what is not measured", () => {
    expect(standInList(run(ownReed(["tip"]), ask("tip", 0.01)), english)).toBeUndefined();
  });

  test.each(bassoonModel.features.map(({ id }) => id))(
    "is first asked for a change of %s toward the part to play, in whole steps",
    (id) => {
      for (const { id: target, blend } of targets) {
        const state = run(bittern, { type: "target-set", target });
        const request = firstRequest(state, id, english);
        const { values } = state.present.bench;
        const feature = bassoonModel.features.find((one) => one.id === id)!;
        const now = place(map, values).raw;
        const nudge = { ...values, [id]: values[id]! + request.change * 1e-3 };
        expect(blendDistance(place(map, nudge).raw, blend)).toBeLessThan(
          blendDistance(now, blend) + 1e-9,
        );
        expect(Math.abs(request.change / feature.step) % 1).toBeCloseTo(0, 6);
        expect(request.change).not.toBe(0);
      }
    },
  );
});

describe("a step that was done", () => {
  const [round] = bassoonActions.actions;
  const done: BenchAction = {
    type: "step-done",
    step: { action: round!.id, amount: 2 },
    readings: { openingHeight: [1.2] },
  };

  test("takes what was read, and the rest as the effects say", () => {
    const after = run(bittern, done);
    const expected = valuesAfter(bittern.present.bench.values, [{ action: round!, amount: 2 }]);
    const { values, done: steps } = after.present.bench;
    expect(values["openingHeight"]).toBe(1.2);
    expect(values["firstWire"]).toBeCloseTo(expected["firstWire"]!, 9);
    expect(values["openingWidth"]).toBeCloseTo(expected["openingWidth"]!, 9);
    expect(values["spine"]).toBe(bittern.present.bench.values["spine"]);
    expect(steps).toEqual([[{ action: "roundFirstWire", amount: 2 }]]);
    expect(after.present.readings).toEqual(placedReadings({ openingHeight: [1.2] }));
  });

  test("is taken back by undo with its readings, and does not follow another reed", () => {
    const after = run(bittern, done, done);
    expect(after.present.bench.done![0]).toHaveLength(2);
    expect(run(after, { type: "undo" }).present.bench.done![0]).toHaveLength(1);
    expect(run(after, { type: "undo" }, { type: "undo" }).present).toEqual(bittern.present);
    const others: BenchAction[] = [
      { type: "reset" },
      { type: "reed-loaded", reed: "Heron", values: {} },
      { type: "readings-taken", reed: "My reed", fresh: true, readings: { tip: [0.1] } },
      { type: "set-started", reed: "My reed", wet: "soaked" },
    ];
    for (const other of others) expect(run(after, other).present.bench.done).toBeUndefined();
  });

  test("is not proposed again in the same sitting, nor what works against it; in a new one it may be", () => {
    for (const { reed } of demoReeds) {
      for (const { id: target } of targets) {
        let state = run(benchOf(reed), { type: "target-set", target });
        let moves = 0;
        for (; moves < 9; moves += 1) {
          const [next] = planner()(state, english)!.looked.plan.steps;
          if (!next) break;
          const before = today(state).map(({ action }) => action);
          expect(before, `${reed} ${target}`).not.toContain(next.action);
          state = run(state, { type: "step-done", step: next, readings: {} });
        }
        expect(moves, `${reed} ${target}`).toBeLessThanOrEqual(4);
      }
    }
  });

  test("a new sitting is one step of undo, and begins only after something was done", () => {
    expect(run(bittern, { type: "sitting-begun" })).toBe(bittern);
    const next = run(bittern, done, { type: "sitting-begun" });
    expect(today(next)).toEqual([]);
    expect(next.present.bench.done).toHaveLength(2);
    expect(run(next, { type: "sitting-begun" })).toBe(next);
    expect(run(next, done).present.bench.done![1]).toHaveLength(1);
    expect(today(run(next, { type: "undo" }))).toHaveLength(1);
  });

  test("leaves what was not read again as expected, until it is read, typed or forgotten", () => {
    const after = run(bittern, done);
    // Rounding the first wire asks for the opening and for both wires; only the height of the opening was read.
    expect(after.present.bench.expected).toEqual(["openingWidth", "firstWire", "secondWire"]);
    const { values } = after.present.bench;
    const read = run(
      after,
      {
        type: "places-read",
        feature: "firstWire",
        readings: inOrder("firstWire", [values["firstWire"]!]),
        own: "My reed",
      },
      { type: "value-set", feature: "secondWire", value: values["secondWire"]! },
    );
    expect(read.present.bench.expected).toEqual(["openingWidth"]);
    const gone = run(read, {
      type: "places-read",
      feature: "openingWidth",
      readings: [],
      own: "My reed",
    });
    expect(gone.present.bench.expected ?? []).toEqual([]);
    expect(run(after, { type: "undo" }).present.bench.expected).toBeUndefined();
    expect(run(after, { type: "reset" }).present.bench.expected).toBeUndefined();
    const another = { type: "reed-loaded", reed: "Heron", values } as const;
    expect(run(after, another).present.bench.expected).toBeUndefined();
    // A stand-in that is tried on it makes no reading of it.
    const tried = run(after, ask("tip", 0.01), tryIt("a", "firstWire", 0.02));
    expect(tried.present.bench.expected).toContain("firstWire");
  });

  test("what nobody has measured stays unknown", () => {
    expect(
      run(ownReed(["openingWidth"]), done).present.bench.values["openingWidth"],
    ).toBeUndefined();
  });
});

describe("plans on the bench", () => {
  test("lead every demo reed step by step, each as expected, to where the first plan said", () => {
    for (const { reed } of demoReeds) {
      for (const { id: target, blend } of targets) {
        const start = run(benchOf(reed), { type: "target-set", target });
        const { looked } = planner()(start, english)!;
        const end = looked.plan.steps.reduce(
          (state, step) => run(state, { type: "step-done", step, readings: {} }),
          start,
        );
        const there = place(map, end.present.bench.values).raw;
        // Whole thousandths at every step move the point by less than this.
        expect(blendDistance(there, looked.plan.blend), `${reed} ${target}`).toBeLessThan(0.01);
        if (looked.plan.distance < targetRadius)
          expect(blendDistance(there, blend)).toBeLessThan(targetRadius + 0.01);
      }
    }
  });

  test("never say that nothing helps this reed where only the sitting is used up", () => {
    const told = (state: BenchState): string => planner()(state, english)!.looked.before.join(" ");
    const { reach: nothing, rules: second } = english.advice.plan.obstacles;
    let ended = 0; // sittings that end before the part is reached, said as such
    for (const { reed } of demoReeds) {
      for (const { id: target } of targets) {
        let state = run(benchOf(reed), { type: "target-set", target });
        for (let i = 0; i < 4; i += 1) {
          const [step] = planner()(state, english)!.looked.plan.steps;
          if (step) state = run(state, { type: "step-done", step, readings: {} });
        }
        const fresh = run(state, { type: "sitting-begun" });
        if (told(state).includes(second)) ended += 1;
        if (told(state).includes(nothing))
          expect(told(fresh), `${reed} ${target}`).toContain(nothing);
      }
    }
    expect(ended).toBeGreaterThan(0);
  });

  test("are searched once for a reed and a part, whatever is looked at", () => {
    const plan = planner();
    const state = run(bittern, { type: "target-set", target: "everyday" });
    const first = plan(state, english)!;
    const looked = run(state, { type: "quality-shown", quality: "loudest" });
    expect(plan(looked, english)!.looked.plan.values).toBe(first.looked.plan.values);
  });

  test("the one that is looked at is the one that was picked", () => {
    const all = demoReeds.flatMap(({ reed }) =>
      targets.map(({ id }) => run(benchOf(reed), { type: "target-set", target: id })),
    );
    const many = all.find((state) => planner()(state, english)!.plans.length > 1)!;
    const { plans } = planner()(many, english)!;
    const { kind } = plans[1]!.plan;
    const picked = run(many, { type: "plan-looked-at", kind });
    expect(planner()(picked, english)!.looked.plan.kind).toBe(kind);
  });

  test("keep to locks", () => {
    const locked = ["firstWire", "secondWire"].reduce(
      (state, feature) => run(state, { type: "lock-set", feature, locked: true }),
      run(bittern, { type: "target-set", target: "everyday" }),
    );
    const { looked } = planner()(locked, english)!;
    expect(looked.plan.steps.length).toBeGreaterThan(0);
    for (const { action } of looked.plan.steps) expect(action).not.toMatch(/Wire/);
  });
});

describe("qualities and troubles that are looked at", () => {
  test("are no step of undo, and can be put away", () => {
    const looked = run(
      bittern,
      { type: "quality-shown", quality: "loudest" },
      { type: "symptom-picked", symptom: "stiff" },
    );
    expect(looked.past).toBe(bittern.past);
    expect(looked.advice).toEqual({ symptom: "stiff" });
    expect(looked.present.bench.quality).toBe("loudest");
    const away = run(
      looked,
      { type: "quality-shown", quality: undefined },
      { type: "symptom-picked", symptom: undefined },
    );
    expect(away.advice).toEqual(bittern.advice);
    expect(away.present).toEqual(bittern.present);
  });

  test("seven values of one's own stay until they are put back", () => {
    const own = [1, 2, 3, 4, 5, 6, 7] as const;
    const judged = run(bittern, { type: "quality-judged", quality: "loudest", values: own });
    expect(judged.present.bench.judged).toEqual({ loudest: own });
    expect(judged.past).toBe(bittern.past);
    const back = run(judged, { type: "quality-judged", quality: "loudest", values: undefined });
    expect(back.present).toEqual(bittern.present);
  });

  test("stay through undo, and are judged within the scale", () => {
    const own = [-1, 2, 3.456, 4, 5, 6, 70] as const;
    const judged = run(
      bittern,
      { type: "value-set", feature: "tip", value: 0.12 },
      { type: "quality-judged", quality: "loudest", values: own },
      { type: "quality-shown", quality: "loudest" },
      { type: "plan-looked-at", kind: "fewest" },
      { type: "undo" },
    );
    const { bench } = judged.present;
    expect(bench.judged).toEqual({ loudest: [0, 2, 3.46, 4, 5, 6, 10] });
    expect(bench).toMatchObject({
      quality: "loudest",
      plan: "fewest",
      values: bittern.present.bench.values,
    });
  });
});
