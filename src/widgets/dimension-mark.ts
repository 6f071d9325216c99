import { nothing, svg, type SVGTemplateResult } from "lit";
import type { BladeRecipe } from "../acoustics/blade.js";
import type { LampView } from "../drawing/lamp-view.js";
import type { ReedLayout } from "../drawing/reed-layout.js";
import { round } from "../drawing/triangle-layout.js";

/** Lengths that are read from one end to the other: drawn as a line with a bar at each end. */
export function dimensionMark(
  pointed: string | undefined,
  { lying }: ReedLayout,
  { at }: LampView,
  { bladeLength }: BladeRecipe,
): SVGTemplateResult | typeof nothing {
  const ends =
    pointed === "bladeLength"
      ? ([at(0.2, 0), at(bladeLength - 0.2, 0)] as const)
      : pointed === "tipWidth"
        ? ([at(0.5, -1), at(0.5, 1)] as const)
        : undefined;
  if (!ends) return nothing;
  const alongBlade = pointed === "bladeLength";
  // The bar stands across the line.
  const [dx, dy] = alongBlade === lying ? [0, 7] : [7, 0];
  const bar = ([x, y]: readonly [number, number]): string =>
    `M${round(x - dx)},${round(y - dy)}L${round(x + dx)},${round(y + dy)}`;
  const [from, to] = ends;
  const line = `M${round(from[0])},${round(from[1])}L${round(to[0])},${round(to[1])}`;
  return svg`<path class="dimension" d=${line + bar(from) + bar(to)}></path>`;
}
