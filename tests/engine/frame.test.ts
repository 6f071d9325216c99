import { describe, expect, test } from "vitest";
import { withShare } from "../../src/engine/blend.js";
import {
  blendsToPoints,
  blendToPoint,
  pointToBlend,
  type Blend,
  type Frame,
  type Point,
} from "../../src/lib/engine.js";
import { greatestGap, randomShares } from "./mixed-reeds.js";
import { between, seeded, type Random } from "./random-model.js";

const sideOf = (a: Point, b: Point): number => Math.hypot(a[0] - b[0], a[1] - b[1]);
const longestSide = ([a, b, c]: Frame): number =>
  Math.max(sideOf(a, b), sideOf(b, c), sideOf(c, a));

function signedArea([a, b, c]: Frame): number {
  return ((b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1])) / 2;
}

/** Least height over longest side. */
const steepness = (frame: Frame): number =>
  (2 * Math.abs(signedArea(frame))) / longestSide(frame) ** 2;

/** Frames of every size from a thousandth to a thousand, up to three sides off the origin, no flatter than 1 : 100. */
function randomFrame(random: Random): Frame {
  const size = 10 ** between(random, -3, 3);
  const [left, top] = [between(random, -3, 3), between(random, -3, 3)];
  const flat = between(random, 0, 1) < 0.5 ? 0.03 : 1;
  const corner = (): Point => [
    size * (left + between(random, 0, 1)),
    size * (top + flat * between(random, 0, 1)),
  ];
  for (;;) {
    const frame: Frame = [corner(), corner(), corner()];
    if (steepness(frame) >= 0.01) return frame;
  }
}

const cases = Array.from({ length: 500 }, (_, i) => {
  const random = seeded(i + 1);
  return { seed: i + 1, frame: randomFrame(random), blend: randomShares(random, -1, 2), random };
});

// Coordinates of at most 8 sides and areas of at least a 1/100: 800 · 2⁻⁵³ · a few operations is about 4e-13.
const roundTrip = 1e-12;

describe("blend → point → blend", () => {
  test("the frames tried have both windings, and flat ones are among them", () => {
    const areas = cases.map(({ frame }) => Math.sign(signedArea(frame)));
    expect(areas.filter((sign) => sign > 0).length).toBeGreaterThan(100);
    expect(areas.filter((sign) => sign < 0).length).toBeGreaterThan(100);
    expect(cases.filter(({ frame }) => steepness(frame) < 0.02).length).toBeGreaterThan(50);
  });

  test("comes back within 1e-12, inside and outside, on frames no flatter than 1 : 100", () => {
    for (const { seed, frame, blend } of cases) {
      const back = pointToBlend(blendToPoint(blend, frame), frame);
      expect(greatestGap(back, blend), `seed ${seed}`).toBeLessThanOrEqual(roundTrip);
    }
  });

  test("point → blend → point comes back within 1e-12 of the longest side", () => {
    for (const { seed, frame, random } of cases) {
      const side = longestSide(frame);
      const point: Point = [
        frame[0][0] + side * between(random, -1, 1),
        frame[0][1] + side * between(random, -1, 1),
      ];
      // Off a flat frame the shares reach 100, and their rounding comes back multiplied by the corners.
      const back = blendToPoint(pointToBlend(point, frame), frame);
      expect(greatestGap(back, point), `seed ${seed}`).toBeLessThanOrEqual(100 * roundTrip * side);
    }
  });

  test("is exact at the corners", () => {
    const corners: readonly Blend[] = [
      [1, 0, 0],
      [0, 1, 0],
      [0, 0, 1],
    ];
    for (const { seed, frame } of cases) {
      corners.forEach((corner, k) => {
        const point = frame[k as 0 | 1 | 2];
        expect(greatestGap(blendToPoint(corner, frame), point), `seed ${seed}`).toBe(0);
        expect(greatestGap(pointToBlend(point, frame), corner), `seed ${seed}`).toBe(0);
      });
    }
  });

  test("keeps mixes: the point of a mix of blends is the mix of their points", () => {
    for (const { seed, frame, blend, random } of cases) {
      const other = randomShares(random);
      const t = between(random, -1, 2);
      const mixed = blend.map((share, k) => t * share + (1 - t) * (other[k] ?? NaN));
      const [a, b] = [blendToPoint(blend, frame), blendToPoint(other, frame)];
      const expected = [t * a[0] + (1 - t) * b[0], t * a[1] + (1 - t) * b[1]];
      const gap = greatestGap(blendToPoint(mixed as unknown as Blend, frame), expected);
      // Shares up to 10, coordinates up to 8 sides: 80 · 2⁻⁵³ · a few operations.
      expect(gap, `seed ${seed}`).toBeLessThanOrEqual(1e-13 * longestSide(frame));
    }
  });

  test("the shares of every point sum to 1", () => {
    for (const { seed, frame, random } of cases) {
      const point: Point = [between(random, -5, 5), between(random, -5, 5)];
      const [high, low, loud] = pointToBlend(point, frame);
      const size = Math.max(1, Math.abs(high), Math.abs(low), Math.abs(loud));
      expect(Math.abs(high + low + loud - 1), `seed ${seed}`).toBeLessThanOrEqual(1e-15 * size);
    }
  });
});

describe("what cannot be drawn is an error that says so", () => {
  const frame: Frame = [
    [0, 0],
    [4, 0],
    [0, 4],
  ];

  test.each<[string, Frame]>([
    [
      "three corners on a line",
      [
        [0, 0],
        [1, 1],
        [3, 3],
      ],
    ],
    [
      "on a line but for rounding",
      [
        [0, 0],
        [0.1, 0.1],
        [0.3, 0.1 + 0.2],
      ],
    ],
    [
      "one corner twice",
      [
        [1, 2],
        [1, 2],
        [5, 7],
      ],
    ],
    [
      "all in one place",
      [
        [1, 2],
        [1, 2],
        [1, 2],
      ],
    ],
  ])("a frame with %s has no inverse", (_name, flat) => {
    expect(() => pointToBlend([1, 1], flat)).toThrow(/frame is flat.*one line/);
  });

  test.each([NaN, Infinity, -Infinity])("%d is refused with the name of the argument", (bad) => {
    const badFrame: Frame = [frame[0], [4, bad], frame[2]];
    expect(() => blendToPoint([bad, 0, 0], frame)).toThrow(/blendToPoint: blend\[0\]/);
    expect(() => blendToPoint([1, 0, 0], badFrame)).toThrow(/blendToPoint: frame\[1\]\[1\]/);
    expect(() => pointToBlend([0, bad], frame)).toThrow(/pointToBlend: point\[1\]/);
    expect(() => pointToBlend([0, 0], badFrame)).toThrow(/pointToBlend: frame\[1\]\[1\]/);
    expect(() => blendsToPoints(new Float64Array(3), badFrame)).toThrow(
      /blendsToPoints: frame\[1\]/,
    );
    expect(() => blendToPoint([bad, 0, 0], frame)).toThrow(RangeError);
  });

  test("what is no number or has another length is a TypeError", () => {
    expect(() => blendToPoint([1, 0] as unknown as Blend, frame)).toThrow(TypeError);
    expect(() => blendToPoint(["1", 0, 0] as unknown as Blend, frame)).toThrow(TypeError);
    expect(() =>
      pointToBlend([1, 1], [
        [0, 0],
        [1, 0],
      ] as unknown as Frame),
    ).toThrow(TypeError);
  });
});

describe("many blends at once", () => {
  const { frame, random } = cases[0]!;
  const rows = Array.from({ length: 50 }, () => randomShares(random));
  const shares = new Float64Array(rows.flat());

  test("lie where each of them lies", () => {
    const points = blendsToPoints(shares, frame);
    expect(points).toHaveLength(100);
    rows.forEach((blend, row) => {
      expect(greatestGap(points.slice(2 * row, 2 * row + 2), blendToPoint(blend, frame))).toBe(0);
    });
  });

  test("are written into the array that is given, and it comes back", () => {
    const out = new Float64Array(101).fill(7);
    expect(blendsToPoints(shares, frame, out)).toBe(out);
    expect(greatestGap(out.slice(0, 100), blendsToPoints(shares, frame))).toBe(0);
    expect(out[100]).toBe(7);
  });

  test("must come in rows of three, and `out` must hold them", () => {
    expect(() => blendsToPoints(new Float64Array(4), frame)).toThrow(/shares has 4 numbers/);
    expect(() => blendsToPoints(shares, frame, new Float64Array(99))).toThrow(/out has 99 numbers/);
    expect(blendsToPoints(new Float64Array(0), frame)).toHaveLength(0);
  });

  test.each([NaN, Infinity, -Infinity])("a row that holds %d is named", (bad) => {
    const broken = Float64Array.from(shares);
    broken[3 * 17 + 2] = bad;
    expect(() => blendsToPoints(broken, frame)).toThrow(/row 17, column 2/);
  });
});

describe("setting one share", () => {
  test("keeps the sum 1 and the proportion of the other two", () => {
    for (let seed = 1; seed <= 300; seed += 1) {
      const random = seeded(seed);
      const parts = [random(), random(), random()];
      const sum = parts.reduce((total, part) => total + part, 0);
      const blend = parts.map((part) => part / sum) as unknown as Blend;
      const index = (seed % 3) as 0 | 1 | 2;
      const share = random();
      const result = withShare(blend, index, share);
      const [a, b] = ([0, 1, 2] as const).filter((k) => k !== index) as [0 | 1 | 2, 0 | 1 | 2];
      expect(result[index], `seed ${seed}`).toBe(share);
      expect(result[0] + result[1] + result[2], `seed ${seed}`).toBeCloseTo(1, 14);
      expect(result[a] * blend[b], `seed ${seed}`).toBeCloseTo(result[b] * blend[a], 14);
    }
  });

  test("shares the rest equally when the other two were 0, or below it", () => {
    expect(withShare([1, 0, 0], 0, 0.4)).toEqual([0.4, 0.3, 0.3]);
    expect(withShare([1.4, -0.2, -0.2], 0, 0.5)).toEqual([0.5, 0.25, 0.25]);
  });

  test("is cut to 0…1, and NaN is refused by name", () => {
    expect(withShare([0.5, 0.25, 0.25], 0, 1.5)).toEqual([1, 0, 0]);
    expect(withShare([0.5, 0.25, 0.25], 0, -1)).toEqual([0, 0.5, 0.5]);
    expect(() => withShare([0.5, 0.25, 0.25], 0, NaN)).toThrow(/withShare: share is NaN/);
    expect(() => withShare([NaN, 0.25, 0.25], 0, 1)).toThrow(/withShare: blend\[0\]/);
  });
});
