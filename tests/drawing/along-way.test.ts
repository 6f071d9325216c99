import { expect, test } from "vitest";
import { alongWay } from "../../src/drawing/along-way.js";
import type { Blend } from "../../src/engine/blend.js";

const bent: Blend[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0.5, 0.5],
];

test("a way begins at its first place, ends at its last, and a bend counts by its length", () => {
  expect(alongWay(bent, 0)).toEqual([1, 0, 0]);
  expect(alongWay(bent, 1)).toEqual([0, 0.5, 0.5]);
  expect(alongWay(bent, -1)).toEqual([1, 0, 0]);
  expect(alongWay(bent, 2)).toEqual([0, 0.5, 0.5]);
  // The first leg is twice as long as the second: a third of the way is the middle of the first leg.
  alongWay(bent, 1 / 3).forEach((share, k) => expect(share).toBeCloseTo([0.5, 0.5, 0][k]!, 12));
  alongWay(bent, 5 / 6).forEach((share, k) => expect(share).toBeCloseTo([0, 0.75, 0.25][k]!, 12));
});

test("a way of one place, or of one place said twice, stays there", () => {
  expect(alongWay([[0.2, 0.3, 0.5]], 0.4)).toEqual([0.2, 0.3, 0.5]);
  expect(alongWay([bent[0]!, bent[0]!], 0.4)).toEqual([1, 0, 0]);
  expect(() => alongWay([], 0.4)).toThrow(RangeError);
});
