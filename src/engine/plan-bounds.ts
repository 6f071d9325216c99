import { dot, type Vector } from "./plane.js";
import type { SearchMove } from "./search-space.js";

/** Directions in which bounds are known; between two of them the bound is weaker by at most 0.1 %. */
const directions = 64;

const rays: readonly Vector[] = Array.from({ length: directions }, (_, k) => {
  const angle = (2 * Math.PI * k) / directions;
  return [Math.cos(angle), Math.sin(angle)];
});

/** What the moves from `first` on can do at most, along the ray that is nearest to a way. */
export interface PlanBounds {
  /** The length of the way along the ray minus what `count` more moves can make of it: no plan ends nearer. */
  least(first: number, count: number, way: Vector): number;
  /** The least that any moves cost to get within a radius of the end of the way; infinite when none can. */
  leastCost(first: number, count: number, way: Vector, radius: number): number;
}

/**
 * Bounds for a search that goes through the moves in order: any direction bounds a distance from below, since no
 * sum of moves gets further along it than its best parts.
 *
 * Shape   moves in the order of the search, most moves of a plan → bounds for every rest of them.
 */
export function planBounds(moves: readonly SearchMove[], mostMoves: number): PlanBounds {
  const width = mostMoves + 1;
  // progress[(first * width + count) * directions + k]: of the moves from `first` on, the best `count` together.
  const progress = new Float64Array((moves.length + 1) * width * directions);
  // perCost[first * directions + k]: the best of them for its cost.
  const perCost = new Float64Array((moves.length + 1) * directions);
  for (let k = 0; k < directions; k += 1) {
    const best: number[] = [];
    for (let first = moves.length - 1; first >= 0; first -= 1) {
      const { arrow, most, action } = moves[first]!;
      const perUnit = dot(arrow, rays[k]!);
      if (perUnit > 0) best.push(most * perUnit);
      best.sort((a, b) => b - a);
      best.length = Math.min(best.length, mostMoves);
      const after = perCost[(first + 1) * directions + k]!;
      perCost[first * directions + k] = Math.max(after, perUnit / action.cost);
      for (let count = 1, sum = 0; count <= mostMoves; count += 1) {
        sum += best[count - 1] ?? 0;
        progress[(first * width + count) * directions + k] = sum;
      }
    }
  }
  const least = (first: number, count: number, way: Vector): number => {
    const k = nearestRay(way);
    return dot(way, rays[k]!) - progress[(first * width + count) * directions + k]!;
  };
  const leastCost = (first: number, count: number, way: Vector, radius: number): number => {
    const k = nearestRay(way);
    const need = dot(way, rays[k]!) - radius;
    if (need <= 0) return 0;
    if (need > progress[(first * width + count) * directions + k]! + 1e-12) return Infinity;
    return need / perCost[first * directions + k]!;
  };
  return { least, leastCost };
}

function nearestRay([x, y]: Vector): number {
  const turned = Math.round((Math.atan2(y, x) * directions) / (2 * Math.PI));
  return (turned + directions) % directions;
}
