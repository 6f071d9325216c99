import { beamFrequencies } from "./beam.js";
import { gaussLegendre } from "./gauss-legendre.js";
import { requireGiven } from "./require-given.js";

/** A flat blade: x = 0 at the free tip, `length` at the clamp; everything in SI units. */
export interface Cantilever {
  readonly length: number;
  readonly width: (x: number) => number;
  readonly thickness: (x: number) => number;
  readonly youngsModulus: number;
}

/**
 * The bending frequencies of a flat blade of rectangular cross-section.
 *
 * Shape   blade, number of modes (3) → lowest first.
 * Unit    m, Pa, kg/m³ → Hz.
 * Domain  1 to 8 modes; width and thickness above 0, but for the very tip, which may be sharp.
 * Error   below 0.1 %.
 * Throws  RangeError naming a bad argument, or when the computation has not converged.
 * Source  Euler–Bernoulli beam.
 *
 * @example cantileverFrequencies({ length: 0.1, width: () => 0.01, thickness: () => 0.001, youngsModulus: 5e9, density: 500, modes: 1 }).map(Math.round) → [51]
 */
export function cantileverFrequencies(
  beam: Cantilever & { readonly density: number; readonly modes?: number },
): number[] {
  requireGiven(
    beam,
    "cantileverFrequencies: beam",
    "an object with length, width, thickness, youngsModulus and density",
  );
  const { length, width, thickness, youngsModulus, density, modes = 3 } = beam;
  requirePositive("cantileverFrequencies", { length, youngsModulus, density });
  return beamFrequencies(
    length,
    (x) => {
      const [b, t] = [width(x), thickness(x)];
      return { stiffness: (youngsModulus * b * t ** 3) / 12, mass: density * b * t };
    },
    modes,
  );
}

const perPiece = gaussLegendre(8);
const halvings = 60;
const mostPieces = 512;

/**
 * The force on the tip for a deflection of 1 there.
 *
 * Unit    m, Pa → N/m.
 * Domain  width and thickness above 0, but for the very tip. A tip that is sharp like a wedge gives way without
 *         end: 0.
 * Error   below 0.1 %: pieces are halved until they agree to 0.01 %.
 * Throws  RangeError naming a bad argument, or when the computation has not converged.
 * Source  Euler–Bernoulli beam, unit load: 1/k = ∫ x² / (E I) dx.
 *
 * @example cantileverTipStiffness({ length: 1, width: () => 12, thickness: () => 1, youngsModulus: 5 }) → 15
 */
export function cantileverTipStiffness(beam: Cantilever): number {
  requireGiven(
    beam,
    "cantileverTipStiffness: beam",
    "an object with length, width, thickness and youngsModulus",
  );
  const { length, width, thickness, youngsModulus } = beam;
  requirePositive("cantileverTipStiffness", { length, youngsModulus });
  const yielding = (x: number): number => {
    const stiffness = (youngsModulus * width(x) * thickness(x) ** 3) / 12;
    if (stiffness > 0 && Number.isFinite(stiffness)) return (x * x) / stiffness;
    throw new RangeError(
      `cantileverTipStiffness: stiffness ${stiffness} N m² at ${x} m from the tip; allowed: a finite number above 0`,
    );
  };
  // Pieces that halve toward the tip: what a sharp tip adds shows in how their shares fall.
  let whole = 0;
  let [before, last] = [0, 0];
  for (let i = 0; i < halvings; i += 1) {
    before = last;
    last = pieceIntegral(yielding, length / 2 ** (i + 1), length / 2 ** i);
    whole += last;
    if (last < 1e-14 * whole) return 1 / whole;
  }
  const fall = last / before;
  return fall < 0.98 ? 1 / (whole + (last * fall) / (1 - fall)) : 0;
}

/** Halves the pieces until their sum stays as it is. */
function pieceIntegral(f: (x: number) => number, from: number, to: number): number {
  let before = Infinity;
  for (let pieces = 1; pieces <= mostPieces; pieces *= 2) {
    const step = (to - from) / pieces;
    let sum = 0;
    for (let piece = 0; piece < pieces; piece += 1) {
      perPiece.places.forEach((place, i) => {
        sum += f(from + (piece + place) * step) * perPiece.weights[i]! * step;
      });
    }
    if (Math.abs(sum - before) <= 1e-4 * Math.abs(sum)) return sum;
    before = sum;
  }
  throw new RangeError(
    `cantileverTipStiffness: not converged between ${from} and ${to} m from the tip; allowed: width and thickness that ${mostPieces} pieces can follow`,
  );
}

function requirePositive(caller: string, values: Readonly<Record<string, number>>): void {
  for (const [name, value] of Object.entries(values)) {
    if (value > 0 && Number.isFinite(value)) continue;
    throw new RangeError(`${caller}: ${name} is ${value}; allowed: a finite number above 0`);
  }
}
