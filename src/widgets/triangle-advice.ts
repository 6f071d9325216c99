import { nothing, svg, type SVGTemplateResult } from "lit";
import { guard } from "lit/directives/guard.js";
import type { Blend } from "../engine/blend.js";
import type { CertaintyEllipse } from "../engine/certainty.js";
import { blendToPoint, type Frame, type Point } from "../engine/frame.js";
import { nearestBlend } from "../engine/nearest-blend.js";
import type { SevenValues } from "../engine/qualities.js";
import { arrow } from "../drawing/arrow.js";
import { qualityContours } from "../drawing/quality-contours.js";
import { stepNumbers } from "../drawing/step-numbers.js";
import { round, type TriangleLayout } from "../drawing/triangle-layout.js";
import { certaintyLayer } from "./triangle-layers.js";

/** A move on the triangle. */
export interface DrawnMove {
  readonly from: Blend;
  readonly to: Blend;
}

/** What advice draws on the triangle. */
export interface DrawnAdvice {
  /** The steps of a plan, head to tail. */
  readonly steps?: readonly DrawnMove[];
  /** Where they end, and how sure that is. */
  readonly end?: { readonly blend: Blend; readonly ellipse?: CertaintyEllipse };
  /** What a stand-in that is tried leaves over. */
  readonly leftover?: DrawnMove;
  /** The seven values of a quality, as contours. */
  readonly contours?: SevenValues;
  /** The same in words, for who does not see it. */
  readonly says?: readonly string[];
}

/** A quality as contours under everything else: brighter where it is better. */
export function contourLayer(
  contours: SevenValues | undefined,
  frame: Frame,
): SVGTemplateResult | typeof nothing {
  if (!contours) return nothing;
  const drawn = (): SVGTemplateResult => {
    const lines = qualityContours(contours, frame);
    return svg`<g clip-path="url(#inside)">${lines.map(({ path }) => svg`<path class="glow" d=${path}></path>`)}
      ${lines.map(({ path }) => svg`<path class="level" d=${path}></path>`)}</g>
      ${lines.map(({ value, label }) => (label ? svg`<text class="levelName" x=${round(label[0])} y=${round(label[1] + 4)} text-anchor="middle">${value}</text>` : nothing))}`;
  };
  return svg`<g class="contours">${guard([contours, frame.flat().join(" ")], drawn)}</g>`;
}

/** The arrows of a plan with their numbers, where it ends, and what a stand-in leaves over. */
export function adviceLayer(
  { steps = [], end, leftover }: DrawnAdvice,
  layout: TriangleLayout,
): (SVGTemplateResult | typeof nothing)[] {
  return [endMark(end, layout), stepArrows(steps, layout.frame), leftoverArrow(leftover, layout.frame)];
}

function ends({ from, to }: DrawnMove, frame: Frame): readonly [Point, Point] {
  return [blendToPoint(from, frame), blendToPoint(to, frame)];
}

function stepArrows(
  steps: readonly DrawnMove[],
  frame: Frame,
): SVGTemplateResult | typeof nothing {
  if (steps.length === 0) return nothing;
  const places = steps.map((step) => ends(step, frame));
  const numbers = stepNumbers(places, 12);
  return svg`<g class="plan">${places.map(([from, to]) => {
    const drawn = arrow(from, to, 10);
    return drawn
      ? svg`<path class="under" d=${drawn.shaft}></path><path class="shaft" d=${drawn.shaft}></path><path class="head" d=${drawn.head}></path>`
      : nothing;
  })}${numbers.map((at, i) => (at ? svg`<text class="number" x=${round(at[0])} y=${round(at[1] + 4)} text-anchor="middle">${i + 1}</text>` : nothing))}</g>`;
}

function endMark(end: DrawnAdvice["end"], layout: TriangleLayout) {
  if (!end) return nothing;
  const [x, y] = blendToPoint(nearestBlend(end.blend), layout.frame);
  return svg`<g class="planEnd">${certaintyLayer(end.ellipse, end.blend, layout)}
    <circle class="ring" cx=${round(x)} cy=${round(y)} r="6"></circle></g>`;
}

function leftoverArrow(leftover: DrawnMove | undefined, frame: Frame) {
  const drawn = leftover && arrow(...ends(leftover, frame), 8);
  if (!drawn) return nothing;
  return svg`<g class="leftover"><path class="shaft" d=${drawn.shaft}></path><path class="head" d=${drawn.head}></path></g>`;
}
