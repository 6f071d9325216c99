/** Places in (0, 1) and their weights, which sum to 1. */
export interface Quadrature {
  readonly places: readonly number[];
  readonly weights: readonly number[];
}

const mostSteps = 50;

/**
 * Gauss–Legendre quadrature on the unit interval.
 *
 * Shape   number of points → places and weights.
 * Domain  1 to 64 points.
 * Error   exact for polynomials up to degree 2n − 1.
 * Throws  RangeError for a count outside the domain.
 * Source  Abramowitz & Stegun, Handbook of Mathematical Functions, 25.4.29–30.
 *
 * @example gaussLegendre(1).places → [0.5]
 */
export function gaussLegendre(count: number): Quadrature {
  if (!Number.isInteger(count) || count < 1 || count > 64) {
    throw new RangeError(`gaussLegendre: count is ${count}; allowed: a whole number from 1 to 64`);
  }
  const places: number[] = [];
  const weights: number[] = [];
  for (let i = 0; i < count; i += 1) {
    let x = -Math.cos((Math.PI * (i + 0.75)) / (count + 0.5));
    let slope = 1;
    // Newton's method from this start needs four or five steps.
    for (let step = 0; step < mostSteps; step += 1) {
      const [value, before] = legendreEnd(count, x);
      slope = (count * (x * value - before)) / (x * x - 1);
      const move = value / slope;
      x -= move;
      if (Math.abs(move) < 1e-15) break;
    }
    places.push((1 + x) / 2);
    weights.push(1 / ((1 - x * x) * slope * slope));
  }
  return { places, weights };
}

/** The Legendre polynomials of degree n and n − 1 at x. */
function legendreEnd(n: number, x: number): readonly [number, number] {
  let [before, value] = [1, x];
  for (let k = 1; k < n; k += 1) {
    [before, value] = [value, ((2 * k + 1) * x * value - k * before) / (k + 1)];
  }
  return [value, before];
}
