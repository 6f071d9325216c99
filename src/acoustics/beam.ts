import { gaussLegendre } from "./gauss-legendre.js";
import { greatestEigenvalue, symmetricEigenvalues } from "./symmetric-eigenvalues.js";

/** What one cross-section adds to a beam. */
export interface BeamSection {
  /** Bending stiffness E·I, N m². */
  readonly stiffness: number;
  /** Mass per length, kg/m. */
  readonly mass: number;
}

/** A beam looked at in many places, so that integrals over it are sums. */
export interface SampledBeam<Section extends BeamSection = BeamSection> {
  readonly length: number;
  /** m from the free tip, rising; between the panels' ends. */
  readonly places: readonly number[];
  /** m; they sum to the length. */
  readonly weights: readonly number[];
  readonly sections: readonly Section[];
}

const perPanel = gaussLegendre(4);

/** From coarse to fine: shape functions, and panels to integrate over. */
const levels: readonly (readonly [shapes: number, panels: number])[] = [
  [10, 10],
  [16, 20],
  [22, 40],
  [30, 80],
  [40, 160],
];
/** Two levels that agree to this much leave the finer one within 0.1 % (measured in beam.test.ts). */
const agreement = 2e-4;

/**
 * Samples a beam at Gauss points of panels that get shorter toward both ends, as the waves of Legendre polynomials do.
 *
 * Throws  RangeError naming the place where stiffness or mass is not a positive number.
 */
export function sampleBeam<Section extends BeamSection>(
  length: number,
  section: (x: number) => Section,
  panels: number,
): SampledBeam<Section> {
  const places: number[] = [];
  const weights: number[] = [];
  for (let panel = 0; panel < panels; panel += 1) {
    perPanel.places.forEach((place, i) => {
      const angle = (Math.PI * (panel + place)) / panels;
      places.push((length * (1 - Math.cos(angle))) / 2);
      weights.push((length * Math.PI * Math.sin(angle) * perPanel.weights[i]!) / (2 * panels));
    });
  }
  return { length, places, weights, sections: places.map((x) => requireSection(section(x), x)) };
}

function requireSection<Section extends BeamSection>(section: Section, x: number): Section {
  for (const name of ["stiffness", "mass"] as const) {
    const value = section[name];
    if (value > 0 && Number.isFinite(value)) continue;
    throw new RangeError(
      `beam: ${name} ${value} at ${x} m from the tip; allowed: a finite number above 0`,
    );
  }
  return section;
}

/**
 * The bending frequencies of a beam that is free at the tip (x = 0) and clamped at its length.
 *
 * Shape   length, section at x, number of modes → lowest first.
 * Unit    m, N m² and kg/m → Hz.
 * Domain  stiffness and mass may fall to 0 at the very tip; anywhere else they are above 0.
 * Error   below 0.1 %: two levels of refinement agree to 0.02 %.
 * Throws  RangeError for a bad argument, or when the finest level still differs from the one before.
 * Source  Rayleigh–Ritz for an Euler–Bernoulli beam; the shapes are those whose curvature is a Legendre polynomial.
 */
export function beamFrequencies(
  length: number,
  section: (x: number) => BeamSection,
  modes: number,
): number[] {
  requireBeam(length, modes);
  let before: number[] | undefined;
  let gap = Infinity;
  for (const [shapes, panels] of levels) {
    const found = ritzFrequencies(sampleBeam(length, section, panels), shapes, modes);
    gap = before ? Math.max(...found.map((f, i) => Math.abs(f / before![i]! - 1))) : Infinity;
    if (gap < agreement) return found;
    before = found;
  }
  throw new RangeError(
    `beam: frequencies not converged, the last two levels differ by ${gap}; allowed: less than ${agreement}`,
  );
}

function requireBeam(length: number, modes: number): void {
  if (!(length > 0 && Number.isFinite(length))) {
    throw new RangeError(`beam: length is ${length} m; allowed: a finite number above 0`);
  }
  if (!Number.isInteger(modes) || modes < 1 || modes > 8) {
    throw new RangeError(`beam: modes is ${modes}; allowed: a whole number from 1 to 8`);
  }
}

/** The lowest frequencies that a number of shapes can tell, Hz: upper bounds that fall as shapes are added. */
export function ritzFrequencies(beam: SampledBeam, shapes: number, modes: number): number[] {
  const bending = zeros(shapes);
  const inertia = zeros(shapes);
  const table = shapeTable(beam.places, beam.length, shapes);
  table.forEach(({ curvature, deflection }, k) => {
    const { stiffness, mass } = beam.sections[k]!;
    addOuter(bending, curvature, stiffness * beam.weights[k]!);
    addOuter(inertia, deflection, mass * beam.weights[k]!);
  });
  // Deflections are counted in units of (length / 2)²: the curvature of the shapes is per half length.
  const half = beam.length / 2;
  const matrix = reduced(bending, inertia);
  const values =
    modes === 1 ? [greatestEigenvalue(matrix)] : symmetricEigenvalues(matrix).slice(0, modes);
  return values.map((value) => 1 / (2 * Math.PI * half * half * Math.sqrt(value)));
}

interface Shapes {
  readonly curvature: Float64Array;
  readonly deflection: Float64Array;
}

// Relative to the length the places are always the same, and the shapes cost more than all that is done with them.
const tables = new Map<string, readonly Shapes[]>();

function shapeTable(places: readonly number[], length: number, shapes: number): readonly Shapes[] {
  const key = `${shapes}/${places.length}`;
  const known = tables.get(key);
  if (known) return known;
  const made = places.map((x) => shapesAt((2 * x) / length - 1, shapes));
  tables.set(key, made);
  return made;
}

function zeros(n: number): Float64Array[] {
  return Array.from({ length: n }, () => new Float64Array(n));
}

/** Lower half only. */
function addOuter(matrix: Float64Array[], vector: Float64Array, factor: number): void {
  for (let i = 0; i < vector.length; i += 1) {
    const row = matrix[i]!;
    const scaled = factor * vector[i]!;
    for (let j = 0; j <= i; j += 1) row[j]! += scaled * vector[j]!;
  }
}

/** Shapes with curvature P_k(ξ), flat and at rest at the clamp ξ = 1: ∫P_k = (P_{k+1} − P_{k−1}) / (2k + 1), twice. */
function shapesAt(xi: number, shapes: number): Shapes {
  const p = new Float64Array(shapes + 2);
  p[0] = 1;
  p[1] = xi;
  for (let k = 1; k <= shapes; k += 1) {
    p[k + 1] = ((2 * k + 1) * xi * p[k]! - k * p[k - 1]!) / (k + 1);
  }
  const deflection = new Float64Array(shapes);
  deflection[0] = (xi - 1) ** 2 / 2;
  deflection[1] = ((xi - 1) ** 2 * (xi + 2)) / 6;
  for (let k = 2; k < shapes; k += 1) {
    const outer = (p[k + 2]! - p[k]!) / (2 * k + 3);
    const inner = (p[k]! - p[k - 2]!) / (2 * k - 1);
    deflection[k] = (outer - inner) / (2 * k + 1);
  }
  return { curvature: p.subarray(0, shapes), deflection };
}

/** L⁻¹ M L⁻ᵀ with K = L Lᵀ: its eigenvalues are those of M v = λ K v. Only the lower halves are read. */
function reduced(bending: Float64Array[], inertia: Float64Array[]): number[][] {
  const n = bending.length;
  const l = cholesky(bending);
  const forward = (column: (i: number) => number): number[] => {
    const solved: number[] = [];
    for (let i = 0; i < n; i += 1) {
      let rest = column(i);
      for (let j = 0; j < i; j += 1) rest -= l[i]![j]! * solved[j]!;
      solved.push(rest / l[i]![i]!);
    }
    return solved;
  };
  const whole = (i: number, j: number): number => (i >= j ? inertia[i]![j]! : inertia[j]![i]!);
  const half = Array.from({ length: n }, (_, j) => forward((i) => whole(i, j)));
  const both = Array.from({ length: n }, (_, i) => forward((j) => half[j]![i]!));
  // Rounding leaves the two halves a little apart.
  return both.map((row, i) => row.map((value, j) => (value + both[j]![i]!) / 2));
}

function cholesky(matrix: Float64Array[]): Float64Array[] {
  const l = zeros(matrix.length);
  matrix.forEach((row, i) => {
    for (let j = 0; j <= i; j += 1) {
      let rest = row[j]!;
      for (let k = 0; k < j; k += 1) rest -= l[i]![k]! * l[j]![k]!;
      if (i > j) l[i]![j] = rest / l[j]![j]!;
      else if (rest > 0) l[i]![i] = Math.sqrt(rest);
      else throw new RangeError(`beam: the stiffness gives way at shape ${i}; allowed: above 0`);
    }
  });
  return l;
}
