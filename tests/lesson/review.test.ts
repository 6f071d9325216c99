import { readFileSync, readdirSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parseLesson } from "../../src/lib/lesson.js";
import { lessonMap } from "../../src/lesson/exercise-reed.js";
import { isExercise } from "../../src/lesson/lesson.js";
import type { LessonState } from "../../src/lesson/lesson-state.js";
import type { Progress } from "../../src/lesson/progress.js";
import {
  isReviewDone,
  isReviewDue,
  pickReview,
  reviewGap,
  reviewLesson,
  ripeLessons,
  type WorkedLesson,
} from "../../src/lesson/review.js";
import { stepView } from "../../src/lesson/lesson-view.js";
import { lessonState } from "../../src/lesson/lesson-state.js";
import { bassoonActions, bassoonModel } from "../../src/reed/bassoon.js";

const folder = new URL("../../lessons/en/", import.meta.url);
const course = readdirSync(folder)
  .toSorted()
  .map((file) => {
    const { lesson } = parseLesson(readFileSync(new URL(file, folder), "utf8"), {
      file,
      model: bassoonModel,
    });
    return {
      id: file.replace(/\.md$/, ""),
      lesson: lesson!,
      map: lessonMap(lesson!, bassoonModel),
    };
  });

const locked = { locked: true, hints: 0, tries: 1 };

/** Everything of a lesson answered. */
function wholeRun({ lesson }: (typeof course)[number], day = 100): LessonState {
  const ids = lesson.steps.flatMap(({ blocks }, step) =>
    blocks.flatMap((block, index) => (isExercise(block) ? [`${step}.${index}`] : [])),
  );
  return { step: 0, day, exercises: Object.fromEntries(ids.map((id) => [id, locked])) };
}
const worked = (some: typeof course): WorkedLesson[] =>
  some.map((one) => ({ ...one, run: wholeRun(one) }));

const progressOf = (days: readonly number[]): Progress => ({
  runs: Object.fromEntries(days.map((day, k) => [course[k]!.id, wholeRun(course[k]!, day)])),
});

describe("a review is due", () => {
  test("a fixed gap after the answers of three lessons, not before", () => {
    const progress = progressOf([100, 100, 101]);
    expect(isReviewDue(progress, 101 + reviewGap - 1)).toBe(false);
    expect(isReviewDue(progress, 101 + reviewGap)).toBe(true);
    expect(isReviewDue(progressOf([100, 100]), 200)).toBe(false);
  });

  test("not again before the gap has passed since the last one", () => {
    const review = { day: 110, items: [], runs: [] };
    const progress = { ...progressOf([100, 100, 100]), review };
    expect(isReviewDue(progress, 110 + reviewGap - 1)).toBe(false);
    expect(isReviewDue(progress, 110 + reviewGap)).toBe(true);
  });

  test("a lesson file has nothing to ask again: its text may be gone", () => {
    const { runs } = progressOf([100, 100]);
    const progress = { runs: { ...runs, file: wholeRun(course[5]!, 100) } };
    expect(isReviewDue(progress, 200)).toBe(false);
  });

  test("a lesson that was only looked at has nothing to ask again", () => {
    const progress = { runs: { a: { step: 3, exercises: {}, day: 1 } } };
    expect(ripeLessons(progress, 100)).toEqual([]);
  });
});

describe("a review", () => {
  const some = fc
    .tuple(fc.shuffledSubarray(course, { minLength: 1 }), fc.integer({ min: 1, max: 99_999 }))
    .map(([lessons, seed]) => ({ lessons, seed }));

  test("asks three things from three lessons that were answered there; same seed, same review", () => {
    fc.assert(
      fc.property(some, ({ lessons, seed }) => {
        const items = pickReview(worked(lessons), seed);
        expect(items).toHaveLength(Math.min(3, lessons.length));
        expect(new Set(items.map(({ lesson }) => lesson)).size).toBe(items.length);
        expect(pickReview(worked(lessons.toReversed()), seed)).toEqual(items);
      }),
      { seed: 8, numRuns: 40 },
    );
  });

  test("never twice the same kind in a row where another lesson has another kind", () => {
    const kindOf = (lesson: string, exercise: string): string => {
      const [step, block] = exercise.split(".").map(Number);
      return course.find(({ id }) => id === lesson)!.lesson.steps[step!]!.blocks[block!]!.kind;
    };
    const firsts = (lesson: string): string[] =>
      course
        .find(({ id }) => id === lesson)!
        .lesson.steps.flatMap(({ blocks }) => blocks.find(isExercise)?.kind ?? []);
    fc.assert(
      fc.property(some, ({ lessons, seed }) => {
        const items = pickReview(worked(lessons), seed);
        const needless = items.slice(1).filter(({ lesson, exercise }, k) => {
          const before = items.slice(0, k + 1);
          const kind = kindOf(before[k]!.lesson, before[k]!.exercise);
          const others = lessons
            .filter(({ id }) => !before.some((one) => one.lesson === id))
            .flatMap(({ id }) => firsts(id));
          return others.some((other) => other !== kind) && kindOf(lesson, exercise) === kind;
        });
        expect(needless).toEqual([]);
      }),
      { seed: 9, numRuns: 60 },
    );
  });

  test("seeds make different reviews", () => {
    const all = Array.from({ length: 20 }, (_, seed) =>
      JSON.stringify(pickReview(worked(course), seed)),
    );
    expect(new Set(all).size).toBeGreaterThan(5);
  });

  test("an exercise stands alone: what leads up to it, the question, nothing that was told afterwards", () => {
    for (const one of course)
      for (const item of pickReview(worked([one]), 3)) {
        const lesson = reviewLesson(one.lesson, item)!;
        const { blocks } = lesson.steps[0]!;
        expect(lesson.steps).toHaveLength(1);
        expect(blocks.filter(isExercise)).toEqual([blocks.at(-1)]);
        expect(blocks.some(({ kind }) => kind === "claim")).toBe(false);
        const view = stepView(lesson, lessonState(lesson), {
          map: one.map,
          actions: bassoonActions,
        });
        expect(view.more).toBe(false);
        expect("mark" in view.blocks.at(-1)!).toBe(false);
      }
  });

  test("an exercise that has left its lesson is none", () => {
    expect(reviewLesson(course[0]!.lesson, { lesson: "a", exercise: "77.0" })).toBe(undefined);
    expect(reviewLesson(course[0]!.lesson, { lesson: "a", exercise: "nothing" })).toBe(undefined);
  });

  test("is done when all of it is answered", () => {
    const items = pickReview(worked(course), 1);
    const done = { step: 0, exercises: { "0.1": locked } };
    const open = { step: 0, exercises: { "0.1": { ...locked, locked: false } } };
    expect(isReviewDone({ day: 1, items, runs: [done, done, open] })).toBe(false);
    expect(isReviewDone({ day: 1, items, runs: [done, done, done] })).toBe(true);
  });
});
