import type { Blend } from "../engine/blend.js";
import { radius, targets as targetsJson } from "./data/targets.json";
import { deepFreeze } from "./deep-freeze.js";

/** A kind of part, and where a reed for it lies. */
export interface TargetPlace {
  readonly id: string;
  readonly label: string;
  readonly blend: Blend;
}

/** How near is near enough: distance in shares. Common practice, no source. */
export const targetRadius: number = radius;

/** Kinds of part to aim for, deeply frozen. Common practice, no source. */
export const targetPlaces: readonly TargetPlace[] = /* @__PURE__ */ deepFreeze(
  targetsJson.map(({ blend, ...target }) => ({ ...target, blend: toBlend(blend) })),
);

/**
 * The target of a bench: a kind of part, or a place of one's own; undefined for none.
 *
 * @example targetPlaceOf({ target: "everyday" }, "own target").label → "Everyday rehearsal"
 */
export function targetPlaceOf(
  { target, aim }: { readonly target: string; readonly aim?: Blend },
  ownLabel: string,
): TargetPlace | undefined {
  if (target === "own") return aim && { id: target, label: ownLabel, blend: aim };
  return targetPlaces.find(({ id }) => id === target);
}

/** The file rounds a third to six digits; shares sum to 1 again here. */
function toBlend([high = 0, low = 0, loud = 0]: readonly number[]): Blend {
  const sum = high + low + loud;
  return [high / sum, low / sum, loud / sum];
}
