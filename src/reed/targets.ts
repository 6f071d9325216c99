import { blendDistance, type Blend } from "../engine/blend.js";
import { whys } from "./data/targets.json";
import { deepFreeze } from "./deep-freeze.js";
export { targetRadius } from "./target-places.js";
import { targetPlaces, type TargetPlace } from "./target-places.js";

/** A kind of part, where a reed for it lies, and why. */
export interface Target extends TargetPlace {
  /** Why it lies there, in one sentence. */
  readonly why: string;
}

/** Kinds of part to aim for, deeply frozen. Common practice, no source. */
export const targets: readonly Target[] = /* @__PURE__ */ deepFreeze(
  targetPlaces.map((place) => ({ ...place, why: (whys as Record<string, string>)[place.id]! })),
);

/**
 * The target of a bench: a kind of part, or a place of one's own; undefined for none.
 *
 * @example targetOf({ target: "everyday" }, "own target").label → "Everyday rehearsal"
 */
export function targetOf(
  { target, aim }: { readonly target: string; readonly aim?: Blend },
  ownLabel: string,
): Target | undefined {
  if (target === "own") return aim && { id: target, label: ownLabel, blend: aim, why: "" };
  return targets.find(({ id }) => id === target);
}

/** The kind of part that a reed at this place is nearest to. */
export function nearestTarget(blend: Blend): Target {
  return targets.reduce((best, one) =>
    blendDistance(one.blend, blend) < blendDistance(best.blend, blend) ? one : best,
  );
}
