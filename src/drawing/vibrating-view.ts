import { bladeWidth, type BladeRecipe } from "../acoustics/blade.js";
import type { VibratingRegion } from "../acoustics/vibrating-region.js";
import type { ToPixels } from "./lamp-view.js";
import { openPath } from "./plot-axes.js";
import { polygonPath, round } from "./triangle-layout.js";

/** The part of the blade that vibrates, to lie over the lamp view, in px. */
export interface VibratingView {
  readonly region: string;
  /** The line of the lips across the blade. */
  readonly lips: string;
}

const steps = 32;

/**
 * The vibrating region over the lamp view of the same blade.
 *
 * Shape   recipe (mm), region (m), `at` of the lamp view → closed path and line in px.
 */
export function vibratingView(
  recipe: BladeRecipe,
  region: VibratingRegion,
  at: ToPixels,
): VibratingView {
  const edge = (i: number): { readonly x: number; readonly u: number } => {
    // Closer together toward the tip, where a closing corner bends most.
    const x = region.length * (i / steps) ** 2;
    return { x: x * 1000, u: Math.min(1, region.halfWidth(x) / (bladeWidth(recipe, x) / 2)) };
  };
  const edges = Array.from({ length: steps + 1 }, (_, i) => edge(i));
  const { x: lipsAt } = edges.at(-1)!;
  const across = [-1, 1].map((u) => at(lipsAt, u)).map(([x, y]) => [round(x), round(y)] as const);
  return {
    region: polygonPath([
      ...edges.map(({ x, u }) => at(x, -u)),
      ...edges.toReversed().map(({ x, u }) => at(x, u)),
    ]),
    lips: openPath(across),
  };
}
