import { isExercise, type Lesson } from "../../src/lesson/lesson.js";
import { exerciseId, reduceLesson, type LessonState } from "../../src/lesson/lesson-state.js";
import type { Answer } from "../../src/lesson/answer.js";
import { parseLesson } from "../../src/lib/lesson.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { fence } from "../lesson/lesson-texts.js";

const notes = "\n:::notes\nFor the teacher alone.\n:::\n";

/** An invented lesson with an exercise of every kind, two steps. */
const everyKind = [
  '---\ntitle: Every <kind> & "sort"\nminutes: 10\n---',
  "## First",
  notes,
  fence("predict", "ask: Where?", "change: { bladeLength: 26.2 }"),
  fence(
    "choose",
    "ask: Which?",
    "options:",
    "  - { text: A, why: B }",
    "  - { text: C, why: D, right: true }",
  ),
  fence("read", "ask: What does it say?", "at: [20, 30, 50]"),
  "## Second",
  fence("show", "cautions: [pliers, clipper]"),
  fence("order", "ask: In which order?", "actions: [clipTip, roundFirstWire]"),
  fence("aim", "ask: Get there.", "target: [40, 30, 30]"),
  fence("stand-in", "ask: Make up for it.", "missing: { throatWidth: 8.1 }"),
].join("\n");

export function lessonFrom(text: string, file = "made.md"): Lesson {
  const { lesson, problems } = parseLesson(text, { file, model: bassoonModel });
  if (!lesson || problems.length > 0)
    throw new Error(problems.map(({ message }) => message).join("\n"));
  return lesson;
}

export const madeLesson: Lesson = lessonFrom(everyKind);

/** An invented lesson with one exercise. */
export const shortLesson: Lesson = lessonFrom(
  [
    "---\ntitle: Short\nminutes: 1\n---",
    "## Step",
    notes,
    fence(
      "choose",
      "ask: Which?",
      "options:",
      "  - { text: A, why: B }",
      "  - { text: C, why: D, right: true }",
    ),
  ].join("\n"),
);

/** An answer to every exercise of the made lesson, by its id. */
export const madeAnswers: Readonly<Record<string, Answer>> = {
  "0.0": { kind: "predict", guess: [0.1 + 0.2, 1 / 3, 1 - 0.1 - 0.2 - 1 / 3], sure: 2 },
  "0.1": { kind: "choose", option: 1 },
  "0.2": { kind: "read", shares: [0.1, -0.05, 0.95] },
  "1.1": { kind: "order", actions: ["roundFirstWire", "clipTip"] },
  "1.2": { kind: "aim", values: { bladeLength: 26.25, hinging: 1e-7, tip: 0 } },
  "1.3": { kind: "stand-in", values: {} },
};

/** A run after an answer was handed in. */
export function answeredRun(
  run: LessonState,
  exercise: string,
  answer: Answer,
  lesson = madeLesson,
): LessonState {
  const put = reduceLesson(run, { type: "answer", exercise, answer }, lesson);
  return reduceLesson(put, { type: "lock", exercise }, lesson);
}

/** A lesson of many exercises of one kind, as no one would write it. */
export function longLesson(exercises: number): Lesson {
  const one = fence("aim", "ask: Get there.", "target: [40, 30, 30]");
  return lessonFrom(
    [
      "---\ntitle: Long\nminutes: 60\n---",
      "## Step",
      notes,
      ...Array.from({ length: exercises }, () => one),
    ].join("\n"),
  );
}

/** The ids of the exercises. */
export function idsOf({ steps }: Lesson): string[] {
  return steps.flatMap(({ blocks }, step) =>
    blocks.flatMap((block, index) => (isExercise(block) ? [exerciseId(step, index)] : [])),
  );
}
