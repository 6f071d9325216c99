import { actionNames, cornersOf, shown, type Telling } from "./feedback.js";
import type { Hint } from "./hints.js";
import type { Given } from "./lesson-view.js";
import type { FeatureId, Values } from "../engine/model.js";
import { differs } from "./exercise-reed.js";
import { inSentence } from "../reed/in-sentence.js";

/**
 * A hint in words.
 *
 * Shape   a hint, the exercise it belongs to, map and words → a sentence or two.
 */
export function hintText(
  hint: Hint,
  { given, from }: { readonly given: Given; readonly from: Values },
  telling: Telling,
): string {
  const words = telling.text.lessons.feedback.hints;
  switch (hint.kind) {
    case "text":
      return hint.text;
    case "lookAt":
      return words.lookAt(hint.features.map((id) => inSentence(featureOf(id, telling).label)));
    case "compareCorners":
      return words.compareCorners(hint.features.map((id) => cornersOf(id, telling)));
    case "move":
      return words.move(hint.feature, featureOf(hint.feature, telling).label, hint.more);
    case "recipe":
      return words.recipe(recipeParts(hint.values, from, telling));
    case "toward":
    case "awayFrom":
      return words[hint.kind](hint.purpose);
    case "greatest":
      return words.greatest(hint.purpose);
    case "share":
      return words.share(hint.purpose, hint.share);
    case "first":
      return words.first(actionNames([hint.action], telling)[0]!);
    case "order":
      return words.order(actionNames(hint.actions, telling));
    case "notThis":
      return words.notThis(given.options?.[hint.option] ?? "");
    default:
      return words[hint.kind];
  }
}

function featureOf(id: FeatureId, { map }: Telling) {
  return map.model.features.find((one) => one.id === id)!;
}

/** "blade length 26.6 mm": only what is to be moved. */
function recipeParts(values: Values, from: Values, telling: Telling): string[] {
  return telling.map.features
    .filter((id) => differs(values[id]!, from[id]!))
    .map((id) => `${inSentence(featureOf(id, telling).label)} ${shown(id, values[id]!, telling)}`);
}
