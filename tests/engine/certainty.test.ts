import { describe, expect, test } from "vitest";
import { chiSquareQuantile2, ellipseOf, type Matrix3 } from "../../src/engine/certainty.js";
import {
  bassoonModel,
  blendToPoint,
  certaintyEllipse,
  compileModel,
  place,
  type Blend,
  type BlendMap,
  type CertaintyOptions,
  type Frame,
  type ReedModel,
} from "../../src/lib/engine.js";
import measuring from "../../src/reed/data/measuring.json";
import { allRoundReed, gaussian } from "./mixed-reeds.js";
import { between, randomMap, seeded, type Random } from "./random-model.js";

const bassoon = compileModel(bassoonModel);
const unit: Frame = [
  [0.5, Math.sqrt(3) / 2],
  [0, 0],
  [1, 0],
];

/** Chi-square with 2 degrees of freedom, three decimals: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.4. */
const quantiles = [
  [0.5, 1.386],
  [0.9, 4.605],
  [0.95, 5.991],
  [0.99, 9.21],
] as const;

test.each(quantiles)("the chi-square quantile at %d is %d", (q, expected) => {
  expect(Math.abs(chiSquareQuantile2(q) - expected)).toBeLessThanOrEqual(0.0005 + 1e-9);
});

/** One reading of the all-round reed by the stated model: gauge, recipe, and one zero error for the dial. */
function readOnce(
  random: Random,
  map: BlendMap,
  { gaugeError = {}, recipeScatter }: CertaintyOptions,
) {
  const { model } = map;
  const scatter = recipeScatter ?? model.recipeScatter;
  const zero = model.commonGaugeError.amount * gaussian(random);
  const allRound = allRoundReed(model);
  const read = model.features.map(({ id, corners, gaugeError: usual, weight }) => {
    const all = Object.values(corners);
    const halfSpread = (Math.max(...all) - Math.min(...all)) / 2;
    const recipe = (scatter / Math.sqrt(weight)) * halfSpread * gaussian(random);
    const gauge = (gaugeError[id] ?? usual) * gaussian(random);
    const shared = model.commonGaugeError.features.includes(id) ? zero : 0;
    return [id, allRound[id]! + recipe + gauge + shared] as const;
  });
  return place(map, Object.fromEntries(read)).raw;
}

const count = 20_000;
const variants: readonly (readonly [string, BlendMap, CertaintyOptions])[] = [
  ["the whole bassoon", bassoon, {}],
  ["the gauge alone", bassoon, { recipeScatter: 0 }],
  [
    "three readings",
    compileModel(bassoonModel, { features: ["throatWidth", "tipWidth", "spine"] }),
    {},
  ],
  ["another gauge", bassoon, { gaugeError: { spine: 0.05, hinging: 0 }, recipeScatter: 0.1 }],
];

describe.each(variants)("simulated readings: %s", (_name, map, options) => {
  const random = seeded(41);
  const blends = Array.from({ length: count }, () => readOnce(random, map, options));
  const moves = blends.map((blend) => blend.map((share) => share - 1 / 3));

  test("scatter with the covariance that the engine states", () => {
    const { covariance } = certaintyEllipse(map, options);
    for (const r of [0, 1, 2] as const) {
      for (const c of [0, 1, 2] as const) {
        const found = moves.reduce((sum, move) => sum + move[r]! * move[c]!, 0) / count;
        // Standard error of a sample covariance of normal numbers: √((σ_rc² + σ_rr σ_cc)/n); four of them.
        const variance = covariance[r][c] ** 2 + covariance[r][r] * covariance[c][c];
        const allowed = 4 * Math.sqrt(variance / count);
        expect(Math.abs(found - covariance[r][c]), `row ${r}, column ${c}`).toBeLessThanOrEqual(
          allowed,
        );
      }
    }
  });

  test.each([0.5, 0.95])("lie in the ellipse of coverage %d as often as it says", (coverage) => {
    const { semiAxes, angle } = certaintyEllipse(map, { ...options, coverage });
    const inside = blends.filter((blend) => isInside(blend, semiAxes, angle)).length;
    // Standard error of a counted share: √(q(1 − q)/n); four of them.
    const allowed = 4 * Math.sqrt((coverage * (1 - coverage)) / count);
    expect(Math.abs(inside / count - coverage)).toBeLessThanOrEqual(allowed);
  });
});

function isInside(blend: Blend, [major, minor]: readonly [number, number], angle: number): boolean {
  const [[x, y], [cx, cy]] = [blendToPoint(blend, unit), blendToPoint([1 / 3, 1 / 3, 1 / 3], unit)];
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const alongMajor = cos * (x - cx) + sin * (y - cy);
  const alongMinor = -sin * (x - cx) + cos * (y - cy);
  return (alongMajor / major) ** 2 + (alongMinor / minor) ** 2 <= 1;
}

describe("the covariance and its ellipse", () => {
  test("every row of the covariance sums to 0, and it is symmetric", () => {
    for (let seed = 1; seed <= 200; seed += 1) {
      const map = seed === 1 ? bassoon : randomMap(seeded(seed), 2 + (seed % 12));
      const { covariance } = certaintyEllipse(map);
      const size = Math.max(...covariance.flat().map(Math.abs));
      covariance.forEach((row, r) => {
        expect(Math.abs(row[0] + row[1] + row[2]), `seed ${seed}`).toBeLessThanOrEqual(
          1e-14 * size,
        );
        row.forEach((value, c) => expect(value).toBeCloseTo(covariance[c]![r]!, 12));
      });
    }
  });

  const scaled = (move: Blend, variance: number): Matrix3 =>
    move.map((a) => move.map((b) => variance * a * b)) as unknown as Matrix3;

  // From low to loud is one side; half a share from low and loud each to high is the height, √¾.
  test.each<[string, Blend, number, number]>([
    ["from low to loud", [0, -1, 1], 1, 0],
    ["toward high", [1, -0.5, -0.5], Math.sqrt(0.75), Math.PI / 2],
    ["from low to high", [1, -1, 0], 1, Math.PI / 3],
    ["from loud to high", [1, 0, -1], 1, -Math.PI / 3],
  ])("scatter %s alone gives a needle in that direction", (_name, move, length, direction) => {
    const { semiAxes, angle } = ellipseOf(scaled(move, 0.04), 0.95);
    expect(semiAxes[0]).toBeCloseTo(0.2 * length * Math.sqrt(5.991464547), 9);
    // The minor axis is the square root of a rounding of 1e-17 or so.
    expect(semiAxes[1]).toBeLessThanOrEqual(1e-7);
    expect(angle).toBeCloseTo(direction, 9);
  });

  test("the angle lies in (−π/2, π/2], and the major axis is not the shorter one", () => {
    for (let seed = 1; seed <= 500; seed += 1) {
      const random = seeded(seed);
      const map = randomMap(random, 2 + (seed % 12));
      const { semiAxes, angle } = certaintyEllipse(map, { recipeScatter: between(random, 0, 1) });
      expect(angle > -Math.PI / 2 && angle <= Math.PI / 2, `seed ${seed}: ${angle}`).toBe(true);
      expect(semiAxes[0], `seed ${seed}`).toBeGreaterThanOrEqual(semiAxes[1]);
    }
  });
});

/** "wings ×4" → "wings", "opening height" → "openingHeight". */
function featureOfReading(reading: string): string {
  const words = reading.replace(/ ×\d$/, "").split(" ");
  return words.map((word, i) => (i === 0 ? word : word[0]!.toUpperCase() + word.slice(1))).join("");
}

const measured = measuring.steps
  .map(({ reading }) => featureOfReading(reading))
  .filter((id) => id !== "state");

/** The maps of the first two, three … readings, from the first that places a reed. */
function growingMaps(order: readonly string[], model: ReedModel = bassoonModel): BlendMap[] {
  return order.flatMap((_, last) => {
    try {
      return [compileModel(model, { features: order.slice(0, last + 1) })];
    } catch (error) {
      if (error instanceof RangeError) return [];
      throw error;
    }
  });
}

const areaOf = (map: BlendMap, options: CertaintyOptions): number => {
  const [major, minor] = certaintyEllipse(map, options).semiAxes;
  return Math.PI * major * minor;
};

describe("with every reading in the order of measuring", () => {
  const maps = growingMaps(measured);

  test("the order holds every feature once, the opening first and hinging last", () => {
    expect(measured.toSorted()).toEqual(bassoonModel.features.map(({ id }) => id).toSorted());
    expect([measured[0], measured.at(-1)]).toEqual(["openingHeight", "hinging"]);
    expect(maps.length).toBeGreaterThanOrEqual(11);
  });

  test("the ellipse shrinks", () => {
    const areas = maps.map((map) => areaOf(map, {}));
    areas.slice(1).forEach((area, i) => {
      expect(area, `with ${maps[i + 1]!.features.at(-1)}`).toBeLessThan(areas[i]!);
    });
  });

  test("the recipe's part of it shrinks in any order: it is the covariance of a best weighted fit", () => {
    const exact = {
      ...bassoonModel,
      commonGaugeError: { amount: 0, features: [] },
      features: bassoonModel.features.map((feature) => ({ ...feature, gaugeError: 0 })),
    };
    for (let seed = 1; seed <= 30; seed += 1) {
      const random = seeded(seed);
      const keyed = measured.map((id) => ({ id, key: random() })).toSorted((a, b) => a.key - b.key);
      const order = keyed.map(({ id }) => id);
      const areas = growingMaps(order, exact).map((map) => areaOf(map, {}));
      areas.slice(1).forEach((area, i) => {
        expect(area, `seed ${seed}, step ${i}`).toBeLessThan(areas[i]!);
      });
    }
  });

  test("by the gauge alone it would grow at some: three readings would look as sure as fourteen", () => {
    const areas = maps.map((map) => areaOf(map, { recipeScatter: 0 }));
    expect(areas.slice(1).some((area, i) => area > areas[i]!)).toBe(true);
  });

  test("the doubt in every share is at least a third smaller at the end than after three readings", () => {
    const [three, all] = [maps[0]!, bassoon].map((map) => certaintyEllipse(map).covariance);
    expect(maps[0]!.features).toHaveLength(3);
    for (const k of [0, 1, 2] as const) {
      expect(Math.sqrt(all![k][k])).toBeLessThan((2 / 3) * Math.sqrt(three![k][k]));
    }
  });
});

describe("options", () => {
  test("a smaller gauge error of one feature shrinks the ellipse, a larger one widens it", () => {
    const usual = areaOf(bassoon, {});
    expect(areaOf(bassoon, { gaugeError: { hinging: 0 } })).toBeLessThan(usual);
    expect(areaOf(bassoon, { gaugeError: { hinging: 1 } })).toBeGreaterThan(usual);
    const same = bassoonModel.features.find(({ id }) => id === "hinging")!.gaugeError;
    expect(areaOf(bassoon, { gaugeError: { hinging: same } })).toBe(usual);
  });

  test("the usual coverage is 95 % and the usual scatter the model's", () => {
    const { recipeScatter } = bassoonModel;
    expect(certaintyEllipse(bassoon, { coverage: 0.95, recipeScatter })).toEqual(
      certaintyEllipse(bassoon),
    );
  });

  test.each([0, 1, -0.1, 1.1, NaN])("a coverage of %d is refused", (coverage) => {
    expect(() => certaintyEllipse(bassoon, { coverage })).toThrow(/certaintyEllipse: coverage is/);
  });

  test("negative or endless errors and unknown features are refused by name", () => {
    const call = (options: CertaintyOptions) => () => certaintyEllipse(bassoon, options);
    expect(call({ recipeScatter: -0.1 })).toThrow(/recipeScatter is -0.1/);
    expect(call({ recipeScatter: NaN })).toThrow(/recipeScatter is NaN/);
    expect(call({ gaugeError: { spine: -0.01 } })).toThrow(/gaugeError.spine is -0.01/);
    expect(call({ gaugeError: { spine: Infinity } })).toThrow(/gaugeError.spine is Infinity/);
    expect(call({ gaugeError: { bore: 0.01 } })).toThrow(/gaugeError names feature "bore"/);
  });
});
