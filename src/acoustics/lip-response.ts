import { withAssumptions, type Assumptions } from "./assumptions.js";
import { closingLaw } from "./closing-law.js";
import { peakOf } from "./flow-curve.js";
import { areaInRow, jetSpeed } from "./flow.js";
import type { LipState } from "./lip-presets.js";
import { cornerClosing, openingArea } from "./opening.js";
import { reedMechanics, type LipRecipe, type ReedMechanics } from "./reed-mechanics.js";
import { requireGiven } from "./require-given.js";
import { vibratingRegion } from "./vibrating-region.js";

/** What a reed does under lips and breath: m, m², m³/s, Pa, Hz, N/m. */
export interface LipResponse {
  readonly opening: { readonly width: number; readonly height: number; readonly area: number };
  /** Share of the opening's height that is closed. */
  readonly closed: number;
  /** Share of all openings that can be held. */
  readonly usable: number;
  readonly vibratingArea: number;
  readonly flow: number;
  /** The most air at these lips, and the blowing pressure that gives it. */
  readonly peakFlow: number;
  readonly peakBlow: number;
  readonly closingPressure: number;
  readonly resonance: number;
  readonly tipStiffness: number;
}

/**
 * What a reed does under a lip pressure and a blowing pressure: a simple model, not a measurement of this reed.
 *
 * Shape   recipe (mm, ratio, 0 … 1), pressures, changed assumptions → response in SI units.
 * Domain  pressures from 0 on; hinging is taken as 0 below 0 and as 1 above 1.
 * Error   of the beam below 0.1 %; of everything else, rounding.
 * Throws  RangeError naming a reading, a pressure or an assumption, and what is allowed.
 * Source  see each of the laws it puts together.
 *
 * @example lipResponse(allRound, { lip: 0, blow: 0 }).flow → 0
 */
export function lipResponse(
  recipe: LipRecipe,
  at: LipState,
  changes?: Partial<Assumptions>,
): LipResponse {
  return respond(reedMechanics(recipe, withAssumptions(changes)), at);
}

/** The same where the reed's mechanics are known already: all that changes while only lips and breath do. */
export function respond(reed: ReedMechanics, at: LipState): LipResponse {
  requireGiven(reed, "respond: reed", "what reedMechanics made");
  requireState(at);
  const { recipe, assumptions, closingPressure, resonance, tipStiffness } = reed;
  const law = closingLaw(recipe.hinging, assumptions.elbow);
  const closed = 1 - law.openAt((at.lip + at.blow) / closingPressure);
  const shares = cornerClosing(closed);
  const width = recipe.openingWidth / 1000;
  const height = recipe.openingHeight / 1000;
  const area = openingArea({ width, height }) * shares.area;
  const peak = peakOf(reed, at.lip);
  return {
    opening: { width: width * shares.width, height: height * (1 - closed), area },
    closed,
    usable: law.usable,
    vibratingArea: vibratingRegion(reed, closed, at.place ?? assumptions.lipPlace).area,
    flow: areaInRow(area, reed.throatArea) * jetSpeed(at.blow, assumptions.airDensity),
    peakFlow: peak.flow,
    peakBlow: peak.blow,
    closingPressure,
    resonance,
    tipStiffness,
  };
}

/**
 * The same reed with other hinges: what the lips can hold changes, the blade does not.
 *
 * @example withHinging(mechanics, 1).resonance === mechanics.resonance
 */
export function withHinging(reed: ReedMechanics, hinging: number): ReedMechanics {
  requireGiven(reed, "withHinging: reed", "what reedMechanics made");
  return { ...reed, recipe: { ...reed.recipe, hinging } };
}

function requireState(at: LipState): void {
  requireGiven(at, "lipResponse: at", "an object with lip and blow, Pa");
  const { lip, blow } = at;
  for (const [name, value] of [
    ["lip", lip],
    ["blow", blow],
  ] as const) {
    if (value >= 0 && Number.isFinite(value)) continue;
    throw new RangeError(`lipResponse: ${name} is ${value} Pa; allowed: a finite number from 0 on`);
  }
}
