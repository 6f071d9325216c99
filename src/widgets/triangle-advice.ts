import { nothing, svg, type SVGTemplateResult } from "lit";
import type { Blend } from "../engine/blend.js";
import type { CertaintyEllipse } from "../engine/certainty.js";
import { blendToPoint, type Frame, type Point } from "../engine/frame.js";
import { nearestBlend } from "../engine/nearest-blend.js";
import type { SevenValues } from "../engine/qualities.js";
import { arrow } from "../drawing/arrow.js";
import { boxAround, type Box } from "../drawing/name-places.js";
import { qualityContours, type QualityContour } from "../drawing/quality-contours.js";
import { stepNumbers, type StepNumber } from "../drawing/step-numbers.js";
import { round, type TriangleLayout } from "../drawing/triangle-layout.js";
import { remembered } from "./remembered.js";
import { triangleAdviceStyle } from "./triangle-advice-style.js";
import { certaintyLayer } from "./triangle-layers.js";
import { standingBoxes, type Standing } from "./triangle-names.js";

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
  /** What draws it: a triangle that is given no advice does not carry the code. */
  readonly by: AdviceDrawing;
}

/** What `adviceDrawing` draws: under everything else, over it, and where no name may stand. */
export interface AdviceDrawing {
  readonly under: typeof contourLayer;
  readonly over: typeof adviceLayer;
  readonly numbers: typeof adviceNumbers;
  readonly boxes: typeof adviceBoxes;
  readonly style: typeof triangleAdviceStyle;
}

const contoursOf = remembered((values: SevenValues, place: string, em: number) =>
  spaced(qualityContours(values, JSON.parse(place) as Frame), 1.2 * em),
);

/** Made anew only where the quality or the place of the triangle is another; a frame is another object every time. */
function drawnContours(values: SevenValues, frame: Frame, em: number): readonly QualityContour[] {
  return contoursOf(values, JSON.stringify(frame), em);
}

/** Numbers that would stand on the one before are left out. */
function spaced(lines: readonly QualityContour[], apart: number): QualityContour[] {
  const kept: Point[] = [];
  return lines.map(({ label, ...line }) => {
    const crowded = label && kept.some(([x, y]) => Math.hypot(x - label[0], y - label[1]) < apart);
    if (!label || crowded) return line;
    kept.push(label);
    return { ...line, label };
  });
}

/** A quality as contours under everything else: brighter where it is better. */
function contourLayer(
  { contours }: DrawnAdvice,
  frame: Frame,
  em: number,
): SVGTemplateResult | typeof nothing {
  if (!contours) return nothing;
  const lines = drawnContours(contours, frame, em);
  return svg`<g class="contours"><g clip-path="url(#inside)">
    ${lines.map(({ path }) => svg`<path class="glow" d=${path}></path>`)}
    ${lines.map(({ path }) => svg`<path class="level" d=${path}></path>`)}</g>
    ${lines.map(({ value, label }) => (label ? svg`<text class="levelName" x=${round(label[0])} y=${round(label[1] + 0.27 * em)} text-anchor="middle">${value}</text>` : nothing))}</g>`;
}

/** Where numbers of advice stand, which no name may cover. */
function adviceBoxes(
  advice: DrawnAdvice,
  numbers: readonly StepNumber[],
  frame: Frame,
  em: number,
): Box[] {
  const places = numbers.map(({ at }) => at);
  return [...levelPlaces(advice, frame, em), ...places].map((at) => boxAround(at, em, em));
}

function levelPlaces({ contours }: DrawnAdvice, frame: Frame, em: number): Point[] {
  return contours
    ? drawnContours(contours, frame, em).flatMap(({ label }) => (label ? [label] : []))
    : [];
}

const none: readonly StepNumber[] = [];

/** Where the numbers of a plan's arrows stand: clear of what stands already, of contours' numbers and of the plan's end. */
function adviceNumbers(
  advice: DrawnAdvice | undefined,
  standing: Standing,
  layout: TriangleLayout,
  em: number,
): readonly StepNumber[] {
  const { frame, width, height } = layout;
  const { steps = [], end } = advice ?? {};
  if (!advice || steps.length === 0) return none;
  const ring = end ? [blendToPoint(nearestBlend(end.blend), frame)] : [];
  const taken = [
    ...standingBoxes(standing, layout, em),
    ...levelPlaces(advice, frame, em).map((at) => boxAround(at, em, em)),
    ...ring.map((at) => boxAround(at, 14, 14)),
  ];
  const arrows = steps.map((step) => ends(step, frame));
  return stepNumbers(arrows, { distance: 0.8 * em, width, height, taken });
}

/** The arrows of a plan with their numbers, where it ends, and what a stand-in leaves over. */
function adviceLayer(
  { steps = [], end, leftover }: DrawnAdvice,
  numbers: readonly StepNumber[],
  layout: TriangleLayout,
  em: number,
): (SVGTemplateResult | typeof nothing)[] {
  return [
    endMark(end, layout),
    stepArrows(steps, numbers, layout.frame, em),
    leftoverArrow(leftover, layout.frame),
  ];
}

function ends({ from, to }: DrawnMove, frame: Frame): readonly [Point, Point] {
  return [blendToPoint(from, frame), blendToPoint(to, frame)];
}

function stepArrows(
  steps: readonly DrawnMove[],
  numbers: readonly StepNumber[],
  frame: Frame,
  em: number,
): SVGTemplateResult | typeof nothing {
  if (steps.length === 0) return nothing;
  const places = steps.map((step) => ends(step, frame));
  return svg`<g class="plan">${places.map(([from, to]) => {
    const drawn = arrow(from, to, 8);
    return drawn
      ? svg`<path class="under" d=${drawn.shaft}></path><path class="shaft" d=${drawn.shaft}></path><path class="head" d=${drawn.head}></path>`
      : nothing;
  })}${numbers.map(({ leader }) => (leader ? svg`<path class="leader" d="M${leader[0].map(round).join()}L${leader[1].map(round).join()}"></path>` : nothing))}${numbers.map(({ at }, i) => svg`<text class="number" x=${round(at[0])} y=${round(at[1] + 0.27 * em)} text-anchor="middle">${i + 1}</text>`)}</g>`;
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

/** Draws advice on a triangle. */
export const adviceDrawing: AdviceDrawing = {
  under: contourLayer,
  over: adviceLayer,
  numbers: adviceNumbers,
  boxes: adviceBoxes,
  style: triangleAdviceStyle,
};
