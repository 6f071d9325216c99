import { round } from "./triangle-layout.js";

/** A shape seen end-on, in px around its own middle. */
export interface EndShape {
  readonly width: number;
  readonly height: number;
  readonly path: string;
}

/**
 * The tip opening end-on: a lens of two equal arcs.
 *
 * Unit    mm → px by `scale`.
 * @example openingShape(12, 1.2, 10).height → 12
 */
export function openingShape(openingWidth: number, openingHeight: number, scale: number): EndShape {
  const half = (openingWidth * scale) / 2;
  const rise = (openingHeight * scale) / 2;
  // Radius of the circle through both corners and the top: (h² + r²) / 2r.
  const radius = round((half * half + rise * rise) / (2 * rise));
  const arc = (x: number): string => `A${radius},${radius} 0 0 1 ${round(x)},0`;
  return {
    width: 2 * half,
    height: 2 * rise,
    path: `M${round(-half)},0${arc(half)}${arc(-half)}Z`,
  };
}

/**
 * The tube at a wire, end-on: an ellipse as wide as the throat and as tall as its roundness says.
 *
 * Unit    mm, ratio → px by `scale`.
 */
export function tubeShape(
  throatWidth: number,
  roundness: number,
  scale: number,
): { readonly rx: number; readonly ry: number } {
  return { rx: round((throatWidth * scale) / 2), ry: round((throatWidth * roundness * scale) / 2) };
}
