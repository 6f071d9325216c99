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
  const origin: Point = [3.2 * em, height - 2.6 * em];
  const far: Point = [width - em, 0.8 * em];
  const counts = [(far[0] - origin[0]) / (4 * em), (origin[1] - far[1]) / (2.5 * em)].map((count) =>
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
  return {
    width,
    height,
    origin,
    far,
    xTicks: ticks(x, counts[0]!),
    yTicks: ticks(y, counts[1]!),
    place: (one, other) => [round(x(one)), round(y(other))],
  };
}

/** A path through points that are px already; empty for fewer than two. */
export function openPath(points: readonly Point[]): string {
  if (points.length < 2) return "";
  return points.map(([x, y], i) => `${i === 0 ? "M" : "L"}${x},${y}`).join("");
}
