import { describe, expect, test } from "vitest";
import { tryCompile } from "../../src/engine/compile.js";
import { bassoonModel, compileModel, pulls, type ReedModel } from "../../src/lib/engine.js";
import { greatestGap } from "./mixed-reeds.js";
import { randomMap, seeded } from "./random-model.js";

const whole = compileModel(bassoonModel);
const shapeOnly = ["bladeLength", "tipWidth", "throatWidth"];
const pullOf = (features: readonly string[] | undefined, id: string): readonly number[] => {
  const map = features ? compileModel(bassoonModel, { features }) : whole;
  return pulls(map).find(({ feature }) => feature === id)?.perUnit ?? [];
};

test("a try is undefined for features that cannot separate the purposes, and for nothing else", () => {
  expect(tryCompile(bassoonModel, { features: ["openingHeight", "openingWidth"] })).toBeUndefined();
  const features = ["throatWidth", "tipWidth", "spine"];
  expect(tryCompile(bassoonModel, { features })?.features).toEqual(features);
  expect(() => tryCompile(bassoonModel, { features: ["reedness"] })).toThrow(
    /"reedness" is not in/,
  );
  const flat = { ...bassoonModel.features[0]!, corners: { high: 1, low: 1, loud: 1 } };
  const [, ...others] = bassoonModel.features;
  expect(() => tryCompile({ ...bassoonModel, features: [flat, ...others] })).toThrow(RangeError);
});

describe("features that cannot separate the purposes are an error that names them", () => {
  test("opening height and width alone", () => {
    const features = ["openingHeight", "openingWidth"];
    expect(() => compileModel(bassoonModel, { features })).toThrow(RangeError);
    expect(() => compileModel(bassoonModel, { features })).toThrow(
      /openingHeight, openingWidth cannot separate.*condition number \d+; allowed: at most 50/,
    );
  });

  test("one feature alone", () => {
    for (const { id } of bassoonModel.features) {
      expect(() => compileModel(bassoonModel, { features: [id] }), id).toThrow(
        `features ${id} cannot separate`,
      );
    }
  });

  test("no feature at all", () => {
    expect(() => compileModel(bassoonModel, { features: [] })).toThrow(/\(none\) cannot separate/);
  });

  test("a feature and the same in inches", () => {
    const tip = bassoonModel.features.find(({ id }) => id === "tip");
    if (!tip) throw new Error("the bassoon model has no tip");
    const { high, low, loud } = tip.corners;
    const corners = { high: high / 25.4, low: low / 25.4, loud: loud / 25.4 };
    const twins = { ...bassoonModel, features: [tip, { ...tip, id: "tipInInches", corners }] };
    expect(() => compileModel(twins)).toThrow(/tip, tipInInches cannot separate/);
  });
});

describe("a wrong choice of features is an error", () => {
  test("an unknown feature is named, with what was allowed", () => {
    const features = ["spine", "bore"];
    expect(() => compileModel(bassoonModel, { features })).toThrow(RangeError);
    expect(() => compileModel(bassoonModel, { features })).toThrow(
      /"bore" is not in model "bassoon".*allowed: bladeLength,.*openingWidth/,
    );
  });

  test("a feature named twice", () => {
    const features = ["spine", "tipWidth", "spine"];
    expect(() => compileModel(bassoonModel, { features })).toThrow(/"spine" is named twice/);
  });

  test("a feature with three equal corner values", () => {
    const features = bassoonModel.features.map((one) =>
      one.id === "tip" ? { ...one, corners: { high: 0.1, low: 0.1, loud: 0.1 } } : one,
    );
    const model: ReedModel = { ...bassoonModel, features };
    expect(() => compileModel(model)).toThrow(/"tip" has the corner values 0.1, 0.1, 0.1/);
  });
});

describe("a compiled map", () => {
  test("has the features in the order asked for, or in the model's", () => {
    const features = ["spine", "throatWidth", "tipWidth"];
    expect(compileModel(bassoonModel, { features }).features).toEqual(features);
    expect(whole.features).toEqual(bassoonModel.features.map(({ id }) => id));
  });

  test("knows the condition number of G: the ratio of its eigenvalues", () => {
    for (let seed = 1; seed <= 100; seed += 1) {
      const map = randomMap(seeded(seed), 2 + (seed % 12));
      // In share space G is Σ w d dᵀ with one eigenvalue 0; trace and sum of squares give the other two.
      const cell = (r: number, c: number): number =>
        map.model.features.reduce((sum, { corners: { high, low, loud }, weight }) => {
          const all = [high, low, loud];
          const m = (high + low + loud) / 3;
          const s = (Math.max(...all) - Math.min(...all)) / 2;
          return sum + (weight * (all[r]! - m) * (all[c]! - m)) / s ** 2;
        }, 0);
      const trace = cell(0, 0) + cell(1, 1) + cell(2, 2);
      const squares = [0, 1, 2].flatMap((r) => [0, 1, 2].map((c) => cell(r, c) ** 2));
      const product = (trace ** 2 - squares.reduce((sum, one) => sum + one, 0)) / 2;
      const swing = Math.sqrt(Math.max(0, trace ** 2 / 4 - product));
      const expected = (trace / 2 + swing) / (trace / 2 - swing);
      // The lesser eigenvalue is a difference of numbers up to 50 times as large.
      expect(map.condition / expected, `seed ${seed}`).toBeCloseTo(1, 10);
      expect(map.condition).toBeGreaterThanOrEqual(1);
      expect(map.condition).toBeLessThanOrEqual(50);
    }
  });

  test("has pulls that sum to 0", () => {
    for (let seed = 1; seed <= 100; seed += 1) {
      const map = randomMap(seeded(seed), 2 + (seed % 12));
      for (const { pull } of map.mapped) {
        expect(Math.abs(pull[0] + pull[1] + pull[2]), `seed ${seed}`).toBeLessThanOrEqual(1e-13);
      }
    }
  });
});

describe("pulls depend on what counts", () => {
  test("with shape features only, tip width's pull for loud changes its sign", () => {
    const [withAll, withShape] = [pullOf(undefined, "tipWidth"), pullOf(shapeOnly, "tipWidth")];
    expect(Math.sign(withAll[2] ?? NaN)).toBe(1);
    expect(Math.sign(withShape[2] ?? NaN)).toBe(-1);
    expect(greatestGap(withAll, withShape)).toBeGreaterThan(0.01);
  });
});
