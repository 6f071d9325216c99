import type { Blend } from "../engine/blend.js";
import { blendToPoint, type Frame, type Point } from "../engine/frame.js";

/** Where everything of the triangle stands, in px. */
export interface TriangleLayout {
  readonly width: number;
  readonly height: number;
  readonly frame: Frame;
  /** Side of the triangle. */
  readonly side: number;
  readonly labels: readonly CornerLabel[];
  /** From a name to its share below it. */
  readonly lineHeight: number;
}

/** Where the name of a corner stands; its share stands one line below. */
export interface CornerLabel {
  readonly x: number;
  readonly y: number;
  readonly anchor: "start" | "middle" | "end";
}

const greatestSide = 620;

/** What else decides the layout. */
export interface LayoutOptions {
  /** px; the drawing grows no taller than this where that leaves room for a triangle. */
  readonly greatestHeight?: number;
  /** A row for the numbers of the base. */
  readonly ticks?: boolean;
  /** px of the page's text size: everything written grows with it. */
  readonly em?: number;
  /** Letters of the corner names, so that two that would collide stand one below the other. */
  readonly names?: readonly [high: number, low: number, loud: number];
}

/** Width of a letter of the corner names, in em; measured on the widest of the fonts in use. */
const letter = 0.58;

/**
 * Fits an equilateral triangle with its corner names into a width.
 *
 * Unit    px.
 * @example triangleLayout(480).side < 480 → true
 */
export function triangleLayout(
  width: number,
  { greatestHeight = Infinity, ticks = false, em = 16, names = [0, 0, 0] }: LayoutOptions = {},
): TriangleLayout {
  const margin = width < 400 ? 18 : 30;
  const lineHeight = 1.25 * em;
  const above = 2 * lineHeight + 12;
  const tickRow = ticks ? lineHeight : 0;
  const sideFor = (below: number): number => {
    const fitting = ((greatestHeight - above - below) * 2) / Math.sqrt(3);
    return Math.max(120, Math.min(width - 2 * margin, greatestSide, fitting));
  };
  const oneRow = 2 * lineHeight + 14 + tickRow;
  const needed = (names[1] + names[2] + 2) * letter * em;
  const second = needed > width - 8 ? 2 * lineHeight : 0;
  const below = oneRow + second;
  const side = sideFor(below);
  const rise = (side * Math.sqrt(3)) / 2;
  const left = (width - side) / 2;
  const base = above + rise;
  const frame: Frame = [
    [left + side / 2, above],
    [left, base],
    [left + side, base],
  ];
  // Names wider than the triangle stand out on both sides of it.
  const overhang = Math.max(margin, second > 0 ? 0 : needed - side) / 2;
  const written = (letters: number): number => letters * letter * em;
  const under = base + lineHeight + 2 + tickRow;
  return {
    width,
    height: base + below,
    frame,
    side,
    lineHeight,
    labels: [
      { x: left + side / 2, y: above - lineHeight - 8, anchor: "middle" },
      {
        x: Math.max(4, Math.min(left - overhang, width - 4 - written(names[1]))),
        y: under,
        anchor: "start",
      },
      {
        x: Math.min(width - 4, Math.max(left + side + overhang, 4 + written(names[2]))),
        y: under + second,
        anchor: "end",
      },
    ],
  };
}

/** A line of the drawing. */
export interface Line {
  readonly from: Point;
  readonly to: Point;
}

/** The grid: for every purpose the lines on which its share is a fifth, two fifths … */
export function gridLines(frame: Frame, parts = 5): Line[] {
  const lines: Line[] = [];
  for (const k of [0, 1, 2] as const) {
    for (let i = 1; i < parts; i += 1) lines.push(shareLine(k, i / parts, frame));
  }
  return lines;
}

/** The line on which one share has one value, from side to side; its ticks stand at `to`. */
export function shareLine(k: 0 | 1 | 2, share: number, frame: Frame): Line {
  const next = ((k + 2) % 3) as 0 | 1 | 2; // high reads on the right side, low on the left, loud on the base
  const other = (3 - k - next) as 0 | 1 | 2;
  return {
    from: blendToPoint(mix(k, share, other), frame),
    to: blendToPoint(mix(k, share, next), frame),
  };
}

function mix(k: number, share: number, rest: number): Blend {
  const blend: [number, number, number] = [0, 0, 0];
  blend[k] = share;
  blend[rest] = 1 - share;
  return blend;
}

/** A reading line with its number just outside the side it ends on, written away from the triangle. */
export interface ReadingLine extends Line {
  readonly share: number;
  readonly label: Point;
  readonly anchor: "start" | "middle" | "end";
}

/** The reading lines of a point: one a purpose. Unit px; `em` is the page's text size. */
export function readingLines(blend: Blend, frame: Frame, em = 16): ReadingLine[] {
  const outward = [
    { step: [0.45 * em, 0], anchor: "start" },
    { step: [-0.45 * em, 0], anchor: "end" },
    { step: [0, 1.1 * em], anchor: "middle" },
  ] as const;
  return ([0, 1, 2] as const).map((k) => {
    const line = shareLine(k, blend[k], frame);
    const { step, anchor } = outward[k];
    return {
      ...line,
      label: [line.to[0] + step[0], line.to[1] + step[1]],
      anchor,
      share: blend[k],
    };
  });
}

/** Points as a closed path. */
export function polygonPath(points: readonly Point[]): string {
  return `M${points.map(([x, y]) => `${round(x)},${round(y)}`).join("L")}Z`;
}

/** Tenths of a px are enough for a path and keep drawings comparable. */
export function round(value: number): number {
  return Math.round(value * 10) / 10;
}
