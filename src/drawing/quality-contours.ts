import { contours } from "d3";
import { pointToBlend, type Frame, type Point } from "../engine/frame.js";
import { qualityAt, type SevenValues } from "../engine/qualities.js";
import { round } from "./triangle-layout.js";

/** A line on which a quality has one whole value, with the area in which it has more. */
export interface QualityContour {
  readonly value: number;
  readonly path: string;
  /** Where the value is written: on the line, just inside a side; absent where no such place is. */
  readonly label?: Point;
}

/** Cells of the grid along a side: fine enough for smooth lines, and made in a few ms. */
const cells = 64;

/** Less than this is rounding: what is the same everywhere has no lines. */
const hair = 1e-9;

/**
 * A quality over the triangle as contours at whole values.
 *
 * Shape   seven values, the triangle's frame → one contour a whole value that occurs, lowest first.
 * Unit    px for paths and labels. Paths go beyond the triangle and are to be cut at its border.
 *
 * @example qualityContours([5, 5, 5, 5, 5, 5, 5], frame) → []
 */
export function qualityContours(values: SevenValues, frame: Frame): QualityContour[] {
  const [left, right] = [frame[1][0], frame[2][0]];
  const [top, base] = [frame[0][1], frame[1][1]];
  const rows = Math.round((cells * (base - top)) / (right - left));
  const [perX, perY] = [(right - left) / (cells - 1), (base - top) / (rows - 1)];
  // d3 takes a value to stand in the middle of its cell.
  const toPoint = ([x, y]: readonly number[]): Point => [
    left + (x! - 0.5) * perX,
    top + (y! - 0.5) * perY,
  ];
  const grid = Array.from({ length: cells * rows }, (_, i) =>
    qualityAt(
      values,
      pointToBlend([left + (i % cells) * perX, top + Math.floor(i / cells) * perY], frame),
    ),
  );
  const [least, most] = [Math.min(...grid), Math.max(...grid)];
  const whole = Array.from({ length: 11 }, (_, value) => value);
  const thresholds = whole.filter((value) => value > least + hair && value < most - hair);
  const draw = contours().size([cells, rows]).thresholds(thresholds);
  return draw(grid).flatMap(({ value, coordinates }) => {
    const rings = coordinates.flatMap((polygon) => polygon.map((ring) => ring.map(toPoint)));
    if (rings.length === 0) return [];
    const label = labelPlace(rings, frame);
    return { value, path: rings.map(ringPath).join(""), ...(label ? { label } : {}) };
  });
}

function ringPath(ring: readonly Point[]): string {
  return `M${ring.map(([x, y]) => `${round(x)},${round(y)}`).join("L")}Z`;
}

/** So near to a side (as a share) numbers stand out of the way of what is in the middle. */
const shore = 0.1;

/** The point of a line that lies just inside a side of the triangle. */
function labelPlace(rings: readonly (readonly Point[])[], frame: Frame): Point | undefined {
  const off = (point: Point): number => Math.abs(Math.min(...pointToBlend(point, frame)) - shore);
  const inside = rings
    .flat()
    .filter((point) => Math.min(...pointToBlend(point, frame)) > shore / 2);
  const [first, ...others] = inside;
  return first && others.reduce((best, point) => (off(point) < off(best) ? point : best), first);
}
