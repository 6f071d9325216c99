import type { Blend } from "../engine/blend.js";
import type { FeatureId, Values } from "../engine/model.js";
import type { Answer } from "./answer.js";
import { exerciseReed, exerciseTarget, missingReed, readingPlace } from "./exercise-reed.js";
import { type Hint, hintsFor } from "./hints.js";
import {
  type AimBlock,
  type Block,
  type ChooseBlock,
  type ExerciseBlock,
  isExercise,
  type Lesson,
  type LessonReed,
  type StandInBlock,
} from "./lesson.js";
import {
  exerciseId,
  type ExerciseState,
  exerciseStateOf,
  type LessonState,
} from "./lesson-state.js";
import { mixedOrder } from "./mixed-order.js";
import { type Mark, markAnswer, type Marker } from "./mark-answer.js";

/** What is open to see from the beginning: options, actions, target, locks; of a prediction only what changes. */
export interface Given {
  /** Of a prediction: the features that will change; not how, which the question says in words. */
  readonly features?: readonly FeatureId[];
  readonly options?: readonly string[];
  /** In which order the options stand, by their places in the file; answers and marks name them by these. */
  readonly order?: readonly number[];
  readonly actions?: readonly string[];
  /** Where the point is to go, or to be brought back to. */
  readonly target?: Blend;
  /** The kind of part, where the target has a name. */
  readonly part?: string;
  readonly within?: number;
  readonly locked?: readonly FeatureId[];
  readonly finished?: boolean;
  readonly mostFeatures?: number;
  /** What is not as it should be. */
  readonly missing?: Values;
  /** Where the point lies whose shares are to be read. */
  readonly at?: Blend;
}

/** An exercise as the page may show it: the question, and after the answer what came of it. */
export interface ExerciseView {
  readonly kind: ExerciseBlock["kind"];
  readonly id: string;
  readonly ask: string;
  /** The reed it begins with; after a locked prediction still the one before the change. */
  readonly from: Values;
  /** The reed after the change; of a prediction only once it is locked. */
  readonly to?: Values;
  readonly answer?: Answer;
  readonly locked: boolean;
  /** How often an answer was handed in. */
  readonly tries: number;
  /** The hints that were asked for. */
  readonly hints: readonly Hint[];
  readonly given: Given;
  /** Only once locked. */
  readonly mark?: Mark;
  /** The author's words, only once it is locked and, where it can be tried again, right. */
  readonly why?: string;
}

/** A block as the page may show it. */
export type BlockView = Exclude<Block, ExerciseBlock> | ExerciseView;

/** The step that is open, as far as it may be seen. */
export interface StepView {
  readonly title: string;
  readonly step: number;
  /** Whether it could be read without a fault; otherwise it must not be shown. */
  readonly sound: boolean;
  readonly blocks: readonly BlockView[];
  /** Whether compasses, pulls and every word that tells a direction must be hidden. */
  readonly directionsHidden: boolean;
  /** Whether the shares of every place must be hidden: they are what is to be read. */
  readonly sharesHidden: boolean;
  /** Whether something below waits for an answer. */
  readonly more: boolean;
}

/**
 * The open step as far as it may be seen: up to the first exercise that is not locked. Of an open prediction neither
 * the new values nor anything computed from them is in the view.
 *
 * Shape   lesson, state, map and actions; whether each attempt mixes the options of a choice anew, or they stand as
 *         the file lists them → plain data.
 */
export function stepView(
  lesson: Lesson,
  state: LessonState,
  marking: Omit<Marker, "lesson">,
  { mixed = false }: { readonly mixed?: boolean } = {},
): StepView {
  const marker: Marker = { ...marking, lesson };
  const orderOf = (block: ChooseBlock, id: string, { locked, tries }: ExerciseState) => {
    // An answer that is handed in is still of the attempt it was given in.
    const attempt = locked ? tries - 1 : tries;
    return mixed
      ? mixedOrder(block.options.length, `${lesson.title}/${id}/${attempt}`)
      : listedOrder(block);
  };
  const { title = "", blocks = [], sound = true } = lesson.steps[state.step] ?? {};
  const isOpen = (block: Block, index: number): boolean =>
    isExercise(block) && !exerciseStateOf(state, exerciseId(state.step, index)).locked;
  const open = blocks.findIndex(isOpen);
  const seen = open < 0 ? blocks : blocks.slice(0, open + 1);
  return {
    title,
    step: state.step,
    sound,
    blocks: seen.map((block, index) => {
      if (!isExercise(block)) return block;
      const id = exerciseId(state.step, index);
      const at = exerciseStateOf(state, id);
      const view = exerciseView(block, id, at, marker);
      if (block.kind !== "choose") return view;
      return { ...view, given: { ...view.given, order: orderOf(block, id, at) } };
    }),
    directionsHidden: blocks[open]?.kind === "predict",
    sharesHidden: blocks[open]?.kind === "read",
    more: seen.length < blocks.length,
  };
}

function exerciseView(
  block: ExerciseBlock,
  id: string,
  { answer, locked, hints, tries }: ExerciseState,
  marker: Marker,
): ExerciseView {
  const whole = exerciseReed(marker.lesson, block, marker.map.model);
  const mark = locked && answer ? markAnswer(block, answer, marker) : undefined;
  // What can be tried again is not explained as if it were solved.
  const isOver = block.kind === "predict" ? locked : mark?.right;
  return {
    kind: block.kind,
    id,
    ask: block.ask,
    from: block.kind === "stand-in" ? missingReed(whole, block) : whole,
    ...(block.kind === "predict" && locked ? { to: { ...whole, ...block.change } } : {}),
    ...(answer ? { answer } : {}),
    locked,
    tries,
    hints: hints === 0 ? [] : hintsFor(block, marker).slice(0, hints),
    given: givenOf(block, whole, marker),
    ...(mark ? { mark } : {}),
    ...(isOver && block.why !== undefined ? { why: block.why } : {}),
  };
}

/** The places of a choice's options in the order in which a class sees them. */
export function listedOrder({ options, shown }: ChooseBlock): readonly number[] {
  return shown ?? options.map((_, index) => index);
}

function givenOf(block: ExerciseBlock, whole: Values, { map }: Marker): Given {
  switch (block.kind) {
    case "choose":
      return { options: block.options.map(({ text }) => text) };
    case "order":
      return { actions: block.actions };
    case "aim": {
      const { target, part, mostFeatures } = block;
      return {
        ...heldOf(block),
        target,
        ...(part === undefined ? {} : { part }),
        ...(mostFeatures === undefined ? {} : { mostFeatures }),
      };
    }
    case "stand-in":
      return {
        ...heldOf(block),
        target: exerciseTarget(block, whole, map),
        missing: block.missing,
      };
    case "read":
      return { at: readingPlace(block, whole, map) };
    case "predict":
      return { features: Object.keys(block.change) };
  }
}

function heldOf({ within, locked = [], finished = false }: AimBlock | StandInBlock): Given {
  return { within, locked, finished };
}

/** A reed that a block shows, with every value. */
export function shownReed(
  lesson: Pick<Lesson, "reed" | "start">,
  block: LessonReed,
  { map }: Pick<Marker, "map">,
): Values {
  return exerciseReed(lesson, block, map.model);
}
