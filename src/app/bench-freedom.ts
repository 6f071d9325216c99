import { finishingFreedom } from "../engine/freedom.js";
import type { Freedom, ReedModel } from "../engine/model.js";
import type { Bench } from "../reed/bench.js";

/**
 * What the features may do when the recipe follows the point, or one of them stands in for another. What finishing
 * allows counts from what the reed has: what was only tried can be taken back, and no farther.
 */
export function freedomOf(model: ReedModel, bench: Bench): Freedom {
  const finishing = bench.finished ? finishingFreedom(model, bench.values) : {};
  return { ...finishing, ...locksOf(bench) };
}

/** The locks alone: what hands do keeps to what finishing allows by itself. */
export function locksOf({ locked }: Pick<Bench, "locked">): Freedom {
  return Object.fromEntries(locked.map((id) => [id, { locked: true }]));
}
