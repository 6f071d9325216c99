import type { Values } from "../engine/model.js";
import type { Answer } from "./answer.js";
import { exerciseReed, missingReed } from "./exercise-reed.js";
import { type Hint, hintsFor } from "./hints.js";
import {
  type Block,
  type ExerciseBlock,
  isExercise,
  type Lesson,
  type LessonReed,
} from "./lesson.js";
import {
  exerciseId,
  type ExerciseState,
  exerciseStateOf,
  type LessonState,
} from "./lesson-state.js";
import { type Mark, markAnswer, type Marker } from "./mark-answer.js";

/** An exercise as the page may show it: the question, and after the answer what came of it. */
export interface ExerciseView {
  readonly kind: ExerciseBlock["kind"];
  readonly id: string;
  readonly ask: string;
  /** The reed it begins with; after a locked prediction still the one before the change. */
  readonly from: Values;
  readonly answer?: Answer;
  readonly locked: boolean;
  /** The hints that were asked for. */
  readonly hints: readonly Hint[];
  /** What is open to see from the beginning: options, actions, target, locks; nothing of a prediction. */
  readonly given: Readonly<Record<string, unknown>>;
  /** Only once locked. */
  readonly mark?: Mark;
  /** The author's words, only once locked. */
  readonly why?: string;
}

/** A block as the page may show it. */
export type BlockView = Exclude<Block, ExerciseBlock> | ExerciseView;

/** The step that is open, as far as it may be seen. */
export interface StepView {
  readonly title: string;
  readonly step: number;
  readonly blocks: readonly BlockView[];
  /** Whether compasses, pulls and every word that tells a direction must be hidden. */
  readonly directionsHidden: boolean;
  /** Whether something below waits for an answer. */
  readonly more: boolean;
}

/**
 * The open step as far as it may be seen: up to the first exercise that is not locked. Of an open prediction neither
 * the new values nor anything computed from them is in the view.
 *
 * Shape   lesson, state, map and actions → plain data.
 */
export function stepView(
  lesson: Lesson,
  state: LessonState,
  marking: Omit<Marker, "lesson">,
): StepView {
  const marker: Marker = { ...marking, lesson };
  const { title = "", blocks = [] } = lesson.steps[state.step] ?? {};
  const isOpen = (block: Block, index: number): boolean =>
    isExercise(block) && !exerciseStateOf(state, exerciseId(state.step, index)).locked;
  const open = blocks.findIndex(isOpen);
  const seen = open < 0 ? blocks : blocks.slice(0, open + 1);
  return {
    title,
    step: state.step,
    blocks: seen.map((block, index) => {
      if (!isExercise(block)) return block;
      const id = exerciseId(state.step, index);
      return exerciseView(block, id, exerciseStateOf(state, id), marker);
    }),
    directionsHidden: blocks[open]?.kind === "predict",
    more: seen.length < blocks.length,
  };
}

function exerciseView(
  block: ExerciseBlock,
  id: string,
  { answer, locked, hints }: ExerciseState,
  marker: Marker,
): ExerciseView {
  const whole = exerciseReed(marker.lesson, block, marker.map.model);
  return {
    kind: block.kind,
    id,
    ask: block.ask,
    from: block.kind === "stand-in" ? missingReed(whole, block) : whole,
    ...(answer ? { answer } : {}),
    locked,
    hints: hintsFor(block, marker).slice(0, hints),
    given: givenOf(block, whole),
    ...(locked && answer ? { mark: markAnswer(block, answer, marker) } : {}),
    ...(locked && block.why !== undefined ? { why: block.why } : {}),
  };
}

function givenOf(block: ExerciseBlock, whole: Values): Readonly<Record<string, unknown>> {
  switch (block.kind) {
    case "choose":
      return { options: block.options.map(({ text }) => text) };
    case "order":
      return { actions: block.actions };
    case "aim": {
      const { target, part, locked, finished, within, mostFeatures } = block;
      return { target, part, locked, finished, within, mostFeatures };
    }
    case "stand-in": {
      const { missing, locked, finished, within } = block;
      return { missing, locked, finished, within, whole };
    }
    case "read":
      return { at: block.at };
    case "predict":
      return {};
  }
}

/** A reed that a block shows, with every value. */
export function shownReed(lesson: Lesson, block: LessonReed, { map }: Pick<Marker, "map">): Values {
  return exerciseReed(lesson, block, map.model);
}
