import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { LessonState } from "../../src/lesson/lesson-state.js";
import { mergedProgress, withSaved } from "../../src/lesson/merged-progress.js";
import { keepable, noProgress, progressFrom } from "../../src/lesson/progress.js";
import type { Progress } from "../../src/lesson/progress.js";
import { progressText, readProgress } from "../../src/lesson/progress-file.js";

const exercise = fc.record({
  locked: fc.boolean(),
  hints: fc.integer({ min: 0, max: 3 }),
  tries: fc.integer({ min: 0, max: 9 }),
});
const run = fc.record({
  step: fc.integer({ min: 0, max: 6 }),
  exercises: fc.dictionary(fc.stringMatching(/^[0-6]\.[0-4]$/), exercise, { maxKeys: 5 }),
  day: fc.integer({ min: 1, max: 40_000 }),
}) as fc.Arbitrary<LessonState>;
const progress: fc.Arbitrary<Progress> = fc.record({
  runs: fc.dictionary(fc.stringMatching(/^[0-9]{2}-[a-z]{1,8}$/), run, { maxKeys: 4 }),
  review: fc.record({
    day: fc.integer({ min: 1, max: 40_000 }),
    items: fc.constant([{ lesson: "06-shape", exercise: "0.1" }]),
    runs: fc.tuple(run),
  }),
});
const plain = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;

describe("progress that was kept", () => {
  test("comes back as it was", () => {
    fc.assert(
      fc.property(progress, (one) => {
        expect(progressFrom(plain(one))).toEqual(plain(one));
      }),
      { seed: 1, numRuns: 100 },
    );
  });

  test("whatever was kept, it never throws", () => {
    fc.assert(
      fc.property(fc.anything(), fc.anything(), (a, b) => {
        expect(mergedProgress(noProgress, progressFrom(a)).runs).toEqual(progressFrom(a).runs);
        for (const kept of Object.values(progressFrom({ runs: a }).runs))
          expect(kept.exercises).toBeTypeOf("object");
        expect(progressFrom({ runs: a, review: b }).review ?? b).toBe(b);
      }),
      { seed: 2, numRuns: 300 },
    );
  });

  test("what is no run is left out, the rest stays", () => {
    const sound = { step: 1, exercises: {} };
    expect(progressFrom({ runs: { a: sound, b: 5, c: { step: 1 } }, review: { day: 1 } })).toEqual({
      runs: { a: sound },
    });
  });
});

describe("two progresses as one", () => {
  test("with itself it is the same; with nothing, too", () => {
    fc.assert(
      fc.property(progress, (one) => {
        expect(plain(mergedProgress(one, one))).toEqual(plain(one));
        expect(plain(mergedProgress(one, noProgress))).toEqual(plain(one));
        expect(plain(mergedProgress(noProgress, one))).toEqual(plain(one));
      }),
      { seed: 3, numRuns: 100 },
    );
  });

  test("no exercise of either is lost, and none has fewer tries than in either", () => {
    fc.assert(
      fc.property(progress, progress, (mine, theirs) => {
        const both = mergedProgress(mine, theirs);
        for (const one of [mine, theirs])
          for (const [id, { exercises, day }] of Object.entries(one.runs)) {
            expect(both.runs[id]!.day).toBeGreaterThanOrEqual(day!);
            for (const [name, { tries }] of Object.entries(exercises))
              expect(both.runs[id]!.exercises[name]!.tries).toBeGreaterThanOrEqual(tries);
          }
        expect(both.review!.day).toBe(Math.max(mine.review!.day, theirs.review!.day));
      }),
      { seed: 4, numRuns: 200 },
    );
  });
});

describe("two progresses that are not alike", () => {
  const locked = { locked: true, hints: 0, tries: 1 };
  const open = { step: 0, exercises: {} };
  const answered = { step: 0, exercises: { "0.1": locked } };

  test("of one review every answer stays, in whichever page it was given", () => {
    const items = [
      { lesson: "01-parts", exercise: "0.1" },
      { lesson: "02-sound", exercise: "0.1" },
    ];
    const mine = { runs: {}, review: { day: 9, items, runs: [answered, open] } };
    const theirs = { runs: {}, review: { day: 9, items, runs: [open, answered] } };
    expect(mergedProgress(mine, theirs).review!.runs).toEqual([answered, answered]);
    expect(mergedProgress(theirs, mine).review!.runs).toEqual([answered, answered]);
  });

  test("what stems from before an erasure is gone, whichever side it is on", () => {
    const before = { runs: { "01-parts": answered } };
    const after = { runs: { "02-sound": open }, born: 5 };
    expect(mergedProgress(before, after)).toEqual(after);
    expect(mergedProgress(after, before)).toEqual(after);
    expect(progressFrom(plain(after))).toEqual(after);
  });

  test("but a file that is opened on purpose is taken whole, whenever it was saved", () => {
    const after = { runs: { "02-sound": open }, born: 5 };
    const saved = { runs: { "01-parts": answered, "02-sound": answered } };
    expect(withSaved(after, saved)).toEqual({ ...saved, born: 5 });
    expect(withSaved({ runs: {} }, { ...saved, born: 9 })).toEqual(saved);
  });

  test("names that every object has are names like others", () => {
    const theirs = { runs: { toString: answered, constructor: open } };
    expect(Object.keys(mergedProgress(noProgress, theirs).runs)).toEqual([
      "toString",
      "constructor",
    ]);
  });

  test("answers to a lesson file are kept nowhere", () => {
    const whole = { runs: { file: answered, "01-parts": open } };
    expect(Object.keys(keepable(whole).runs)).toEqual(["01-parts"]);
    expect(progressText(whole)).not.toContain('"file"');
  });
});

describe("a file of progress", () => {
  test("gives back what was saved", () => {
    fc.assert(
      fc.property(progress, (one) => {
        const { progress: read, problems } = readProgress(progressText(one), "mine.json");
        expect(problems).toEqual([]);
        expect(read).toEqual(plain(one));
      }),
      { seed: 6, numRuns: 100 },
    );
  });

  test.each([
    ["{", /^a\.json: this is no file of progress/],
    ["[]", /^a\.json: this is no file of progress/],
    ['{"format":"reedpoint progress","version":2}', /^a\.json: version is 2, but .* version 1\.$/],
    [
      progressText(noProgress).replace('"runs": {}', '"runs": 5'),
      /^a\.json: runs is 5, but must be an object by lesson/,
    ],
  ])("%s: the problem in one sentence, and nothing is taken", (text, sentence) => {
    const { progress: read, problems } = readProgress(text, "a.json");
    expect(problems.join("\n")).toMatch(sentence);
    expect(read).toEqual(noProgress);
  });

  test("a broken run is told by its place, the others are taken", () => {
    const sound = { step: 0, exercises: {} };
    const text = JSON.stringify({
      format: "reedpoint progress",
      version: 1,
      runs: {
        "06-shape": sound,
        "07-wires": { step: -1, exercises: { "0.1": { locked: 1, hints: 4, tries: 0 } } },
      },
    });
    const { progress: read, problems } = readProgress(text, "a.json");
    expect(read.runs).toEqual({ "06-shape": sound });
    expect(problems.map((one) => one.replace(/, but .*/, ""))).toEqual([
      'a.json: runs["07-wires"].step is -1',
      'a.json: runs["07-wires"].exercises["0.1"].locked is 1',
      'a.json: runs["07-wires"].exercises["0.1"].hints is 4',
    ]);
  });

  test("whatever the text, it never throws", () => {
    fc.assert(
      fc.property(fc.json(), fc.anything(), (text, runs) => {
        expect(readProgress(text, "a.json").progress).toEqual(noProgress);
        const whole = { format: "reedpoint progress", version: 1, runs, review: runs };
        readProgress(JSON.stringify(whole) ?? "", "a.json");
      }),
      { seed: 7, numRuns: 300 },
    );
  });
});
