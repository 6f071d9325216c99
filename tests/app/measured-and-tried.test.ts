import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  reduce,
  startState,
  type BenchAction,
  type BenchState,
} from "../../src/app/bench-state.js";
import { viewBench } from "../../src/app/bench-view.js";
import { freedomOf } from "../../src/app/bench-freedom.js";
import { momentBeside } from "../../src/app/moment-beside.js";
import { bassoonActions, bassoonModel } from "../../src/reed/bassoon.js";
import { decodeBench, encodeBench, newBench, pageNames } from "../../src/reed/bench.js";
import { english } from "../../src/reed/catalogue.js";
import { deepFreeze } from "../../src/reed/deep-freeze.js";
import { demoReeds } from "../../src/reed/demo-reeds.js";
import { placesOf } from "../../src/reed/places.js";
import { shownValues } from "../../src/reed/tried.js";

const seed = 20_261_128;
const { features } = bassoonModel;
const anyFeature = fc.constantFrom(...features);
const anyGesture = fc.option(fc.constantFrom("slider-1", "keys-2"), { nil: undefined });
const gestured = (gesture: string | undefined) => (gesture === undefined ? {} : { gesture });
const anyBlend = fc
  .tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }))
  .map(([a, b]) =>
    a + b > 1 ? ([1 - a, 1 - b, a + b - 1] as const) : ([a, b, 1 - a - b] as const),
  );
/** Readings as a table lists them, of some features. */
const listed = fc
  .array(
    anyFeature.chain(({ id, min, max }) =>
      fc
        .array(fc.double({ min, max, noNaN: true }), { minLength: 1, maxLength: 4 })
        .map((all): [string, number[]] => [id, all]),
    ),
    { maxLength: 4 },
  )
  .map((entries) => Object.fromEntries(entries));

/** Actions by which readings come and go; everything else leaves them alone. */
const reading = new Set<BenchAction["type"]>([
  "places-read",
  "readings-taken",
  "reed-worked",
  "set-started",
  "step-done",
  "try-accepted",
  "reed-loaded",
  "reeds-swapped",
  "bench-opened",
  "reset",
  "undo",
  "redo",
]);

// One arbitrary for every action: a new type without one does not compile.
const anyOf: {
  readonly [T in BenchAction["type"]]: fc.Arbitrary<Extract<BenchAction, { type: T }>>;
} = {
  "value-set": fc
    .tuple(anyFeature, fc.double({ min: 0, max: 1, noNaN: true }), fc.boolean(), anyGesture)
    .map(([{ id, min, max }, at, left, gesture]) => ({
      type: "value-set",
      feature: id,
      value: left ? undefined : min + at * (max - min),
      ...gestured(gesture),
    })),
  "try-left": anyFeature.map(({ id }) => ({ type: "try-left", feature: id })),
  "try-accepted": anyFeature.map(({ id }) => ({ type: "try-accepted", feature: id })),
  "as-measured": fc.constant({ type: "as-measured" }),
  "point-moved": fc
    .tuple(anyBlend, anyGesture)
    .map(([target, gesture]) => ({ type: "point-moved", target, ...gestured(gesture) })),
  "gesture-ended": fc.constant({ type: "gesture-ended" }),
  "lock-set": fc
    .tuple(anyFeature, fc.boolean())
    .map(([{ id }, locked]) => ({ type: "lock-set", feature: id, locked })),
  "finished-set": fc.boolean().map((finished) => ({ type: "finished-set", finished })),
  "unit-set": fc.constantFrom("mm", "in", "thou").map((unit) => ({ type: "unit-set", unit })),
  "page-set": fc.constantFrom(...pageNames).map((page) => ({ type: "page-set", page })),
  "place-revisited": fc
    .constantFrom(...pageNames)
    .map((page) => ({ type: "place-revisited", route: { page } })),
  "lesson-opened": fc.nat(4).map((step) => ({
    type: "lesson-opened",
    lesson: { id: "06-shape", step },
    says: "",
  })),
  "lesson-worked": fc.constant({
    type: "lesson-worked",
    id: "06-shape",
    run: { step: 0, exercises: {} },
    says: "",
  }),
  "progress-set": fc.constant({ type: "progress-set", progress: { runs: {} }, says: "" }),
  "presenting-set": fc.constant({ type: "presenting-set", presenting: undefined }),
  "lesson-file-opened": fc.constant({
    type: "lesson-file-opened",
    file: { name: "a.md", text: "" },
    says: "",
  }),
  "target-set": fc
    .constantFrom("", "everyday", "own")
    .map((target) => ({ type: "target-set", target })),
  "aim-moved": anyBlend.map((aim) => ({ type: "aim-moved", aim })),
  "reed-pinned": fc.constant({ type: "reed-pinned" }),
  "reed-unpinned": fc.constant({ type: "reed-unpinned" }),
  "reeds-swapped": fc.constant({ type: "reeds-swapped" }),
  "layer-set": fc
    .tuple(fc.constantFrom("pulls" as const, "reach" as const), fc.boolean())
    .map(([layer, on]) => ({ type: "layer-set", layer, on })),
  "reed-loaded": fc
    .constantFrom(...demoReeds)
    .map(({ reed, readings }) => ({ type: "reed-loaded", reed, values: readings })),
  "readings-taken": fc
    .tuple(fc.boolean(), listed)
    .map(([fresh, readings]) => ({ type: "readings-taken", reed: "Sedge", fresh, readings })),
  "bench-opened": fc.constant({ type: "bench-opened", bench: newBench(bassoonModel) }),
  reset: fc.constant({ type: "reset" }),
  undo: fc.constant({ type: "undo" }),
  redo: fc.constant({ type: "redo" }),
  "sheet-moved": fc.nat(16).map((step) => ({ type: "sheet-moved", step })),
  "zero-set": fc.boolean().map((on) => ({ type: "zero-set", on })),
  "height-read": fc.constant({
    type: "height-read",
    height: { feature: "firstWire", value: 6.2 },
  }),
  "sound-set": fc
    .constantFrom("ok" as const, "not" as const)
    .map((answer) => ({ type: "sound-set", check: "tight", answer })),
  "overruled-set": fc.boolean().map((on) => ({ type: "overruled-set", on })),
  "wet-set": fc
    .constantFrom("soaked" as const, "dry" as const)
    .map((wet) => ({ type: "wet-set", wet })),
  "set-started": fc.constant({ type: "set-started", reed: "Sedge", wet: "" }),
  "places-read": anyFeature.chain(({ id, min, max }) =>
    fc
      .array(
        fc.record({
          place: fc.constantFrom(...placesOf(id)),
          value: fc.double({ min, max, noNaN: true }),
        }),
        { maxLength: 4 },
      )
      .map((readings) => ({ type: "places-read", feature: id, readings, own: "My reed" })),
  ),
  "reed-worked": anyFeature.map(({ id }) => ({
    type: "reed-worked",
    features: [id],
    own: "My reed",
  })),
  "stand-ins-asked": anyFeature.map(({ id, step }) => ({
    type: "stand-ins-asked",
    request: { feature: id, change: step, mode: "instead" },
  })),
  "stand-in-tried": anyFeature.map(({ id, step }) => ({
    type: "stand-in-tried",
    what: `feature ${id}`,
    changes: [{ feature: id, change: step }],
  })),
  "trial-ended": fc.constant({ type: "trial-ended" }),
  "step-done": fc
    .tuple(fc.constantFrom(...bassoonActions.actions), listed)
    .map(([{ id }, readings]) => ({
      type: "step-done",
      step: { action: id, amount: 1 },
      readings,
    })),
  "sitting-begun": fc.constant({ type: "sitting-begun" }),
  "plan-looked-at": fc.constant({ type: "plan-looked-at", kind: "fewest" }),
  "quality-shown": fc.constant({ type: "quality-shown", quality: undefined }),
  "quality-judged": fc.constant({ type: "quality-judged", quality: "loudest", values: undefined }),
  "symptom-picked": fc.constant({ type: "symptom-picked", symptom: undefined }),
};

const anyAction = fc.oneof(...Object.values(anyOf)) as fc.Arbitrary<BenchAction>;
const start = deepFreeze(startState(bassoonModel));

/** Runs seeded sequences of every action, and holds a law at every step. */
function law(
  holds: (after: BenchState, before: BenchState, action: BenchAction) => void,
  numRuns = 300,
): void {
  fc.assert(
    fc.property(fc.array(anyAction, { maxLength: 25 }), (actions) => {
      let state: BenchState = start;
      for (const action of actions) {
        const before = state;
        state = deepFreeze(reduce(before, deepFreeze(action)));
        holds(state, before, action);
      }
    }),
    { seed, numRuns },
  );
}

const baseOf = ({ present }: BenchState) => present.bench.values;

describe("over every action", () => {
  test("readings, and what the reed has, change only by what brings readings", () => {
    law((after, before, action) => {
      const typed = action.type === "value-set" && baseOf(before)[action.feature] === undefined;
      const isRead =
        action.type === "value-set" && before.present.bench.expected?.includes(action.feature);
      if (reading.has(action.type) || typed || isRead) return;
      expect(after.present.readings, action.type).toEqual(before.present.readings);
      expect(baseOf(after), action.type).toEqual(baseOf(before));
    });
  });

  test("what is shown without tries is what the reed has, and as measured twice is once", () => {
    law((state) => {
      const once = reduce(state, { type: "as-measured" });
      expect(shownValues(once.present.bench)).toEqual(baseOf(state));
      expect(once.present.bench.tried).toBeUndefined();
      expect(reduce(once, { type: "as-measured" })).toBe(once);
    });
  });

  test("as measured is one step, and undo brings what was tried back", () => {
    law((state) => {
      if (!state.present.bench.tried) return;
      const once = reduce(state, { type: "as-measured" });
      expect(once.past.length).toBe(Math.min(200, state.past.length + 1));
      expect(reduce(once, { type: "undo" }).present.bench.tried).toEqual(state.present.bench.tried);
    });
  });

  test("what a finished reed allows never depends on what is tried", () => {
    law(({ present: { bench } }) => {
      const { tried: _tried, ...base } = bench;
      expect(freedomOf(bassoonModel, bench)).toEqual(freedomOf(bassoonModel, base));
    });
  });

  test("a link and a reload bring everything back", () => {
    law((state) => {
      const { bench, readings, sheet } = reduce(state, { type: "gesture-ended" }).present;
      const back = decodeBench(encodeBench(bench, bassoonModel), bassoonModel);
      expect(back.problems).toEqual([]);
      expect(back.bench).toEqual(bench);
      const kept: unknown = JSON.parse(JSON.stringify({ readings, sheet }));
      expect(momentBeside(kept, back.bench)).toEqual({
        readings,
        ...(sheet ? { sheet } : {}),
      });
    }, 150);
  });

  test("an action that changes nothing gives the same state back", () => {
    law((after, before) => {
      if (after === before) return;
      expect(JSON.stringify(after), "another state that says the same").not.toBe(
        JSON.stringify(before),
      );
    });
  });
});

describe("a try", () => {
  const own: readonly BenchAction[] = [
    { type: "set-started", reed: "Sedge", wet: "soaked" },
    { type: "readings-taken", reed: "Sedge", fresh: false, readings: demoListed() },
  ];
  const measured = own.reduce(reduce, start);
  const slide: BenchAction = {
    type: "value-set",
    feature: "throatWidth",
    value: 7.7,
    gesture: "a",
  };

  test("moves the point, and the ellipse stays round what was measured", () => {
    const tried = reduce(measured, slide);
    const [before, after] = [viewBench(measured, english), viewBench(tried, english)];
    expect(after.placed!.raw).not.toEqual(before.placed!.raw);
    expect(after.base).toEqual(before.placed!.raw);
    expect(after.ellipse).toEqual(before.ellipse);
  });

  test("can be taken back beyond what finishing would allow, and never beyond the reading", () => {
    const shorter = reduce(measured, {
      type: "value-set",
      feature: "bladeLength",
      value: 25,
      gesture: "a",
    });
    const { max } = freedomOf(bassoonModel, shorter.present.bench)["bladeLength"]!;
    expect(max).toBe(measured.present.bench.values["bladeLength"]);
  });

  test("becomes the reading when its owner says so, and on a given reed never", () => {
    const accepted = reduce(reduce(measured, slide), {
      type: "try-accepted",
      feature: "throatWidth",
    });
    expect(accepted.present.bench.values["throatWidth"]).toBe(7.7);
    expect(accepted.present.readings["throatWidth"]).toEqual([{ place: "one", value: 7.7 }]);
    expect(accepted.present.bench.tried).toBeUndefined();
  });

  test("of one feature is left alone, and × leaves a feature out of what is tried only", () => {
    const two = [slide, { type: "value-set", feature: "spine", value: undefined } as const].reduce(
      reduce,
      measured,
    );
    expect(shownValues(two.present.bench)["spine"]).toBeUndefined();
    expect(two.present.bench.values["spine"]).toBeDefined();
    const one = reduce(two, { type: "try-left", feature: "spine" });
    expect(one.present.bench.tried).toEqual({ throatWidth: 7.7 });
  });

  test("is over when a step is done to the reed", () => {
    const step = { action: "clipTip", amount: 1 };
    const done = reduce(reduce(measured, slide), { type: "step-done", step, readings: {} });
    expect(done.present.bench.tried).toBeUndefined();
    expect(done.present.bench.values["throatWidth"]).toBe(
      measured.present.bench.values["throatWidth"],
    );
  });
});

function demoListed() {
  const { readings } = demoReeds.find(({ reed }) => reed === "Bittern")!;
  return Object.fromEntries(Object.entries(readings).map(([id, value]) => [id, [value]]));
}
