import { expect, test } from "vitest";
import { lessonMap } from "../../src/lesson/exercise-reed.js";
import { lessonState, reduceLesson } from "../../src/lesson/lesson-state.js";
import { bassoonActions, bassoonModel } from "../../src/reed/bassoon.js";
import {
  handedIn,
  newAttempt,
  standingOf,
  withRun,
  type Attempt,
} from "../../src/scorm/attempt.js";
import { answeredRun, idsOf, lessonFrom, madeAnswers, madeLesson } from "./made-lesson.js";

const marker = {
  lesson: madeLesson,
  map: lessonMap(madeLesson, bassoonModel),
  actions: bassoonActions,
};

function answered(attempt: Attempt, exercise: string, answer = madeAnswers[exercise]!): Attempt {
  const run = answeredRun(attempt.run, exercise, answer);
  const { mark } = handedIn(run, exercise, marker)!;
  return withRun(attempt, run, { exercise, right: mark.right });
}

test("the first answer counts, whatever is tried later", () => {
  const wrong = answered(newAttempt(madeLesson), "0.1", { kind: "choose", option: 0 });
  expect(wrong.first).toEqual({ "0.1": false });
  const again = reduceLesson(wrong.run, { type: "again", exercise: "0.1" }, madeLesson);
  const right = answered(withRun(wrong, again), "0.1", { kind: "choose", option: 1 });
  expect(handedIn(right.run, "0.1", marker)!.mark.right).toBe(true);
  expect(right.first).toEqual({ "0.1": false });
  expect(standingOf(madeLesson, right)).toEqual({
    exercises: 6,
    answered: 1,
    rightFirst: 0,
    complete: false,
  });
});

test("there is a score once every exercise is answered: the share that was right at first", () => {
  const all = idsOf(madeLesson).reduce(
    (attempt, id) => answered(attempt, id),
    newAttempt(madeLesson),
  );
  const { answered: count, rightFirst, complete, score } = standingOf(madeLesson, all);
  expect([count, complete]).toEqual([6, true]);
  expect(all.first).toMatchObject({ "0.1": true, "0.2": false, "1.1": true, "1.3": false });
  expect(score).toBe(Math.round((100 * rightFirst) / 6));
  const again = reduceLesson(all.run, { type: "again", exercise: "1.1" }, madeLesson);
  expect(standingOf(madeLesson, withRun(all, again)).score).toBe(score);
});

test("a lesson without exercises is complete at its last step and has no score", () => {
  const lesson = lessonFrom(
    "---\ntitle: Look\nminutes: 1\n---\n## One\nWords.\n:::notes\nNone.\n:::\n## Two\nWords.",
  );
  const begun = newAttempt(lesson);
  expect(standingOf(lesson, begun)).toMatchObject({ exercises: 0, complete: false });
  expect(standingOf(lesson, withRun(begun, lessonState(lesson, 1)))).toEqual({
    exercises: 0,
    answered: 0,
    rightFirst: 0,
    complete: true,
  });
});

test("nothing is handed in where there is no answer, no exercise, or it is not locked", () => {
  const { run } = newAttempt(madeLesson);
  expect(handedIn(run, "0.0", marker)).toBeUndefined();
  expect(handedIn(run, "9.9", marker)).toBeUndefined();
  const draft = reduceLesson(
    run,
    { type: "answer", exercise: "0.1", answer: { kind: "choose", option: 0 } },
    madeLesson,
  );
  expect(handedIn(draft, "0.1", marker)).toBeUndefined();
});
