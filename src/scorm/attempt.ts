import { type ExerciseBlock, isExercise, type Lesson } from "../lesson/lesson.js";
import {
  exerciseAt,
  exerciseId,
  exerciseStateOf,
  lessonState,
  type LessonState,
} from "../lesson/lesson-state.js";
import { type Mark, markAnswer, type Marker } from "../lesson/mark-answer.js";

/** What a learning platform is told about: a run, and how the first answer to each exercise was. */
export interface Attempt {
  readonly run: LessonState;
  /** Whether the first answer that was handed in was right, by exercise. It stays, whatever is tried later. */
  readonly first: Readonly<Record<string, boolean>>;
}

/** How far an attempt is. */
export interface Standing {
  readonly exercises: number;
  readonly answered: number;
  readonly rightFirst: number;
  /** Every exercise has been answered; of a lesson without exercises: its last step was shown. */
  readonly complete: boolean;
  /** Share of the exercises that were right at the first try, whole per cents; only once complete. */
  readonly score?: number;
}

/** An attempt at its beginning. */
export function newAttempt(lesson: Lesson): Attempt {
  return { run: lessonState(lesson), first: {} };
}

/** The ids of a lesson's exercises in their order. */
export function exerciseIds({ steps }: Pick<Lesson, "steps">): string[] {
  return steps.flatMap(({ blocks }, step) =>
    blocks.flatMap((block, index) => (isExercise(block) ? [exerciseId(step, index)] : [])),
  );
}

/** What has been handed in to an exercise, and its mark; undefined where nothing has. */
export function handedIn(
  run: LessonState,
  exercise: string,
  marker: Marker & { readonly lesson: Lesson },
): { readonly block: ExerciseBlock; readonly mark: Mark } | undefined {
  const block = exerciseAt(marker.lesson, exercise);
  const { answer, locked } = exerciseStateOf(run, exercise);
  if (!block || !answer || !locked) return undefined;
  return { block, mark: markAnswer(block, answer, marker) };
}

/** The attempt with another run; the first mark of an exercise stays. */
export function withRun(
  { first }: Attempt,
  run: LessonState,
  marked?: { readonly exercise: string; readonly right: boolean },
): Attempt {
  if (!marked || Object.hasOwn(first, marked.exercise)) return { run, first };
  return { run, first: { ...first, [marked.exercise]: marked.right } };
}

/**
 * How far an attempt is, and its score.
 *
 * @example standingOf(lesson, newAttempt(lesson)).answered → 0
 */
export function standingOf(lesson: Lesson, { run, first }: Attempt): Standing {
  const ids = exerciseIds(lesson);
  const answered = ids.filter((id) => Object.hasOwn(first, id));
  const rightFirst = answered.filter((id) => first[id]).length;
  const exercises = ids.length;
  const atEnd = run.step === lesson.steps.length - 1;
  const complete = exercises === 0 ? atEnd : answered.length === exercises;
  return {
    exercises,
    answered: answered.length,
    rightFirst,
    complete,
    ...(complete && exercises > 0 ? { score: Math.round((100 * rightFirst) / exercises) } : {}),
  };
}
