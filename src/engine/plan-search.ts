import { planBounds, type PlanBounds } from "./plan-bounds.js";
import type { Vector } from "./plane.js";
import type { SearchMove, SearchSpace } from "./search-space.js";

/** A plan as the search finds it. */
export interface Found {
  readonly steps: readonly { readonly move: SearchMove; readonly amount: number }[];
  readonly cost: number;
  readonly distance: number;
  readonly reversible: boolean;
}

/** What is looked for. */
interface Goal {
  /** Negative when a is better. */
  readonly order: (a: Found, b: Found) => number;
  /** Whether a plan that ends at this distance is one that is looked for. */
  isGoal(distance: number, best: Found | undefined): boolean;
  /** Whether a plan that begins with this cost, this far from the target, can still be better than the best. */
  goesOn(rest: Rest, best: Found | undefined): boolean;
}

/** What is left to do, and with what. */
interface Rest {
  readonly bounds: PlanBounds;
  readonly first: number;
  readonly count: number;
  readonly way: Vector;
  readonly cost: number;
}

/** Costs and distances closer than this are the same but for rounding. */
const same = 1e-9;

/** A plan may lie on the border of the zone, where rounding would put it on either side. */
const border = 1e-12;

const near = (a: number, b: number): number => (Math.abs(a - b) <= same ? 0 : a - b);

/** The cheapest; of equal cost what can be undone, then fewer moves, then the nearer end. */
function byCost(a: Found, b: Found): number {
  return (
    near(a.cost, b.cost) ||
    Number(b.reversible) - Number(a.reversible) ||
    a.steps.length - b.steps.length ||
    a.distance - b.distance
  );
}

/** The nearest end; of equal distance the cheapest. */
function byDistance(a: Found, b: Found): number {
  return near(a.distance, b.distance) || byCost(a, b);
}

/**
 * The cheapest plan that ends in the zone, exactly, by going through all sets of moves with bounds.
 *
 * Shape   the space, most moves of a plan, the best plan known already → a better one, or the known one.
 */
export function cheapestPlan(
  space: SearchSpace,
  mostMoves: number,
  known?: Found,
): Found | undefined {
  const { radius } = space;
  return searchPlans(space, mostMoves, known, {
    order: byCost,
    isGoal: (distance) => distance <= radius + border,
    goesOn: ({ bounds, first, count, way, cost }, best) =>
      best === undefined
        ? bounds.least(first, count, way) <= radius + border
        : cost + bounds.leastCost(first, count, way, radius) <= best.cost + same,
  });
}

/** The plan that ends nearest to the target, exactly, by going through all sets of moves with bounds. */
export function nearestPlan(space: SearchSpace, mostMoves: number): Found {
  const distance = Math.hypot(...space.way);
  const nothing: Found = { steps: [], cost: 0, distance, reversible: true };
  const nearest = searchPlans(space, mostMoves, nothing, {
    order: byDistance,
    isGoal: (end, best) => end <= best!.distance + same,
    goesOn: ({ bounds, first, count, way }, best) =>
      bounds.least(first, count, way) <= best!.distance + same,
  });
  return nearest!;
}

/** Goes through all sets of moves that may meet, in the order of the space, with whole amounts. */
function searchPlans(
  space: SearchSpace,
  mostMoves: number,
  known: Found | undefined,
  goal: Goal,
): Found | undefined {
  const { moves, meets } = space;
  const bounds = planBounds(moves, mostMoves);
  const chosen: number[] = [];
  const amounts: number[] = [];
  let best = known;
  const consider = (cost: number, distance: number): void => {
    const steps = chosen.map((i, k) => ({ move: moves[i]!, amount: amounts[k]! }));
    const reversible = steps.every(({ move }) => move.action.reversible);
    const found: Found = { steps, cost, distance, reversible };
    if (best === undefined || goal.order(found, best) < 0) best = found;
  };
  const visit = (first: number, way: Vector, cost: number): void => {
    const distance = Math.hypot(way[0], way[1]);
    if (goal.isGoal(distance, best) && isWithinLimits(space, chosen, amounts))
      consider(cost, distance);
    const count = mostMoves - chosen.length;
    if (count === 0 || !goal.goesOn({ bounds, first, count, way, cost }, best)) return;
    for (let i = first; i < moves.length; i += 1) {
      if (chosen.every((j) => meets[i]![j]!)) tryAmounts(i, way, cost);
    }
  };
  const tryAmounts = (i: number, [x, y]: Vector, cost: number): void => {
    const { arrow, most, action } = moves[i]!;
    chosen.push(i);
    for (let amount = 1; amount <= most; amount += 1) {
      amounts.push(amount);
      const way: Vector = [x - amount * arrow[0], y - amount * arrow[1]];
      visit(i + 1, way, cost + amount * action.cost);
      amounts.pop();
    }
    chosen.pop();
  };
  visit(0, space.way, 0);
  return best;
}

/** The end is what counts: what one move takes another may give back. */
function isWithinLimits(
  { moves, below, above }: SearchSpace,
  chosen: readonly number[],
  amounts: readonly number[],
): boolean {
  for (let f = 0; f < below.length; f += 1) {
    let sum = 0;
    for (let k = 0; k < chosen.length; k += 1) sum += amounts[k]! * moves[chosen[k]!]!.effects[f]!;
    if (sum < below[f]! || sum > above[f]!) return false;
  }
  return true;
}
