import { svg, type SVGTemplateResult } from "lit";
import { centreBlend, type Blend } from "../engine/blend.js";
import { blendToPoint, type Frame } from "../engine/frame.js";
import { nearestBlend } from "../engine/nearest-blend.js";
import { round, type TriangleLayout } from "../drawing/triangle-layout.js";
import type { TriangleWords } from "../reed/triangle-words.js";
import { wholeShares } from "../reed/whole-shares.js";

/** Width of a letter of the corners' names, in em. */
export const cornerLetter = 0.6;

const order = ["high", "low", "loud"] as const;

/** The names of the corners, and under each its share of the reed. */
export function cornerLabels(
  { labels, lineHeight, width }: TriangleLayout,
  blend: Blend | undefined,
  em: number,
  text: TriangleWords,
): SVGTemplateResult[] {
  const near = blend && wholeShares(nearestBlend(blend));
  return order.map((id, k) => {
    const { x, y, anchor } = labels[k]!;
    const share = near ? text.percent(near[k]!) : "";
    // A name longer than the drawing is written smaller, rather than cut off.
    const room = (width - 12) / (text.corners[id].length * cornerLetter * em);
    const size = room < 1 ? `font-size:${(0.98 * room).toFixed(3)}rem` : "";
    return svg`<text class="corner ${id}" .style=${size} x=${round(x)} y=${round(y)} text-anchor=${anchor}>${text.corners[id]}</text>
      <text class="share" x=${round(x)} y=${round(y + lineHeight * 0.95)} text-anchor=${anchor}>${share}</text>`;
  });
}

/** The place of the all-round reed. */
export function centreMark(frame: Frame): SVGTemplateResult {
  const [x, y] = blendToPoint(centreBlend, frame);
  return svg`<circle class="centre" cx=${round(x)} cy=${round(y)} r="5"></circle>`;
}
