import type { ExerciseState, LessonState } from "./lesson-state.js";
import type { Progress, Review } from "./progress.js";

/**
 * Two progresses as one: of every exercise the state with more tries, so that nothing that was locked is open again;
 * where they are alike, mine. Of two reviews the later, of one and the same every answer. What stems from before an
 * erasure is gone.
 *
 * @example mergedProgress(mine, mine) → the same as mine
 */
export function mergedProgress(mine: Progress, theirs: Progress): Progress {
  const [myBirth, theirBirth] = [mine.born ?? 0, theirs.born ?? 0];
  if (myBirth !== theirBirth) return myBirth > theirBirth ? mine : theirs;
  const runs = merged(mine.runs, theirs.runs, mergedRun);
  const review = mergedReview(mine.review, theirs.review);
  return { runs, ...(review ? { review } : {}), ...(myBirth > 0 ? { born: myBirth } : {}) };
}

/**
 * Progress with what a saved file holds. A file is opened on purpose, so it is not judged by the erasure it comes from
 * before: everything in it counts as begun after that.
 *
 * @example withSaved({ runs: {}, born: 5 }, { runs: { "01-parts": run } }).runs → { "01-parts": run }
 */
export function withSaved(mine: Progress, saved: Progress): Progress {
  const { born: _born, ...rest } = saved;
  return mergedProgress(mine, mine.born === undefined ? rest : { ...rest, born: mine.born });
}

/** Names in either; names may be anything that a file holds, so only a record's own ones count. */
function merged<T>(
  mine: Readonly<Record<string, T>>,
  theirs: Readonly<Record<string, T>>,
  both: (mine: T, theirs: T) => T,
): Readonly<Record<string, T>> {
  const all = new Map(Object.entries(mine));
  for (const [name, other] of Object.entries(theirs)) {
    const own = all.get(name);
    all.set(name, own === undefined ? other : both(own, other));
  }
  return Object.fromEntries(all);
}

function mergedRun(mine: LessonState, theirs: LessonState): LessonState {
  const day = Math.max(mine.day ?? 0, theirs.day ?? 0);
  return {
    step: mine.step,
    exercises: merged(mine.exercises, theirs.exercises, furtherOf),
    ...(day > 0 ? { day } : {}),
  };
}

function mergedReview(mine: Review | undefined, theirs: Review | undefined): Review | undefined {
  if (!mine || !theirs) return mine ?? theirs;
  if (mine.day !== theirs.day) return theirs.day > mine.day ? theirs : mine;
  if (JSON.stringify(mine.items) !== JSON.stringify(theirs.items)) return mine;
  return { ...mine, runs: mine.runs.map((run, index) => mergedRun(run, theirs.runs[index]!)) };
}

function furtherOf(mine: ExerciseState, theirs: ExerciseState): ExerciseState {
  return theirs.tries > mine.tries ? theirs : mine;
}
