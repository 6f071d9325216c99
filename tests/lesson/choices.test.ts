import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { choiceRemarks } from "../../src/lesson/choice-remarks.js";
import { feedbackOn } from "../../src/lesson/feedback.js";
import { lessonMap } from "../../src/lesson/exercise-reed.js";
import { keptRun } from "../../src/lesson/kept-run.js";
import { isExercise } from "../../src/lesson/lesson.js";
import { exerciseId, lessonState, reduceLesson } from "../../src/lesson/lesson-state.js";
import { stepView, type ExerciseView } from "../../src/lesson/lesson-view.js";
import { readProgress } from "../../src/lesson/progress-file.js";
import { mixedOrder } from "../../src/lesson/mixed-order.js";
import { bassoonActions, bassoonModel } from "../../src/reed/bassoon.js";
import { lessonEnglish } from "../../src/reed/lesson-catalogue.js";
import { unpackAttempt } from "../../src/scorm/unpack-attempt.js";
import { lessonFrom } from "../scorm/made-lesson.js";
import { fence, lessonOf } from "./lesson-texts.js";

const folder = new URL("../../lessons/en/", import.meta.url);
const course = readdirSync(folder)
  .toSorted()
  .map((file) => lessonFrom(readFileSync(new URL(file, folder), "utf8"), file));
const telling = {
  map: lessonMap({}, bassoonModel),
  actions: bassoonActions,
  text: lessonEnglish,
  unit: "mm" as const,
};

const choice = fence(
  "choose",
  "ask: Which?",
  "options:",
  "  - { text: One, why: A }",
  "  - { text: Two, why: B, right: true }",
  "  - { text: Three, why: C }",
  "  - { text: Four, why: D }",
  "shown: [3, 2, 4, 1]",
);
const lesson = lessonFrom(lessonOf(choice));
const id = "0.0";

function orderOf(run = lessonState(lesson), mixed = true): readonly number[] {
  const { blocks } = stepView(lesson, run, telling, { mixed });
  return (blocks[0] as ExerciseView).given.order!;
}
const answered = reduceLesson(
  reduceLesson(
    lessonState(lesson),
    { type: "answer", exercise: id, answer: { kind: "choose", option: 0 } },
    lesson,
  ),
  { type: "lock", exercise: id },
  lesson,
);

describe("options of a choice", () => {
  test("stand in one order as long as an attempt lasts, also after a reload and when it is handed in", () => {
    const first = orderOf();
    expect(first.toSorted((a, b) => a - b)).toEqual([0, 1, 2, 3]);
    expect(orderOf(answered)).toEqual(first);
    expect(orderOf(keptRun(lesson, JSON.parse(JSON.stringify(answered))))).toEqual(first);
  });

  test("are mixed anew for another attempt", () => {
    let run = answered;
    const orders = [orderOf()];
    for (let attempt = 0; attempt < 6; attempt += 1) {
      run = reduceLesson(run, { type: "again", exercise: id }, lesson);
      orders.push(orderOf(run));
      run = reduceLesson(run, { type: "lock", exercise: id }, lesson);
    }
    expect(new Set(orders.map(String)).size).toBeGreaterThan(3);
  });

  test("stand for a class as the file says", () => {
    expect(orderOf(lessonState(lesson), false)).toEqual([2, 1, 3, 0]);
  });

  test("come at every place about equally often", () => {
    const counts = [0, 0, 0];
    for (let seed = 0; seed < 3000; seed += 1)
      counts[mixedOrder(3, `lesson/${seed}`).indexOf(1)]! += 1;
    for (const count of counts) expect(Math.abs(count - 1000)).toBeLessThan(90);
  });
});

describe("an answer that was kept before options were mixed", () => {
  // As they were written then: options by their place in the file.
  const kept = {
    step: 0,
    exercises: {
      "0.2": { answer: { kind: "choose", option: 1 }, locked: true, hints: 0, tries: 1 },
    },
  };
  const purposes = course.find(({ file }) => file === "03-purposes.md")!;
  const long = "The long, wide and thin one";

  test("means the same option in a file of progress", () => {
    const file = JSON.stringify({
      format: "reedpoint progress",
      version: 1,
      runs: { "03-purposes": kept },
    });
    const { progress } = readProgress(file, "old.json");
    const run = keptRun(purposes, progress.runs["03-purposes"]);
    const view = stepView(purposes, run, telling, { mixed: true }).blocks.find(
      (block): block is ExerciseView => "id" in block,
    )!;
    expect(view.answer).toEqual({ kind: "choose", option: 1 });
    expect(view.given.options![1]).toBe(long);
    expect(feedbackOn(view, telling)!.grade).toBe("right");
  });

  test("and in an attempt that a platform kept", () => {
    const { run } = unpackAttempt(purposes, { packed: "1;0.2:1Lr:c1", place: "1" });
    expect(run.exercises["0.2"]).toMatchObject({ locked: true, answer: { option: 1 } });
    expect(
      feedbackOn(
        stepView(purposes, run, telling, { mixed: true }).blocks.find(
          (one): one is ExerciseView => "id" in one,
        )!,
        telling,
      )!.grade,
    ).toBe("right");
  });
});

describe("what would tell right options without reading", () => {
  const views = course.flatMap((one) =>
    one.steps.flatMap(({ blocks }, step) =>
      blocks.flatMap((block, index) => {
        if (block.kind !== "choose" || !isExercise(block)) return [];
        const mixed = mixedOrder(block.options.length, `${one.title}/${exerciseId(step, index)}/0`);
        return [{ mixed, right: block.options.findIndex(({ right }) => right) }];
      }),
    ),
  );

  test("is not in the course: neither place nor length, of a lesson or of all", () => {
    expect(choiceRemarks(course)).toEqual([]);
    for (const one of course) expect([one.file, ...choiceRemarks([one])]).toEqual([one.file]);
  });

  test("the longest option of a choice is the right one in at most four of ten", () => {
    const choices = course.flatMap(({ steps }) =>
      steps.flatMap(({ blocks }) => blocks.filter((block) => block.kind === "choose")),
    );
    const longest = choices.filter(({ options }) => {
      const [first, second] = options.toSorted((a, b) => b.text.length - a.text.length);
      return first!.right && first!.text.length > second!.text.length;
    });
    expect(choices.length).toBeGreaterThan(40);
    expect(longest.length / choices.length).toBeLessThanOrEqual(0.4);
  });

  test("the right options are spread over the places when a student first sees them", () => {
    for (const place of [0, 1, 2]) {
      const there = views.filter(({ mixed, right }) => mixed[place] === right).length;
      expect(there / views.length).toBeLessThanOrEqual(0.45);
    }
  });

  test("is remarked in a lesson of one's own", () => {
    const same = [1, 2, 3, 4].map((number) =>
      fence(
        "choose",
        `ask: Which is ${number}?`,
        "options:",
        "  - { text: No, why: A }",
        "  - { text: This much longer one, why: B, right: true }",
      ),
    );
    expect(choiceRemarks([lessonFrom(lessonOf(same.join("\n")))])).toEqual([
      "Remark: in 4 of 4 choices the right option stands at place 2. Spread them, or students learn the place.",
      "Remark: in 4 of 4 choices the right option is the longest. Shorten some, or students learn the length.",
    ]);
  });
});
