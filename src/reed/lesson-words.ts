import type { Triple } from "../engine/model.js";
import { type LessonFault, lessonFaults, modelFaults, readingFaults } from "./lesson-faults.js";

export type { LessonFault } from "./lesson-faults.js";

/** Digits of a share in a problem: a tenth of a per cent. */
const signed = new Intl.NumberFormat("en-GB", {
  minimumFractionDigits: 3,
  maximumFractionDigits: 3,
  signDisplay: "exceptZero",
});

/** A value of a file as a sentence can carry it. */
function shownValue(value: unknown): string {
  const text = value === undefined ? "missing" : (JSON.stringify(value) ?? typeof value);
  return text.length > 60 ? `${text.slice(0, 59)}…` : text;
}

/** Three shares of a move: "high +0.051, low −0.030, loud −0.021". */
function pullText([high, low, loud]: Triple): string {
  const [a, b, c] = [high, low, loud].map((share) => signed.format(share).replace("-", "−"));
  return `high ${a}, low ${b}, loud ${c}`;
}

/** What a false claim is held against. */
const computed = {
  pull: (pull: Triple): string => `the model says ${pullText(pull)}`,
  likeness: (likeness: number): string =>
    `the cosine between the two pulls is ${signed.format(likeness).replace("-", "−")}`,
  strengths: (a: number, b: number): string =>
    `over half its spread one moves the point by ${a.toFixed(3)}, the other by ${b.toFixed(3)}`,
  lips: (change: number): string =>
    `it changes by ${(100 * change).toFixed(1).replace("-", "−")} % for one half-spread`,
  effect: (effect: number): string => `one unit of the action changes it by ${effect}`,
  undone: (reversible: boolean): string =>
    `the actions say that it ${reversible ? "can" : "cannot"} be undone`,
  distance: (distance: number, radius: number): string =>
    `they are ${distance.toFixed(3)} apart, and near is at most ${radius}`,
};

/** Sentences about lesson files. */
export const lessonWords = {
  message: (
    {
      file,
      line,
      column,
    }: { readonly file: string; readonly line: number; readonly column: number },
    { why, allowed, nearest }: LessonFault,
  ): string =>
    `${file}, line ${line}, column ${column}: ${why}; allowed is ${allowed}.` +
    (nearest === undefined ? "" : ` Did you mean “${nearest}”?`),
  frontMatter: "the front matter",
  colon:
    'there is a colon inside a text; a text with a colon stands between quotation marks, as in ask: "Two reeds: which one?"',
  kinds: {
    feature: "feature",
    featureOrRatio: "feature or ratio of features",
    reed: "demo reed",
    target: "kind of part",
    layer: "layer",
    lips: "preset of lips",
    lipQuantity: "quantity of the lip panel",
    action: "action",
    caution: "caution",
    comparative: "word such as more or less",
    place: "kind of part or demo reed",
  },
  faults: { ...readingFaults, ...modelFaults, ...lessonFaults },
  computed,
  progress: {
    noProgress: (file: string, format: string): string =>
      `${file}: this is no file of progress; allowed is one that was saved here, which says "format": "${format}".`,
    byLesson: "an object by lesson",
    version: (file: string, found: unknown, allowed: number): string =>
      `${file}: version is ${shownValue(found)}, but this page reads version ${allowed}.`,
    wrong: (file: string, path: string, found: unknown, allowed: string): string =>
      `${file}: ${path} ${found === undefined ? "is missing" : `is ${shownValue(found)}`}, but must be ${allowed}. That part is left out.`,
  },
  remarks: {
    samePlace: (place: number, count: number, all: number): string =>
      `Remark: in ${count} of ${all} choices the right option stands at place ${place}. Spread them, or students learn the place.`,
    longest: (count: number, all: number): string =>
      `Remark: in ${count} of ${all} choices the right option is the longest. Shorten some, or students learn the length.`,
    together: "All these lessons together:",
  },
  summary: (file: string, steps: number, exercises: number, minutes: number, problems: number) =>
    `${file}: ${steps} steps, ${exercises} exercises, ${minutes} minutes, ` +
    (problems === 0 ? "no problem" : problems === 1 ? "1 problem" : `${problems} problems`),
};

/** Every word about lesson files. */
export type LessonWords = typeof lessonWords;
