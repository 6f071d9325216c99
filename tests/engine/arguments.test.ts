import { describe, expect, test } from "vitest";
import * as engine from "../../src/lib/engine.js";

// Called as a script without types would call them.
const { bassoonModel, bassoonActions, compileModel } = engine;
const loose = engine as unknown as Record<string, (...given: unknown[]) => unknown>;
const map = compileModel(bassoonModel);
const values = Object.fromEntries(
  bassoonModel.features.map(({ id, corners }) => [
    id,
    (corners.high + corners.low + corners.loud) / 3,
  ]),
);
const frame = [
  [0, 0],
  [4, 0],
  [0, 4],
];

describe("a forgotten or wrong argument is named, with its value and what was allowed", () => {
  test.each([
    ["blendToPoint", [undefined, frame], /blend is undefined; allowed: 3 finite/],
    ["blendToPoint", [[1, 0, NaN], frame], /blend\[2\] is NaN/],
    ["pointToBlend", [[0, 0], undefined], /frame is undefined; allowed: three points/],
    ["pointToBlend", [[1e308, -1e308], frame], /pointToBlend: point .* allowed/],
    [
      "blendToPoint",
      [
        [1e308, -1e308, 1],
        [
          [1e9, 0],
          [-1e9, 0],
          [0, 1e9],
        ],
      ],
      /blendToPoint: blend .* allowed/,
    ],
    ["blendsToPoints", [undefined, frame], /shares is undefined; allowed: a Float64Array/],
    ["blendsToPoints", [[1, 0, 0], frame], /shares is \[1, 0, 0\]; allowed: a Float64Array/],
    ["nearestBlend", [undefined], /raw is undefined/],
    ["compileModel", [null], /model is null; allowed: an object/],
    [
      "compileModel",
      [bassoonModel, { features: "spine" }],
      /features is "spine"; allowed: an array/,
    ],
    ["compileModel", [bassoonModel, null], /options is null/],
    ["place", [map], /values is undefined; allowed: an object/],
    ["place", [undefined, values], /map is undefined/],
    ["place", [map, 5], /values is 5; allowed: an object/],
    ["place", [map, { ...values, spine: "0.5" }], /"spine" is "0.5"; allowed: a finite number/],
    ["placeMany", [map, [1, 2]], /rows is \[1, 2\]; allowed: a Float64Array/],
    ["pulls", [map, null], /values is null/],
    ["place", [bassoonModel, values], /map is an object without mapped; allowed: a map from/],
    ["ratioPull", [{}, "heartToWings"], /map is an object without mapped/],
    ["certaintyEllipse", [], /map is undefined/],
    ["certaintyEllipse", [map, { gaugeError: null }], /gaugeError is null/],
    ["certaintyEllipse", [map, { recipeScatter: 1e200 }], /recipeScatter is 1e\+200; allowed/],
    ["certaintyEllipse", [map, { gaugeError: { spine: 1e200 } }], /gaugeError\.spine is 1e\+200/],
    ["finishingFreedom", [bassoonModel], /values is undefined/],
    ["featureReach", [map, values], /freedom is undefined; allowed: an object/],
    [
      "featureReach",
      [map, values, { spine: { max: "abc" } }],
      /freedom\.spine\.max is "abc"; allowed: a number/,
    ],
    ["featureReach", [map, values, { spine: null }], /freedom\.spine is null/],
    [
      "solveFor",
      [map, values, [1, 0, 0], { spine: { mn: 3 } }],
      /freedom\.spine has "mn"; allowed: min, max, locked/,
    ],
    [
      "solveFor",
      [map, values, [1, 0, 0], { spine: { locked: "yes" } }],
      /locked is "yes"; allowed: true or false/,
    ],
    [
      "solveFor",
      [map, values, [1, 0, 0], {}, { reluctance: { spine: "1" } }],
      /reluctance\.spine is "1"/,
    ],
    ["solveFor", [map, { ...values, spine: 1e308 }, [1, 0, 0], {}], /"spine" is 1e\+308; allowed/],
    ["actionReach", [map, values, undefined, {}], /actions is undefined/],
    ["actionReach", [map, values, {}, {}], /actions is an object without actions/],
    [
      "actionReach",
      [map, values, bassoonActions, { throatWidth: { min: NaN } }],
      /freedom\.throatWidth\.min is NaN/,
    ],
  ] as const)("%s %#", (name, given, message) => {
    expect(() => loose[name]!(...given)).toThrow(message);
    let caught: unknown;
    try {
      loose[name]!(...given);
    } catch (error) {
      caught = error;
    }
    expect(caught instanceof RangeError || caught instanceof TypeError).toBe(true);
  });

  test("a bad value outside a partial map is refused too, where an action touches it", () => {
    const small = compileModel(bassoonModel, { features: ["throatWidth", "tipWidth", "spine"] });
    expect(() => engine.actionReach(small, { ...values, wings: NaN }, bassoonActions, {})).toThrow(
      /"wings" is NaN/,
    );
  });

  test("weights of any size give the same map: only their proportions count", () => {
    const tiny = {
      ...bassoonModel,
      features: bassoonModel.features.map((feature) => ({
        ...feature,
        weight: feature.weight * 1e-200,
      })),
    };
    engine
      .pulls(compileModel(tiny))
      .forEach(({ perUnit }, j) =>
        perUnit.forEach((part, k) =>
          expect(part).toBeCloseTo(engine.pulls(map)[j]!.perUnit[k]!, 12),
        ),
      );
  });

  test.each([1e160, 1e-200])("a sound frame of size %d is not called flat", (size) => {
    const [a, b, c] = engine.pointToBlend(
      [size, size],
      [
        [0, 0],
        [4 * size, 0],
        [0, 4 * size],
      ],
    );
    expect([a, b, c].map((share) => Math.round(share * 1e12) / 1e12)).toEqual([0.5, 0.25, 0.25]);
  });
});
