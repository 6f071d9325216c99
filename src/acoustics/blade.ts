import { monotoneCurve, type Knot } from "./monotone-curve.js";

/** The readings that shape a blade, in the units of the recipe: mm. */
export interface BladeRecipe {
  readonly bladeLength: number;
  readonly tipWidth: number;
  readonly throatWidth: number;
  readonly heart: number;
  readonly wings: number;
  readonly spine: number;
  readonly rails: number;
  readonly tip: number;
  readonly backRise: number;
}

/** Where the gauge is set down, mm from the tip, and how far in from the edge. Common practice, no source. */
export const gaugePlaces = { tip: 1, heart: 8, spine: 14, back: 24, fromEdge: 1.5 } as const;

/** The very edge of the tip against the reading 1 mm behind it; assumption. */
const tipEdge = 0.8;
/** The tip 1 mm in from its corners against its middle; assumption, from usual corner readings of .05 to .08 mm. */
const tipCorner = 0.6;
/** Cane is never thinner than this, mm; assumption. */
const thinnest = 0.03;
/** How much narrower the blade is half way than a straight taper, as a share of the taper; assumption. */
const waist = 0.12;
/** The collar is this much wider than the throat, mm; assumption. */
const collarOverThroat = 1;

/**
 * The blade's width.
 *
 * Shape   recipe (mm), place (m from the tip) → width.
 * Unit    m.
 * Domain  0 … blade length; beyond, the width of the nearer end.
 *
 * @example bladeWidth(recipe, 0) → recipe.tipWidth / 1000
 */
export function bladeWidth({ bladeLength, tipWidth, throatWidth }: BladeRecipe, x: number): number {
  const s = Math.min(1, Math.max(0, (x * 1000) / bladeLength));
  const taper = throatWidth + collarOverThroat - tipWidth;
  return (tipWidth + taper * (s + waist * 4 * s * (1 - s))) / 1000;
}

/**
 * The blade's thickness: one smooth surface through the recipe's readings at their gauge places, without
 * overshoot and never below 0.03 mm. The lamp view draws it.
 *
 * Shape   recipe (mm), x m from the tip, u −1 … 1 from edge to edge → thickness.
 * Unit    m.
 * Domain  x from 0 to the blade's length; behind the last gauge place the cane keeps its thickness.
 * Error   none at the gauge places.
 * Throws  RangeError naming a reading that is missing or not finite.
 *
 * @example bladeThickness(recipe, 0.008, 0) → recipe.heart / 1000
 */
export function bladeThickness(recipe: BladeRecipe, x: number, u: number): number {
  return bladeSurface(recipe)(x, u);
}

/** The same with the curves made once, for drawings and integrals that ask at many places. */
export function bladeSurface(recipe: BladeRecipe): (x: number, u: number) => number {
  requireReadings(recipe);
  const centre = monotoneCurve(centreKnots(recipe));
  const side = monotoneCurve(sideKnots(recipe));
  return (x, u) => {
    const mm = x * 1000;
    const sideAt = 1 - (2 * gaugePlaces.fromEdge) / (bladeWidth(recipe, x) * 1000);
    // From the spine to the gauge's place at the side as half a wave, so that it is level at both; level to the edge.
    const share = (1 - Math.cos(Math.PI * Math.min(1, Math.abs(u) / sideAt))) / 2;
    const thickness = centre(mm) + (side(mm) - centre(mm)) * share;
    return Math.max(thinnest, thickness) / 1000;
  };
}

function centreKnots({ tip, heart, spine, backRise, bladeLength }: BladeRecipe): Knot[] {
  return inFront(bladeLength, [
    [0, tipEdge * tip],
    [gaugePlaces.tip, tip],
    [gaugePlaces.heart, heart],
    [gaugePlaces.spine, spine],
    [gaugePlaces.back, spine + backRise],
  ]);
}

/** Along the side nothing is read at tip and back: there the sides follow the middle in proportion. */
function sideKnots({ tip, wings, spine, rails, backRise, bladeLength }: BladeRecipe): Knot[] {
  return inFront(bladeLength, [
    [0, tipEdge * tipCorner * tip],
    [gaugePlaces.tip, tipCorner * tip],
    [gaugePlaces.heart, wings],
    [gaugePlaces.spine, rails],
    [gaugePlaces.back, rails * (1 + backRise / spine)],
  ]);
}

/** On a short blade the last place is read 1.5 mm in front of the collar. */
function inFront(bladeLength: number, knots: Knot[]): Knot[] {
  const last = knots.at(-1)!;
  const place = Math.max(gaugePlaces.spine + 1, Math.min(last[0], bladeLength - 1.5));
  return [...knots.slice(0, -1), [place, last[1]]];
}

function requireReadings(recipe: BladeRecipe): void {
  const needed = [
    "bladeLength",
    "tipWidth",
    "throatWidth",
    "heart",
    "wings",
    "spine",
    "rails",
    "tip",
    "backRise",
  ] as const;
  for (const id of needed) {
    if (Number.isFinite(recipe[id])) continue;
    throw new RangeError(
      `bladeThickness: ${id} is ${String(recipe[id])}; allowed: a finite number of mm`,
    );
  }
}
