import { nothing, svg, type SVGTemplateResult } from "lit";
import type { Blend } from "../engine/blend.js";
import { blendToPoint, type Frame } from "../engine/frame.js";
import type { CertaintyEllipse } from "../engine/certainty.js";
import { nearestBlend } from "../engine/nearest-blend.js";
import type { ChainLink } from "../engine/pull-chain.js";
import { arrow } from "../drawing/arrow.js";
import {
  polygonPath,
  readingLines,
  round,
  type TriangleLayout,
} from "../drawing/triangle-layout.js";
import type { TriangleWords } from "../reed/triangle-words.js";
import { targetRadius } from "../reed/target-places.js";

const order = ["high", "low", "loud"] as const;

/** Where hands can still bring the reed. */
export interface DrawnReach {
  readonly easy: readonly Blend[];
  readonly full: readonly Blend[];
}

/** The zone of a part to play. */
export interface DrawnTarget {
  readonly blend: Blend;
  readonly label: string;
  /** One's own, which can be moved. */
  readonly own?: boolean;
  /** Of its zone, in share space, where it is not that of a kind of part. */
  readonly radius?: number;
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

/** The zone of the part to play: a circle, for finer would be false precision. */
export function targetLayer(
  target: DrawnTarget | undefined,
  { frame, side }: TriangleLayout,
): SVGTemplateResult | typeof nothing {
  if (!target) return nothing;
  const [x, y] = blendToPoint(target.blend, frame);
  // Distances in shares are √2 times those in the drawing of side 1.
  const radius = round(((target.radius ?? targetRadius) / Math.SQRT2) * side);
  return svg`<g class="target"><circle class="zone" cx=${round(x)} cy=${round(y)} r=${radius}></circle>
    <path d="M${round(x - radius - 5)},${round(y)}h10M${round(x + radius - 5)},${round(y)}h10M${round(x)},${round(y - radius - 5)}v10M${round(x)},${round(y + radius - 5)}v10"></path></g>`;
}

/** The middle of one's own target, with room for a finger. */
export function aimHandle(
  target: DrawnTarget | undefined,
  frame: Frame,
): SVGTemplateResult | typeof nothing {
  if (!target?.own) return nothing;
  const [x, y] = blendToPoint(nearestBlend(target.blend), frame);
  return svg`<g class="aim" transform="translate(${round(x)} ${round(y)})"><circle class="grasp" r="22"></circle>
    <path class="diamond" d="M0,-7L7,0L0,7L-7,0Z"></path></g>`;
}

/** The pulls head to tail: all shafts are one path and all heads another, for every move of the point draws them anew. */
export function chainLayer(
  chain: readonly ChainLink[],
  frame: Frame,
): SVGTemplateResult | typeof nothing {
  const arrows = chain.flatMap(
    ({ from, to }) => arrow(blendToPoint(from, frame), blendToPoint(to, frame), 9) ?? [],
  );
  if (arrows.length === 0) return nothing;
  return svg`<g class="chain"><path class="shaft" d=${arrows.map(({ shaft }) => shaft).join("")}></path><path
    class="head" d=${arrows.map(({ head }) => head).join("")}></path></g>`;
}

/** The ellipse in which the reed lies in 68 of 100 cases, inside the triangle. */
export function certaintyLayer(
  ellipse: CertaintyEllipse | undefined,
  blend: Blend | undefined,
  { frame, side }: TriangleLayout,
): SVGTemplateResult | typeof nothing {
  if (!ellipse || !blend) return nothing;
  const [x, y] = blendToPoint(blend, frame);
  const [major, minor] = ellipse.semiAxes;
  const degrees = round((-ellipse.angle * 180) / Math.PI);
  return svg`<g clip-path="url(#inside)"><ellipse class="certainty" cx=${round(x)} cy=${round(y)} rx=${round(major * side)} ry=${round(minor * side)}
    transform="rotate(${degrees} ${round(x)} ${round(y)})"></ellipse></g>`;
}

/** Lines from the point to the sides on which its shares are read. */
export function readingLayer(
  blend: Blend | undefined,
  frame: Frame,
  em: number,
  text: TriangleWords,
): SVGTemplateResult[] | typeof nothing {
  if (!blend) return nothing;
  return readingLines(nearestBlend(blend), frame, em).map(
    ({ from, to, label, anchor, share }, k) => svg`
      <line class="reading ${order[k]}" x1=${round(from[0])} y1=${round(from[1])} x2=${round(to[0])} y2=${round(to[1])}></line>
      ${
        // Next to a corner the number would stand on the corner's name, which says the same.
        frame.some(([x, y]) => Math.hypot(to[0] - x, to[1] - y) < 1.6 * em)
          ? nothing
          : svg`<text class="tick ${order[k]}" x=${round(label[0])} y=${round(label[1])} text-anchor=${anchor}>${text.percent(share)}</text>`
      }`,
  );
}
