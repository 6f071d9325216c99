import { scaleLinear } from "d3";
import type { Point } from "../engine/frame.js";
import { round } from "./triangle-layout.js";

/** A mark on an axis: where, and the number written there. */
export interface Tick {
  readonly at: number;
  readonly value: number;
}

/** An axis each way, from 0 at the lower left, in px. */
export interface PlotAxes {
  readonly width: number;
  readonly height: number;
  /** The lower left and the upper right corner of the field. */
  readonly origin: Point;
  readonly far: Point;
  readonly xTicks: readonly Tick[];
  readonly yTicks: readonly Tick[];
  /** Numbers of the axes → px; what lies outside is brought to the border. */
  readonly place: (x: number, y: number) => Point;
  /** A line through numbers of the axes, cut off where it leaves the field at the right. */
  readonly line: (points: readonly Point[]) => string;
  /** The same for one mark: undefined outside the field. */
  readonly mark: (x: number, y: number) => Point | undefined;
}

/** What a plot has to hold. */
export interface PlotBox {
  readonly width: number;
  readonly height: number;
  /** px of the text size: room for the numbers of the axes. */
  readonly em?: number;
}

/**
 * The axes of a small plot with round numbers on them, few enough to stand beside each other.
 *
 * Shape   px box, greatest x and y → axes that end on a round number.
 *
 * @example plotAxes({ width: 300, height: 200 }, 12, 600).place(0, 0)
 */
export function plotAxes(
  { width, height, em = 12 }: PlotBox,
  mostX: number,
  mostY: number,
): PlotAxes {
  const origin: Point = [3.2 * em, height - 1.7 * em];
  const far: Point = [width - em, 0.8 * em];
  const counts = [(far[0] - origin[0]) / (4 * em), (origin[1] - far[1]) / (4 * em)].map((count) =>
    Math.max(2, Math.floor(count)),
  );
  const axis = (most: number, count: number, range: readonly [number, number]) =>
    scaleLinear([0, most > 0 ? most : 1], range)
      .nice(count)
      .clamp(true);
  const x = axis(mostX, counts[0]!, [origin[0], far[0]]);
  const y = axis(mostY, counts[1]!, [origin[1], far[1]]);
  const ticks = (scale: typeof x, count: number): Tick[] =>
    scale.ticks(count).map((value) => ({ at: round(scale(value)), value }));
  const place = (one: number, other: number): Point => [round(x(one)), round(y(other))];
  const [, endX] = x.domain() as [number, number];
  const [, endY] = y.domain() as [number, number];
  return {
    width,
    height,
    origin,
    far,
    xTicks: ticks(x, counts[0]!),
    yTicks: ticks(y, counts[1]!),
    place,
    line: (points) =>
      piecesUpTo(points, endX)
        .map((piece) => openPath(piece.map(([one, other]) => place(one, other))))
        .join(""),
    mark: (one, other) => (one <= endX && other <= endY ? place(one, other) : undefined),
  };
}

/** The pieces of a line that lie left of an end, cut where they cross it. */
function piecesUpTo(points: readonly Point[], end: number): Point[][] {
  const pieces: Point[][] = [[]];
  points.forEach((point, i) => {
    const before = points[i - 1];
    if (before && before[0] <= end !== point[0] <= end) {
      const share = (end - before[0]) / (point[0] - before[0]);
      const crossing: Point = [end, before[1] + share * (point[1] - before[1])];
      if (point[0] <= end) pieces.push([]);
      pieces.at(-1)!.push(crossing);
    }
    if (point[0] <= end) pieces.at(-1)!.push(point);
  });
  return pieces;
}

/** A path through points that are px already; empty for fewer than two. */
export function openPath(points: readonly Point[]): string {
  if (points.length < 2) return "";
  return points.map(([x, y], i) => `${i === 0 ? "M" : "L"}${x},${y}`).join("");
}
