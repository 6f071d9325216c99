import type { Action, Actions, ReedModel } from "../engine/model.js";
import { duplicateIds } from "./duplicate-problems.js";
import type { AddProblem, Keys } from "./problem-at.js";
import { field, listField, numberField } from "./unknown-field.js";

/**
 * Reports what does not fit together in a file of symptoms, whatever else is wrong in it.
 *
 * Shape   the file as parsed JSON, model and actions it belongs to, a function that takes each problem. Never throws.
 */
export function checkSymptomsFit(
  json: unknown,
  model: ReedModel,
  actions: Actions,
  add: AddProblem,
): void {
  duplicateIds(json, "soundness", add);
  duplicateIds(json, "symptoms", add);
  const known = [...model.features, ...model.ratios].map(({ id }) => id);
  listField(json, "symptoms").forEach((symptom, index) => {
    const keys: Keys = ["symptoms", index];
    listField(symptom, "causes").forEach((cause, at) => {
      const what = field(cause, "what");
      if (typeof what !== "string" || known.includes(what)) return;
      add([...keys, "causes", at, "what"], what, `a feature or ratio: ${known.join(", ")}`);
    });
    for (const list of ["first", "after"]) {
      listField(symptom, list).forEach((help, at) =>
        checkHelp(help, actions, list === "first", [...keys, list, at], add),
      );
    }
  });
}

function checkHelp(
  help: unknown,
  { actions }: Actions,
  isFirst: boolean,
  keys: Keys,
  add: AddProblem,
): void {
  const id = field(help, "action");
  if (typeof id !== "string") return;
  const action = actions.find((one) => one.id === id);
  if (!action) {
    add([...keys, "action"], id, `one of the actions: ${actions.map((one) => one.id).join(", ")}`);
    return;
  }
  if (isFirst && !action.reversible)
    add([...keys, "action"], id, "an action that can be undone, for it is tried first");
  checkAmounts(help, action, keys, add);
}

function checkAmounts(help: unknown, { easy }: Action, keys: Keys, add: AddProblem): void {
  const [amount, upTo] = [numberField(help, "amount"), numberField(help, "upTo")];
  if (amount !== undefined && amount > easy)
    add([...keys, "amount"], amount, `at most "easy" of the action, which is ${easy}`);
  if (upTo === undefined) return;
  if (upTo > easy) add([...keys, "upTo"], upTo, `at most "easy" of the action, which is ${easy}`);
  if (amount !== undefined && upTo <= amount)
    add([...keys, "upTo"], upTo, `above "amount", which is ${amount}`);
}
