import type { LessonState } from "../lesson/lesson-state.js";
import { reviewLessonId, type BenchState } from "./bench-state.js";
import type { Progress } from "../lesson/progress.js";
import type { OpenLesson } from "../reed/bench.js";
import type { Presenting } from "./presenting.js";
import { shippedLessons } from "./shipped-lessons.js";

/**
 * Whether somebody is in the middle of a lesson or a review: something of it is answered, and not everything; or a
 * lesson is being presented.
 *
 * @example isLessonRunning(startState(bassoonModel)) → false
 */
export function isLessonRunning({ present, progress, presenting }: BenchState): boolean {
  return isRunning(present.bench.lesson, progress, presenting);
}

/** The same of what is looked at there. */
export function isRunning(
  lesson: OpenLesson | undefined,
  progress: Progress | undefined,
  presenting: Presenting | undefined,
): boolean {
  if (presenting) return true;
  if (!lesson) return false;
  if (lesson.id === reviewLessonId) {
    const { runs = [], items = [] } = progress?.review ?? {};
    return isBetween(runs, items.length);
  }
  const run = progress?.runs[lesson.id];
  const head = shippedLessons.find(({ id }) => id === lesson.id);
  // How many exercises a lesson from a file has is not known here: it is over when it is left.
  return isBetween(run ? [run] : [], head?.exercises ?? Infinity);
}

function isBetween(runs: readonly LessonState[], all: number): boolean {
  const exercises = runs.flatMap((run) => Object.values(run.exercises));
  const locked = exercises.filter((one) => one.locked).length;
  return exercises.some(({ answer }) => answer !== undefined) && locked < all;
}
