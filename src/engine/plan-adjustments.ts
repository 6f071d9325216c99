import { blendDistance, type Blend } from "./blend.js";
import { requireGaugeErrors, type CertaintyEllipse } from "./certainty.js";
import { requireHolds, requireKeyed, requireShares, requireWithin, shown } from "./check.js";
import { requireMapAndValues, type BlendMap } from "./compile.js";
import { requireFreedom } from "./freedom.js";
import type { Actions, FeatureId, Freedom, Values } from "./model.js";
import { place } from "./place.js";
import { planEllipse, valuesAfter } from "./plan-end.js";
import { planObstacle, type Obstacle } from "./plan-obstacle.js";
import { cheapestPlan, nearestPlan, type Found } from "./plan-search.js";
import { blendToVector, type Vector } from "./plane.js";
import { searchSpace, type SearchSpace } from "./search-space.js";
import { inOrderOfTrying, isRipeFor, mostMovesInASitting } from "./sitting-rules.js";

/** What a plan is good for: nothing that cannot be undone, fewest moves, or the least cost to the cane. */
export type PlanKind = "undoable" | "fewest" | "gentlest";

/** One thing to do, by whole units. */
export interface PlanStep {
  /** Id of an action. */
  readonly action: string;
  readonly amount: number;
  readonly reversible: boolean;
}

/** What to do to a reed in one sitting. */
export interface Plan {
  readonly kind: PlanKind;
  /** In the order of trying; none when the reed is there already. */
  readonly steps: readonly PlanStep[];
  /** The reed afterwards, as the effects say. */
  readonly values: Values;
  /** Where it then lies (raw). */
  readonly blend: Blend;
  /** From there to the target, in share space. */
  readonly distance: number;
  readonly cost: number;
  /** How sure that place is: the certainty of the readings, and every effect 20 % more or less. */
  readonly ellipse: CertaintyEllipse;
}

/** The plans toward a target. */
export interface Adjustments {
  /** In order of cost, none dominated; one, the nearest, when the target is not reached. */
  readonly plans: readonly Plan[];
  readonly reached: boolean;
  /** What keeps the target from being reached today. */
  readonly obstacle?: Obstacle;
}

/** What may be asked of a plan. */
export interface PlanOptions {
  /** How near is near enough, in shares; 0.08 where it is not given. */
  readonly radius?: number;
  /** Limits and locks; each action's main effect keeps to its feature's `finishing` anyway. */
  readonly freedom?: Freedom;
  /** Share of cases inside the ellipse, between 0 and 1; 0.95 where it is not given. */
  readonly coverage?: number;
  /** Whole number from 0 to 6; 4 where it is not given. */
  readonly mostMoves?: number;
  /** 1 sd by feature, in the feature's unit; replaces the model's, where readings were repeated. */
  readonly gaugeError?: Readonly<Record<FeatureId, number>>;
  /** How often the reed was played: below 3 it gets wire moves and dusting only. */
  readonly playings?: number;
}

/** More moves than this nobody keeps apart by ear, and the search would take long. */
const mostMovesAllowed = 6;

/**
 * What to do with knife and pliers to bring a reed into the zone of a target, under the rules of a sensible sitting:
 * at most four moves in whole units, each within `easy`, no two that work against each other, within every limit.
 *
 * The cheapest admissible set of amounts, found exactly; beside it the cheapest that can be undone and the one with
 * fewest moves, where these are others. When nothing reaches the zone, the nearest end, and what stands in the way.
 *
 * Shape   map, values, target, actions → plans, reached, obstacle.
 * Unit    values in the model's own units; the rest in shares.
 * Domain  any target summing to 1 within 1e-5. A by-effect may raise a reading that the knife can only lower; a
 *         value outside its range may stay or move inward. Limits hold at the end of the plan.
 * Throws  RangeError or TypeError naming a missing value, an impossible limit or option, a bad target.
 * Source  costs, amounts and rules: the actions file, common practice, no source.
 *
 * @example planAdjustments(map, values, [0.4, 0.3, 0.3], bassoonActions).reached
 */
export function planAdjustments(
  map: BlendMap,
  values: Values,
  target: Blend,
  actions: Actions,
  options: PlanOptions = {},
): Adjustments {
  requireMapAndValues(map, values, "planAdjustments");
  requireShares(target, "planAdjustments: target");
  requireHolds(actions, "actions", "planAdjustments: actions", "actions from readActions");
  const checked = checkedOptions(map, options);
  const { radius, freedom, mostMoves, playings } = checked;
  const usable = actions.actions.filter((action) => isRipeFor(action, playings));
  const from = blendToVector(place(map, values).raw);
  const to = blendToVector(target);
  const way: Vector = [to[0] - from[0], to[1] - from[1]];
  const space = searchSpace(map, values, usable, freedom, way, radius);
  const toPlan = (found: Found, kind: PlanKind): Plan =>
    planOf(map, values, target, found, kind, checked);
  const found = reachingPlans(space, mostMoves);
  if (found.length > 0)
    return { plans: found.map(({ plan, kind }) => toPlan(plan, kind)), reached: true };
  const nearest = nearestPlan(space, mostMoves);
  return {
    plans: [toPlan(nearest, nearest.reversible ? "undoable" : "gentlest")],
    reached: false,
    obstacle: planObstacle(map, values, target, usable, freedom, radius),
  };
}

/**
 * The cheapest plan, the cheapest that can be undone, and the cheapest of those with fewest moves; each once, named
 * for the first of undoable, gentlest, fewest that it is. None is dominated: a dearer one has fewer moves or can be undone.
 */
function reachingPlans(
  space: SearchSpace,
  mostMoves: number,
): { readonly plan: Found; readonly kind: PlanKind }[] {
  let fewest: Found | undefined;
  for (let most = 0; most <= mostMoves && !fewest; most += 1) fewest = cheapestPlan(space, most);
  if (!fewest) return [];
  const undoable = cheapestPlan(onlyReversible(space), mostMoves);
  const known = undoable && undoable.cost < fewest.cost ? undoable : fewest;
  const gentlest = cheapestPlan(space, mostMoves, known)!;
  const named: { plan: Found; kind: PlanKind }[] = [];
  const add = (plan: Found | undefined, kind: PlanKind): void => {
    if (plan && !named.some((one) => isSamePlan(one.plan, plan))) named.push({ plan, kind });
  };
  add(undoable, "undoable");
  add(gentlest, "gentlest");
  add(fewest, "fewest");
  return named.toSorted((a, b) => a.plan.cost - b.plan.cost);
}

function onlyReversible(space: SearchSpace): SearchSpace {
  const kept = space.moves.flatMap(({ action }, i) => (action.reversible ? [i] : []));
  return {
    ...space,
    moves: kept.map((i) => space.moves[i]!),
    meets: kept.map((i) => kept.map((j) => space.meets[i]![j]!)),
  };
}

function isSamePlan(a: Found, b: Found): boolean {
  if (a.steps.length !== b.steps.length) return false;
  return a.steps.every(({ move, amount }) =>
    b.steps.some((step) => step.move.action.id === move.action.id && step.amount === amount),
  );
}

function planOf(
  map: BlendMap,
  values: Values,
  target: Blend,
  { steps, cost }: Found,
  kind: PlanKind,
  { coverage, gaugeError }: Required<PlanOptions>,
): Plan {
  const deeds = inOrderOfTrying(steps.map(({ move, amount }) => ({ action: move.action, amount })));
  const after = valuesAfter(values, deeds);
  const blend = place(map, after).raw;
  return {
    kind,
    steps: deeds.map(({ action, amount }) => ({
      action: action.id,
      amount,
      reversible: action.reversible,
    })),
    values: after,
    blend,
    distance: blendDistance(blend, target),
    cost,
    ellipse: planEllipse(map, deeds, coverage, gaugeError),
  };
}

function checkedOptions(map: BlendMap, options: PlanOptions): Required<PlanOptions> {
  requireKeyed(options, "planAdjustments: options");
  const { radius = 0.08, freedom = {}, coverage = 0.95, mostMoves = mostMovesInASitting } = options;
  const { playings = Infinity, gaugeError = {} } = options;
  requireWithin(radius, 0, 2, "planAdjustments: radius");
  requireWithin(coverage, 0, 1, "planAdjustments: coverage", true);
  requireFreedom(freedom, map.model, "planAdjustments");
  requireGaugeErrors(map, gaugeError, "planAdjustments");
  requireWithin(mostMoves, 0, mostMovesAllowed, "planAdjustments: mostMoves");
  if (!Number.isInteger(mostMoves)) {
    throw new RangeError(`planAdjustments: mostMoves is ${mostMoves}; allowed: a whole number`);
  }
  if (!(playings >= 0)) {
    throw new RangeError(`planAdjustments: playings is ${shown(playings)}; allowed: 0 or more`);
  }
  return { radius, freedom, coverage, mostMoves, gaugeError, playings };
}
