import type { LipRecipe } from "../../src/acoustics/reed-mechanics.js";
import type { Blend } from "../../src/engine/blend.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { mixedReed } from "../engine/mixed-reeds.js";
import { randomValues, type Random } from "../engine/random-model.js";

/** A reed mixed from the corner reeds. */
export function lipReed(blend: Blend): LipRecipe {
  return mixedReed(bassoonModel, blend) as unknown as LipRecipe;
}

/** Every feature somewhere in its practical range. */
export function randomLipRecipe(random: Random): LipRecipe {
  return randomValues(random, bassoonModel) as unknown as LipRecipe;
}

export const allRoundLip = lipReed([1 / 3, 1 / 3, 1 / 3]);
export const cornerLips = {
  high: lipReed([1, 0, 0]),
  low: lipReed([0, 1, 0]),
  loud: lipReed([0, 0, 1]),
};
