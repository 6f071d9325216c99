import { describe, expect, test } from "vitest";
import {
  bassoonModel,
  compileModel,
  place,
  pulls,
  ratioPull,
  type BlendMap,
  type ReedModel,
} from "../../src/lib/engine.js";
import { allRoundReed, greatestGap } from "./mixed-reeds.js";
import { between, randomMap, randomValues, seeded } from "./random-model.js";

const bassoon = compileModel(bassoonModel);

const cases = Array.from({ length: 150 }, (_, i) => {
  const random = seeded(i + 1);
  const map = i % 3 === 0 ? bassoon : randomMap(random, 2 + Math.floor(16 * random()));
  return { seed: i + 1, map, random, values: randomValues(random, map.model) };
});

/** How far the point moves, share by share. */
function movement(map: BlendMap, from: Record<string, number>, to: Record<string, number>) {
  const [before, after] = [place(map, from).raw, place(map, to).raw];
  return after.map((share, k) => share - (before[k] ?? NaN));
}

describe("a feature's pull", () => {
  test("per unit is how far the point moves when that feature alone moves", () => {
    for (const { seed, map, random, values } of cases) {
      for (const { feature, perUnit } of pulls(map)) {
        const { min, max } = map.model.features.find(({ id }) => id === feature)!;
        const change = (max - min) * between(random, 0.2, 1);
        const moved = { ...values, [feature]: values[feature]! + change };
        const expected = movement(map, values, moved);
        const scaled = perUnit.map((part) => part * change);
        // The map is affine, so a large step is exact but for rounding of shares of up to a few tens.
        expect(greatestGap(scaled, expected), `seed ${seed}: ${feature}`).toBeLessThanOrEqual(
          1e-12,
        );
      }
    }
  });

  test("sums to 0, and so does the present pull", () => {
    for (const { seed, map, values } of cases) {
      for (const { perUnit, now } of pulls(map, values)) {
        for (const triple of [perUnit, now]) {
          const size = Math.max(...triple.map(Math.abs));
          const sum = Math.abs(triple[0] + triple[1] + triple[2]);
          expect(sum, `seed ${seed}`).toBeLessThanOrEqual(1e-15 * size + 1e-300);
        }
      }
    }
  });

  test("laid head to tail from the centre, the present pulls end at the reed's point", () => {
    for (const { seed, map, values } of cases) {
      const end = [1 / 3, 1 / 3, 1 / 3];
      for (const { now } of pulls(map, values)) now.forEach((part, k) => (end[k]! += part));
      expect(greatestGap(end, place(map, values).raw), `seed ${seed}`).toBeLessThanOrEqual(1e-12);
    }
  });

  test("is 0 now for the all-round reed, and without values", () => {
    for (const { now } of pulls(bassoon)) expect(now).toEqual([0, 0, 0]);
    for (const { now } of pulls(bassoon, allRoundReed(bassoonModel))) {
      expect(Math.max(...now.map(Math.abs))).toBeLessThanOrEqual(1e-14);
    }
  });

  test("comes in the map's order", () => {
    const features = ["spine", "throatWidth", "tipWidth"];
    const map = compileModel(bassoonModel, { features });
    expect(pulls(map).map(({ feature }) => feature)).toEqual(features);
  });

  test("of a reed with a missing value is an error that names the feature", () => {
    expect(() => pulls(bassoon, { spine: 0.5 })).toThrow(
      /pulls: no value for feature "bladeLength"/,
    );
    const broken = { ...allRoundReed(bassoonModel), rails: NaN };
    expect(() => pulls(bassoon, broken)).toThrow(/pulls: feature "rails" is NaN/);
  });
});

describe("a ratio's pull", () => {
  test("is what both thicknesses do when they change by one small share, opposite ways", () => {
    for (let seed = 1; seed <= 100; seed += 1) {
      const random = seeded(seed);
      const plain = randomMap(random, 3 + (seed % 10)).model;
      const ratio = { id: "ratio", label: "Ratio", of: "feature0", to: "feature2" };
      const model: ReedModel = { ...plain, ratios: [ratio] };
      const map = compileModel(model);
      const allRound = allRoundReed(model);
      const share = 0.01;
      const moved = {
        ...allRound,
        feature0: allRound["feature0"]! * (1 + share),
        feature2: allRound["feature2"]! * (1 - share),
      };
      const expected = movement(map, allRound, moved).map((part) => part / share);
      // Corner values differ by as little as a thousandth of the mean, so pulls reach thousands.
      const size = Math.max(1, ...expected.map(Math.abs));
      const gap = greatestGap(ratioPull(map, "ratio"), expected) / size;
      expect(gap, `seed ${seed}`).toBeLessThanOrEqual(1e-9);
    }
  });

  test("of an unknown ratio, or with a feature that was left out, is an error that says so", () => {
    expect(() => ratioPull(bassoon, "tipToTail")).toThrow(
      /ratio "tipToTail" is not in the model; allowed: heartToWings, spineToRails/,
    );
    const map = compileModel(bassoonModel, { features: ["spine", "tipWidth", "throatWidth"] });
    expect(() => ratioPull(map, "spineToRails")).toThrow(RangeError);
    expect(() => ratioPull(map, "spineToRails")).toThrow(/needs feature "rails"/);
  });
});
