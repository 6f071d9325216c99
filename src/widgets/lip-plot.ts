import { html, nothing, svg, type SVGTemplateResult, type TemplateResult } from "lit";
import type { Point } from "../engine/frame.js";
import { boxAround, placeNames, type Box } from "../drawing/name-places.js";
import type { PlotAxes } from "../drawing/plot-axes.js";
import { round } from "../drawing/triangle-layout.js";

/** Width of a letter and height of a line of the names in a plot, in em of the page's text size. */
const letter = 0.47;
const line = 1.05;

/** Axes with their numbers; what they count is told above and below the plot, where long words have room. */
export function axesDrawing(
  { origin: [left, base], far: [right, top], xTicks, yTicks }: PlotAxes,
  number: { readonly x: (value: number) => string; readonly y: (value: number) => string },
  em: number,
): SVGTemplateResult {
  return svg`${yTicks.map(({ at }) => svg`<path class="grid" d="M${left},${at}H${right}"></path>`)}
    <path class="axis" d="M${left},${top}V${base}H${right}"></path>
    ${xTicks.map(
      ({ at, value }) => svg`<path class="axis" d="M${at},${base}v4"></path>
        <text x=${at} y=${round(base + 1.25 * em)} text-anchor="middle">${number.x(value)}</text>`,
    )}
    ${yTicks.map(
      ({ at, value }) =>
        svg`<text x=${round(left - 0.4 * em)} y=${round(at + 0.35 * em)} text-anchor="end">${number.y(value)}</text>`,
    )}`;
}

/** A mark of a plot with its name. */
export interface PlotMark {
  readonly at: Point;
  readonly words: string;
}

/** The names of marks, each where it covers least of the curve, the other names and the axes' numbers. */
export function markNames(
  marks: readonly PlotMark[],
  curve: readonly Point[],
  { width, height, origin: [left, base] }: PlotAxes,
  rem: number,
): SVGTemplateResult[] {
  const taken: Box[] = [
    { left: 0, top: base, right: width, bottom: height },
    { left: 0, top: 0, right: left, bottom: height },
    ...curve.map((point) => boxAround(point, 6, 6)),
  ];
  const named = marks.map(({ at, words }) => ({
    at,
    clearance: 9,
    width: words.length * letter * rem + 6,
    height: line * rem,
  }));
  const places = placeNames(named, taken, { width, height });
  return places.flatMap((middle, i) =>
    middle
      ? [
          svg`<text class="name" x=${round(middle[0])} y=${round(middle[1] + 0.28 * rem)} text-anchor="middle">${marks[i]!.words}</text>`,
        ]
      : [],
  );
}

/** Every few points of a path of straight lines, so that names keep clear of it. */
export function pointsOf(path: string): Point[] {
  const numbers = (path.match(/-?[\d.]+/g) ?? []).map(Number);
  return Array.from({ length: Math.floor(numbers.length / 2) }, (_, i): Point => [
    numbers[2 * i]!,
    numbers[2 * i + 1]!,
  ]);
}

/** What a sign of a legend looks like. */
export const signs = {
  own: svg`<path class="own" d="M2,7H22"></path>`,
  unheld: svg`<path class="unheld" d="M3,7H22"></path>`,
  jump: svg`<path class="jump" d="M12,0V14"></path>`,
  other: svg`<path class="other" d="M2,7H22"></path>`,
  now: svg`<circle class="now" cx="12" cy="7" r="6"></circle>`,
  peak: svg`<path class="mark" d="M12,1L18,12H6Z"></path>`,
  closure: svg`<path class="mark" d="M7,2H17V12H7Z"></path>`,
} as const;

/** One line of a legend; nothing where there is nothing to say. */
export function legendItem(
  sign: SVGTemplateResult,
  words: string | undefined,
): TemplateResult | typeof nothing {
  if (words === undefined) return nothing;
  return html`<li>
    <svg class="swatch" width="24" height="14" viewBox="0 0 24 14" aria-hidden="true">${sign}</svg
    >${words}
  </li>`;
}
