import { expect, test } from "vitest";
import { assumed } from "../../src/acoustics/assumptions.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { allRoundValues } from "../../src/reed/bench.js";
import { demoReeds } from "../../src/reed/demo-reeds.js";
import { filledIn, lipMechanics, lipRecipe, orNothing } from "../../src/reed/lip-reed.js";

test("what is not measured is as on the all-round reed, and named where the model reads it", () => {
  const { heart, secondWire, ...others } = allRoundValues(bassoonModel);
  expect(lipRecipe(bassoonModel, { ...others, tip: 0.09 })).toEqual({
    ...others,
    tip: 0.09,
    heart,
    secondWire,
  });
  expect(filledIn(bassoonModel, others)).toEqual(["heart"]);
  expect(filledIn(bassoonModel, {})).toHaveLength(bassoonModel.features.length - 1);
});

test("every demo reed has mechanics; a recipe that the model cannot take has none", () => {
  for (const { readings } of demoReeds) {
    expect(lipMechanics(bassoonModel, readings, assumed)!.resonance).toBeGreaterThan(1000);
  }
  expect(lipMechanics(bassoonModel, { throatWidth: 1 }, assumed)).toBeUndefined();
  expect(lipMechanics(bassoonModel, { tip: 0 }, assumed)).toBeUndefined();
});

test("only a refusal is nothing: another error stays one", () => {
  expect(() =>
    orNothing(() => {
      throw new TypeError("a fault of the code");
    }),
  ).toThrow(TypeError);
});
