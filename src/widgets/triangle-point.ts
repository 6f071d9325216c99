import { nothing, svg, type SVGTemplateResult } from "lit";
import type { Blend } from "../engine/blend.js";
import { blendToPoint, type Frame, type Point } from "../engine/frame.js";
import { nearestBlend } from "../engine/nearest-blend.js";
import { arrow } from "../drawing/arrow.js";
import { round } from "../drawing/triangle-layout.js";

/** The reed's point with room for a finger; outside, it stands on the border and an arrow says which way the reed goes on. */
export function pointMark(
  blend: Blend | undefined,
  frame: Frame,
): SVGTemplateResult | typeof nothing {
  if (!blend) return nothing;
  const [x, y] = blendToPoint(nearestBlend(blend), frame);
  return svg`${onward(blend, frame)}
    <g class="handle" part="point" transform="translate(${round(x)} ${round(y)})">
    <circle class="grasp" r="22"></circle><circle class="halo" r="11"></circle><circle class="dot" r="8"></circle></g>`;
}

/** Where the arrow of a reed outside the triangle ends, px; undefined for one inside. */
export function onwardTip(blend: Blend, frame: Frame): Point | undefined {
  const [x, y] = blendToPoint(nearestBlend(blend), frame);
  const goal = blendToPoint(blend, frame);
  const [dx, dy] = [goal[0] - x, goal[1] - y];
  const length = Math.hypot(dx, dy);
  if (length < 6) return undefined;
  const reach = 12 + Math.min(22, length);
  return [x + (dx / length) * reach, y + (dy / length) * reach];
}

function onward(blend: Blend, frame: Frame): SVGTemplateResult | typeof nothing {
  const tip = onwardTip(blend, frame);
  const drawn = tip && arrow(blendToPoint(nearestBlend(blend), frame), tip, 10);
  if (!drawn) return nothing;
  return svg`<g class="onward"><path d=${drawn.shaft}></path><path class="head" d=${drawn.head}></path></g>`;
}

/** Another reed on the same triangle. */
export interface DrawnReed {
  readonly blend: Blend;
  readonly label: string;
}

/** The pinned reed: a square, so that shape tells it apart. */
export function pinnedMark(
  pinned: DrawnReed | undefined,
  frame: Frame,
): SVGTemplateResult | typeof nothing {
  if (!pinned) return nothing;
  const [x, y] = blendToPoint(nearestBlend(pinned.blend), frame);
  return svg`<rect class="pinnedMark" x=${round(x - 6)} y=${round(y - 6)} width="12" height="12"></rect>`;
}

/** Where the point was before, or with a cross what the reed has, with the way from there; nothing when it is not far. */
export function ghostMark(
  ghost: Blend | undefined,
  blend: Blend | undefined,
  frame: Frame,
  isBase = false,
): SVGTemplateResult | typeof nothing {
  if (!ghost || !blend) return nothing;
  const from = blendToPoint(nearestBlend(ghost), frame);
  const to = blendToPoint(nearestBlend(blend), frame);
  if (Math.hypot(to[0] - from[0], to[1] - from[1]) < 3) return nothing;
  const [x, y] = from.map(round);
  return svg`<g class=${isBase ? "ghost base" : "ghost"}><line x1=${x} y1=${y} x2=${round(to[0])} y2=${round(to[1])}></line>
    <circle cx=${x} cy=${y} r="7"></circle>${isBase ? svg`<path d="M${x! - 4},${y}h8m-4,-4v8"></path>` : nothing}</g>`;
}
