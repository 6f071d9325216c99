import { nothing, svg, type SVGTemplateResult } from "lit";
import type { Blend } from "../engine/blend.js";
import { blendToPoint, type Frame } from "../engine/frame.js";
import type { ChainLink } from "../engine/pull-chain.js";
import { arrow } from "../drawing/arrow.js";
import { polygonPath, round, type TriangleLayout } from "../drawing/triangle-layout.js";
import { targetRadius } from "../reed/targets.js";

/** Width of a letter of a zone's name, in em of the page's text size. */
const letter = 0.47;

/** Where hands can still bring the reed. */
export interface DrawnReach {
  readonly easy: readonly Blend[];
  readonly full: readonly Blend[];
}

/** The zone of a part to play. */
export interface DrawnTarget {
  readonly blend: Blend;
  readonly label: string;
}

/** The reach of the hands as two polygons inside the triangle. */
export function reachLayer(
  reach: DrawnReach | undefined,
  frame: Frame,
): SVGTemplateResult | typeof nothing {
  if (!reach) return nothing;
  const path = (polygon: readonly Blend[]): string =>
    polygonPath(polygon.map((blend) => blendToPoint(blend, frame)));
  return svg`<g class="reach" clip-path="url(#inside)"><path class="full" d=${path(reach.full)}></path><path
    class="easy" d=${path(reach.easy)}></path></g>`;
}

/** The zone of the part to play: a circle, for finer would be false precision. Its name is left out where it has no room. */
export function targetLayer(
  target: DrawnTarget | undefined,
  { frame, side, width }: TriangleLayout,
  em: number,
): SVGTemplateResult | typeof nothing {
  if (!target) return nothing;
  const [x, y] = blendToPoint(target.blend, frame);
  // Distances in shares are √2 times those in the drawing of side 1.
  const radius = round((targetRadius / Math.SQRT2) * side);
  const half = (target.label.length * letter * em) / 2 + 4;
  const name =
    2 * half > width
      ? nothing
      : svg`<text x=${round(Math.min(width - half, Math.max(half, x)))} y=${round(y + radius + 1.1 * em)}
          text-anchor="middle">${target.label}</text>`;
  return svg`<g class="target"><circle class="zone" cx=${round(x)} cy=${round(y)} r=${radius}></circle>
    <path d="M${round(x - radius - 5)},${round(y)}h10M${round(x + radius - 5)},${round(y)}h10M${round(x)},${round(y - radius - 5)}v10M${round(x)},${round(y + radius - 5)}v10"></path>
    ${name}</g>`;
}

/** The pulls head to tail. */
export function chainLayer(chain: readonly ChainLink[], frame: Frame): SVGTemplateResult {
  return svg`<g class="chain">${chain.map(({ id, from, to }) => {
    const drawn = arrow(blendToPoint(from, frame), blendToPoint(to, frame), 9);
    if (!drawn) return nothing;
    return svg`<g data-id=${id}><path class="shaft" d=${drawn.shaft}></path><path class="head" d=${drawn.head}></path></g>`;
  })}</g>`;
}
