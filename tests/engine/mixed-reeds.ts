import type { Blend, ReedModel } from "../../src/lib/engine.js";
import { between, type Random } from "./random-model.js";

/** The reed mixed from the three corner reeds, Σ share · corner. */
export function mixedReed(model: ReedModel, [high, low, loud]: Blend): Record<string, number> {
  return Object.fromEntries(
    model.features.map(({ id, corners }) => [
      id,
      high * corners.high + low * corners.low + loud * corners.loud,
    ]),
  );
}

/** Every feature at the mean of its corner values. */
export function allRoundReed(model: ReedModel): Record<string, number> {
  return mixedReed(model, [1 / 3, 1 / 3, 1 / 3]);
}

/** Shares of any sign that sum to 1. */
export function randomShares(random: Random, low = -2, high = 2): Blend {
  const [a, b] = [between(random, low, high), between(random, low, high)];
  return [a, b, 1 - a - b];
}

/** A normal number of mean 0 and standard deviation 1 (Box and Muller 1958, Ann. Math. Statist. 29). */
export function gaussian(random: Random): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

/** The greatest difference between two lists of numbers; NaN when one of them holds NaN. */
export function greatestGap(a: ArrayLike<number>, b: ArrayLike<number>): number {
  if (a.length !== b.length) return Infinity;
  return Math.max(0, ...Array.from(a, (value, i) => Math.abs(value - (b[i] ?? NaN))));
}
