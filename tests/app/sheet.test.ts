import { describe, expect, test } from "vitest";
import {
  reduce,
  startState,
  type BenchAction,
  type BenchState,
} from "../../src/app/bench-state.js";
import { viewBench } from "../../src/app/bench-view.js";
import { momentBeside } from "../../src/app/moment-beside.js";
import { sentenceText, english } from "../../src/reed/catalogue.js";
import { bassoonActions, bassoonModel } from "../../src/reed/bassoon.js";
import { deepFreeze } from "../../src/reed/deep-freeze.js";
import { inOrder } from "../../src/reed/readings.js";
import { demoReeds } from "../../src/reed/demo-reeds.js";

const bittern = demoReeds.find(({ reed }) => reed === "Bittern")!;
const run = (...actions: readonly BenchAction[]): BenchState =>
  actions.reduce(
    (state, action) => deepFreeze(reduce(state, deepFreeze(action))),
    deepFreeze(startState(bassoonModel)),
  );
const load: BenchAction = { type: "reed-loaded", reed: "Bittern", values: bittern.readings };
const begin: BenchAction = { type: "set-started", reed: "My reed", wet: "soaked" };
const read = (feature: string, ...readings: number[]): BenchAction => ({
  type: "places-read",
  feature,
  readings: inOrder(feature, readings),
  own: "My reed",
});

describe("a reed that is not sound", () => {
  const unsound: BenchAction = { type: "sound-set", check: "tight", answer: "not" };

  test("gets no place and a reason, until it is mended or overruled", () => {
    const stopped = run(load, unsound);
    const view = viewBench(stopped, english);
    expect(view.placed).toBeUndefined();
    expect(sentenceText(view.sentence)).toContain("Seal edge or binding");
    const mended = reduce(stopped, { type: "sound-set", check: "tight", answer: "ok" });
    expect(viewBench(mended, english).placed).toBeDefined();
    const overruled = reduce(stopped, { type: "overruled-set", on: true });
    expect(viewBench(overruled, english).placed).toBeDefined();
    expect(viewBench(reduce(overruled, { type: "undo" }), english).placed).toBeUndefined();
  });

  test("says nothing of the next reed", () => {
    expect(viewBench(run(unsound, load), english).placed).toBeDefined();
  });
});

describe("readings of the sheet", () => {
  test("are all kept, their mean is used, and undo brings the one before back", () => {
    const state = run(begin, read("wings", 0.24), read("wings", 0.24, 0.27));
    expect(state.present.bench.values["wings"]).toBe(0.255);
    expect(state.present.readings["wings"]).toEqual(inOrder("wings", [0.24, 0.27]));
    expect(reduce(state, { type: "undo" }).present.readings["wings"]).toEqual(
      inOrder("wings", [0.24]),
    );
    expect("wings" in reduce(state, read("wings")).present.bench.values).toBe(false);
  });

  test("place a reed from the first three that can, never from the opening alone, and each tightens the place", () => {
    const opening = run(begin, read("openingHeight", 1.1), read("openingWidth", 11.8));
    expect(viewBench(opening, english).placed).toBeUndefined();
    let state = run(begin, read("throatWidth", 8.7), read("tipWidth", 15.3), read("spine", 0.54));
    let area = Infinity;
    for (const feature of ["bladeLength", "firstWire", "wings", "rails", "heart"]) {
      const { ellipse } = viewBench(state, english);
      const [major, minor] = ellipse!.semiAxes;
      expect(major * minor).toBeLessThan(area);
      area = major * minor;
      state = reduce(state, read(feature, bittern.readings[feature]!));
    }
  });

  test("of three and more of one place replace the gauge's error by their own scatter", () => {
    const values = Object.entries(bittern.readings).map(([id, value]) => read(id, value));
    const once = viewBench(run(begin, ...values), english).gaugeEllipse!;
    const shaky = viewBench(run(begin, ...values, read("throatWidth", 8.4, 8.7, 9)), english);
    expect(shaky.gaugeEllipse!.semiAxes[0]).toBeGreaterThan(once.semiAxes[0]);
  });

  test("a new set forgets the readings, keeps the answers on soundness, and can be taken back", () => {
    const first = run(
      begin,
      { type: "sound-set", check: "whole", answer: "ok" },
      read("heart", 0.46),
    );
    const next = reduce(first, { type: "set-started", reed: "My reed", wet: "dry" });
    expect(next.present.bench).toMatchObject({ values: {}, wet: "dry" });
    expect(next.present.sheet!.sound).toEqual({ whole: "ok" });
    expect(reduce(next, { type: "undo" }).present.bench.values).toEqual({ heart: 0.46 });
  });

  test("what an action touches is to be read again, and the old values stand as a guide", () => {
    const clip = bassoonActions.actions.find(({ id }) => id === "clipTip")!;
    const features = Object.keys(clip.effects);
    const state = run(load, { type: "reed-worked", features, own: "My reed" });
    for (const id of features) {
      expect(state.present.bench.values[id]).toBeUndefined();
      expect(state.present.sheet!.before[id]).toBe(bittern.readings[id]);
    }
    const untouched = bassoonModel.features
      .map(({ id }) => id)
      .filter((id) => !features.includes(id));
    for (const id of untouched) expect(state.present.bench.values[id]).toBe(bittern.readings[id]);
  });

  test("turning a page of the sheet is no step of undo, and undo does not turn it back", () => {
    const state = run(begin, { type: "sheet-moved", step: 4 }, read("bladeLength", 27.7), {
      type: "sheet-moved",
      step: 5,
    });
    expect(state.past).toHaveLength(2);
    const undone = reduce(state, { type: "undo" });
    expect(undone.present.sheet!.step).toBe(5);
    expect(undone.present.bench.values).toEqual({});
  });
});

describe("what a reload brings back", () => {
  const { bench, readings, sheet } = run(begin, read("wings", 0.24, 0.27), {
    type: "sheet-moved",
    step: 7,
  }).present;

  test("is the single readings and the place on the sheet", () => {
    const kept: unknown = JSON.parse(JSON.stringify({ readings, sheet }));
    expect(momentBeside(kept, bench)).toEqual({ readings, sheet });
  });

  test("is never readings whose mean is not the bench's value, nor anything else that does not fit", () => {
    const other = { ...bench, values: { wings: 0.3 } };
    expect(momentBeside({ readings }, other)).toEqual({ readings: {} });
    for (const kept of [
      null,
      3,
      "x",
      [],
      { readings: 4, sheet: [] },
      { readings: { wings: ["a"] } },
    ])
      expect(momentBeside(kept, bench)).toEqual({ readings: {} });
    const strange = momentBeside(
      { sheet: { step: -2, sound: { a: 1 }, before: { b: "c" } } },
      bench,
    );
    expect(strange.sheet).toEqual({ step: 0, sound: {}, zero: false, before: {} });
  });
});
