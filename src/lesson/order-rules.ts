import type { Action } from "../engine/model.js";
import { inOrderOfTrying, mayMeet } from "../engine/sitting-rules.js";
import { type LessonFault, lessonWords } from "../reed/lesson-words.js";

const { faults: words } = lessonWords;

/**
 * Whether these actions stand in a sensible order: what can be undone first, then as the actions say, and the one
 * exception of the rules. Actions of one rank may stand either way.
 *
 * Source  the rules of the actions file, common practice, no source.
 *
 * @example isSensibleOrder([]) → true
 */
export function isSensibleOrder(actions: readonly Action[]): boolean {
  return sensibleOrder(actions).every((action, index) => action === actions[index]);
}

/** A sensible order that keeps actions of one rank as they stand. */
export function sensibleOrder(actions: readonly Action[]): Action[] {
  return inOrderOfTrying(actions.map((action) => ({ action }))).map(({ action }) => action);
}

/** Why a list of actions makes no exercise; `index` is the action at fault where it is one. */
export function orderFaults(
  actions: readonly Action[],
): { readonly index?: number; readonly fault: LessonFault }[] {
  const clashes = actions.flatMap((b, index) =>
    actions
      .slice(0, index)
      .filter((a) => !mayMeet(a, b))
      .map((a) => ({ index, fault: a === b ? words.twice(b.id) : words.opposite(a.id, b.id) })),
  );
  if (clashes.length > 0) return clashes;
  if (isSensibleOrder(actions.toReversed()) && isSensibleOrder(actions))
    return [{ fault: words.anyOrder }];
  return isSensibleOrder(actions) ? [{ fault: words.inOrder }] : [];
}
