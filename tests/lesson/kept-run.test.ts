import fc from "fast-check";
import { expect, test } from "vitest";
import { parseLesson } from "../../src/lib/lesson.js";
import { keptRun } from "../../src/lesson/kept-run.js";
import { lessonState, reduceLesson } from "../../src/lesson/lesson-state.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { fence, lessonOf } from "./lesson-texts.js";

const lesson = parseLesson(
  lessonOf(fence("predict", "ask: Where?", "change: { bladeLength: 26.2 }")),
  { file: "a.md", model: bassoonModel },
).lesson!;
const guess = [0.5, 0.3, 0.2] as const;
const locked = reduceLesson(
  reduceLesson(
    lessonState(lesson),
    { type: "answer", exercise: "0.0", answer: { kind: "predict", guess, sure: 2 } },
    lesson,
  ),
  { type: "lock", exercise: "0.0" },
  lesson,
);

test("a locked guess comes back locked", () => {
  expect(locked.exercises["0.0"]?.locked).toBe(true);
  expect(keptRun(lesson, JSON.parse(JSON.stringify(locked)))).toEqual(locked);
});

test.each([
  [{ exercises: { "0.0": { locked: true } } }],
  [{ exercises: { "0.0": { locked: true, answer: { kind: "predict", guess } } } }],
  [{ exercises: { "0.0": { locked: true, answer: { kind: "predict", guess: [1, 2], sure: 1 } } } }],
  [{ exercises: { "0.0": { locked: true, answer: { kind: "choose", option: 0 } } } }],
])("a lock without a whole answer is none: %o", (kept) => {
  expect(keptRun(lesson, kept).exercises["0.0"]?.locked).toBe(false);
});

test("whatever was kept, it never throws and makes a state", () => {
  fc.assert(
    fc.property(fc.anything(), fc.anything(), (kept, answer) => {
      expect(keptRun(lesson, kept).step).toBe(0);
      const state = keptRun(lesson, { exercises: { "0.0": { locked: true, answer } } });
      expect(state.exercises["0.0"]?.locked ?? false).toBe(false);
    }),
    { seed: 5, numRuns: 300 },
  );
});
