import { compileModel, type BlendMap, type Feature, type ReedModel } from "../../src/lib/engine.js";

/** A stream of numbers in [0, 1). */
export type Random = () => number;

/** A seeded stream (mulberry32): the same numbers in every run, so that a failing case can be named by its seed. */
export function seeded(seed: number): Random {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

export const between = (random: Random, low: number, high: number): number =>
  low + (high - low) * random();

function randomFeature(random: Random, index: number): Feature {
  // Sizes from hundredths to hundreds, so that no unit is special.
  const size = 10 ** between(random, -2, 2);
  const corner = (): number => size * between(random, 1, 2);
  return {
    id: `feature${index}`,
    label: `Feature ${index}`,
    group: "all",
    unit: "mm",
    decimals: 3,
    step: size / 100,
    min: size * between(random, 0.2, 0.9),
    max: size * between(random, 2.1, 3),
    gaugeError: size / 50,
    corners: { high: corner(), low: corner(), loud: corner() },
    weight: between(random, 0.2, 2),
    howToMeasure: "",
    finishing: "both",
  };
}

/** A made-up model with `count` features. */
export function randomModel(random: Random, count: number): ReedModel {
  return {
    id: "random",
    label: "Random",
    purposes: [
      { id: "high", label: "High" },
      { id: "low", label: "Low" },
      { id: "loud", label: "Loud" },
    ],
    groups: [{ id: "all", label: "All" }],
    recipeScatter: 0.5,
    commonGaugeError: { amount: 0, features: [] },
    features: Array.from({ length: count }, (_, index) => randomFeature(random, index)),
    ratios: [],
  };
}

/** A compiled made-up model whose features separate the purposes: others are drawn again. */
export function randomMap(random: Random, count: number): BlendMap {
  for (let tries = 0; tries < 1000; tries += 1) {
    try {
      return compileModel(randomModel(random, count));
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
    }
  }
  throw new Error(`randomMap: no separable model with ${count} features in 1000 tries`);
}

/** A value for every feature, within its range. */
export function randomValues(random: Random, model: ReedModel): Record<string, number> {
  return Object.fromEntries(
    model.features.map(({ id, min, max }) => [id, between(random, min, max)]),
  );
}
