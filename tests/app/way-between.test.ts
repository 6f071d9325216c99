import { expect, test } from "vitest";
import { reduce, startState, type BenchAction } from "../../src/app/bench-state.js";
import { wayBetween } from "../../src/app/way-between.js";
import { compileModel } from "../../src/engine/compile.js";
import { place } from "../../src/engine/place.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { shownValues } from "../../src/reed/tried.js";
import { demoReeds } from "../../src/reed/demo-reeds.js";

const start = startState(bassoonModel);
const map = compileModel(bassoonModel);
const bittern = demoReeds.find(({ reed }) => reed === "Bittern")!;
const load: BenchAction = { type: "reed-loaded", reed: "Bittern", values: bittern.readings };
const set = (value: number | undefined, gesture?: string): BenchAction => ({
  type: "value-set",
  feature: "spine",
  value,
  ...(gesture ? { gesture } : {}),
});

test("nothing travels from one reed to another", () => {
  const next = reduce(start, load);
  expect(wayBetween(start, next)).toEqual([]);
  expect(wayBetween(next, reduce(next, { type: "undo" }))).toEqual([]);
});

test("what was tried is left along the pulls of its groups, to where the reed is", () => {
  const changes = [
    { feature: "spine", change: 0.05 },
    { feature: "bladeLength", change: -0.5 },
  ];
  const loaded = reduce(start, load);
  const tried = reduce(loaded, { type: "stand-in-tried", what: "pair a", changes });
  const way = wayBetween(tried, reduce(tried, { type: "as-measured" }));
  expect(way).toHaveLength(3);
  expect(way[0]).toEqual(place(map, shownValues(tried.present.bench)).raw);
  expect(way.at(-1)).toEqual(place(map, bittern.readings).raw);
});

test("a typed number is a way of one leg; a slider in a hand and a change of the view are none", () => {
  expect(wayBetween(start, reduce(start, set(0.5)))).toHaveLength(2);
  expect(wayBetween(start, reduce(start, set(0.5, "slider-spine-1")))).toEqual([]);
  expect(wayBetween(start, reduce(start, { type: "unit-set", unit: "in" }))).toEqual([]);
});

test("places of different features are no way apart: the point jumps", () => {
  expect(wayBetween(start, reduce(start, set(undefined)))).toEqual([]);
});
