import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Answer } from "../../src/lesson/answer.js";
import type { Lesson } from "../../src/lesson/lesson.js";
import type { ExerciseState } from "../../src/lesson/lesson-state.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { newAttempt, standingOf, type Attempt } from "../../src/scorm/attempt.js";
import { packAttempt } from "../../src/scorm/pack-attempt.js";
import { unpackAttempt } from "../../src/scorm/unpack-attempt.js";
import { idsOf, longLesson, madeAnswers, madeLesson } from "./made-lesson.js";

const number = fc.double({ noNaN: true, noDefaultInfinity: true }).map((value) => value + 0);
const triple = fc.tuple(number, number, number);
const values = fc.dictionary(
  fc.constantFrom(...bassoonModel.features.map(({ id }) => id)),
  number,
  { noNullPrototype: true },
);

/** Any answer that fits the made lesson's exercise. */
function answerTo(id: string): fc.Arbitrary<Answer> {
  const { kind } = madeAnswers[id]!;
  switch (kind) {
    case "predict": {
      const sure = fc.constantFrom<1 | 2 | 3>(1, 2, 3);
      return fc.oneof(
        fc.record({ kind: fc.constant(kind), guess: triple, sure }),
        fc.record({ kind: fc.constant(kind), guess: triple }),
      );
    }
    case "read":
      return fc.record({ kind: fc.constant(kind), shares: triple });
    case "choose":
      return fc.record({ kind: fc.constant(kind), option: fc.constantFrom(0, 1) });
    case "order":
      return fc
        .shuffledSubarray(["clipTip", "roundFirstWire"], { minLength: 2 })
        .map((actions) => ({ kind, actions }));
    default:
      return fc.record({ kind: fc.constant(kind), values });
  }
}

function stateOf(id: string): fc.Arbitrary<ExerciseState> {
  return fc
    .tuple(fc.option(answerTo(id)), fc.boolean(), fc.nat(3), fc.nat(9999))
    .map(([answer, locked, hints, tries]) => ({
      ...(answer ? { answer } : {}),
      locked: locked && answer !== null && (answer.kind !== "predict" || answer.sure !== undefined),
      hints,
      tries,
    }));
}

const anyAttempt: fc.Arbitrary<Attempt> = fc
  .record({
    step: fc.nat(1),
    exercises: fc.record(Object.fromEntries(idsOf(madeLesson).map((id) => [id, stateOf(id)])), {
      noNullPrototype: true,
    }),
    marks: fc.array(fc.boolean(), { minLength: 6, maxLength: 6 }),
    count: fc.nat(6),
  })
  .map(({ step, exercises, marks, count }) => ({
    run: { step, exercises },
    first: Object.fromEntries(
      idsOf(madeLesson)
        .slice(0, count)
        .map((id, k) => [id, marks[k]!]),
    ),
  }));

const placeOf = ({ run }: Attempt): string => String(run.step + 1);

test("with room, exactly the same attempt comes back", () => {
  fc.assert(
    fc.property(anyAttempt, (attempt) => {
      const packed = packAttempt(attempt, 64_000);
      expect(packed).toMatch(/^[\w.,;:=+-]*$/);
      expect(unpackAttempt(madeLesson, { packed, place: placeOf(attempt) })).toEqual(attempt);
    }),
    { seed: 12, numRuns: 400 },
  );
});

test("however little room there is, what is kept is short enough, whole, and fits the lesson", () => {
  fc.assert(
    fc.property(anyAttempt, fc.integer({ min: 1, max: 900 }), (attempt, most) => {
      const packed = packAttempt(attempt, most);
      expect(packed.length).toBeLessThanOrEqual(most);
      const back = unpackAttempt(madeLesson, { packed, place: placeOf(attempt) });
      expect(back.run.step).toBe(attempt.run.step);
      for (const [id, mark] of Object.entries(back.first)) expect(mark).toBe(attempt.first[id]);
      for (const [id, { tries, hints }] of Object.entries(back.run.exercises))
        expect([tries, hints]).toEqual([
          attempt.run.exercises[id]!.tries,
          attempt.run.exercises[id]!.hints,
        ]);
    }),
    { seed: 13, numRuns: 400 },
  );
});

test("whatever a platform has kept, it is read without an error", () => {
  fc.assert(
    fc.property(fc.string(), fc.string(), (packed, place) => {
      const back = unpackAttempt(madeLesson, { packed: `1;0.0:1L:${packed}`, place });
      expect(back.run.step).toBeLessThan(2);
      expect(unpackAttempt(madeLesson, { packed, place }).first).toEqual({});
    }),
    { seed: 14, numRuns: 400 },
  );
});

test("nothing kept, or kept in another form, is a lesson at its beginning", () => {
  for (const packed of ["", "2;0.1:1Lr:c1"])
    expect(unpackAttempt(madeLesson, { packed, place: "" })).toEqual(newAttempt(madeLesson));
});

describe("a lesson of many exercises in 4,096 characters", () => {
  const recipe = Object.fromEntries(bassoonModel.features.map(({ id, min }) => [id, min + 1 / 3]));
  const filled = (lesson: Lesson, draft?: string): Attempt => ({
    run: {
      step: 0,
      exercises: Object.fromEntries(
        idsOf(lesson).map((id) => [
          id,
          { answer: { kind: "aim", values: recipe }, locked: id !== draft, hints: 1, tries: 2 },
        ]),
      ),
    },
    first: Object.fromEntries(idsOf(lesson).map((id) => [id, true])),
  });

  test("digits go first, and nothing else while that is enough", () => {
    const lesson = longLesson(12);
    const attempt = filled(lesson, "0.5");
    expect(packAttempt(attempt, 64_000).length).toBeGreaterThan(4096);
    const back = unpackAttempt(lesson, { packed: packAttempt(attempt, 4096), place: "1" });
    expect(Object.values(back.run.exercises).every(({ answer }) => answer !== undefined)).toBe(
      true,
    );
    expect(back.run.exercises["0.0"]!.locked).toBe(true);
  });

  test("then drafts, then answers from the front; the score stays", () => {
    const lesson = longLesson(30);
    const ids = idsOf(lesson);
    const attempt = filled(lesson, ids.at(-1));
    const packed = packAttempt(attempt, 4096);
    expect(packed.length).toBeLessThanOrEqual(4096);
    expect(packed.length).toBeGreaterThan(3700);
    const back = unpackAttempt(lesson, { packed, place: "1" });
    expect(back.run.exercises[ids.at(-1)!]!.answer).toBeUndefined();
    expect(back.run.exercises[ids[0]!]!.answer).toBeUndefined();
    expect(back.run.exercises[ids.at(-2)!]!.answer).toBeDefined();
    expect(back.first).toEqual(attempt.first);
    expect(standingOf(lesson, back)).toEqual(standingOf(lesson, attempt));
  });
});
