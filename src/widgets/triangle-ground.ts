import { svg, type SVGTemplateResult } from "lit";
import type { Frame, Point } from "../engine/frame.js";
import { gridLines, polygonPath, round } from "../drawing/triangle-layout.js";

const order = ["high", "low", "loud"] as const;

/** What lies under everything on the triangle: paper, tints, grid, sides, and the border that layers are cut at. */
export function groundLayer(frame: Frame): SVGTemplateResult {
  const corners = polygonPath(frame);
  return svg`<defs>
      ${order.map((id, k) => triangleTint(id, k, frame))}
      <clipPath id="inside"><path d=${corners}></path></clipPath>
    </defs>
    <path class="paper" d=${corners}></path>
    ${order.map((id) => svg`<path class="tint" d=${corners} fill="url(#tint-${id})"></path>`)}
    ${gridLines(frame).map(
      ({ from, to }) =>
        svg`<line class="grid" x1=${round(from[0])} y1=${round(from[1])} x2=${round(to[0])} y2=${round(to[1])}></line>`,
    )}
    <path class="side" d=${corners}></path>`;
}

/** A corner's tint: strongest in the corner, gone a little past the middle. */
function triangleTint(id: string, k: number, frame: readonly Point[]): SVGTemplateResult {
  const from = frame[k]!;
  const others = frame.filter((_, i) => i !== k);
  const opposite: Point = [
    (others[0]![0] + others[1]![0]) / 2,
    (others[0]![1] + others[1]![1]) / 2,
  ];
  return svg`<linearGradient id="tint-${id}" gradientUnits="userSpaceOnUse" x1=${round(from[0])} y1=${round(from[1])}
    x2=${round(opposite[0])} y2=${round(opposite[1])}>
    <stop class=${id} offset="0" stop-opacity="0.42"></stop><stop class=${id} offset="0.78" stop-opacity="0"></stop>
  </linearGradient>`;
}
