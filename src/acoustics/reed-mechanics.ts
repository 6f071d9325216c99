import { assumed, type Assumptions } from "./assumptions.js";
import { ritzFrequencies, sampleBeam, type SampledBeam } from "./beam.js";
import { bladeCrossSection, type BladeRecipe } from "./blade.js";
import { requireGiven } from "./require-given.js";

/** What the lip model reads of a reed: lengths in mm, roundness as a ratio, hinging 0 … 1. */
export interface LipRecipe extends BladeRecipe {
  readonly firstWire: number;
  readonly hinging: number;
  readonly openingHeight: number;
  readonly openingWidth: number;
}

/** What of a reed does not depend on lips and breath. */
export interface ReedMechanics {
  readonly recipe: LipRecipe;
  readonly assumptions: Assumptions;
  /** The pressure that would bring the tip by half the opening's height, Pa. */
  readonly closingPressure: number;
  /** First bending frequency of a blade, Hz. */
  readonly resonance: number;
  /** Force on the tip of a blade for its deflection there, N/m. */
  readonly tipStiffness: number;
  /** Inside the tube at the throat, m². */
  readonly throatArea: number;
}

/** From coarse to fine: panels to integrate over, and shape functions. */
const levels: readonly (readonly [panels: number, shapes: number])[] = [
  [8, 9],
  [16, 14],
  [32, 20],
  [64, 28],
  [128, 36],
];
/** Of frequency, tip stiffness and closing pressure: two levels that agree to this leave the finer well within it. */
const agreement = 1e-3;

/**
 * The blade as a beam clamped at the collar, and the tube: laws 1 to 4 of the lip model.
 *
 * Unit    recipe in mm → Pa, Hz, N/m, m².
 * Error   below 0.1 %: two levels of refinement agree to that.
 * Throws  RangeError naming a reading that is missing, not above 0 where it must be, or leaves no room in the tube;
 *         or when the beam has not converged.
 * Source  Euler–Bernoulli beam; arch: I of a shallow parabola, derived.
 */
export function reedMechanics(recipe: LipRecipe, given: Assumptions = assumed): ReedMechanics {
  requireGiven(recipe, "lipResponse: recipe", "a recipe, mm and ratios");
  requireRecipe(recipe);
  const throatArea = tubeInside(recipe, given);
  return { recipe, assumptions: given, throatArea, ...convergedAnswers(recipe, given) };
}

type BeamAnswers = Pick<ReedMechanics, "resonance" | "tipStiffness" | "closingPressure">;

/** The second level does for every recipe in the practical ranges; the others are for odd ones. */
function convergedAnswers(recipe: LipRecipe, given: Assumptions): BeamAnswers {
  const section = bladeBeamSection(recipe, given);
  let before: BeamAnswers | undefined;
  let gap = Infinity;
  for (const [panels, shapes] of levels) {
    const beam = sampleBeam(recipe.bladeLength / 1000, section, panels);
    const found = beamAnswers(beam, shapes, recipe);
    gap = before ? greatestGap(found, before) : Infinity;
    if (gap < agreement) return found;
    before = found;
  }
  throw new RangeError(
    `reedMechanics: the blade's bending has not converged, the last two levels differ by ${gap}; ` +
      `allowed: less than ${agreement}`,
  );
}

function greatestGap(one: BeamAnswers, other: BeamAnswers): number {
  return Math.max(
    Math.abs(one.resonance / other.resonance - 1),
    Math.abs(one.tipStiffness / other.tipStiffness - 1),
    Math.abs(one.closingPressure / other.closingPressure - 1),
  );
}

/** A blade's cross-section as a beam's; the pressure acts on its width. */
interface BladeBeamSection {
  readonly stiffness: number;
  readonly mass: number;
  readonly width: number;
}

function bladeBeamSection(recipe: LipRecipe, given: Assumptions): (x: number) => BladeBeamSection {
  const cut = bladeCrossSection(recipe, given);
  const sagitta = archSagitta(recipe);
  return (x) => {
    const { width, mean, meanCube } = cut(x);
    const stiffness = given.youngsModulus * width * archedInertia(meanCube, mean, sagitta(x));
    return { stiffness, mass: given.density * width * mean, width };
  };
}

/**
 * Second moment of area per width of a blade that is arched across.
 *
 * Shape   mean of t³, mean of t, sagitta of the arch → moment per width.
 * Unit    m³, m, m → m³.
 * Source  shallow parabola, derived: I_arch / I_flat = 1 + (16/15) (c/t)² for an even blade.
 *
 * @example archedInertia(1, 1, 1) / archedInertia(1, 1, 0) → 31 / 15
 */
export function archedInertia(meanCube: number, mean: number, sagitta: number): number {
  return meanCube / 12 + (4 / 45) * mean * sagitta * sagitta;
}

/** How far a blade is arched, m, at x m from the tip: from half the opening's height to half the tube's. */
export function archSagitta(recipe: LipRecipe): (x: number) => number {
  const tip = recipe.openingHeight / 2000;
  const collar = (recipe.throatWidth * recipe.firstWire) / 2000;
  return (x) => tip + ((collar - tip) * x * 1000) / recipe.bladeLength;
}

function beamAnswers(
  beam: SampledBeam<BladeBeamSection>,
  shapes: number,
  { openingHeight }: LipRecipe,
): BeamAnswers {
  const [resonance] = ritzFrequencies(beam, shapes, 1);
  let underForce = 0;
  let underPressure = 0;
  const moments = pressureMoments(beam);
  beam.places.forEach((x, k) => {
    const share = (x * beam.weights[k]!) / beam.sections[k]!.stiffness;
    underForce += x * share;
    underPressure += moments[k]! * share;
  });
  return {
    resonance: resonance!,
    tipStiffness: 1 / underForce,
    closingPressure: openingHeight / 2000 / underPressure,
  };
}

/** Bending moment of an even pressure of 1 on the blade in front of each place, N m: the width is straight between two. */
function pressureMoments(beam: SampledBeam<BladeBeamSection>): number[] {
  let [place, width] = [0, beam.sections[0]!.width];
  let [force, moment] = [0, 0];
  return beam.places.map((x, k) => {
    const step = x - place;
    const next = beam.sections[k]!.width;
    moment += force * step + ((2 * width + next) * step * step) / 6;
    force += ((width + next) * step) / 2;
    [place, width] = [x, next];
    return moment;
  });
}

/** The ellipse inside the tube's wall at the throat, m². */
function tubeInside({ throatWidth, firstWire }: LipRecipe, { wall }: Assumptions): number {
  const across = throatWidth / 2 - wall;
  const up = (throatWidth * firstWire) / 2 - wall;
  if (across > 0 && up > 0) return Math.PI * across * up * 1e-6;
  throw new RangeError(
    `reedMechanics: a throat ${throatWidth} mm wide and ${firstWire} round has no room inside walls of ${wall} mm; ` +
      `allowed: half its width and half its height above the wall`,
  );
}

const aboveZero = [
  "bladeLength",
  "tipWidth",
  "throatWidth",
  "firstWire",
  "heart",
  "wings",
  "spine",
  "rails",
  "tip",
  "openingHeight",
  "openingWidth",
] as const;

function requireRecipe(recipe: LipRecipe): void {
  for (const id of aboveZero) {
    if (recipe[id] > 0 && Number.isFinite(recipe[id])) continue;
    throw new RangeError(
      `reedMechanics: ${id} is ${String(recipe[id])}; allowed: a finite number above 0`,
    );
  }
  for (const id of ["backRise", "hinging"] as const) {
    if (Number.isFinite(recipe[id])) continue;
    throw new RangeError(`reedMechanics: ${id} is ${String(recipe[id])}; allowed: a finite number`);
  }
}
