import { actionArrow, possibleAmount } from "./action-room.js";
import type { Blend } from "./blend.js";
import { featureRoom } from "./feature-room.js";
import { requireHolds, requireKeyed } from "./check.js";
import { requireMapAndValues, standardise, sumArrows, type BlendMap } from "./compile.js";
import { requireFreedom } from "./freedom.js";
import type { Actions, Freedom, Values } from "./model.js";
import { vectorToBlend, type Vector } from "./plane.js";
import { sumSegments } from "./zonotope.js";

/** A convex polygon of blends, counter-clockwise with y up; 1 or 2 corners when nothing or one direction is free. */
export interface Reach {
  readonly polygon: Blend[];
}

/**
 * Everywhere the point can go when each feature moves between its limits.
 *
 * The sum of the segments [lo_j, hi_j]·p_j: a zonotope, built in O(n log n).
 *
 * Shape   map, values, freedom → polygon of blends (raw, so also outside the triangle).
 * Unit    shares.
 * Error   corners within 1e-12 of the sum of their arrows.
 * Throws  RangeError naming a missing value, an unknown feature or an impossible limit.
 *
 * @example featureReach(map, values, { ...everything locked }).polygon → [place(map, values).raw]
 */
export function featureReach(map: BlendMap, values: Values, freedom: Freedom): Reach {
  return {
    polygon: featureRoom(map, values, freedom, "featureReach").polygon.corners.map(vectorToBlend),
  };
}

/**
 * What hands can still do to a finished reed: the same sum over actions.
 *
 * An action goes as far as its `easy` (or `max`) amount, and no further than the range, the limits and
 * the locks of every feature it touches allow. Its main effect (the first it lists) also keeps to the
 * feature's `finishing`; a by-effect may raise a reading that the knife can only lower: clipping brings
 * thicker cane under every gauge place. So a limit that stands at the present value, on the side that finishing
 * bars, counts as finishing's own and does not bind by-effects; lock the feature to keep it.
 *
 * Shape   map, values, actions, freedom → polygon of blends around the present point.
 * Throws  RangeError naming a missing value, an unknown feature, an impossible limit or unknown amounts.
 *
 * @example actionReach(map, values, bassoonActions, finishingFreedom(bassoonModel, values)).polygon.length > 2
 */
export function actionReach(
  map: BlendMap,
  values: Values,
  actions: Actions,
  freedom: Freedom,
  options: { readonly amounts?: "easy" | "max" } = {},
): Reach {
  requireMapAndValues(map, values, "actionReach");
  requireHolds(actions, "actions", "actionReach: actions", "actions from readActions");
  requireKeyed(options, "actionReach: options");
  const { amounts = "easy" } = options;
  if (amounts !== "easy" && amounts !== "max") {
    throw new RangeError(
      `actionReach: amounts is ${JSON.stringify(amounts)}; allowed: "easy", "max"`,
    );
  }
  requireFreedom(freedom, map.model, "actionReach");
  const present = sumArrows(
    map.mapped,
    map.mapped.map((one) => standardise(one, values, "actionReach")),
  );
  const segments = actions.actions.map((action): Vector => {
    const amount = possibleAmount(map, values, action, freedom, action[amounts], "actionReach");
    const [x, y] = actionArrow(map, action);
    return [amount * x, amount * y];
  });
  return { polygon: sumSegments(present, segments).corners.map(vectorToBlend) };
}
