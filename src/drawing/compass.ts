import type { Frame, Point } from "../engine/frame.js";
import { blendToPoint } from "../engine/frame.js";
import type { Triple } from "../engine/model.js";
import { arrow, type Arrow } from "./arrow.js";
import { polygonPath, round } from "./triangle-layout.js";

/** How many times longer a pull is drawn than the small triangle's own scale. */
const magnification = 4;

/** The little triangle beside a slider. */
export interface Compass {
  readonly width: number;
  readonly height: number;
  readonly outline: string;
  /** The way of the point as the feature goes from one extreme of the corner reeds to the other, and its end toward "more". */
  readonly way: string;
  readonly more: Point;
  /** The pull now, from the centre; undefined where there is next to none. */
  readonly now?: Arrow;
}

/**
 * A feature's pull in a small triangle: its direction is that of the big one, and lengths compare from one
 * compass to the next. At true scale most pulls would be a dot, so all are drawn `magnification` times as long.
 *
 * Shape   perUnit and now as `pulls` gives them; half the distance of the corner values.
 * Unit    shares → px.
 */
export function compass(
  pull: { readonly perUnit: Triple; readonly now: Triple },
  halfSpread: number,
  width = 46,
): Compass {
  const rise = ((width - 4) * Math.sqrt(3)) / 2;
  const frame: Frame = [
    [width / 2, 2],
    [2, 2 + rise],
    [width - 2, 2 + rise],
  ];
  const centre = tip(frame, [0, 0, 0]);
  const low = tip(frame, scaled(pull.perUnit, -halfSpread));
  const high = tip(frame, scaled(pull.perUnit, halfSpread));
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
  const [high, low, loud] = scaled(move, magnification);
  return blendToPoint([1 / 3 + high, 1 / 3 + low, 1 / 3 + loud], frame);
}

function scaled([high, low, loud]: Triple, factor: number): Triple {
  return [high * factor, low * factor, loud * factor];
}
