import { type Answer, isAnswerTo } from "./answer.js";
import { type ExerciseBlock, isExercise, type Lesson } from "./lesson.js";

/** How far a student is with one exercise. What came of it is computed from the answer, never kept. */
export interface ExerciseState {
  /** What the student has put down; absent before the first touch. */
  readonly answer?: Answer;
  /** Handed in. A prediction is then locked for good. */
  readonly locked: boolean;
  /** Hints that were asked for, 0 to 3. */
  readonly hints: number;
  /** How often an answer was handed in. */
  readonly tries: number;
}

/** Where a student is in a lesson: plain data without any outcome. */
export interface LessonState {
  readonly step: number;
  /** By step and block: "2.1". */
  readonly exercises: Readonly<Record<string, ExerciseState>>;
  /** The day on which an answer was last handed in, counted from 1 January 1970; absent before the first. */
  readonly day?: number;
}

/** What a student does. */
export type LessonAction =
  | { readonly type: "step"; readonly step: number }
  | { readonly type: "answer"; readonly exercise: string; readonly answer: Answer }
  | { readonly type: "lock"; readonly exercise: string }
  | { readonly type: "hint"; readonly exercise: string }
  | { readonly type: "again"; readonly exercise: string };

const untouched: ExerciseState = { locked: false, hints: 0, tries: 0 };
const mostHints = 3;

/**
 * A lesson at its beginning, or at a step that a link names.
 *
 * @example lessonState(lesson).step → 0
 */
export function lessonState(lesson: Pick<Lesson, "steps">, step = 0): LessonState {
  return { step: stepWithin(lesson, step), exercises: {} };
}

/** The name of a block within its lesson. */
export function exerciseId(step: number, block: number): string {
  return `${step}.${block}`;
}

/** The exercise of a name, or undefined where there is none. */
export function exerciseAt(lesson: Pick<Lesson, "steps">, id: string): ExerciseBlock | undefined {
  const [, step, block] = /^(\d+)\.(\d+)$/.exec(id) ?? [];
  const found = lesson.steps[Number(step)]?.blocks[Number(block)];
  return found && isExercise(found) ? found : undefined;
}

/** How far a student is with an exercise. */
export function exerciseStateOf({ exercises }: LessonState, id: string): ExerciseState {
  return Object.hasOwn(exercises, id) ? exercises[id]! : untouched;
}

/**
 * The state after what a student did. A locked answer is not changed, a prediction is never taken back, and what
 * makes no sense (another kind of answer, an exercise that is none, a lock without an answer) changes nothing.
 *
 * Shape   state, action, lesson → state; the same object when nothing changes.
 */
export function reduceLesson(
  state: LessonState,
  action: LessonAction,
  lesson: Pick<Lesson, "steps">,
): LessonState {
  if (action.type === "step") {
    const step = stepWithin(lesson, action.step);
    return step === state.step ? state : { ...state, step };
  }
  const block = exerciseAt(lesson, action.exercise);
  if (!block) return state;
  const before = exerciseStateOf(state, action.exercise);
  const after = reduceExercise(before, action, block);
  if (after === before) return state;
  return { ...state, exercises: { ...state.exercises, [action.exercise]: after } };
}

function reduceExercise(
  state: ExerciseState,
  action: Exclude<LessonAction, { readonly type: "step" }>,
  block: ExerciseBlock,
): ExerciseState {
  switch (action.type) {
    case "answer":
      return state.locked || !isAnswerTo(block, action.answer)
        ? state
        : { ...state, answer: action.answer };
    case "lock":
      return state.locked || !isWhole(state.answer)
        ? state
        : { ...state, locked: true, tries: state.tries + 1 };
    case "hint":
      return state.locked || state.hints === mostHints
        ? state
        : { ...state, hints: state.hints + 1 };
    case "again":
      return state.locked && block.kind !== "predict" ? { ...state, locked: false } : state;
  }
}

/** Whether an answer may be handed in: a prediction only with how sure its student is. */
export function isWhole(answer: Answer | undefined): answer is Answer {
  return answer !== undefined && (answer.kind !== "predict" || answer.sure !== undefined);
}

function stepWithin({ steps }: Pick<Lesson, "steps">, step: number): number {
  const whole = Number.isFinite(step) ? Math.floor(step) : 0;
  return Math.min(Math.max(0, whole), Math.max(0, steps.length - 1));
}
