import { requireKeyed } from "./check.js";
import { requireMap, standardise, type BlendMap } from "./compile.js";
import type { FeatureId, Triple, Values } from "./model.js";
import type { Blend } from "./blend.js";
import { place } from "./place.js";

/** What one feature contributes to the way from one reed to another. */
export interface RecipeDifference {
  readonly feature: FeatureId;
  /** Second reed less the first, in the feature's own unit. */
  readonly change: number;
  /** How that change moves the point, in shares; sums to 0. */
  readonly move: Triple;
}

/**
 * What two reeds differ in, the difference that moves the point most first.
 *
 * Shape   a map, two reeds that have every feature of it → one difference a feature of the map.
 * Unit    the feature's own; shares.
 * Error   the moves add up to the difference of the raw places within 1e-12.
 * Throws  RangeError naming the feature whose value is missing or not finite.
 *
 * @example recipeDifferences(map, values, values)[0].change → 0
 */
export function recipeDifferences(map: BlendMap, from: Values, to: Values): RecipeDifference[] {
  requireMap(map, "recipeDifferences");
  requireKeyed(from, "recipeDifferences: from");
  requireKeyed(to, "recipeDifferences: to");
  const size = ({ move }: RecipeDifference): number => Math.hypot(...move);
  return map.mapped
    .map((one): RecipeDifference => {
      const [z0, z1] = [from, to].map((reed) => standardise(one, reed, "recipeDifferences"));
      const move = one.pull.map((share) => share * (z1! - z0!) + 0) as unknown as Triple;
      const id = one.feature.id;
      return { feature: id, change: to[id]! - from[id]!, move };
    })
    .toSorted((a, b) => size(b) - size(a));
}

/**
 * The way of the point from one reed to another along the pulls of what changes, head to tail.
 *
 * Shape   a map, two reeds, and the group of each feature → places from the first raw place to the second; the groups
 *         go in the map's order, and groups that do not change take no part.
 * Unit    shares.
 * Throws  as `recipeDifferences`.
 *
 * @example pullWay(map, values, values, () => "all").length → 1
 */
export function pullWay(
  map: BlendMap,
  from: Values,
  to: Values,
  groupOf: (feature: FeatureId) => string,
): Blend[] {
  const moves = new Map(
    recipeDifferences(map, from, to).map(({ feature, move }) => [feature, move]),
  );
  const sums = new Map<string, Triple>();
  for (const feature of map.features) {
    const move = moves.get(feature)!;
    if (move.every((share) => share === 0)) continue;
    const group = groupOf(feature);
    sums.set(group, added(sums.get(group) ?? [0, 0, 0], move));
  }
  const way: Blend[] = [place(map, from).raw];
  for (const sum of sums.values()) way.push(added(way.at(-1)!, sum));
  // The last step ends where the second reed lies, whatever the sums have rounded.
  return way.length === 1 ? way : [...way.slice(0, -1), place(map, to).raw];
}

function added(a: Triple, b: Triple): Triple {
  return [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
}
