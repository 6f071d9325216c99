import { scaleLog } from "d3";
import { round } from "./triangle-layout.js";

/** A ratio to the all-round reed as a small bar from the middle, in px. */
export interface DialBar {
  readonly width: number;
  /** Where the all-round reed stands. */
  readonly middle: number;
  readonly left: number;
  readonly right: number;
  /** The ratio lies beyond the end of the bar, which is drawn with an open end. */
  readonly beyond: boolean;
}

/** A bar ends at half and at twice the all-round value: halving and doubling are equally long. */
const most = 2;

/**
 * The bar of a dial: to the right when the reed has more than the all-round reed, to the left when it has less.
 *
 * Shape   ratio (undefined where there is nothing to compare with: no bar), px width.
 *
 * @example dialBar(1, 100).right → 50
 */
export function dialBar(ratio: number | undefined, width: number): DialBar {
  const middle = round(width / 2);
  if (ratio === undefined) return { width, middle, left: middle, right: middle, beyond: false };
  const x = scaleLog([1 / most, most], [0, width]).clamp(true);
  const end = round(ratio > 0 ? x(ratio) : 0);
  return {
    width,
    middle,
    left: Math.min(end, middle),
    right: Math.max(end, middle),
    beyond: ratio < 1 / most || ratio > most,
  };
}
