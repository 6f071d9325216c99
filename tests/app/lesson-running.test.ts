import { expect, test } from "vitest";
import { reviewLessonId, startState, type BenchState } from "../../src/app/bench-state.js";
import { isLessonRunning } from "../../src/app/lesson-running.js";
import { shippedLessons } from "../../src/app/shipped-lessons.js";
import type { Answer } from "../../src/lesson/answer.js";
import type { ExerciseState, LessonState } from "../../src/lesson/lesson-state.js";
import { bassoonModel } from "../../src/reed/bassoon.js";

const fresh = startState(bassoonModel);
const answer: Answer = { kind: "choose", option: 0 };
const open: ExerciseState = { locked: false, hints: 1, tries: 0 };
const begun: ExerciseState = { ...open, answer };
const done: ExerciseState = { ...begun, locked: true, tries: 1 };

/** A run with so many exercises in a row, each as it is given. */
const runOf = (...all: ExerciseState[]): LessonState => ({
  step: 0,
  exercises: Object.fromEntries(all.map((one, index) => [`${index}.0`, one])),
});

const inLesson = (id: string, run: LessonState): BenchState => ({
  ...fresh,
  present: { ...fresh.present, bench: { ...fresh.present.bench, lesson: { id, step: 0 } } },
  progress: { runs: { [id]: run } },
});

const { id, exercises: all } = shippedLessons[5]!;

test("a lesson runs from its first answer to its last", () => {
  expect(isLessonRunning(fresh)).toBe(false);
  expect(isLessonRunning(inLesson(id, runOf()))).toBe(false);
  expect(isLessonRunning(inLesson(id, runOf(open)))).toBe(false);
  expect(isLessonRunning(inLesson(id, runOf(begun)))).toBe(true);
  const most = Array.from({ length: all - 1 }, () => done);
  expect(isLessonRunning(inLesson(id, runOf(...most, begun)))).toBe(true);
  expect(isLessonRunning(inLesson(id, runOf(...most, done)))).toBe(false);
});

test("one that was left does not run, whatever was answered", () => {
  expect(isLessonRunning({ ...fresh, progress: { runs: { [id]: runOf(begun) } } })).toBe(false);
});

test("a lesson that is presented runs, though nobody answers at the presenter's window", () => {
  const presenting = { id: "1", blank: false, points: false };
  expect(isLessonRunning({ ...inLesson(id, runOf()), presenting })).toBe(true);
});

test("a lesson from a file runs until it is left, a review until all its questions are answered", () => {
  expect(isLessonRunning(inLesson("file", runOf(done, done)))).toBe(true);
  const items = [0, 1, 2].map((index) => ({ lesson: id, exercise: `${index}.0` }));
  const review = (...runs: LessonState[]): BenchState => ({
    ...inLesson(reviewLessonId, runOf()),
    progress: { runs: {}, review: { day: 1, items, runs } },
  });
  expect(isLessonRunning(review(runOf(), runOf(), runOf()))).toBe(false);
  expect(isLessonRunning(review(runOf(done), runOf(begun), runOf()))).toBe(true);
  expect(isLessonRunning(review(runOf(done), runOf(done), runOf(done)))).toBe(false);
});
