import type { Blend } from "../engine/blend.js";
import type { BlendMap } from "../engine/compile.js";
import type { Purpose } from "../engine/model.js";
import { place } from "../engine/place.js";
import { exerciseReed, exerciseTarget, readingPlace } from "./exercise-reed.js";
import {
  type Block,
  type ExerciseBlock,
  isExercise,
  type Lesson,
  type ShowBlock,
  type ProseBlock,
} from "./lesson.js";
import { exerciseId, exerciseStateOf, type LessonState } from "./lesson-state.js";
import { drawn } from "./mixed-order.js";
import { keepable, type Progress, type Review, type ReviewItem } from "./progress.js";

/** A review is due this many days after the answers it asks for again, and after the last review. A fixed gap; judgement. */
export const reviewGap = 3;

/** Exercises in a review, each from another lesson. */
export const reviewLength = 3;

/** A lesson with how far a student is in it. */
export interface WorkedLesson {
  readonly id: string;
  readonly lesson: Lesson;
  readonly run: LessonState;
  readonly map: BlendMap;
}

/** What is compared when three exercises are mixed. */
interface Candidate extends ReviewItem {
  readonly kind: ExerciseBlock["kind"];
  /** The purpose that its answer is about; absent where it is about none in particular. */
  readonly purpose: Purpose | undefined;
  readonly draw: number;
}

/** The lessons whose answers are old enough to be asked again. */
export function ripeLessons({ runs }: Progress, today: number): readonly string[] {
  return Object.entries(keepable({ runs }).runs)
    .filter(([, { day, exercises }]) => {
      const isAnswered = Object.values(exercises).some(({ locked }) => locked);
      return isAnswered && day !== undefined && today - day >= reviewGap;
    })
    .map(([id]) => id);
}

/**
 * Whether a review is due: enough lessons with answers that are old enough, and no review begun within the gap.
 *
 * Shape   progress, the day as counted from 1 January 1970 → whether.
 *
 * @example isReviewDue({ runs: {} }, 20783) → false
 */
export function isReviewDue(progress: Progress, today: number): boolean {
  const { review } = progress;
  if (review && today - review.day < reviewGap) return false;
  return ripeLessons(progress, today).length >= reviewLength;
}

/** Whether every exercise of a review has been answered. */
export function isReviewDone({ items, runs }: Review): boolean {
  return items.every((_, index) =>
    Object.values(runs[index]?.exercises ?? {}).some(({ locked }) => locked),
  );
}

/**
 * A new review: exercises that were answered, each from another lesson, mixed so that neighbours are of different kinds
 * and about different purposes where the lessons allow it. Same seed, same review.
 *
 * Shape   lessons with runs, a whole number → up to three items; fewer where there are fewer lessons.
 */
export function pickReview(worked: readonly WorkedLesson[], seed: number): readonly ReviewItem[] {
  const picked: Candidate[] = [];
  let left = worked.flatMap((one) => candidatesOf(one, seed));
  while (picked.length < reviewLength && left.length > 0) {
    const next = left.reduce((best, one) => (rank(one, picked) < rank(best, picked) ? one : best));
    picked.push(next);
    left = left.filter(({ lesson }) => lesson !== next.lesson);
  }
  return picked.map(({ lesson, exercise }) => ({ lesson, exercise }));
}

/** Lower is better: another kind than the last, another than all so far, another purpose, then the draw. */
function rank({ kind, purpose, draw }: Candidate, picked: readonly Candidate[]): number {
  const last = picked.at(-1);
  const again = (same: boolean, weight: number): number => (same ? weight : 0);
  return (
    again(last?.kind === kind, 64) +
    again(
      picked.some((one) => one.kind === kind),
      16,
    ) +
    again(purpose !== undefined && picked.some((one) => one.purpose === purpose), 8) +
    draw
  );
}

function candidatesOf({ id, lesson, run, map }: WorkedLesson, seed: number): Candidate[] {
  return lesson.steps.flatMap(({ blocks }, step) => {
    // A later exercise of a step leans on what was told of the one before it.
    const index = blocks.findIndex(isExercise);
    const block = blocks[index];
    if (!block || !isExercise(block)) return [];
    const exercise = exerciseId(step, index);
    if (!exerciseStateOf(run, exercise).locked) return [];
    return [
      {
        lesson: id,
        exercise,
        kind: block.kind,
        purpose: purposeOf(block, lesson, map),
        draw: drawn(`${seed}/${id}/${exercise}`),
      },
    ];
  });
}

/** Toward which corner an answer leads. */
function purposeOf(block: ExerciseBlock, lesson: Lesson, map: BlendMap): Purpose | undefined {
  const from = exerciseReed(lesson, block, map.model);
  switch (block.kind) {
    case "predict": {
      const [before, after] = [from, { ...from, ...block.change }].map((reed) => place(map, reed));
      return greatest(after!.raw.map((share, k) => share - before!.raw[k]!) as unknown as Blend);
    }
    case "read":
      return greatest(readingPlace(block, from, map));
    case "aim":
    case "stand-in":
      return greatest(exerciseTarget(block, from, map));
    default:
      return undefined;
  }
}

function greatest(shares: Blend): Purpose {
  const order: readonly [Purpose, Purpose, Purpose] = ["high", "low", "loud"];
  return order[shares.indexOf(Math.max(...shares))]!;
}

/**
 * An exercise as a lesson of its own: what stood before it in its step, and the question. Undefined where the lesson
 * has no such exercise any more.
 */
export function reviewLesson(lesson: Lesson, { exercise }: ReviewItem): Lesson | undefined {
  const [step, index] = exercise.split(".").map(Number);
  const found = lesson.steps[step!];
  const block = found?.blocks[index!];
  if (!found || !block || !isExercise(block)) return undefined;
  const before = found.blocks.slice(0, index).filter(isLeadUp);
  const { title, line } = found;
  const { goal: _goal, ...kept } = lesson;
  const only = { title, line, blocks: [...before, block], notes: [], sound: true };
  return { ...kept, steps: [only] };
}

function isLeadUp(block: Block): block is ProseBlock | ShowBlock {
  return block.kind === "prose" || block.kind === "show";
}
