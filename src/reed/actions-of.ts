import type { Action, Actions, ReedModel } from "../engine/model.js";
import { bassoonActions } from "./bassoon-actions.js";

const known = new WeakMap<ReedModel, Actions>();

/**
 * What hands do to a reed of a model, told in its features: where features do not count, their changes are left out,
 * and an action that is after one of them is not offered. The same object for the same model.
 *
 * Source  common practice, no source.
 *
 * @example actionsOf(bassoonModel) → bassoonActions
 */
export function actionsOf(model: ReedModel): Actions {
  const found = known.get(model);
  if (found) return found;
  const ids = new Set(model.features.map(({ id }) => id));
  const actions = bassoonActions.actions.flatMap((action) => within(action, ids) ?? []);
  const isWhole = actions.every((action, i) => action === bassoonActions.actions[i]);
  const all = isWhole && actions.length === bassoonActions.actions.length;
  const made = all ? bassoonActions : { ...bassoonActions, actions };
  known.set(model, made);
  return made;
}

function within(action: Action, ids: ReadonlySet<string>): Action | undefined {
  const effects = Object.entries(action.effects);
  const counted = effects.filter(([id]) => ids.has(id));
  if (counted.length === effects.length) return action;
  const [main] = effects[0]!;
  return ids.has(main) ? { ...action, effects: Object.fromEntries(counted) } : undefined;
}
