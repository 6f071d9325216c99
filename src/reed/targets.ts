import { blendDistance, type Blend } from "../engine/blend.js";
import targetsJson from "./data/targets.json";
import { deepFreeze } from "./deep-freeze.js";

/** A kind of part, and where a reed for it lies. */
export interface Target {
  readonly id: string;
  readonly label: string;
  readonly blend: Blend;
  /** Why it lies there, in one sentence. */
  readonly why: string;
}

/** How near is near enough: distance in shares. Common practice, no source. */
export const targetRadius: number = targetsJson.radius;

/** Kinds of part to aim for, deeply frozen. Common practice, no source. */
export const targets: readonly Target[] = /* @__PURE__ */ deepFreeze(
  targetsJson.targets.map(({ blend, ...target }) => ({ ...target, blend: toBlend(blend) })),
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

/** The file rounds a third to six digits; shares sum to 1 again here. */
function toBlend([high = 0, low = 0, loud = 0]: readonly number[]): Blend {
  const sum = high + low + loud;
  return [high / sum, low / sum, loud / sum];
}
