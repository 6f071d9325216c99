import { expect, test } from "vitest";
import { reduce, startState, type BenchAction } from "../../src/app/bench-state.js";
import { wayBetween } from "../../src/app/way-between.js";
import { compileModel } from "../../src/engine/compile.js";
import { place } from "../../src/engine/place.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
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

test("a loaded reed is reached along the pulls of the four groups, from where the point was", () => {
  const next = reduce(start, load);
  const way = wayBetween(start, next);
  expect(way).toHaveLength(5);
  expect(way[0]).toEqual(place(map, start.present.bench.values).raw);
  expect(way.at(-1)).toEqual(place(map, bittern.readings).raw);
  const back = reduce(next, { type: "undo" });
  expect(wayBetween(next, back).at(-1)).toEqual(way[0]);
});

test("a typed number is a way of one leg; a slider in a hand and a change of the view are none", () => {
  expect(wayBetween(start, reduce(start, set(0.5)))).toHaveLength(2);
  expect(wayBetween(start, reduce(start, set(0.5, "slider-spine-1")))).toEqual([]);
  expect(wayBetween(start, reduce(start, { type: "unit-set", unit: "in" }))).toEqual([]);
});

test("places of different features are no way apart: the point jumps", () => {
  expect(wayBetween(start, reduce(start, set(undefined)))).toEqual([]);
});
