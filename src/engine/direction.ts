import type { Purpose, Triple } from "./model.js";

const order: readonly Purpose[] = ["high", "low", "loud"];

/**
 * Which purpose a pull is told by: the one it goes toward, or the one it leaves, whichever is the greater part.
 *
 * @example pullDirection([-0.2, 0.1, 0.1]) → { way: "away", purpose: "high" }
 */
export function pullDirection(
  pull: Triple,
): { readonly way: "toward" | "away"; readonly purpose: Purpose } | undefined {
  const most = Math.max(...pull);
  const least = Math.min(...pull);
  if (most - least < 0.004) return undefined; // less than half a per cent: nothing a reader could see
  return most >= -least
    ? { way: "toward", purpose: order[pull.indexOf(most)]! }
    : { way: "away", purpose: order[pull.indexOf(least)]! };
}
