import { assumed, type Assumptions } from "./assumptions.js";
import { gaussLegendre } from "./gauss-legendre.js";
import { monotoneCurve, type Knot } from "./monotone-curve.js";
import { requireGiven } from "./require-given.js";

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

/**
 * The blade's width.
 *
 * Shape   recipe (mm), place (m from the tip) → width.
 * Unit    m.
 * Domain  0 … blade length; beyond, the width of the nearer end.
 *
 * @example bladeWidth(recipe, 0) → recipe.tipWidth / 1000
 */
export function bladeWidth(
  { bladeLength, tipWidth, throatWidth }: BladeRecipe,
  x: number,
  { waist, collarOverThroat }: Assumptions = assumed,
): number {
  const s = Math.min(1, Math.max(0, (x * 1000) / bladeLength));
  const taper = throatWidth + collarOverThroat - tipWidth;
  return (tipWidth + taper * (s + waist * 4 * s * (1 - s))) / 1000;
}

/**
 * The blade's thickness: one smooth surface through the recipe's readings at their gauge places, without
 * overshoot and never below 0.03 mm. The lamp view draws it,
 * the beam integrates it.
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
  requireGiven(recipe, "bladeThickness: recipe", "a recipe, mm");
  return bladeSurface(recipe)(x, u);
}

/** The same with the curves made once, for drawings that ask at many places. */
export function bladeSurface(
  recipe: BladeRecipe,
  given: Assumptions = assumed,
): (x: number, u: number) => number {
  const cut = bladeCut(recipe, given);
  return (x, u) => {
    const { centre, side, sideAt } = cut(x);
    return thicknessBetween(centre, side, sideShare(Math.abs(u) / sideAt), given.thinnest) / 1000;
  };
}

/** What the bending of one cross-section asks for. */
export interface CrossSection {
  /** m. */
  readonly width: number;
  /** Mean of t over the width, m, and of t³, m³. */
  readonly mean: number;
  readonly meanCube: number;
}

const across = gaussLegendre(6);
const acrossShares = across.places.map(sideShare);

/** The blade cut across: the same surface, integrated from edge to edge. */
export function bladeCrossSection(
  recipe: BladeRecipe,
  given: Assumptions = assumed,
): (x: number) => CrossSection {
  const cut = bladeCut(recipe, given);
  return (x) => {
    const { centre, side, sideAt, width } = cut(x);
    const edge = thicknessBetween(centre, side, 1, given.thinnest) / 1000;
    let mean = (1 - sideAt) * edge;
    let meanCube = (1 - sideAt) * edge ** 3;
    acrossShares.forEach((share, i) => {
      const thickness = thicknessBetween(centre, side, share, given.thinnest) / 1000;
      mean += sideAt * across.weights[i]! * thickness;
      meanCube += sideAt * across.weights[i]! * thickness ** 3;
    });
    return { width, mean, meanCube };
  };
}

/** Along the blade: thickness (mm) in the middle and at the side, where that side is (0 … 1), and the width (m). */
function bladeCut(recipe: BladeRecipe, given: Assumptions) {
  requireReadings(recipe);
  const centre = monotoneCurve(centreKnots(recipe, given));
  const side = monotoneCurve(sideKnots(recipe, given));
  return (x: number) => {
    const width = bladeWidth(recipe, x, given);
    // On a blade hardly wider than twice the gauge's distance from the edge, the side still stands off the middle.
    const sideAt = Math.max(0.1, 1 - (2 * gaugePlaces.fromEdge) / (width * 1000));
    return { centre: centre(x * 1000), side: side(x * 1000), sideAt, width };
  };
}

/** From the spine to the gauge's place at the side as half a wave, so that it is level at both; level to the edge. */
function sideShare(toSide: number): number {
  return (1 - Math.cos(Math.PI * Math.min(1, toSide))) / 2;
}

function thicknessBetween(centre: number, side: number, share: number, thinnest: number): number {
  return Math.max(thinnest, centre + (side - centre) * share);
}

function centreKnots(
  { tip, heart, spine, backRise, bladeLength }: BladeRecipe,
  { tipEdge }: Assumptions,
): Knot[] {
  return inFront(bladeLength, [
    [0, tipEdge * tip],
    [gaugePlaces.tip, tip],
    [gaugePlaces.heart, heart],
    [gaugePlaces.spine, spine],
    [gaugePlaces.back, spine + backRise],
  ]);
}

/** Along the side nothing is read at tip and back: there the sides follow the middle in proportion. */
function sideKnots(
  { tip, wings, spine, rails, backRise, bladeLength }: BladeRecipe,
  { tipEdge, tipCorner }: Assumptions,
): Knot[] {
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
