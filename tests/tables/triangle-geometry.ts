import type { Blend } from "../../src/lib/engine.js";

/**
 * Elementary geometry of the triangle; each line can be checked by hand.
 *
 * Unit    shares of the whole, exact decimals.
 * Source  computed by hand. Cutting off negative shares and renormalising would give (0.8, 0.2, 0)
 *         for the first projection: a different, wrong answer.
 */
export const projections: readonly (readonly [raw: Blend, nearest: Blend])[] = [
  [
    [1.2, 0.3, -0.5],
    [0.95, 0.05, 0],
  ],
  [
    [0.5, 0.8, -0.3],
    [0.35, 0.65, 0],
  ],
  [
    [-0.2, -0.3, 1.5],
    [0, 0, 1],
  ],
  [
    [2, -0.5, -0.5],
    [1, 0, 0],
  ],
];

/** Squared distance of two blends in a triangle of side s: s² (da² + db² + dc²) / 2. */
export const squaredDistance: {
  readonly from: Blend;
  readonly to: Blend;
  readonly side: number;
  readonly squared: number;
} = { from: [0.2, 0.3, 0.5], to: [0.5, 0.1, 0.4], side: 1, squared: 0.07 };
