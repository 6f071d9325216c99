import { centreBlend, type Blend } from "./blend.js";
import type { FeatureId } from "./model.js";
import type { Pull } from "./pulls.js";

/** One arrow of the way from the all-round reed to this one. */
export interface ChainLink {
  /** A feature, or a group of features. */
  readonly id: string;
  readonly from: Blend;
  readonly to: Blend;
}

/**
 * The pulls laid head to tail from the centre: the last arrow ends at the reed's raw place.
 *
 * Shape   pulls of a reed, and the group of each feature (each its own group: an arrow a feature) → one link a
 *         group, in the order in which groups first come.
 * Unit    shares.
 * Error   the end meets the raw place within 1e-12.
 *
 * @example pullChain(pulls(map, values), () => "all").length → 1
 */
export function pullChain(
  pulls: readonly Pull[],
  groupOf: (feature: FeatureId) => string,
): ChainLink[] {
  const sums = new Map<string, [number, number, number]>();
  for (const { feature, now } of pulls) {
    const id = groupOf(feature);
    const sum = sums.get(id) ?? [0, 0, 0];
    sums.set(id, [sum[0] + now[0], sum[1] + now[1], sum[2] + now[2]]);
  }
  let from = centreBlend;
  return [...sums].map(([id, move]) => {
    const to: Blend = [from[0] + move[0], from[1] + move[1], from[2] + move[2]];
    const link = { id, from, to };
    from = to;
    return link;
  });
}
