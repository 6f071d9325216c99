import { describe, expect, test } from "vitest";
import {
  gridLines,
  polygonPath,
  readingLines,
  round,
  triangleLayout,
} from "../../src/drawing/triangle-layout.js";
import type { Blend } from "../../src/engine/blend.js";
import { pointToBlend, type Point } from "../../src/engine/frame.js";
import { english } from "../../src/reed/catalogue.js";
import { greatestGap } from "../engine/mixed-reeds.js";
import { seeded } from "../engine/random-model.js";

const order = ["high", "low", "loud"] as const;
const distance = (a: Point, b: Point): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

/** Wider than any sign of a sans-serif face at 16 px is on average: 0.6 of its size. */
const widthOfSign = 9.6;

describe.each([280, 320, 375, 399, 400, 480, 768, 1280, 2000])("in %d px", (width) => {
  const layout = triangleLayout(width);
  const [high, low, loud] = layout.frame;

  test("the triangle is equilateral, stands on its base, and lies inside the drawing", () => {
    for (const [a, b] of [
      [high, low],
      [low, loud],
      [loud, high],
    ] as const) {
      expect(distance(a, b)).toBeCloseTo(layout.side, 9);
    }
    expect(low[1]).toBe(loud[1]);
    expect(high[1]).toBeLessThan(low[1]);
    for (const [x, y] of layout.frame) {
      expect(x >= 0 && x <= width && y >= 0 && y <= layout.height).toBe(true);
    }
  });

  test("every corner name ends inside the drawing, and the two below do not touch", () => {
    const spans = layout.labels.map(({ x, y, anchor }, k) => {
      const long = english.corners[order[k]!].length * widthOfSign;
      const left = { start: x, middle: x - long / 2, end: x - long }[anchor];
      expect(left).toBeGreaterThanOrEqual(0);
      expect(left + long).toBeLessThanOrEqual(width);
      // Its share stands one line of 20 px below.
      expect(y).toBeGreaterThan(0);
      expect(y + 20).toBeLessThanOrEqual(layout.height);
      return { left, right: left + long };
    });
    expect(spans[1]!.right).toBeLessThan(spans[2]!.left);
  });

  test("names and shares stand off the triangle: above its top and below its base", () => {
    const [top, left, right] = layout.labels;
    expect(top!.y + 20).toBeLessThan(high[1]);
    // A name's signs rise about 12 px over their line.
    expect(left!.y - 12).toBeGreaterThan(low[1]);
    expect(right!.y - 12).toBeGreaterThan(loud[1]);
  });
});

test("a limited height makes the triangle smaller, and it keeps to the height", () => {
  const layout = triangleLayout(1000, { greatestHeight: 400 });
  expect(layout.height).toBeCloseTo(400, 9);
  expect(layout.side).toBeLessThan(triangleLayout(1000).side);
});

test("a row of numbers below the base moves the names down and nothing else", () => {
  const [plain, ticked] = [triangleLayout(480), triangleLayout(480, { ticks: true })];
  expect(ticked.frame).toEqual(plain.frame);
  expect(ticked.labels[0]).toEqual(plain.labels[0]);
  expect(ticked.labels[1]!.y).toBeGreaterThan(plain.labels[1]!.y);
  expect(ticked.height - plain.height).toBe(ticked.labels[1]!.y - plain.labels[1]!.y);
});

const { frame } = triangleLayout(600);
const blends = Array.from({ length: 40 }, (_, i): Blend => {
  const random = seeded(i + 1);
  const parts = [random(), random(), random()];
  const sum = parts[0]! + parts[1]! + parts[2]!;
  return [parts[0]! / sum, parts[1]! / sum, 1 - (parts[0]! + parts[1]!) / sum];
});

describe("reading lines", () => {
  test("along each of them its share stays what it is, and it goes through the point", () => {
    for (const blend of blends) {
      readingLines(blend, frame).forEach((line, k) => {
        const [from, to] = [pointToBlend(line.from, frame), pointToBlend(line.to, frame)];
        expect(line.share).toBe(blend[k]);
        expect(from[k]).toBeCloseTo(blend[k]!, 12);
        expect(to[k]).toBeCloseTo(blend[k]!, 12);
        // The ends lie on the two other sides: there one of the other shares is 0, here the other.
        expect(Math.min(...from)).toBeCloseTo(0, 12);
        expect(Math.min(...to)).toBeCloseTo(0, 12);
        expect(greatestGap(from, to)).toBeCloseTo(1 - blend[k]!, 12);
      });
    }
  });

  test("end where their scale stands: high on the right side, low on the left, loud on the base", () => {
    for (const blend of blends) {
      const ends = readingLines(blend, frame).map(({ to }) => pointToBlend(to, frame));
      expect(ends[0]![1]).toBeCloseTo(0, 12); // right side: no share of low
      expect(ends[1]![2]).toBeCloseTo(0, 12); // left side: no share of loud
      expect(ends[2]![0]).toBeCloseTo(0, 12); // base: no share of high
    }
  });

  test("have their number outside the triangle, 6 to 25 px beyond the end", () => {
    for (const blend of blends) {
      for (const { to, label } of readingLines(blend, frame)) {
        expect(Math.min(...pointToBlend(label, frame))).toBeLessThan(0);
        expect(distance(to, label)).toBeGreaterThanOrEqual(6);
        expect(distance(to, label)).toBeLessThanOrEqual(25);
      }
    }
  });
});

test("the grid has four lines for each purpose, at every fifth", () => {
  const lines = gridLines(frame);
  expect(lines).toHaveLength(12);
  lines.forEach(({ from, to }, i) => {
    const [k, fifth] = [Math.floor(i / 4), (i % 4) + 1];
    expect(pointToBlend(from, frame)[k]).toBeCloseTo(fifth / 5, 12);
    expect(pointToBlend(to, frame)[k]).toBeCloseTo(fifth / 5, 12);
  });
  expect(gridLines(frame, 10)).toHaveLength(27);
});

test("a path is closed and written in tenths of a px", () => {
  expect(
    polygonPath([
      [0, 0.04],
      [10.26, 1],
      [5, 1 / 3],
    ]),
  ).toBe("M0,0L10.3,1L5,0.3Z");
  expect(round(2.25)).toBe(2.3);
});
