import { requireGiven } from "./require-given.js";
/**
 * The area of an opening between two equal arcs (a lens).
 *
 * Shape   width and height of the opening → area; m → m², any one length unit does.
 * Domain  both finite and not negative; taller than wide, the lens is bounded by more than two half circles.
 * Throws  RangeError naming a side that is negative or not finite.
 * Source  circular segments, CRC Standard Mathematical Tables: r = w²/(8s) + s/2, θ = 4 atan(2s/w), area r²(θ − sin θ)
 *         for both together, s = height / 2.
 *
 * @example openingArea({ width: 0, height: 0.001 }) → 0
 */
export function openingArea(opening: { readonly width: number; readonly height: number }): number {
  requireGiven(opening, "openingArea: opening", "an object with width and height, m");
  const { width, height } = opening;
  for (const [name, value] of [
    ["width", width],
    ["height", height],
  ] as const) {
    if (value >= 0 && Number.isFinite(value)) continue;
    throw new RangeError(`openingArea: ${name} is ${value}; allowed: a finite length from 0 on`);
  }
  if (width === 0 || height === 0) return 0;
  const half = Math.atan(height / width);
  // r = w / (2 sin 2φ) with φ = atan(height / width); for a shallow lens θ − sin θ would lose its digits.
  const theta = 4 * half;
  const radius = width / (2 * Math.sin(2 * half));
  return radius * radius * segment(theta);
}

/** θ − sin θ, by its series where the difference of the two is small. */
function segment(theta: number): number {
  if (theta > 0.2) return theta - Math.sin(theta);
  const square = theta * theta;
  return theta * square * (1 / 6 - square * (1 / 120 - square * (1 / 5040 - square / 362880)));
}

/**
 * How much of the opening is left when the blades have come together by a share of its height: shallow parabolas
 * that move as a whole meet at the corners first.
 *
 * Shape   closed share of the height → width and area that stay open, as shares.
 * Domain  0 to 1.
 * Throws  RangeError outside the domain.
 * Source  derived: width (1 − ξ)^½, area (1 − ξ)^(3/2).
 *
 * @example cornerClosing(0.75) → { width: 0.5, area: 0.125 }
 */
export function cornerClosing(closed: number): { readonly width: number; readonly area: number } {
  if (!(closed >= 0 && closed <= 1)) {
    throw new RangeError(`cornerClosing: closed is ${closed}; allowed: 0 to 1`);
  }
  const open = 1 - closed;
  return { width: Math.sqrt(open), area: open * Math.sqrt(open) };
}
