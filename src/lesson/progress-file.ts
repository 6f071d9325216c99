import { isRecord } from "./is-record.js";
import * as v from "valibot";
import { compareShape } from "../reed/shape-problems.js";
import { pathText } from "../reed/problem-at.js";
import { lessonWords } from "../reed/lesson-words.js";
import { keepable, noProgress, progressFrom, type Progress } from "./progress.js";

/** The name by which such a file says what it is. */
const format = "reedpoint progress";
const version = 1;

const count = v.pipe(v.number(), v.integer(), v.minValue(0));
const day = v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(999_999));
const shares = v.tuple([v.number(), v.number(), v.number()]);
const values = v.record(v.string(), v.number());

const answerSchema = v.variant("kind", [
  v.strictObject({
    kind: v.literal("predict"),
    guess: shares,
    sure: v.optional(v.picklist([1, 2, 3])),
  }),
  v.strictObject({ kind: v.literal("aim"), values }),
  v.strictObject({ kind: v.literal("stand-in"), values }),
  v.strictObject({ kind: v.literal("choose"), option: count }),
  v.strictObject({ kind: v.literal("order"), actions: v.array(v.string()) }),
  v.strictObject({ kind: v.literal("read"), shares }),
]);

/** How far somebody is in a lesson, as a file holds it. */
export const runSchema = v.strictObject({
  step: count,
  exercises: v.record(
    v.pipe(v.string(), v.regex(/^\d{1,3}\.\d{1,3}$/)),
    v.strictObject({
      locked: v.boolean(),
      hints: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(3)),
      tries: count,
      answer: v.optional(answerSchema),
    }),
  ),
  day: v.optional(day),
});

const reviewSchema = v.strictObject({
  day,
  items: v.array(v.strictObject({ lesson: v.string(), exercise: v.string() })),
  runs: v.array(runSchema),
});

/** Progress as the text of a file. */
export function progressText(progress: Progress): string {
  const { runs, review } = keepable(progress);
  return `${JSON.stringify({ format, version, runs, review }, null, 2)}\n`;
}

/**
 * The inverse of `progressText`. A run in which something is wrong is told and left out; all others are taken.
 *
 * Shape   the text, the file's name → progress and a sentence for every problem; with none of its kind, no progress.
 * Domain  any text; never throws.
 *
 * @example readProgress("{", "a.json").problems.length → 1
 */
export function readProgress(
  text: string,
  file: string,
): { readonly progress: Progress; readonly problems: readonly string[] } {
  const words = lessonWords.progress;
  const json = parsed(text);
  if (!isRecord(json) || json["format"] !== format)
    return { progress: noProgress, problems: [words.noProgress(file, format)] };
  if (json["version"] !== version)
    return { progress: noProgress, problems: [words.version(file, json["version"], version)] };
  const problems: string[] = [];
  const fits = (schema: v.GenericSchema, value: unknown, ...before: string[]): boolean => {
    const { length } = problems;
    compareShape(schema, value, (keys, found, allowed) =>
      problems.push(words.wrong(file, pathText([...before, ...keys]), found, allowed)),
    );
    return problems.length === length;
  };
  const { runs = {}, review } = json;
  if (!isRecord(runs)) problems.push(words.wrong(file, "runs", runs, words.byLesson));
  const sound = isRecord(runs)
    ? Object.entries(runs).filter(([id, run]) => fits(runSchema, run, "runs", id))
    : [];
  const isReview = review !== undefined && fits(reviewSchema, review, "review");
  const kept = { runs: Object.fromEntries(sound), ...(isReview ? { review } : {}) };
  return { progress: progressFrom(kept), problems };
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
}
