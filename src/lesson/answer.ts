import type { Blend } from "../engine/blend.js";
import type { Values } from "../engine/model.js";
import type { ExerciseBlock } from "./lesson.js";

/** How sure a student is of a prediction. */
export type Sureness = 1 | 2 | 3;

/** What a student hands in, by the kind of exercise. */
export type Answer =
  | { readonly kind: "predict"; readonly guess: Blend; readonly sure?: Sureness }
  | { readonly kind: "aim" | "stand-in"; readonly values: Values }
  | { readonly kind: "choose"; readonly option: number }
  | { readonly kind: "order"; readonly actions: readonly string[] }
  | { readonly kind: "read"; readonly shares: Blend };

/**
 * Whether this is an answer to an exercise: of its kind, with numbers that are numbers, an option that exists, the
 * same actions in some order.
 *
 * Domain  anything typed, dropped or loaded; never throws.
 *
 * @example isAnswerTo({ kind: "choose", options: [] }, { kind: "choose", option: 0 }) → false
 */
export function isAnswerTo(block: ExerciseBlock, answer: Answer): boolean {
  if (answer.kind !== block.kind) return false;
  switch (answer.kind) {
    case "predict":
      return answer.guess.length === 3 && answer.guess.every(Number.isFinite);
    case "read":
      return answer.shares.length === 3 && answer.shares.every(Number.isFinite);
    case "choose":
      return block.kind === "choose" && block.options[answer.option] !== undefined;
    case "order":
      return block.kind === "order" && sorted(answer.actions) === sorted(block.actions);
    default:
      return Object.values(answer.values).every(Number.isFinite);
  }
}

function sorted(names: readonly string[]): string {
  return names.toSorted().join(" ");
}
