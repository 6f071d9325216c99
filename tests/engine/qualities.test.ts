import { describe, expect, test } from "vitest";
import {
  bassoonQualities,
  qualitiesAt,
  qualityAt,
  qualityPlaces,
  triangleShapes,
  type Blend,
  type SevenValues,
} from "../../src/lib/engine.js";
import { randomShares } from "./mixed-reeds.js";
import { between, seeded } from "./random-model.js";

const nodes: readonly Blend[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
  [0.5, 0.5, 0],
  [0, 0.5, 0.5],
  [0.5, 0, 0.5],
];
const centre: Blend = [1 / 3, 1 / 3, 1 / 3];
const places = [...nodes, centre];
const inside = (random: () => number): Blend => {
  const [a, b, c] = [random(), random(), random()];
  return [a / (a + b + c), b / (a + b + c), c / (a + b + c)];
};

describe("shape functions of the six-node triangle (finite-element handbooks)", () => {
  test.each(nodes.map((node, i) => ({ node, i })))(
    "node $i: 1 there, 0 at the others",
    ({ node, i }) => {
      triangleShapes(node)
        .slice(0, 6)
        .forEach((shape, k) => expect(shape + 0).toBe(k === i ? 1 : 0));
    },
  );

  test("the six sum to 1 everywhere, outside too", () => {
    const random = seeded(1);
    for (let i = 0; i < 200; i += 1) {
      const shapes = triangleShapes(randomShares(random)).slice(0, 6);
      expect(shapes.reduce((sum, shape) => sum + shape, 0)).toBeCloseTo(1, 12);
    }
  });

  test("the bubble is 1 at the centre and 0 on the border", () => {
    expect(triangleShapes(centre)[6]).toBeCloseTo(1, 14);
    expect(triangleShapes([0.3, 0.7, 0])[6]).toBe(0);
  });
});

describe("qualities over the triangle", () => {
  test("the seven values come back", () => {
    for (const { id, values } of bassoonQualities.qualities) {
      places.forEach((blend, i) => {
        const found = qualitiesAt(bassoonQualities, blend).find((one) => one.id === id)!;
        expect(found.value).toBeCloseTo(values[i]!, 12);
        expect(qualityAt(values, blend)).toBe(found.value);
      });
    }
  });

  test("a quadratic given at the seven places comes back everywhere", () => {
    const random = seeded(2);
    for (let i = 0; i < 50; i += 1) {
      const c = Array.from({ length: 6 }, () => between(random, -5, 5));
      const quadratic = ([a, b]: Blend): number =>
        c[0]! + c[1]! * a + c[2]! * b + c[3]! * a * a + c[4]! * a * b + c[5]! * b * b;
      const values = places.map(quadratic) as unknown as SevenValues;
      for (let k = 0; k < 20; k += 1) {
        const blend = inside(random);
        expect(qualityAt(values, blend)).toBeCloseTo(quadratic(blend), 11);
      }
    }
  });

  test("outside the triangle the nearest place inside counts", () => {
    expect(qualitiesAt(bassoonQualities, [1.4, -0.2, -0.2])).toEqual(
      qualitiesAt(bassoonQualities, [1, 0, 0]),
    );
  });

  test.each([
    [() => qualitiesAt({} as never, centre), /qualities is an object without qualities/],
    [() => qualitiesAt(bassoonQualities, [NaN, 0, 1]), /is NaN/],
    [() => qualityAt([1, 2] as never, centre), /values is \[1, 2\]; allowed: 7/],
    [() => qualityAt([1, 2, 3, 4, 5, 6, NaN], centre), /values\[6\] is NaN/],
  ])("a wrong argument is named %#", (call, message) => {
    expect(call).toThrow(message);
  });
});

// Common practice, no source; said in the file's own words.
describe("facts of the trade behind the file", () => {
  const value = (id: string, place: (typeof qualityPlaces)[number]): number =>
    bassoonQualities.qualities.find((one) => one.id === id)!.values[qualityPlaces.indexOf(place)]!;
  const corners = ["high", "low", "loud"] as const;

  test("the high-register reed speaks better up high than the all-round reed", () => {
    expect(value("highEntries", "high")).toBeGreaterThan(value("highEntries", "centre"));
  });

  test("the soft-and-low reed speaks better down low", () => {
    expect(value("lowEntries", "low")).toBeGreaterThan(value("lowEntries", "centre"));
  });

  test("the full-volume reed plays loudest of all", () => {
    for (const place of qualityPlaces.filter((one) => one !== "loud"))
      expect(value("loudest", "loud")).toBeGreaterThan(value("loudest", place));
  });

  test.each(["steadyPitch", "evenTone", "dynamicRange"])(
    "in %s the all-round reed is best against the three corner reeds",
    (id) => {
      for (const corner of corners) expect(value(id, "centre")).toBeGreaterThan(value(id, corner));
    },
  );

  test("and second best at nearly everything else", () => {
    const others = bassoonQualities.qualities.filter(
      ({ id }) => !["steadyPitch", "evenTone", "dynamicRange"].includes(id),
    );
    const ranks = others.map(
      ({ id }) => corners.filter((corner) => value(id, corner) > value(id, "centre")).length,
    );
    expect(others).toHaveLength(5);
    expect(ranks.filter((rank) => rank === 1).length).toBeGreaterThanOrEqual(4);
  });
});
