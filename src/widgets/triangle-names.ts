import { nothing, svg, type SVGTemplateResult } from "lit";
import { blendDistance, centreBlend, type Blend } from "../engine/blend.js";
import { blendToPoint, type Frame, type Point } from "../engine/frame.js";
import type { ChainLink } from "../engine/pull-chain.js";
import { nearestBlend } from "../engine/nearest-blend.js";
import { boxAround, placeNames, type Box, type NamedMark } from "../drawing/name-places.js";
import { readingLines, round, type TriangleLayout } from "../drawing/triangle-layout.js";
import { targetRadius } from "../reed/target-places.js";
import { cornerLetter } from "./triangle-labels.js";
import type { DrawnTarget } from "./triangle-layers.js";
import { onwardTip, type DrawnReed } from "./triangle-point.js";

/** Width of a letter and height of a line of these names, in em of the page's text size. */
const letter = 0.47;
const line = 1.05;

/** What stands on the triangle before anything else is named. */
export interface Standing {
  /** The reed's point, which no name may cover. */
  readonly point: Blend | undefined;
  /** The names of the corners. */
  readonly corners: readonly string[];
  /** Whether numbers stand at the ends of the reading lines. */
  readonly ticks: boolean;
}

/** What is named on the triangle besides its corners. */
export interface Named extends Standing {
  /** What the centre is called; undefined where its name would stand in the way. */
  readonly centre: string | undefined;
  readonly target: DrawnTarget | undefined;
  readonly pinned: DrawnReed | undefined;
  /** What is said of a point outside the triangle. */
  readonly outside: string;
  /** What else no name may cover. */
  readonly also: readonly Box[];
  /** Where the reed lies as it is, while something is tried on it. */
  readonly base?: Blend | undefined;
}

/** Whether the centre can be named: it would stand in the way of the point, of names and of arrows. */
export function isCentreFree(drawn: {
  readonly blend: Blend | undefined;
  readonly target: unknown;
  readonly pinned: unknown;
  readonly chain: readonly unknown[];
  readonly advice: unknown;
}): boolean {
  const { blend, target, pinned, chain, advice } = drawn;
  const free = !target && !pinned && chain.length === 0 && !advice;
  return free && blend !== undefined && blendDistance(blend, centreBlend) > 0.16;
}

/** What the arrows of a chain cover, roughly: in a lesson they are what is looked at, so no name should lie on them. */
export function chainBoxes(chain: readonly ChainLink[], frame: Frame): Box[] {
  return chain.flatMap(({ from, to }) => {
    const [a, b] = [blendToPoint(nearestBlend(from), frame), blendToPoint(nearestBlend(to), frame)];
    return [0, 0.5, 1].map((t) =>
      boxAround([a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])], 12, 12),
    );
  });
}

/** The names of the target, the pinned reed and the centre, each where it covers least. */
export function nameTexts(
  named: Named,
  layout: TriangleLayout,
  em: number,
): (SVGTemplateResult | typeof nothing)[] {
  const at = (blend: Blend): Point => blendToPoint(nearestBlend(blend), layout.frame);
  const { target, pinned, centre, point, outside } = named;
  const zone = (targetRadius / Math.SQRT2) * layout.side;
  const marks: { kind: string; words: string; at: Point; clearance: number }[] = [];
  if (target)
    marks.push({ kind: "target", words: target.label, at: at(target.blend), clearance: zone + 5 });
  if (pinned)
    marks.push({ kind: "pinned", words: pinned.label, at: at(pinned.blend), clearance: 9 });
  const tip = point && onwardTip(point, layout.frame);
  if (tip) marks.push({ kind: "outside", words: outside, at: tip, clearance: 5 });
  if (centre) marks.push({ kind: "centre", words: centre, at: at(centreBlend), clearance: 8 });
  const sized: NamedMark[] = marks.map(({ words, at: place, clearance }) => ({
    at: place,
    clearance,
    width: words.length * letter * em + 8,
    height: line * em,
  }));
  const base = named.base ? [boxAround(at(named.base), 16, 16)] : [];
  const full = [...standingBoxes(named, layout, em), ...base, ...named.also];
  const places = placeNames(sized, full, layout);
  return marks.map(({ kind, words }, i) => {
    const middle = places[i];
    if (!middle) return nothing;
    return svg`<text class="name ${kind}" x=${round(middle[0])} y=${round(middle[1] + 0.28 * em)} text-anchor="middle">${words}</text>`;
  });
}

/** What stands already: the point, the corners' names, the numbers of the reading lines. */
export function standingBoxes(
  { point, ticks, corners: names }: Standing,
  layout: TriangleLayout,
  em: number,
): Box[] {
  const { labels, lineHeight } = layout;
  const corners = labels.map(({ x, y, anchor }, k): Box => {
    const half = (Math.max(4, names[k]!.length) * cornerLetter * em) / 2;
    const middle = anchor === "start" ? x + half : anchor === "end" ? x - half : x;
    return boxAround([middle, y + lineHeight / 4], 2 * half, 2 * lineHeight);
  });
  if (!point) return corners;
  const place = blendToPoint(nearestBlend(point), layout.frame);
  const numbers = ticks
    ? readingLines(nearestBlend(point), layout.frame, em).map(({ label }) =>
        boxAround(label, 3.4 * em, 1.4 * em),
      )
    : [];
  return [...corners, ...numbers, boxAround(place, 24, 24)];
}
