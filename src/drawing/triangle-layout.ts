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
}

/** Where the name of a corner stands; its share stands one line below. */
export interface CornerLabel {
  readonly x: number;
  readonly y: number;
  readonly anchor: "start" | "middle" | "end";
}

const lineHeight = 20;
const greatestSide = 620;

/**
 * Fits an equilateral triangle with its corner names into a width.
 *
 * Unit    px; `ticks` leaves a row for the numbers of the base. Domain  width from 200 up; names stand above the top and below the base, so they never crowd the sides.
 * @example triangleLayout(480).side < 480 → true
 */
export function triangleLayout(
  width: number,
  { greatestHeight = Infinity, ticks = false } = {},
): TriangleLayout {
  const margin = width < 400 ? 18 : 30;
  const above = 2 * lineHeight + 12;
  const tickRow = ticks ? 20 : 0;
  const below = 2 * lineHeight + 14 + tickRow;
  const fitting = ((greatestHeight - above - below) * 2) / Math.sqrt(3);
  const side = Math.max(120, Math.min(width - 2 * margin, greatestSide, fitting));
  const rise = (side * Math.sqrt(3)) / 2;
  const left = (width - side) / 2;
  const base = above + rise;
  const frame: Frame = [
    [left + side / 2, above],
    [left, base],
    [left + side, base],
  ];
  const under = base + lineHeight + 2 + tickRow;
  return {
    width,
    height: base + below,
    frame,
    side,
    labels: [
      { x: left + side / 2, y: above - lineHeight - 8, anchor: "middle" },
      { x: Math.max(4, left - margin / 2), y: under, anchor: "start" },
      { x: Math.min(width - 4, left + side + margin / 2), y: under, anchor: "end" },
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

/** The reading lines of a point: one a purpose, with the place of its number just outside the side it ends on. */
export function readingLines(
  blend: Blend,
  frame: Frame,
): (Line & { readonly label: Point; readonly share: number })[] {
  const outward: readonly Point[] = [
    [18, -8],
    [-18, -8],
    [0, 18],
  ];
  return ([0, 1, 2] as const).map((k) => {
    const line = shareLine(k, blend[k], frame);
    const label: Point = [line.to[0] + outward[k]![0], line.to[1] + outward[k]![1]];
    return { ...line, label, share: blend[k] };
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
