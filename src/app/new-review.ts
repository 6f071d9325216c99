import type { ReedModel } from "../engine/model.js";
import { lessonMap } from "../lesson/exercise-reed.js";
import { keptRun } from "../lesson/kept-run.js";
import { lessonState } from "../lesson/lesson-state.js";
import type { Progress, Review } from "../lesson/progress.js";
import { isReviewDone, pickReview, ripeLessons } from "../lesson/review.js";
import { loadLesson } from "./shipped-lessons.js";

/**
 * The review that is open, or a new one of the lessons that are old enough; undefined where too few are.
 *
 * Throws  what loading a lesson throws.
 */
export async function newReview(
  progress: Progress,
  model: ReedModel,
  today: number,
): Promise<Review | undefined> {
  const { review, runs } = progress;
  if (review && !isReviewDone(review)) return review;
  const found = await Promise.all(
    ripeLessons(progress, today).map(async (id) => ({ id, lesson: await loadLesson(id) })),
  );
  const worked = found.flatMap(({ id, lesson }) =>
    lesson ? [{ id, lesson, run: keptRun(lesson, runs[id]), map: lessonMap(lesson, model) }] : [],
  );
  const items = pickReview(worked, today);
  if (items.length === 0) return review;
  return { day: today, items, runs: items.map(() => lessonState({ steps: [] })) };
}
