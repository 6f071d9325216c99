import type { ExerciseState, LessonState } from "./lesson-state.js";
import type { Progress } from "./progress.js";

/**
 * Two progresses as one: of every exercise the state with more tries, so that nothing that was locked is open again;
 * where they are alike, mine. Of two reviews the later.
 *
 * @example mergedProgress(mine, mine) → the same as mine
 */
export function mergedProgress(mine: Progress, theirs: Progress): Progress {
  const ids = new Set([...Object.keys(mine.runs), ...Object.keys(theirs.runs)]);
  const runs = [...ids].map((id) => [id, mergedRun(mine.runs[id], theirs.runs[id])] as const);
  const review = (theirs.review?.day ?? 0) > (mine.review?.day ?? 0) ? theirs.review : mine.review;
  return { runs: Object.fromEntries(runs), ...(review ? { review } : {}) };
}

function mergedRun(mine: LessonState | undefined, theirs: LessonState | undefined): LessonState {
  if (!mine || !theirs) return (mine ?? theirs)!;
  const ids = new Set([...Object.keys(mine.exercises), ...Object.keys(theirs.exercises)]);
  const exercises = [...ids].map(
    (id) => [id, furtherOf(mine.exercises[id], theirs.exercises[id])] as const,
  );
  const day = Math.max(mine.day ?? 0, theirs.day ?? 0);
  return {
    step: mine.step,
    exercises: Object.fromEntries(exercises),
    ...(day > 0 ? { day } : {}),
  };
}

function furtherOf(
  mine: ExerciseState | undefined,
  theirs: ExerciseState | undefined,
): ExerciseState {
  if (!mine || !theirs) return (mine ?? theirs)!;
  return theirs.tries > mine.tries ? theirs : mine;
}
