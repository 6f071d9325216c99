import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { nearestBlend, type Blend } from "../../src/lib/engine.js";
import { greatestGap } from "./mixed-reeds.js";

const seed = 20_260_101;
const anyNumber = fc.double({ noNaN: true, noDefaultInfinity: true });
const smallNumber = fc.double({ min: -3, max: 3, noNaN: true });
const anyRaw = fc.oneof(
  fc.tuple(anyNumber, anyNumber, anyNumber),
  fc.tuple(smallNumber, smallNumber, smallNumber),
  fc.constantFrom<[number, number, number][]>(
    [1e300, -1e300, 1e300],
    [1e308, 1e308, -1e308],
    [5e-324, -5e-324, 0],
    [-1e300, -1e300, -1e300],
    [Number.MAX_VALUE, Number.MAX_VALUE, Number.MAX_VALUE],
  ),
);

const check = (law: (raw: Blend) => void): void =>
  fc.assert(
    fc.property(anyRaw, (raw) => law(raw)),
    { seed, numRuns: 3000 },
  );

/** Numbers here are of order 1, so a dozen units in the last place are far below this. */
const rounding = 1e-14;

describe("the nearest blend of any three finite numbers", () => {
  test("lies in the triangle: no share is negative, NaN or above 1, and they sum to 1", () => {
    check((raw) => {
      const shares = nearestBlend(raw);
      for (const share of shares) expect(share >= 0 && share <= 1, String(raw)).toBe(true);
      expect(Math.abs(shares[0] + shares[1] + shares[2] - 1)).toBeLessThanOrEqual(rounding);
    });
  });

  test("is its own nearest blend", () => {
    check((raw) => {
      const once = nearestBlend(raw);
      expect(greatestGap(nearestBlend(once), once), String(raw)).toBe(0);
    });
  });

  test("meets Karush, Kuhn and Tucker: shares above 0 lost one and the same number, the others less", () => {
    check((raw) => {
      const shares = nearestBlend(raw);
      // Only differences count, so the greatest is taken away first: nothing overflows.
      const top = Math.max(...raw);
      const lost = raw.map((share, k) => Math.max(share - top, -10) - shares[k as 0 | 1 | 2]);
      const taken = lost.filter((_, k) => shares[k as 0 | 1 | 2] > 0);
      const multiplier = taken[0] ?? NaN;
      expect(Math.max(...taken) - Math.min(...taken), String(raw)).toBeLessThanOrEqual(rounding);
      for (const one of lost) expect(one - multiplier, String(raw)).toBeLessThanOrEqual(rounding);
    });
  });

  test("is the blend itself when it lies in the triangle", () => {
    const inside = fc.tuple(fc.integer({ min: 0, max: 64 }), fc.integer({ min: 0, max: 64 }));
    fc.assert(
      fc.property(inside, ([a, b]) => {
        fc.pre(a + b <= 64);
        const blend: Blend = [a / 64, b / 64, (64 - a - b) / 64];
        expect(nearestBlend(blend)).toEqual(blend);
      }),
      { seed },
    );
  });
});

test("is not the same as cutting negative shares and dividing by the sum", () => {
  const raw: Blend = [1.2, 0.3, -0.5];
  const cut: Blend = [1.2 / 1.5, 0.3 / 1.5, 0];
  const distance = (a: Blend): number => Math.hypot(a[0] - raw[0], a[1] - raw[1], a[2] - raw[2]);
  // By hand: [1.2, 0.3] lose 0.25 each.
  expect(greatestGap(nearestBlend(raw), [0.95, 0.05, 0])).toBeLessThanOrEqual(rounding);
  expect(greatestGap(nearestBlend(raw), cut)).toBeGreaterThan(0.1);
  expect(distance(nearestBlend(raw))).toBeLessThan(distance(cut) - 0.03);
});

test.each([NaN, Infinity, -Infinity])("%d is refused with the name of the argument", (bad) => {
  expect(() => nearestBlend([0, bad, 0])).toThrow(/nearestBlend: raw\[1\]/);
});
