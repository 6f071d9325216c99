import {
  actionArrow,
  featureOf,
  finishingAllows,
  mainEffect,
  withoutFinishing,
} from "./action-room.js";
import { requireReadable } from "./check.js";
import type { BlendMap } from "./compile.js";
import { limitsOf } from "./freedom.js";
import type { Action, Feature, FeatureId, Freedom, Values } from "./model.js";
import { dot, type Vector } from "./plane.js";
import { mayMeet } from "./sitting-rules.js";

/** One action as the search sees it. */
export interface SearchMove {
  readonly action: Action;
  /** What one unit does to the point. */
  readonly arrow: Vector;
  /** Most whole units. */
  readonly most: number;
  /** What one unit does to each limited feature, in the order of the limits. */
  readonly effects: Float64Array;
}

/** Everything that the search for a plan needs, prepared once. */
export interface SearchSpace {
  readonly moves: readonly SearchMove[];
  /** Whether moves i and j may stand in one plan: `meets[i][j]`. */
  readonly meets: readonly (readonly boolean[])[];
  /** From the present point to the target. */
  readonly way: Vector;
  readonly radius: number;
  /** Room of every feature that a move touches, below and above its present value, with a hair for rounding. */
  readonly below: Float64Array;
  readonly above: Float64Array;
}

/** A share of a feature's range by which rounding may overstep a limit. */
const hair = 1e-9;

/**
 * The actions that may be in a plan, most help for their cost first, with their arrows and the room of what they touch.
 *
 * An action is left out when it touches a locked feature, when finishing does not let its main effect be, when that
 * main feature was not measured, or when it does not move the point.
 */
export function searchSpace(
  map: BlendMap,
  values: Values,
  actions: readonly Action[],
  freedom: Freedom,
  way: Vector,
  radius: number,
): SearchSpace {
  const usable = actions.filter((action) => isUsable(map, values, action, freedom));
  const limited = limitedFeatures(map, values, usable, freedom);
  const moves = usable
    .map((action): SearchMove => {
      const effects = Float64Array.from(limited, ({ id }) => action.effects[id] ?? 0);
      return { action, arrow: actionArrow(map, action), most: action.easy, effects };
    })
    .filter(({ arrow, most }) => most > 0 && dot(arrow, arrow) > 0)
    .toSorted((a, b) => dot(b.arrow, way) / b.action.cost - dot(a.arrow, way) / a.action.cost);
  return {
    moves,
    meets: moves.map((a) => moves.map((b) => mayMeet(a.action, b.action))),
    way,
    radius,
    below: Float64Array.from(limited, ({ below }) => below),
    above: Float64Array.from(limited, ({ above }) => above),
  };
}

function isUsable(map: BlendMap, values: Values, action: Action, freedom: Freedom): boolean {
  const ids = Object.keys(action.effects);
  for (const id of ids) featureOf(map, id, "planAdjustments"); // an effect on an unknown feature is refused
  const main = mainEffect(action);
  return (
    ids.every((id) => !freedom[id]?.locked) &&
    values[main] !== undefined &&
    finishingAllows(featureOf(map, main, "planAdjustments"), action.effects[main]!)
  );
}

function limitedFeatures(
  map: BlendMap,
  values: Values,
  actions: readonly Action[],
  freedom: Freedom,
): { id: FeatureId; below: number; above: number }[] {
  const touched = new Set(actions.flatMap(({ effects }) => Object.keys(effects)));
  return [...touched]
    .filter((id) => values[id] !== undefined)
    .map((id) => {
      const feature = featureOf(map, id, "planAdjustments");
      return { id, ...roomOf(feature, values[id]!, freedom[id]) };
    });
}

function roomOf(
  feature: Feature,
  value: number,
  stated: Freedom[string] | undefined,
): { below: number; above: number } {
  requireReadable(value, `planAdjustments: feature "${feature.id}"`);
  const [low, high] = limitsOf(feature, value, withoutFinishing(feature, value, stated));
  const slack = hair * (feature.max - feature.min);
  return { below: low - value - slack, above: high - value + slack };
}
