import { mainEffect } from "./action-room.js";
import type { Action, Actions } from "./model.js";

/** Most moves of one plan. */
export const mostMovesInASitting = 4;

/** Fewer playings than this: wire moves and dusting only, scraping waits. */
export const leastPlayings = 3;

/** The one action of cane that a new reed bears. */
const dusting = "dustBlade";

/**
 * Whether two actions may stand in one plan: not the same twice, not two that are after the same feature in
 * opposite ways, and at most one of thinning the heart and thinning the spine.
 *
 * Source  the rules of the actions file: common practice, no source.
 *
 * @example mayMeet(bassoonActions.actions[0], bassoonActions.actions[1]) → false
 */
export function mayMeet(a: Action, b: Action): boolean {
  if (a.id === b.id) return false;
  const [mainA, mainB] = [mainEffect(a), mainEffect(b)];
  if (mainA === mainB && a.effects[mainA]! * b.effects[mainB]! < 0) return false;
  return !(
    (thinsAlone(a, "heart", "spine") && thinsAlone(b, "spine", "heart")) ||
    (thinsAlone(a, "spine", "heart") && thinsAlone(b, "heart", "spine"))
  );
}

/** Dusting takes a little of both, so it is neither thinning the heart nor thinning the spine. */
function thinsAlone(action: Action, place: string, other: string): boolean {
  return isAfter(action, place) && action.effects[other] === undefined;
}

/** Whether a hand is after less of a feature. */
function isAfter(action: Action, feature: string): boolean {
  return mainEffect(action) === feature && action.effects[feature]! < 0;
}

/**
 * What may still be done in a sitting after what was done in it already: nothing twice, nothing against it, no clip
 * once the tip is thinned; and how many moves are left.
 *
 * Shape   actions, ids of those done in this sitting → the actions that may follow, and the most moves.
 * Throws  never; an id that is unknown counts as a move.
 * Source  the rules of the actions file: common practice, no source.
 *
 * @example restOfSitting(bassoonActions, ["roundFirstWire"]).mostMoves → 3
 */
export function restOfSitting(
  actions: Actions,
  done: readonly string[],
): { readonly actions: Actions; readonly mostMoves: number } {
  const before = actions.actions.filter(({ id }) => done.includes(id));
  const isTipMade = before.some(thinsTip);
  const rest = actions.actions.filter(
    (action) => before.every((one) => mayMeet(one, action)) && !(isTipMade && isClip(action)),
  );
  return {
    actions: { ...actions, actions: rest },
    mostMoves: Math.max(0, mostMovesInASitting - done.length),
  };
}

/** Whether the action takes the end of the tip off, and every gauge place moves back. */
export function isClip(action: Action): boolean {
  return isAfter(action, "bladeLength");
}

/** Whether the action thins what a clip would take away. */
export function thinsTip(action: Action): boolean {
  return isAfter(action, "tip");
}

/** Whether a reed that was played so often bears the action. */
export function isRipeFor(action: Action, playings: number): boolean {
  return playings >= leastPlayings || action.reversible || action.id === dusting;
}

/**
 * Steps in the order of trying: what can be undone first, then as the actions say, scrapes from the tip backwards
 * and clipping last. One exception: a clip comes right before the tip is thinned, for it would take the new tip off.
 *
 * Shape   steps of a plan in any order → the same steps in the order of trying.
 * Source  the rules of the actions file: common practice, no source.
 */
export function inOrderOfTrying<Step extends { readonly action: Action }>(
  steps: readonly Step[],
): Step[] {
  const sorted = steps.toSorted(
    ({ action: a }, { action: b }) =>
      Number(b.reversible) - Number(a.reversible) || a.order - b.order,
  );
  const tip = sorted.findIndex(({ action }) => thinsTip(action));
  const clip = sorted.findIndex(({ action }) => isClip(action));
  if (tip < 0 || clip < tip) return sorted;
  return [
    ...sorted.slice(0, tip),
    sorted[clip]!,
    ...sorted.slice(tip).filter((step) => step !== sorted[clip]),
  ];
}
