import { describe, expect, test } from "vitest";
import {
  reduce,
  startState,
  type BenchAction,
  type BenchState,
} from "../../src/app/bench-state.js";
import { viewBench } from "../../src/app/bench-view.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { decodeBench } from "../../src/reed/bench.js";
import { english } from "../../src/reed/catalogue.js";
import { deepFreeze } from "../../src/reed/deep-freeze.js";
import { demoReeds } from "../../src/reed/demo-reeds.js";
import { inOrder } from "../../src/reed/readings.js";

const readingsOf = (name: string) => demoReeds.find(({ reed }) => reed === name)!.readings;
const load = (reed: string): BenchAction => ({
  type: "reed-loaded",
  reed,
  values: readingsOf(reed),
});
const look = (check: string, answer: "ok" | "not"): BenchAction => ({
  type: "sound-set",
  check,
  answer,
});
const undo: BenchAction = { type: "undo" };
const start = deepFreeze(startState(bassoonModel));
const run = (state: BenchState, ...actions: readonly BenchAction[]): BenchState =>
  actions.reduce((before, action) => deepFreeze(reduce(before, deepFreeze(action))), state);
const opened = (code: string): BenchState =>
  deepFreeze(
    startState(bassoonModel, decodeBench(`v=1&model=bassoon&${code}`, bassoonModel).bench),
  );

/** What has been found out about the reed that was on the bench. */
const cracked: readonly BenchAction[] = [
  look("whole", "not"),
  { type: "overruled-set", on: true },
  { type: "wet-set", wet: "dry" },
];

describe("another reed on the bench", () => {
  const ways: readonly (readonly [string, BenchAction])[] = [
    ["is chosen", load("Heron")],
    ["is the all-round reed", { type: "reset" }],
    ["changes places with the pinned one", { type: "reeds-swapped" }],
    [
      "comes from a table",
      { type: "readings-taken", reed: "My reed", fresh: true, readings: { spine: [0.5] } },
    ],
    ["is begun on an empty sheet", { type: "set-started", reed: "My reed", wet: "" }],
  ];

  test.each(ways)("that %s has nothing of what was found out about the one before", (_, action) => {
    const before = run(start, load("Heron"), { type: "reed-pinned" }, load("Bittern"), ...cracked);
    const { bench } = run(before, action).present;
    expect([bench.unsound, bench.overruled, bench.wet]).toEqual([[], false, ""]);
    expect(run(before, action, undo).present.bench).toEqual(before.present.bench);
  });

  test("another set of the same reed keeps what its looks have found", () => {
    const before = run(start, { type: "set-started", reed: "My reed", wet: "soaked" }, ...cracked);
    const again = run(before, { type: "set-started", reed: "My reed", wet: "soaked" });
    expect(again.present.bench.unsound).toEqual(["whole"]);
  });

  test("is shown as it is, with nothing tried on it and no mark of the one before", () => {
    const moved = run(start, load("Heron"), { type: "value-set", feature: "spine", value: 0.6 });
    expect(viewBench(moved, english).base).toBeDefined();
    const chosen = run(moved, load("Bittern"));
    expect(chosen.present.bench.tried).toBeUndefined();
    expect(viewBench(chosen, english).base).toBeUndefined();
  });
});

describe("a look that a link has failed", () => {
  const link = opened("reed=Avocet&unsound=soaked.tight&page=measure");

  test("stays failed while others are answered, and until it is answered itself", () => {
    const state = run(link, look("wires", "ok"), look("even", "not"));
    expect(state.present.bench.unsound).toEqual(["soaked", "tight", "even"]);
    expect(viewBench(state, english).placed).toBeUndefined();
    const mended = run(state, look("soaked", "ok"), look("tight", "ok"), look("even", "ok"));
    expect(mended.present.bench.unsound).toEqual([]);
  });
});

describe("undo on the sheet", () => {
  test("leaves the gauge's zero as it was set, and the page that is open", () => {
    const state = run(
      start,
      { type: "set-started", reed: "My reed", wet: "soaked" },
      { type: "zero-set", on: true },
      {
        type: "places-read",
        feature: "spine",
        readings: inOrder("spine", [0.5, 0.52]),
        own: "My reed",
      },
      { type: "sheet-moved", step: 6 },
    );
    const { sheet } = run(state, undo).present;
    expect([sheet?.zero, sheet?.step]).toEqual([true, 6]);
  });

  test("of the first thing on it does not take the sheet away", () => {
    const state = run(opened("reed=Avocet&page=measure"), look("soaked", "ok"), {
      type: "sheet-moved",
      step: 3,
    });
    expect(run(state, undo).present.sheet).toEqual({ step: 3, sound: {}, zero: false, before: {} });
  });

  test("of an empty sheet's beginning brings the reed before it back, without a sheet", () => {
    const state = run(start, load("Heron"), { type: "set-started", reed: "My reed", wet: "" });
    expect(run(state, undo).present.sheet).toBeUndefined();
  });
});

describe("what changes nothing", () => {
  const state = run(
    start,
    load("Bittern"),
    { type: "unit-set", unit: "in" },
    { type: "lock-set", feature: "spine", locked: true },
    { type: "lock-set", feature: "tip", locked: true },
    { type: "wet-set", wet: "soaked" },
    { type: "reed-pinned" },
    { type: "target-set", target: "solo" },
  );
  const again: readonly BenchAction[] = [
    { type: "unit-set", unit: "in" },
    { type: "wet-set", wet: "soaked" },
    { type: "finished-set", finished: true },
    { type: "lock-set", feature: "spine", locked: true },
    { type: "lock-set", feature: "heart", locked: false },
    { type: "overruled-set", on: false },
    { type: "value-set", feature: "tip", value: readingsOf("Bittern")["tip"] },
    { type: "reed-pinned" },
    { type: "page-set", page: "bench" },
    { type: "layer-set", layer: "certainty", on: true },
    { type: "layer-set", layer: "pulls", on: false },
    { type: "lesson-opened", says: "" },
    { type: "presenting-set", presenting: undefined },
    { type: "places-read", feature: "spine", readings: inOrder("spine", []), own: "My reed" },
    { type: "symptom-picked", symptom: undefined },
    { type: "stand-ins-asked", request: undefined },
    { type: "quality-shown", quality: undefined },
    { type: "trial-ended" },
    { type: "as-measured" },
    { type: "try-left", feature: "tip" },
    { type: "try-accepted", feature: "tip" },
    { type: "sitting-begun" },
    { type: "redo" },
    { type: "gesture-ended" },
  ];

  test.each(again)("gives the same state back: $type", (action) => {
    const before = action.type === "places-read" ? run(state, action) : state;
    expect(reduce(before, deepFreeze(action))).toBe(before);
  });

  test("resets and loads a reed that is there already without a step of undo", () => {
    expect(reduce(start, { type: "reset" })).toBe(start);
    const loaded = run(start, load("Teal"));
    expect(reduce(loaded, load("Teal"))).toBe(loaded);
  });
});
