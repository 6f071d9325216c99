import type { ClosingLaw } from "../acoustics/closing-law.js";
import type { PlotAxes } from "./plot-axes.js";

/** Upright extents on an opening plot, px: from the greater opening down to the smaller. */
export interface HeldOpenings {
  readonly held: readonly (readonly [top: number, bottom: number])[];
  readonly unheld: readonly [top: number, bottom: number] | undefined;
}

/**
 * Which openings can be held, along the axis of an opening plot.
 *
 * Shape   law, axes that count open shares from 0 to 1 → extents in px.
 */
export function heldOpenings({ fold }: ClosingLaw, axes: PlotAxes): HeldOpenings {
  const at = (open: number): number => axes.place(0, open)[1];
  if (!fold) return { held: [[at(1), at(0)]], unheld: undefined };
  const above = [at(1), at(fold.from)] as const;
  const below = fold.to > 0 ? [[at(fold.to), at(0)] as const] : [];
  return { held: [above, ...below], unheld: [at(fold.from), at(fold.to)] };
}
