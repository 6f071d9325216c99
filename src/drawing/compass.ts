import type { Frame, Point } from "../engine/frame.js";
import { blendToPoint } from "../engine/frame.js";
import type { Triple } from "../engine/model.js";
import { arrow, type Arrow } from "./arrow.js";
import { polygonPath, round } from "./triangle-layout.js";

/** The little triangle beside a slider. */
export interface Compass {
  readonly width: number;
  readonly height: number;
  readonly outline: string;
  /** The way of the point over the feature's whole range: a line through the centre, and its end toward "more". */
  readonly way: string;
  readonly more: Point;
  /** The pull now, from the centre; undefined where there is next to none. */
  readonly now?: Arrow;
}

/**
 * A feature's pull in a small triangle, in length and direction true to the big one.
 *
 * Shape   perUnit and now as `pulls` gives them; the distance of the range's ends from the all-round value.
 * Unit    shares → px.
 */
export function compass(
  pull: { readonly perUnit: Triple; readonly now: Triple },
  range: { readonly below: number; readonly above: number },
  width = 46,
): Compass {
  const rise = ((width - 4) * Math.sqrt(3)) / 2;
  const frame: Frame = [
    [width / 2, 2],
    [2, 2 + rise],
    [width - 2, 2 + rise],
  ];
  const centre = tip(frame, [0, 0, 0]);
  const low = tip(frame, scaled(pull.perUnit, range.below));
  const high = tip(frame, scaled(pull.perUnit, range.above));
  const now = arrow(centre, tip(frame, pull.now), 6);
  return {
    width,
    height: Math.ceil(rise + 4),
    outline: polygonPath(frame),
    way: `M${round(low[0])},${round(low[1])}L${round(high[0])},${round(high[1])}`,
    more: [round(high[0]), round(high[1])],
    ...(now ? { now } : {}),
  };
}

function tip(frame: Frame, move: Triple): Point {
  return blendToPoint([1 / 3 + move[0], 1 / 3 + move[1], 1 / 3 + move[2]], frame);
}

function scaled([high, low, loud]: Triple, factor: number): Triple {
  return [high * factor, low * factor, loud * factor];
}
