import { svg, type SVGTemplateResult } from "lit";
import type { Point } from "../engine/frame.js";
import { round } from "../drawing/triangle-layout.js";

/** A corner's tint: strongest in the corner, gone a little past the middle. */
export function triangleTint(id: string, k: number, frame: readonly Point[]): SVGTemplateResult {
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
