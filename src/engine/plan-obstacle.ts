import { blendDistance, type Blend } from "./blend.js";
import type { BlendMap } from "./compile.js";
import { finishingFreedom } from "./freedom.js";
import type { Action, Actions, Freedom, Values } from "./model.js";
import { blendToVector, vectorToBlend, type Vector } from "./plane.js";
import { actionReach } from "./reach.js";

/**
 * What keeps a target from being reached today, the gravest that holds:
 * `reach` – nothing that hands can do to this reed goes so far;
 * `freedom` – the limits and locks that were stated hold it back;
 * `easy` – it would take more than the easy amounts of one sitting;
 * `rules` – the easy amounts would do, but not few whole ones of them that may stand in one plan.
 */
export type Obstacle = "reach" | "freedom" | "easy" | "rules";

/** Names the obstacle, judging by the polygons of what hands can do, in which amounts are not whole. */
export function planObstacle(
  map: BlendMap,
  values: Values,
  target: Blend,
  usable: readonly Action[],
  freedom: Freedom,
  radius: number,
): Obstacle {
  const actions: Actions = { actions: usable, cautions: {}, rules: [], housekeeping: [] };
  const comesNear = (within: Freedom, amounts: "easy" | "max"): boolean =>
    distanceTo(actionReach(map, values, actions, within, { amounts }).polygon, target) <= radius;
  if (!comesNear(finishingFreedom(map.model, values), "max")) return "reach";
  if (!comesNear(freedom, "max")) return "freedom";
  return comesNear(freedom, "easy") ? "rules" : "easy";
}

/** From a convex polygon of blends to a blend, in share space; 0 inside. */
function distanceTo(polygon: readonly Blend[], target: Blend): number {
  const corners = polygon.map(blendToVector);
  const [x, y] = blendToVector(target);
  if (corners.length === 1) return blendDistance(polygon[0]!, target);
  let inside = corners.length > 2;
  let least = Infinity;
  corners.forEach((a, i) => {
    const b = corners[(i + 1) % corners.length]!;
    const side: Vector = [b[0] - a[0], b[1] - a[1]];
    const to: Vector = [x - a[0], y - a[1]];
    if (side[0] * to[1] - side[1] * to[0] < 0) inside = false;
    const square = side[0] ** 2 + side[1] ** 2;
    const t = Math.min(1, Math.max(0, (side[0] * to[0] + side[1] * to[1]) / square));
    const foot = vectorToBlend([a[0] + t * side[0], a[1] + t * side[1]]);
    least = Math.min(least, blendDistance(foot, target));
  });
  return inside ? 0 : least;
}
