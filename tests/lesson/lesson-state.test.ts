import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { compileModel, place } from "../../src/lib/engine.js";
import { parseLesson } from "../../src/lib/lesson.js";
import type { Answer } from "../../src/lesson/answer.js";
import type { Lesson } from "../../src/lesson/lesson.js";
import {
  type LessonAction,
  type LessonState,
  lessonState,
  reduceLesson,
} from "../../src/lesson/lesson-state.js";
import { type ExerciseView, stepView } from "../../src/lesson/lesson-view.js";
import { bassoonActions, bassoonModel } from "../../src/reed/bassoon.js";
import { fence, lessonOf } from "./lesson-texts.js";

const text = lessonOf(
  [
    "Before.",
    fence("predict", "ask: Where?", "change: { bladeLength: 26.123 }", "why: Secret-why."),
    "Secret-prose.",
    fence("claim", "says: Secret-claim.", "means: shorter bladeLength → high"),
    fence(
      "choose",
      "ask: Which?",
      "options:",
      "  - { text: a, why: Reason-a, right: true }",
      "  - { text: b, why: Reason-b }",
    ),
    fence("read", "ask: Read.", "at: [50, 30, 20]"),
    fence("aim", "ask: Go.", "target: softLow"),
    fence("stand-in", "ask: Make up.", "missing: { tipWidth: 14 }"),
    "## Next",
    "Only prose.",
  ].join("\n"),
);
const lesson: Lesson = parseLesson(text, { file: "a.md", model: bassoonModel }).lesson!;
const map = compileModel(bassoonModel);
const view = (state: LessonState) => stepView(lesson, state, { map, actions: bassoonActions });
const after = (state: LessonState, ...actions: readonly LessonAction[]): LessonState =>
  actions.reduce((now, action) => reduceLesson(now, action, lesson), state);
const exercises = (state: LessonState): ExerciseView[] =>
  view(state).blocks.filter((block): block is ExerciseView => "id" in block);

const guess: Answer = { kind: "predict", guess: [0.5, 0.3, 0.2], sure: 2 };
const first = lessonState(lesson);
const predict = "0.1";

describe("before a prediction is locked in", () => {
  const touched = after(
    first,
    { type: "answer", exercise: predict, answer: guess },
    { type: "hint", exercise: predict },
    { type: "hint", exercise: predict },
    { type: "hint", exercise: predict },
    { type: "hint", exercise: predict },
  );

  test.each([
    ["at the beginning", first],
    ["with a guess and every hint", touched],
    [
      "after leaving and coming back by a link",
      after(touched, { type: "step", step: 1 }, { type: "step", step: 0 }),
    ],
    ["after a reload", JSON.parse(JSON.stringify(touched)) as LessonState],
    [
      "after another exercise was answered",
      after(
        touched,
        { type: "answer", exercise: "0.4", answer: { kind: "choose", option: 0 } },
        { type: "lock", exercise: "0.4" },
      ),
    ],
  ])("neither state nor view holds the outcome, or what follows: %s", (_when, state) => {
    const said = JSON.stringify([state.exercises[predict] ?? null, view(state)]);
    const { from } = exercises(state)[0]!;
    const outcome = place(map, { ...from, bladeLength: 26.123 }).raw;
    for (const number of [
      26.123,
      ...outcome,
      ...outcome.map((share, k) => share - place(map, from).raw[k]!),
    ])
      expect(said).not.toContain(String(number).slice(0, 7));
    expect(said).not.toMatch(/Secret|Reason|"mark"|"move"|toward|outcome/);
    expect(view(state)).toMatchObject({ directionsHidden: true, more: true });
  });

  test("a lock without a guess does nothing", () => {
    expect(after(first, { type: "lock", exercise: predict })).toBe(first);
  });
});

describe("once it is locked in", () => {
  const locked = after(
    first,
    { type: "answer", exercise: predict, answer: guess },
    { type: "lock", exercise: predict },
  );

  test("the outcome, the guess and the author's words are there, and what follows up to the next exercise", () => {
    const [shown, next] = exercises(locked);
    expect(shown).toMatchObject({
      locked: true,
      answer: guess,
      why: "Secret-why.",
      mark: { kind: "predict" },
    });
    expect(JSON.stringify(view(locked))).toContain("Secret-prose");
    expect(next).toMatchObject({ kind: "choose", given: { options: ["a", "b"] } });
    expect(JSON.stringify(view(locked))).not.toContain("Reason");
    expect(view(locked).directionsHidden).toBe(false);
  });

  test("nothing changes it any more", () => {
    const other: Answer = { kind: "predict", guess: [0, 0, 1], sure: 3 };
    const tries: readonly LessonAction[] = [
      { type: "answer", exercise: predict, answer: other },
      { type: "again", exercise: predict },
      { type: "lock", exercise: predict },
      { type: "hint", exercise: predict },
    ];
    expect(after(locked, ...tries)).toBe(locked);
  });
});

test("another exercise may be tried again, and its tries are counted", () => {
  const once = after(
    first,
    { type: "answer", exercise: "0.4", answer: { kind: "choose", option: 1 } },
    { type: "lock", exercise: "0.4" },
  );
  const twice = after(
    once,
    { type: "again", exercise: "0.4" },
    { type: "answer", exercise: "0.4", answer: { kind: "choose", option: 0 } },
    { type: "lock", exercise: "0.4" },
  );
  expect(once.exercises["0.4"]).toMatchObject({ tries: 1, answer: { option: 1 } });
  expect(twice.exercises["0.4"]).toMatchObject({ tries: 2, locked: true, answer: { option: 0 } });
});

test.each([
  ["0.4", { kind: "choose", option: 7 }],
  ["0.4", { kind: "choose", option: -1 }],
  ["0.4", guess],
  ["0.1", { kind: "predict", guess: [NaN, 0, 1], sure: 1 }],
  ["0.5", { kind: "read", shares: [Infinity, 0, 0] }],
  ["0.6", { kind: "aim", values: { tip: NaN } }],
  ["0.0", guess],
  ["9.9", guess],
  ["__proto__", guess],
] as const)("an answer to %s that is none changes nothing: %o", (exercise, answer) => {
  expect(after(first, { type: "answer", exercise, answer: answer as Answer })).toBe(first);
});

test("a step that a link names is kept within the lesson", () => {
  expect([-1, 0, 1, 2, 1e9, NaN, 0.7].map((step) => lessonState(lesson, step).step)).toEqual([
    0, 0, 1, 1, 1, 0, 0,
  ]);
});

test("whatever a student does, a locked prediction stays as it was locked", () => {
  const ids = fc.constantFrom("0.1", "0.4", "0.5", "0.6", "0.7", "0.0", "1.0", "");
  const answer = fc.oneof(
    fc.record({
      kind: fc.constant("predict" as const),
      guess: fc.tuple(fc.double(), fc.double(), fc.double()),
      sure: fc.constantFrom(1 as const, 2 as const, 3 as const),
    }),
    fc.record({ kind: fc.constant("choose" as const), option: fc.integer({ min: -1, max: 3 }) }),
    fc.record({
      kind: fc.constantFrom("aim" as const, "stand-in" as const),
      values: fc.dictionary(fc.constantFrom("tip", "heart"), fc.double({ min: 0, max: 1 })),
    }),
  );
  const action: fc.Arbitrary<LessonAction> = fc.oneof(
    fc.record({ type: fc.constant("answer" as const), exercise: ids, answer }),
    fc.record({
      type: fc.constantFrom("lock" as const, "hint" as const, "again" as const),
      exercise: ids,
    }),
    fc.record({ type: fc.constant("step" as const), step: fc.integer() }),
  );
  fc.assert(
    fc.property(fc.array(action, { maxLength: 30 }), (actions) => {
      let state = first;
      for (const one of actions) {
        const before = state.exercises[predict];
        state = reduceLesson(state, one, lesson);
        if (before?.locked) expect(state.exercises[predict]).toBe(before);
        if (state.step === 0 && !state.exercises[predict]?.locked)
          expect(JSON.stringify(view(state))).not.toMatch(/Secret|"mark"/);
      }
    }),
    { seed: 17, numRuns: 300 },
  );
  expect(first.exercises).toEqual({});
});
