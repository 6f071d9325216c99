import { describe, expect, test } from "vitest";
import {
  bladeThickness,
  bladeWidth,
  gaugePlaces,
  type BladeRecipe,
} from "../../src/acoustics/blade.js";
import { monotoneCurve } from "../../src/acoustics/monotone-curve.js";
import { demoReeds } from "../../src/reed/demo-reeds.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { seeded } from "../engine/random-model.js";

const recipes = demoReeds.map(({ reed, readings }) => ({
  reed,
  recipe: readings as unknown as BladeRecipe,
}));
const side = (recipe: BladeRecipe, x: number): number =>
  1 - (2 * gaugePlaces.fromEdge) / 1000 / bladeWidth(recipe, x);

describe("the blade's surface", () => {
  test.each(recipes)("of $reed passes through every reading at its gauge place", ({ recipe }) => {
    const at = (mm: number, u: number): number => bladeThickness(recipe, mm / 1000, u) * 1000;
    // Nothing but rounding stands between a curve and its knots.
    expect(at(1, 0)).toBeCloseTo(recipe.tip, 12);
    expect(at(8, 0)).toBeCloseTo(recipe.heart, 12);
    expect(at(14, 0)).toBeCloseTo(recipe.spine, 12);
    expect(at(24, 0)).toBeCloseTo(recipe.spine + recipe.backRise, 12);
    expect(at(8, side(recipe, 0.008))).toBeCloseTo(recipe.wings, 12);
    expect(at(14, -side(recipe, 0.014))).toBeCloseTo(recipe.rails, 12);
    expect(at(0, 0)).toBeCloseTo(0.8 * recipe.tip, 12);
  });

  test("never overshoots the readings around it and never gets thinner than 0.03 mm, whatever the recipe", () => {
    for (let seed = 1; seed <= 300; seed += 1) {
      const random = seeded(seed);
      const readings = Object.fromEntries(
        bassoonModel.features.map(({ id, min, max }) => [id, min + random() * (max - min)]),
      ) as unknown as BladeRecipe;
      const { tip, heart, spine, backRise, bladeLength } = readings;
      const bounds = [
        [0, 1, 0.8 * tip, tip],
        [1, 8, tip, heart],
        [8, 14, heart, spine],
        [14, bladeLength, spine, spine + backRise],
      ] as const;
      for (const [from, to, a, b] of bounds) {
        for (let i = 0; i <= 20; i += 1) {
          const mm = bladeThickness(readings, (from + ((to - from) * i) / 20) / 1000, 0) * 1000;
          expect(mm, `seed ${seed}`).toBeGreaterThanOrEqual(Math.max(0.03, Math.min(a, b)) - 1e-12);
          expect(mm, `seed ${seed}`).toBeLessThanOrEqual(Math.max(a, b) + 1e-12);
          const edge = bladeThickness(readings, (from + ((to - from) * i) / 20) / 1000, 1) * 1000;
          expect(edge, `seed ${seed}`).toBeGreaterThanOrEqual(0.03 - 1e-12);
        }
      }
    }
  });

  test("is the same on both sides and has no step", () => {
    const { recipe } = recipes[0]!;
    for (let x = 0; x <= 0.0277; x += 0.0001) {
      expect(bladeThickness(recipe, x, 0.6)).toBe(bladeThickness(recipe, x, -0.6));
      // The steepest usual place, tip to heart, rises by a tenth of its run at most: 10 µm in 0.1 mm.
      expect(
        Math.abs(bladeThickness(recipe, x + 0.0001, 0) - bladeThickness(recipe, x, 0)),
      ).toBeLessThan(1.2e-5);
    }
  });

  test("names a reading that is missing", () => {
    const { recipe } = recipes[0]!;
    expect(() => bladeThickness({ ...recipe, spine: NaN }, 0, 0)).toThrow(/spine is NaN/);
  });
});

test("the width runs from the tip's to 1 mm over the throat's, and is waisted between", () => {
  const { recipe } = recipes[0]!;
  const mm = (x: number): number => bladeWidth(recipe, x / 1000) * 1000;
  expect(mm(0)).toBeCloseTo(recipe.tipWidth, 12);
  expect(mm(recipe.bladeLength)).toBeCloseTo(recipe.throatWidth + 1, 12);
  const straight = (recipe.tipWidth + recipe.throatWidth + 1) / 2;
  expect(mm(recipe.bladeLength / 2)).toBeLessThan(straight);
});

test("a monotone curve refuses knots that do not rise", () => {
  expect(() => monotoneCurve([[0, 1]])).toThrow(RangeError);
  expect(() =>
    monotoneCurve([
      [0, 1],
      [0, 2],
    ]),
  ).toThrow(/two or more, rising/);
});
