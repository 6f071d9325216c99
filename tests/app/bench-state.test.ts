import { describe, expect, test } from "vitest";
import {
  reduce,
  startState,
  type BenchAction,
  type BenchState,
} from "../../src/app/bench-state.js";
import { viewBench } from "../../src/app/bench-view.js";
import { gaugeErrors } from "../../src/app/gauge-errors.js";
import type { Blend } from "../../src/engine/blend.js";
import { place } from "../../src/engine/place.js";
import { compileModel } from "../../src/engine/compile.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { newBench } from "../../src/reed/bench.js";
import { english } from "../../src/reed/catalogue.js";
import { deepFreeze } from "../../src/reed/deep-freeze.js";
import { demoReeds } from "../../src/reed/demo-reeds.js";
import { placedReadings } from "../../src/reed/readings.js";
import { shownValues } from "../../src/reed/tried.js";
import { greatestGap } from "../engine/mixed-reeds.js";
import { between, seeded, type Random } from "../engine/random-model.js";

const map = compileModel(bassoonModel);
const bittern = demoReeds.find(({ reed }) => reed === "Bittern")!;
const start = deepFreeze(startState(bassoonModel));

/** Runs actions one after the other; every state is frozen, so that a change in place throws. */
function run(state: BenchState, ...actions: readonly BenchAction[]): BenchState {
  return actions.reduce((before, action) => deepFreeze(reduce(before, deepFreeze(action))), state);
}
const set = (feature: string, value: number | undefined, gesture?: string): BenchAction => ({
  type: "value-set",
  feature,
  value,
  ...(gesture === undefined ? {} : { gesture }),
});
const move = (target: Blend, gesture?: string): BenchAction => ({
  type: "point-moved",
  target,
  ...(gesture === undefined ? {} : { gesture }),
});
const undo: BenchAction = { type: "undo" };
const redo: BenchAction = { type: "redo" };
const valuesOf = (state: BenchState) => shownValues(state.present.bench);
const load: BenchAction = { type: "reed-loaded", reed: "Bittern", values: bittern.readings };
const pointOf = (state: BenchState): Blend => place(map, valuesOf(state)).raw;

describe("a reading", () => {
  test("is kept in whole thousandths", () => {
    expect(valuesOf(run(start, set("spine", 0.123_456_7)))["spine"]).toBe(0.123);
  });

  test("set to what it is changes nothing: the very same state comes back", () => {
    const state = run(start, set("spine", 0.51));
    expect(reduce(state, set("spine", 0.51))).toBe(state);
    expect(reduce(state, set("spine", 0.510_000_1))).toBe(state);
  });

  test("that is not measured is absent, and comes back by undo", () => {
    const state = run(start, set("spine", undefined));
    expect("spine" in valuesOf(state)).toBe(false);
    expect(reduce(state, set("spine", undefined))).toBe(state);
    expect(valuesOf(run(state, undo))).toEqual(valuesOf(start));
  });
});

describe("undo and redo", () => {
  test("walk back and forth through every step", () => {
    const one = run(start, set("spine", 0.5));
    const two = run(one, set("tip", 0.12));
    const back = run(two, undo);
    expect(valuesOf(back)).toEqual(valuesOf(one));
    expect(valuesOf(run(back, undo))).toEqual(valuesOf(start));
    expect(valuesOf(run(back, undo, redo, redo))).toEqual(valuesOf(two));
  });

  test("at the ends change nothing", () => {
    expect(valuesOf(run(start, undo, redo, undo))).toEqual(valuesOf(start));
    expect(run(start, undo).past).toEqual([]);
  });

  test("a new step forgets what could be redone", () => {
    const state = run(start, set("spine", 0.5), undo, set("tip", 0.12), redo);
    expect(valuesOf(state)["spine"]).toBe(valuesOf(start)["spine"]);
    expect(state.future).toEqual([]);
  });

  test("the changes of one gesture are one step, those of two are two", () => {
    const dragged = run(
      start,
      set("spine", 0.5, "a"),
      set("spine", 0.52, "a"),
      set("spine", 0.54, "a"),
    );
    expect(dragged.past).toHaveLength(1);
    expect(valuesOf(run(dragged, undo))).toEqual(valuesOf(start));
    const twice = run(
      dragged,
      { type: "gesture-ended" },
      set("spine", 0.5, "b"),
      set("spine", 0.49, "b"),
    );
    expect(twice.past).toHaveLength(2);
    expect(valuesOf(run(twice, undo))["spine"]).toBe(0.54);
  });

  test("a gesture of the same name after the first has ended is a step of its own", () => {
    const state = run(
      start,
      set("spine", 0.5, "a"),
      { type: "gesture-ended" },
      set("spine", 0.52, "a"),
    );
    expect(state.past).toHaveLength(2);
  });

  test("steps without a gesture are one each", () => {
    expect(run(start, set("spine", 0.5), set("spine", 0.51), set("spine", 0.52)).past).toHaveLength(
      3,
    );
  });

  test("leave the unit and the layers as they are now: how one looks is no step", () => {
    const state = run(
      start,
      set("spine", 0.5),
      { type: "unit-set", unit: "thou" },
      { type: "layer-set", layer: "readingLines", on: true },
    );
    expect(state.past).toHaveLength(1);
    const { bench } = run(state, undo).present;
    expect([bench.unit, bench.layers]).toEqual(["thou", ["certainty", "readingLines"]]);
    expect(run(state, undo, redo).present).toEqual(state.present);
  });

  test("remember two hundred steps and no more", () => {
    const steps = Array.from({ length: 250 }, (_, i) => set("spine", 0.45 + i / 1000));
    const state = run(start, ...steps);
    expect(state.past).toHaveLength(200);
    expect(valuesOf(run(state, ...Array.from({ length: 300 }, () => undo)))["spine"]).toBe(0.499);
  });
});

describe("moving the point", () => {
  test("brings the point where it was asked to go, and the recipe follows", () => {
    const target: Blend = [0.5, 0.3, 0.2];
    const state = run(start, move(target, "a"));
    expect(greatestGap(pointOf(state), target)).toBeLessThanOrEqual(1e-9);
    expect(viewBench(state, english).stoppedBy).toEqual([]);
  });

  test("out and back restores the recipe exactly, whatever the way", () => {
    const random = seeded(8);
    const home = run(start, load);
    const way = Array.from({ length: 40 }, () =>
      move(
        [between(random, -0.5, 1), between(random, -0.5, 1), 0].map(closing) as unknown as Blend,
        "a",
      ),
    );
    const state = run(home, ...way, move(pointOf(home), "a"), { type: "gesture-ended" });
    expect(valuesOf(state)).toEqual(valuesOf(home));
    expect(state.past).toBe(home.past);
  });

  test("is one step of undo for one gesture", () => {
    const state = run(start, move([0.5, 0.3, 0.2], "a"), move([0.6, 0.2, 0.2], "a"), {
      type: "gesture-ended",
    });
    expect(state.past).toHaveLength(1);
    expect(valuesOf(run(state, undo))).toEqual(valuesOf(start));
  });

  test("ends in whole thousandths, within a hundredth of a share of where it was", () => {
    const dragged = run(start, move([0.47, 0.31, 0.22], "a"));
    const state = run(dragged, { type: "gesture-ended" });
    for (const [id, value] of Object.entries(valuesOf(state))) {
      expect(Math.round(value * 1000) / 1000, id).toBe(value);
    }
    // Half a thousandth in each of fourteen features; the strongest pull, of ratios and thicknesses, is about
    // 2 shares a unit and their sum about 10: 10 · 0.0005.
    expect(greatestGap(pointOf(state), pointOf(dragged))).toBeLessThanOrEqual(0.01);
    expect(reduce(state, { type: "gesture-ended" })).toBe(state);
  });

  test("a locked feature cannot be left out: the lock would hold nothing", () => {
    const locked = run(start, { type: "lock-set", feature: "spine", locked: true });
    expect(reduce(locked, set("spine", undefined))).toBe(locked);
  });

  test("leaves locked features as they are, to the last digit", () => {
    const locked = run(
      start,
      { type: "lock-set", feature: "spine", locked: true },
      { type: "lock-set", feature: "tipWidth", locked: true },
      move([0.8, 0.1, 0.1], "a"),
      { type: "gesture-ended" },
    );
    for (const id of ["spine", "tipWidth"]) expect(valuesOf(locked)[id]).toBe(valuesOf(start)[id]);
    expect(valuesOf(locked)["rails"]).not.toBe(valuesOf(start)["rails"]);
  });

  test("on a finished reed puts no cane back and leaves the throat", () => {
    const state = run(start, load, move([0.7, 0.1, 0.2], "a"), { type: "gesture-ended" });
    expect(state.present.bench.finished).toBe(true);
    for (const { id, finishing } of bassoonModel.features) {
      const [before, after] = [bittern.readings[id]!, valuesOf(state)[id]!];
      if (finishing === "down") expect(after, id).toBeLessThanOrEqual(before);
      if (finishing === "fixed") expect(after, id).toBe(before);
    }
    const far = run(start, load, move([2, -0.5, -0.5], "a"));
    expect(viewBench(far, english).stoppedBy.length).toBeGreaterThan(0);
    const free = run(
      start,
      load,
      { type: "finished-set", finished: false },
      move([0.7, 0.1, 0.2], "a"),
    );
    expect(greatestGap(pointOf(free), [0.7, 0.1, 0.2])).toBeLessThanOrEqual(1e-9);
  });

  test("a value that was not measured stays so, and without a point nothing moves", () => {
    const partial = run(start, set("rails", undefined), move([0.5, 0.3, 0.2]));
    expect("rails" in valuesOf(partial)).toBe(false);
    const opening = run(start, {
      type: "bench-opened",
      bench: { ...newBench(bassoonModel), values: { openingHeight: 1.2, openingWidth: 12 } },
    });
    expect(reduce(opening, move([0.5, 0.3, 0.2]))).toBe(opening);
  });

  test("after a slider sets out anew from the recipe that the slider left", () => {
    const state = run(
      start,
      move([0.6, 0.2, 0.2], "a"),
      { type: "gesture-ended" },
      set("spine", 0.5),
    );
    expect(state.present.following).toBeUndefined();
    const home = pointOf(state);
    const back = run(state, move([0.2, 0.6, 0.2], "b"), move(home, "b"), { type: "gesture-ended" });
    expect(valuesOf(back)).toEqual(valuesOf(state));
  });
});

/** The third share makes the sum 1. */
function closing(share: number, k: number, shares: number[]): number {
  return k === 2 ? 1 - shares[0]! - shares[1]! : share;
}

describe("reeds and readings", () => {
  test("a loaded reed brings its values and name, no locks, and is finished", () => {
    const state = run(start, { type: "lock-set", feature: "spine", locked: true }, load);
    const { bench } = state.present;
    expect(bench.values).toEqual(bittern.readings);
    expect([bench.reed, bench.locked, bench.finished]).toEqual(["Bittern", [], true]);
    expect(run(state, undo).present.bench.locked).toEqual(["spine"]);
  });

  test("several readings of a feature count by their mean, and what was entered before stays", () => {
    const readings = { throatWidth: [8.1, 8.2, 8.4], spine: [0.55] };
    const own: BenchAction = { type: "set-started", reed: "Mine", wet: "" };
    const state = run(start, own, set("tip", 0.1), {
      type: "readings-taken",
      fresh: false,
      reed: "Mine",
      readings,
    });
    expect(valuesOf(state)["throatWidth"]).toBe(8.233);
    expect(valuesOf(state)["spine"]).toBe(0.55);
    expect(valuesOf(state)["tip"]).toBe(0.1);
    expect(state.present.readings).toEqual(placedReadings({ ...readings, tip: [0.1] }));
    expect([state.present.bench.reed, state.present.bench.finished]).toEqual(["Mine", true]);
  });

  test("are not touched by typing over them, nor by moving the point", () => {
    const readings = { throatWidth: [8.1, 8.2, 8.4], spine: [0.55] };
    const taken = run(start, { type: "readings-taken", fresh: false, reed: "Mine", readings });
    const moved = run(taken, set("throatWidth", 8.5), move([0.2, 0.5, 0.3], "a"));
    expect(valuesOf(moved)["throatWidth"]).not.toBe(8.233);
    expect(moved.present.readings).toEqual(placedReadings(readings));
    expect(moved.present.bench.values).toEqual(taken.present.bench.values);
  });

  test("three repeats make the point surer, or less sure, than the gauge's usual error", () => {
    const taken = (throatWidth: number[]) =>
      run(start, { type: "readings-taken", fresh: false, reed: "", readings: { throatWidth } });
    const axis = (state: BenchState) => viewBench(state, english).ellipse!.semiAxes[0];
    const [near, apart] = [taken([8.5, 8.5, 8.5]), taken([7.5, 8.5, 9.5])];
    expect(axis(near)).toBeLessThan(axis(apart));
    // Equal readings still leave what a gauge of 0.1 mm cannot show.
    const { throatWidth } = gaugeErrors(bassoonModel, near.present.readings);
    expect(throatWidth).toBeCloseTo(0.1 / Math.sqrt(12), 12);
  });
});

describe("locks, reset and opening", () => {
  test("a lock is set once and taken off again", () => {
    const lock = (locked: boolean): BenchAction => ({ type: "lock-set", feature: "spine", locked });
    const state = run(start, lock(true), lock(true));
    expect(state.present.bench.locked).toEqual(["spine"]);
    expect(run(state, lock(false)).present.bench.locked).toEqual([]);
  });

  test("reset brings the all-round reed and keeps unit and layers; undo brings the reed back", () => {
    const state = run(start, load, { type: "unit-set", unit: "in" });
    const cleared = run(state, { type: "reset" });
    expect(cleared.present).toEqual({
      bench: { ...newBench(bassoonModel), unit: "in" },
      readings: {},
    });
    expect(run(cleared, undo).present).toEqual(state.present);
  });

  test("opening a bench shows that bench, and the one before comes back by undo", () => {
    const bench = deepFreeze({ ...newBench(bassoonModel), reed: "Other", values: { spine: 0.5 } });
    const state = run(start, load, { type: "bench-opened", bench });
    expect(state.present).toEqual({ bench, readings: {} });
    expect(run(state, undo).present.bench.reed).toBe("Bittern");
  });
});

function randomAction(random: Random): BenchAction {
  const feature = bassoonModel.features[Math.floor(random() * bassoonModel.features.length)]!;
  const gesture = random() < 0.5 ? { gesture: random() < 0.5 ? "a" : "b" } : {};
  const shares = [between(random, -0.3, 1), between(random, -0.3, 1), 0].map(closing);
  const kinds: readonly BenchAction[] = [
    {
      type: "value-set",
      feature: feature.id,
      value: between(random, feature.min, feature.max),
      ...gesture,
    },
    { type: "value-set", feature: feature.id, value: undefined },
    { type: "point-moved", target: shares as unknown as Blend, ...gesture },
    { type: "point-moved", target: shares as unknown as Blend, ...gesture },
    { type: "gesture-ended" },
    { type: "lock-set", feature: feature.id, locked: random() < 0.5 },
    { type: "finished-set", finished: random() < 0.5 },
    { type: "unit-set", unit: random() < 0.5 ? "mm" : "thou" },
    { type: "layer-set", layer: "readingLines", on: random() < 0.5 },
    load,
    {
      type: "readings-taken",
      fresh: false,
      reed: "x",
      readings: { [feature.id]: [feature.min, feature.max] },
    },
    { type: "reset" },
    undo,
    undo,
    redo,
  ];
  return kinds[Math.floor(random() * kinds.length)]!;
}

test("whatever is done, no state is ever changed in place, no value is lost to NaN, and every view can be drawn", () => {
  for (let seed = 1; seed <= 60; seed += 1) {
    const random = seeded(seed);
    let state = start;
    for (let i = 0; i < 60; i += 1) {
      state = run(state, randomAction(random));
      for (const value of Object.values(valuesOf(state))) {
        expect(Number.isFinite(value), `seed ${seed}, action ${i}`).toBe(true);
      }
      expect(viewBench(state, english).sentence.length, `seed ${seed}`).toBeGreaterThan(0);
    }
  }
});

describe("a target", () => {
  const target = (id: string): BenchAction => ({ type: "target-set", target: id });
  const aim = (blend: Blend, gesture?: string): BenchAction => ({
    type: "aim-moved",
    aim: blend,
    ...(gesture === undefined ? {} : { gesture }),
  });

  test("of one's own starts where the last target was, or where the reed is", () => {
    const fromPart = run(start, target("softLow"), target("own"));
    expect(fromPart.present.bench.aim).toEqual([0.25, 0.51, 0.24]);
    const fromReed = run(start, load, target("own")).present.bench;
    const point = place(map, valuesOf(run(start, load))).blend;
    expect(greatestGap(fromReed.aim!, point)).toBeLessThan(0.0011);
  });

  test("is kept in whole thousandths inside the triangle, and the reed stays where it is", () => {
    const state = run(start, aim([0.123_46, 0.456_78, 0.419_76]), aim([1.2, -0.1, -0.1], "a"));
    expect(state.present.bench.aim).toEqual([1, 0, 0]);
    expect(run(start, aim([0.123_46, 0.456_78, 0.419_76])).present.bench.aim).toEqual([
      0.123, 0.457, 0.42,
    ]);
    expect(valuesOf(state)).toBe(valuesOf(start));
  });

  test("dragged is one step of undo, and is kept while another is picked", () => {
    const state = run(start, target("own"), aim([0.5, 0.3, 0.2], "a"), aim([0.6, 0.2, 0.2], "a"));
    expect(run(state, undo).present.bench.aim).toEqual([0.332, 0.334, 0.334]);
    expect(run(state, undo, undo).present.bench.target).toBe("");
    const back = run(state, target("softLow"), target("own"));
    expect(back.present.bench.aim).toEqual([0.6, 0.2, 0.2]);
  });

  test("moved does not change where a drag of the point sets out from", () => {
    const away = run(
      start,
      move([0.6, 0.2, 0.2], "a"),
      target("softLow"),
      move(pointOf(start), "b"),
    );
    expect(greatestGap(pointOf(away), pointOf(start))).toBeLessThan(1e-9);
    for (const [id, value] of Object.entries(valuesOf(away)))
      expect(value).toBeCloseTo(valuesOf(start)[id]!, 3);
  });
});

describe("a pinned reed", () => {
  const pin: BenchAction = { type: "reed-pinned" };
  const swap: BenchAction = { type: "reeds-swapped" };

  test("stays as it was while the one on the bench changes, and can be taken off", () => {
    const state = run(start, load, pin, set("spine", 0.5));
    expect(state.present.bench.pinned).toEqual({ reed: "Bittern", values: bittern.readings });
    expect(run(state, { type: "reed-unpinned" }).present.bench.pinned).toBeUndefined();
    expect(run(state, undo, undo).present.bench.pinned).toBeUndefined();
    expect(reduce(start, { type: "reed-unpinned" })).toBe(start);
    expect(reduce(start, swap)).toBe(start);
  });

  test("changes places with the one on the bench, twice to come back", () => {
    const state = run(start, pin, load);
    const swapped = run(state, swap);
    expect(swapped.present.bench.reed).toBe("");
    expect(swapped.present.bench.pinned!.reed).toBe("Bittern");
    expect(valuesOf(swapped)).toEqual(valuesOf(start));
    expect(run(swapped, swap).present.bench).toEqual(state.present.bench);
    expect(run(swapped, undo).present.bench).toEqual(state.present.bench);
  });

  test("outlasts a reset", () => {
    expect(run(start, load, pin, { type: "reset" }).present.bench.pinned!.reed).toBe("Bittern");
  });
});

describe("a gesture that ends where it began", () => {
  const end: BenchAction = { type: "gesture-ended" };

  test("is no step of undo and leaves redo as it was", () => {
    const undone = run(start, load, undo);
    const state = run(undone, set("spine", 0.5, "a"), set("spine", 0.563, "a"), end);
    expect(state.past).toBe(undone.past);
    expect(state.future).toBe(undone.future);
    expect(state.present).toEqual(undone.present);
    expect(valuesOf(run(state, redo))).toEqual(bittern.readings);
  });

  test("is one after all when it ends somewhere else", () => {
    const state = run(start, set("spine", 0.5, "a"), set("spine", 0.55, "a"), end);
    expect(state.past).toHaveLength(1);
    expect(valuesOf(run(state, undo))).toEqual(valuesOf(start));
  });
});
