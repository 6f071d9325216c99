import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { ChooseBlock } from "../../src/lesson/lesson.js";
import { exerciseAt } from "../../src/lesson/lesson-state.js";
import { parseLesson } from "../../src/lesson/parse-lesson.js";
import { keptRun } from "../../src/lesson/kept-run.js";
import { progressFrom } from "../../src/lesson/progress.js";
import { readProgress } from "../../src/lesson/progress-file.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { unpackAttempt } from "../../src/scorm/unpack-attempt.js";
import keptProgress from "../fixtures/kept-progress.json" with { type: "json" };
import attempts from "../fixtures/platform-attempts.json" with { type: "json" };
import rightOptions from "../fixtures/right-options.json" with { type: "json" };

const fixture = (name: string): string =>
  readFileSync(new URL(`../fixtures/${name}`, import.meta.url), "utf8");

function lessonOf(id: string) {
  const path = new URL(`../../lessons/en/${id}.md`, import.meta.url);
  return parseLesson(readFileSync(path, "utf8"), { file: `${id}.md`, model: bassoonModel }).lesson!;
}

describe("what an earlier version has kept", () => {
  const { runs } = keptProgress.value;

  test("progress on the device is read as it was", () => {
    expect(progressFrom(keptProgress.value).runs).toEqual(runs);
  });

  test("a file of progress is read as it was", () => {
    const { progress, problems } = readProgress(fixture("progress-file.json"), "progress.json");
    expect({ runs: progress.runs, problems }).toEqual({ runs, problems: [] });
  });

  test.each(Object.entries(runs))("the run of lesson %s fits the lesson of today", (id, run) => {
    expect(keptRun(lessonOf(id), run)).toEqual(run);
  });

  test.each(attempts)(
    "an attempt at $lesson on a platform goes on",
    ({ lesson, text, attempt }) => {
      expect(unpackAttempt(lessonOf(lesson), { packed: text, place: "1" })).toEqual(attempt);
    },
  );
});

// An answer is kept as the number of its option in the file: that number keeps its meaning.
test.each(Object.entries(rightOptions))(
  "the right options of %s have kept their numbers",
  (id, rows) => {
    const lesson = lessonOf(id);
    const now = Object.keys(rows).map((exercise) => {
      const block = exerciseAt(lesson, exercise) as ChooseBlock | undefined;
      return [exercise, block?.options.findIndex(({ right }) => right)];
    });
    expect(Object.fromEntries(now)).toEqual(rows);
  },
);
