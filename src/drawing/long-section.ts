import { bladeSurface, bladeWidth, gaugePlaces, type BladeRecipe } from "../acoustics/blade.js";
import type { Point } from "../engine/frame.js";
import { polygonPath } from "./triangle-layout.js";

/** How many times thicker than it is the long section is drawn. */
export const thicknessExaggeration = 10;

/**
 * The blade cut along its spine and along a rail: thickness over length, thickness exaggerated tenfold.
 *
 * Shape   recipe (mm), px per mm along, where tip and base line lie → two closed paths.
 */
export function longSection(
  recipe: BladeRecipe,
  { left, base, scale }: { readonly left: number; readonly base: number; readonly scale: number },
): { readonly spine: string; readonly rail: string } {
  const surface = bladeSurface(recipe);
  const railAt = (x: number): number =>
    1 - (2 * gaugePlaces.fromEdge) / (bladeWidth(recipe, x / 1000) * 1000);
  const cut = (u: (x: number) => number): string => {
    const top = Array.from({ length: 41 }, (_, i): Point => {
      const x = (i / 40) * recipe.bladeLength;
      return [
        left + x * scale,
        base - surface(x / 1000, u(x)) * 1000 * thicknessExaggeration * scale,
      ];
    });
    return polygonPath([[left, base], ...top, [left + recipe.bladeLength * scale, base]]);
  };
  return { spine: cut(() => 0), rail: cut(railAt) };
}
