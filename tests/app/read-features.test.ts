import { expect, test } from "vitest";
import { reduce, startState } from "../../src/app/bench-state.js";
import { guessText, isRead, readFeatures } from "../../src/app/read-features.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { english } from "../../src/reed/catalogue.js";
import { demoReeds } from "../../src/reed/demo-reeds.js";

const { reed, readings } = demoReeds[0]!;
const loaded = reduce(startState(bassoonModel), { type: "reed-loaded", reed, values: readings });
const done = reduce(loaded, {
  type: "step-done",
  step: { action: "roundFirstWire", amount: 2 },
  readings: { openingHeight: [1.2] },
});

test("after a step only what was read again has been read; the rest is expected", () => {
  const { bench } = done.present;
  expect(readFeatures(loaded.present.bench)).toHaveLength(14);
  expect(isRead(bench, "openingHeight")).toBe(true);
  expect(isRead(bench, "firstWire")).toBe(false);
  expect(readFeatures(bench)).toHaveLength(11);
  const guess = (id: string): string => guessText(done.present, bassoonModel, id, english);
  expect(guess("firstWire")).toBe(`expected: ${english.number(bench.values["firstWire"]!, 2)}`);
  expect(guess("openingHeight")).toBe("");
});

test("what was read before something was done to the reed is told as that", () => {
  const worked = reduce(loaded, { type: "reed-worked", features: ["spine"], own: "My reed" });
  expect(guessText(worked.present, bassoonModel, "spine", english)).toMatch(/^before: 0\.\d+ mm$/);
  expect(isRead(worked.present.bench, "spine")).toBe(false);
});
