import type { ReedModel } from "../engine/model.js";
import { duplicateIds } from "./duplicate-problems.js";
import type { AddProblem, Keys } from "./problem-at.js";
import { field, isKeyed, listField, numberField } from "./unknown-field.js";

/**
 * Reports what does not fit together in an action file, whatever else is wrong in it.
 *
 * Shape   the file as parsed JSON, the model it belongs to, a function that takes each problem. Never throws.
 */
export function checkActionsFit(json: unknown, model: ReedModel, add: AddProblem): void {
  duplicateIds(json, "actions", add);
  const features = new Set(model.features.map(({ id }) => id));
  const cautions = field(json, "cautions");
  listField(json, "actions").forEach((action, index) => {
    const keys: Keys = ["actions", index];
    checkOrder(action, "easy", "max", keys, add);
    checkCost(action, keys, add);
    checkEffects(field(action, "effects"), features, [...keys, "effects"], add);
    if (isKeyed(cautions))
      checkCaution(field(action, "caution"), cautions, [...keys, "caution"], add);
  });
}

function checkOrder(action: unknown, low: string, high: string, keys: Keys, add: AddProblem): void {
  const [lower, upper] = [numberField(action, low), numberField(action, high)];
  if (lower === undefined || upper === undefined || lower <= upper) return;
  add([...keys, low], lower, `at most "${high}", which is ${upper}`);
}

function checkCost(action: unknown, keys: Keys, add: AddProblem): void {
  const [cost, beyond] = [numberField(action, "cost"), numberField(action, "costBeyond")];
  if (cost === undefined || beyond === undefined || cost <= 0 || beyond <= 0 || beyond >= cost)
    return;
  add([...keys, "costBeyond"], beyond, `at least "cost", which is ${cost}`);
}

function checkEffects(
  effects: unknown,
  features: ReadonlySet<string>,
  keys: Keys,
  add: AddProblem,
): void {
  if (!isKeyed(effects)) return;
  for (const [feature, change] of Object.entries(effects)) {
    if (!features.has(feature)) {
      add(
        [...keys, feature],
        change,
        `an effect on one of the features: ${[...features].join(", ")}`,
      );
    }
  }
}

function checkCaution(caution: unknown, cautions: object, keys: Keys, add: AddProblem): void {
  if (typeof caution !== "string" || Object.hasOwn(cautions, caution)) return;
  add(keys, caution, `one of the cautions: ${Object.keys(cautions).join(", ")}`);
}
