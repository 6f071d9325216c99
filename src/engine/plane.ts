import type { Blend } from "./blend.js";
import type { Triple } from "./model.js";

/**
 * Two coordinates for moves of a blend: an orthonormal basis of the plane Σ = 0.
 * x runs from low to loud, y toward high, lengths as in share space, so √2 times the drawing of side 1.
 */
export type Vector = readonly [x: number, y: number];

const perX = 1 / Math.SQRT2;
const perY = 1 / Math.sqrt(6);

/** A move of a blend → its two coordinates. */
export function tripleToVector([high, low, loud]: Triple): Vector {
  return [(loud - low) * perX, (2 * high - low - loud) * perY];
}

/** The inverse of `tripleToVector`. */
export function vectorToTriple([x, y]: Vector): Triple {
  return [2 * y * perY, -x * perX - y * perY, x * perX - y * perY];
}

/** A blend → its coordinates, the centre being the origin. */
export function blendToVector(blend: Blend): Vector {
  return tripleToVector(blend);
}

/** The inverse of `blendToVector`: the shares sum to 1. */
export function vectorToBlend(vector: Vector): Blend {
  const [high, low, loud] = vectorToTriple(vector);
  return [1 / 3 + high, 1 / 3 + low, 1 / 3 + loud];
}

/** x₁y₂ − y₁x₂: positive when b lies counter-clockwise from a (y up). */
export function cross(a: Vector, b: Vector): number {
  return a[0] * b[1] - a[1] * b[0];
}

/** Scalar product. */
export function dot(a: Vector, b: Vector): number {
  return a[0] * b[0] + a[1] * b[1];
}
