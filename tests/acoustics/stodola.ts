import type { BeamSection } from "../../src/acoustics/beam.js";

const steps = 4000;
const rounds = 60;

/** Sums f over the grid from its start, by the trapezoidal rule. */
function running(f: Float64Array, step: number): Float64Array {
  const sum = new Float64Array(f.length);
  for (let i = 1; i < f.length; i += 1) sum[i] = sum[i - 1]! + (step * (f[i - 1]! + f[i]!)) / 2;
  return sum;
}

/**
 * The lowest frequency of a cantilever (free at 0, clamped at its length) by Stodola's iteration: take a deflection,
 * let its inertia load the beam, take the deflection that this gives. No shape functions, no matrices.
 *
 * Source  Thomson, Theory of Vibration, chapter on approximate methods.
 */
export function stodolaFrequency(length: number, section: (x: number) => BeamSection): number {
  const step = length / steps;
  const at = Array.from({ length: steps + 1 }, (_, i) => section(Math.max(i, 1e-6) * step));
  let shape = Float64Array.from(at, (_, i) => (1 - i / steps) ** 2);
  let square = 0;
  for (let round = 0; round < rounds; round += 1) {
    const load = shape.map((y, i) => y * at[i]!.mass);
    const moment = running(running(load, step), step);
    const curvature = moment.map((m, i) => m / at[i]!.stiffness);
    // Slope and deflection are 0 at the clamp: sums from there.
    const slope = running(curvature.toReversed(), step);
    const deflection = running(slope, step).toReversed();
    square = shape[0]! / deflection[0]!;
    shape = deflection.map((y) => y / deflection[0]!);
  }
  return Math.sqrt(square) / (2 * Math.PI);
}
