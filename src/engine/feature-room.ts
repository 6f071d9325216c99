import { requireMapAndValues, standardise, sumArrows, type BlendMap } from "./compile.js";
import { limitsOf, requireFreedom } from "./freedom.js";
import type { Freedom, Values } from "./model.js";
import type { Vector } from "./plane.js";
import { sumSegments, type Zonotope } from "./zonotope.js";

/** A map's features between their limits, in z, with the polygon that they span. */
export interface FeatureRoom {
  /** Present values, least and greatest, in z, in map order. */
  readonly start: Float64Array;
  readonly low: Float64Array;
  readonly high: Float64Array;
  /** Least and greatest in the feature's unit, so that a limit comes back to the last digit. */
  readonly limits: readonly (readonly [low: number, high: number])[];
  readonly polygon: Zonotope;
}

/** The limits of every feature and the polygon they span; `solveFor` works inside it. */
export function featureRoom(
  map: BlendMap,
  values: Values,
  freedom: Freedom,
  who: string,
): FeatureRoom {
  requireMapAndValues(map, values, who);
  requireFreedom(freedom, map.model, who);
  const count = map.mapped.length;
  const start = new Float64Array(count);
  const low = new Float64Array(count);
  const high = new Float64Array(count);
  const limits = map.mapped.map((one, j) => {
    start[j] = standardise(one, values, who);
    const { id } = one.feature;
    const ends = limitsOf(one.feature, values[id]!, freedom[id]);
    low[j] = (ends[0] - one.mean) / one.halfSpread;
    high[j] = (ends[1] - one.mean) / one.halfSpread;
    return ends;
  });
  const segments = map.mapped.map(({ arrow }, j): Vector => {
    const span = high[j]! - low[j]!;
    return [span * arrow[0], span * arrow[1]];
  });
  return { start, low, high, limits, polygon: sumSegments(sumArrows(map.mapped, low), segments) };
}
