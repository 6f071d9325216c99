import type { BlendMap } from "../engine/compile.js";
import type { Actions } from "../engine/model.js";
import { type Answer, isAnswerTo } from "./answer.js";
import { exerciseReed, readingPlace } from "./exercise-reed.js";
import type { ChooseBlock, ExerciseBlock, Lesson } from "./lesson.js";
import { markPredict, type PredictMark } from "./mark-predict.js";
import { markRead, type ReadMark } from "./mark-read.js";
import { markRecipe, type RecipeMark } from "./mark-recipe.js";
import { isSensibleOrder, sensibleOrder } from "./order-rules.js";

/** What a choice is told: the reason of the option that was taken, right or wrong. */
export interface ChooseMark {
  readonly kind: "choose";
  readonly right: boolean;
  readonly option: number;
  readonly why: string;
  /** Every right option. */
  readonly rightOptions: readonly number[];
}

/** What an order is told. */
export interface OrderMark {
  readonly kind: "order";
  readonly right: boolean;
  readonly actions: readonly string[];
  /** The sensible order that is nearest to the answer. */
  readonly sensible: readonly string[];
  /** Whether something that can be undone stands behind something that cannot. */
  readonly irreversibleFirst: boolean;
}

/** What an answer is told. */
export type Mark = PredictMark | RecipeMark | ReadMark | ChooseMark | OrderMark;

/** What answers are held against. */
export interface Marker {
  readonly lesson: Pick<Lesson, "reed" | "start">;
  readonly map: BlendMap;
  readonly actions: Actions;
}

/**
 * Marks an answer by computing, never by a stored solution; only a choice has a key, which the checker holds
 * against the model where it can.
 *
 * Shape   an exercise, an answer of its kind, lesson, map and actions → the mark.
 * Throws  TypeError for what is no answer to the exercise (`isAnswerTo`).
 */
export function markAnswer(
  block: ExerciseBlock,
  answer: Answer,
  { lesson, map, actions }: Marker,
): Mark {
  if (!isAnswerTo(block, answer))
    throw new TypeError(`markAnswer: this is no answer to ${block.kind}; allowed: see isAnswerTo`);
  const values = exerciseReed(lesson, block, map.model);
  if (block.kind === "predict" && answer.kind === "predict")
    return markPredict(block, values, map, answer.guess);
  if (block.kind === "aim" && answer.kind === "aim")
    return markRecipe(block, values, map, answer.values);
  if (block.kind === "stand-in" && answer.kind === "stand-in")
    return markRecipe(block, values, map, answer.values);
  if (block.kind === "read" && answer.kind === "read")
    return markRead(answer.shares, readingPlace(block, values, map), block.within);
  if (block.kind === "choose" && answer.kind === "choose") return markChoose(block, answer.option);
  return markOrder((answer as Answer & { readonly kind: "order" }).actions, actions);
}

function markChoose({ options }: ChooseBlock, option: number): ChooseMark {
  const taken = options[option]!;
  const rightOptions = options.flatMap(({ right }, index) => (right ? [index] : []));
  return { kind: "choose", right: taken.right, option, why: taken.why, rightOptions };
}

function markOrder(answer: readonly string[], { actions }: Actions): OrderMark {
  const found = answer.flatMap((id) => actions.find((one) => one.id === id) ?? []);
  const firstScrape = found.findIndex(({ reversible }) => !reversible);
  return {
    kind: "order",
    right: isSensibleOrder(found),
    actions: answer,
    sensible: sensibleOrder(found).map(({ id }) => id),
    irreversibleFirst:
      firstScrape >= 0 && found.slice(firstScrape).some(({ reversible }) => reversible),
  };
}
