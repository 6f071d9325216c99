import type { Blend } from "../engine/blend.js";
import type { ChainLink } from "../engine/pull-chain.js";
import type { RecipeDifference } from "../engine/differences.js";

/**
 * The way of the point, pull by pull: an arrow a change, head to tail.
 *
 * Shape   where it sets out, pulls in order → one link a pull.
 * Error   the last link ends at start plus the sum of the pulls, within 1e-12.
 *
 * @example pullLinks([1, 0, 0], []) → []
 */
export function pullLinks(from: Blend, pulls: readonly RecipeDifference[]): ChainLink[] {
  let at = from;
  return pulls.map(({ feature, move }) => {
    const to: Blend = [at[0] + move[0], at[1] + move[1], at[2] + move[2]];
    const link = { id: feature, from: at, to };
    at = to;
    return link;
  });
}

/** The places that those arrows join. */
export function placesAlong(links: readonly ChainLink[]): Blend[] {
  const [first] = links;
  return first ? [first.from, ...links.map(({ to }) => to)] : [];
}
