import { contours } from "d3";
import { bladeSurface, bladeWidth, gaugePlaces, type BladeRecipe } from "../acoustics/blade.js";
import { polygonPath, round } from "./triangle-layout.js";

/** One band of cane that the lamp shines through alike. */
export interface LampBand {
  /** Thickness, mm: from … to. */
  readonly from: number;
  readonly to: number;
  /** Share of the lamp's light that gets through the middle of the band. */
  readonly light: number;
  readonly path: string;
}

/** A place on the blade where a feature is read. */
export interface BladeZone {
  readonly feature: string;
  readonly spots: readonly { readonly x: number; readonly y: number }[];
}

/** mm from the tip, −1 … 1 across → px. */
export type ToPixels = (x: number, u: number) => readonly [number, number];

/** The blade from above, held to a lamp, in px. */
export interface LampView {
  readonly outline: string;
  readonly bands: readonly LampBand[];
  readonly zones: readonly BladeZone[];
  /** Where a place of the blade is drawn: mm from the tip, −1 … 1 across. */
  readonly at: ToPixels;
}

/** Light is lost in cane as exp(−μt), Beer–Lambert; μ per mm is an assumption that keeps spine and tip both legible. */
const absorption = 3.6;
/** Step of the bands, mm. */
const bandStep = 0.05;
/** Places across and along at which the field is read: for a drawing at rest, and for one that changes many times a second. */
const meshes = { fine: [61, 91], quick: [25, 37] } as const;

/** How closely the thickness field is read for the bands. */
export type LampMesh = keyof typeof meshes;

/**
 * The blade against the light: bands of 0.05 mm, bright where cane is thin.
 *
 * Shape   recipe (mm); the line of the spine, the tip and the scale in px (per mm); `lying`: tip to the left instead of
 *         up; `mesh`: how closely the field is read → paths in px.
 */
export function lampView(
  recipe: BladeRecipe,
  box: {
    readonly middle: number;
    readonly tip: number;
    readonly scale: number;
    readonly lying?: boolean;
    readonly mesh?: LampMesh;
  },
): LampView {
  const { middle, tip, scale, lying = false, mesh = "fine" } = box;
  const [columns, rows] = meshes[mesh];
  const length = recipe.bladeLength;
  const surface = bladeSurface(recipe);
  const at = (x: number, u: number): readonly [number, number] => {
    const across = middle + (u * bladeWidth(recipe, x / 1000) * 1000 * scale) / 2;
    const along = tip + x * scale;
    return lying ? [along, across] : [across, along];
  };
  const grid: number[] = [];
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < columns; column += 1) {
      grid.push(
        surface(((row / (rows - 1)) * length) / 1000, (column / (columns - 1)) * 2 - 1) * 1000,
      );
    }
  }
  const outline = bladeOutline(length, at);
  return {
    outline,
    bands: bandsOf(grid, meshes[mesh], length, at, outline),
    zones: zonesOf(recipe, at),
    at,
  };
}

function bladeOutline(length: number, at: ToPixels): string {
  const places = Array.from({ length: 25 }, (_, i) => (i / 24) * length);
  return polygonPath([
    ...places.map((x) => at(x, -1)),
    ...places.toReversed().map((x) => at(x, 1)),
  ]);
}

/** Each band is drawn over the thinner one before it, from its lower limit up: no seams between neighbours. */
function bandsOf(
  grid: number[],
  size: readonly [number, number],
  length: number,
  at: ToPixels,
  outline: string,
): LampBand[] {
  const least = Math.floor(Math.min(...grid) / bandStep);
  const most = Math.ceil(Math.max(...grid) / bandStep);
  const limits = Array.from(
    { length: Math.max(1, most - least) },
    (_, i) => (least + i) * bandStep,
  );
  const make = contours()
    .size([...size])
    .smooth(true);
  return limits.map((from, i) => {
    const path =
      i === 0 ? outline : contourPath(make.contour(grid, from).coordinates, size, length, at);
    return { from, to: from + bandStep, light: lightThrough(from + bandStep / 2), path };
  });
}

/** d3's contours count cells from their corners: a value stands half a cell inside. */
function contourPath(
  polygons: readonly (readonly (readonly (readonly number[])[])[])[],
  [columns, rows]: readonly [number, number],
  length: number,
  at: ToPixels,
): string {
  return polygons
    .flatMap((rings) => rings)
    .map((ring) =>
      polygonPath(
        ring.map(([column, row]) => {
          const x = (Math.min(rows - 1, Math.max(0, row! - 0.5)) / (rows - 1)) * length;
          const u = (Math.min(columns - 1, Math.max(0, column! - 0.5)) / (columns - 1)) * 2 - 1;
          return at(x, u);
        }),
      ),
    )
    .join("");
}

/**
 * Share of light through cane of a thickness (mm).
 *
 * @example lightThrough(0) → 1
 */
function lightThrough(thickness: number): number {
  return Math.exp(-absorption * thickness);
}

function zonesOf(recipe: BladeRecipe, at: ToPixels): BladeZone[] {
  const side = (x: number): number =>
    1 - (2 * gaugePlaces.fromEdge) / (bladeWidth(recipe, x / 1000) * 1000);
  const spot = (x: number, u: number) => {
    const [px, py] = at(x, u);
    return { x: round(px), y: round(py) };
  };
  const { tip, heart, spine, back } = gaugePlaces;
  const last = Math.min(back, recipe.bladeLength - 1.5);
  return [
    { feature: "tip", spots: [spot(tip, 0)] },
    { feature: "heart", spots: [spot(heart, 0)] },
    { feature: "wings", spots: [spot(heart, -side(heart)), spot(heart, side(heart))] },
    { feature: "spine", spots: [spot(spine, 0)] },
    { feature: "rails", spots: [spot(spine, -side(spine)), spot(spine, side(spine))] },
    { feature: "backRise", spots: [spot(last, 0)] },
  ];
}
