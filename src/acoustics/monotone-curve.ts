/** A place a curve passes through. */
export type Knot = readonly [x: number, y: number];

/**
 * A smooth curve through knots that never overshoots: between two knots it stays between their values.
 *
 * Shape   at least two knots, x rising → a function of x; before the first and after the last knot it is constant.
 * Throws  RangeError when there are fewer than two knots or x does not rise.
 * Source  monotone piecewise cubic interpolation: Fritsch & Butland (1984), SIAM J. Sci. Stat. Comput. 5,
 *         300–304 (harmonic mean slopes; cited from memory).
 *
 * @example monotoneCurve([[0, 0], [1, 1]])(0.5) → 0.5
 */
export function monotoneCurve(knots: readonly Knot[]): (x: number) => number {
  if (knots.length < 2 || knots.some(([x], i) => i > 0 && !(x > knots[i - 1]![0]))) {
    throw new RangeError(
      `monotoneCurve: knots at ${knots.map(([x]) => x).join(", ")}; allowed: two or more, rising`,
    );
  }
  const slopes = knotSlopes(knots);
  return (x) => {
    const last = knots.length - 1;
    if (x <= knots[0]![0]) return knots[0]![1];
    if (x >= knots[last]![0]) return knots[last]![1];
    const i = knots.findIndex(([right]) => x < right) - 1;
    return hermite(knots[i]!, knots[i + 1]!, slopes[i]!, slopes[i + 1]!, x);
  };
}

function knotSlopes(knots: readonly Knot[]): number[] {
  const steps = knots.slice(1).map(([x, y], i) => {
    const width = x - knots[i]![0];
    return { width, rise: (y - knots[i]![1]) / width };
  });
  return knots.map((_, i) => {
    const before = steps[i - 1];
    const after = steps[i];
    if (!before || !after) return (before ?? after)!.rise;
    if (before.rise * after.rise <= 0) return 0; // a turning point stays where it was read
    const [a, b] = [2 * after.width + before.width, after.width + 2 * before.width];
    return (a + b) / (a / before.rise + b / after.rise);
  });
}

function hermite([x0, y0]: Knot, [x1, y1]: Knot, m0: number, m1: number, x: number): number {
  const width = x1 - x0;
  const t = (x - x0) / width;
  const [a, b] = [t * t * (3 - 2 * t), t * (1 - t) * (1 - t)];
  return y0 * (1 - a) + y1 * a + width * (m0 * b - m1 * t * t * (1 - t));
}
