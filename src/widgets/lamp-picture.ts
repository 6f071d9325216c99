import { interpolateRgbBasis } from "d3";
import { svg, type SVGTemplateResult } from "lit";
import type { LampView } from "../drawing/lamp-view.js";

/** Cane against a lamp, from no light to all of it: a picture's own colours, the same in both looks. */
const caneColour = interpolateRgbBasis(["#1d0d04", "#6b370d", "#b8742a", "#eab866", "#fff0c4"]);

/** The blade held to a lamp: its bands, and its edge around them. */
export function lampPicture({ outline, bands }: LampView): SVGTemplateResult {
  return svg`<g class="lamp">
      ${bands.map(({ light, path }) => svg`<path d=${path} fill=${caneColour(Math.sqrt(light))}></path>`)}
      <path class="edge" d=${outline}></path></g>`;
}
