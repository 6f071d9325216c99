import fc from "fast-check";
import { expect, test } from "vitest";
import { nearestBlend } from "../../src/engine/nearest-blend.js";
import type { Triple } from "../../src/engine/model.js";
import { english } from "../../src/reed/catalogue.js";
import { sharesText, wholeMove, wholeParts, wholeShares } from "../../src/reed/whole-shares.js";

const seed = 20_261_128;
const percents = (triple: Triple): number[] => triple.map((one) => Math.round(one * 100) + 0);
const sum = (all: readonly number[]): number => all.reduce((total, one) => total + one, 0);
const share = fc.double({ min: -2, max: 3, noNaN: true });
const anyPlace = fc.tuple(share, share).map(([a, b]): Triple => [a, b, 1 - a - b]);

// Worked by hand: the apportionment by largest remainders (Hamilton's method).
test.each<[Triple, number[]]>([
  [
    [1 / 3, 1 / 3, 1 / 3],
    [34, 33, 33],
  ],
  [
    [0.774, 0.113, 0.113],
    [78, 11, 11],
  ],
  [
    [0.186, 0.094, 0.72],
    [19, 9, 72],
  ],
  [
    [0.57, 0.43, 0],
    [57, 43, 0],
  ],
  [
    [1, 0, 0],
    [100, 0, 0],
  ],
  [
    [-0.004, 0.504, 0.5],
    [0, 50, 50],
  ],
])("the shares %j are shown as %j", (blend, shown) => {
  expect(percents(wholeShares(blend))).toEqual(shown);
});

test("shares of any place, inside the triangle or not, are shown within 1 and sum to 100", () => {
  fc.assert(
    fc.property(anyPlace, (raw) => {
      for (const blend of [raw, nearestBlend(raw)]) {
        const shown = wholeShares(blend);
        expect(sum(percents(shown))).toBe(100);
        shown.forEach((one, k) => expect(Math.abs(one - blend[k]!)).toBeLessThan(0.01));
      }
    }),
    { seed, numRuns: 2000 },
  );
});

test("a move from any place to any other is shown within 1 and sums to 0", () => {
  fc.assert(
    fc.property(anyPlace, anyPlace, (from, to) => {
      const move: Triple = [to[0] - from[0], to[1] - from[1], to[2] - from[2]];
      const shown = wholeMove(move);
      expect(sum(percents(shown)) + 0).toBe(0);
      shown.forEach((one, k) => expect(Math.abs(one - move[k]!)).toBeLessThan(0.01));
    }),
    { seed, numRuns: 2000 },
  );
});

test("whole parts stay as they are", () => {
  expect(wholeParts([5, -3, -2], 0)).toEqual([5, -3, -2]);
});

test("in words they sum, too", () => {
  const told = sharesText([0.774, 0.113, 0.113], english);
  expect(sum((told.match(/\d+/g) ?? []).map(Number))).toBe(100);
});
