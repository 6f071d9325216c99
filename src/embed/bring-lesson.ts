import { loadLesson, shippedLessons } from "../app/shipped-lessons.js";
import type { ReedModel } from "../engine/model.js";
import { lessonMap } from "../lesson/exercise-reed.js";
import { hintsFor } from "../lesson/hints.js";
import { isExercise, type Lesson } from "../lesson/lesson.js";
import { lessonState } from "../lesson/lesson-state.js";
import { stepView } from "../lesson/lesson-view.js";
import type { LessonProblem } from "../lesson/lesson-problem.js";
import { bassoonActions, bassoonModel } from "../reed/bassoon.js";
import { lessonElementWords as words } from "../reed/lesson-element-words.js";
import { lessonShelfWords } from "../reed/lesson-shelf-words.js";
import { warnOnce } from "./warn-once.js";

const mostLetters = 1_000_000;

/** Which lesson a page wants. */
export interface AskedLesson {
  /** The id of a shipped lesson, or the address of a file. */
  readonly lesson: string;
  /** The text of a lesson file, or a lesson that was read before; it comes before `lesson`. */
  readonly source: unknown;
  readonly model: ReedModel;
}

/** What came of it: a lesson, or why there is none. */
export interface BroughtLesson {
  /** Absent where nothing can be played. */
  readonly lesson?: Lesson;
  /** Name of the file; empty for a lesson that was read before. */
  readonly file: string;
  /** Everything that is wrong in the file. */
  readonly problems: readonly LessonProblem[];
  readonly trouble: string;
}

const nothing: BroughtLesson = { file: "", problems: [], trouble: "" };

/**
 * Brings a lesson from wherever the page says it is.
 *
 * Throws  nothing: what is wrong is told in words.
 */
export async function bringLesson({ lesson, source, model }: AskedLesson): Promise<BroughtLesson> {
  if (typeof source === "string") return readText(lesson || "lesson.md", source, model);
  if (source !== undefined)
    return isLesson(source) && isPlayable(source, model) ? fitting(source, model) : noLesson();
  if (/\.md(?:[?#]|$)/.test(lesson)) return fetched(lesson, model);
  return shipped(lesson, model);
}

async function shipped(id: string, model: ReedModel): Promise<BroughtLesson> {
  try {
    const lesson = await loadLesson(id);
    if (lesson) return fitting(lesson, model);
  } catch (cause) {
    console.warn("Reedpoint: a lesson could not be loaded", cause);
    return { ...nothing, trouble: words.unreached(id) };
  }
  const ids = shippedLessons.map((one) => one.id).join(", ");
  warnOnce(
    `lesson: “${id}” is not known; allowed: ${ids}, or the address of a file that ends in .md`,
  );
  return { ...nothing, trouble: id === "" ? words.none : words.unknown(id) };
}

/** A lesson that was read with the product's own model speaks of its features. */
function fitting(lesson: Lesson, model: ReedModel): BroughtLesson {
  const has = new Set(model.features.map(({ id }) => id));
  const fits = bassoonModel.features.every(({ id }) => has.has(id));
  return fits ? { ...nothing, lesson } : { ...nothing, trouble: words.unfit };
}

function noLesson(): BroughtLesson {
  warnOnce(
    "source: this is no lesson; allowed: the text of a lesson file, or what parseLesson made of one",
  );
  return { ...nothing, trouble: words.noLesson };
}

function isLesson(data: unknown): data is Lesson {
  const { title, minutes, steps } = (data ?? {}) as Partial<Lesson>;
  return (
    typeof title === "string" &&
    typeof minutes === "number" &&
    Array.isArray(steps) &&
    steps.length > 0 &&
    steps.every((step) => typeof step?.title === "string" && Array.isArray(step.blocks))
  );
}

const kinds: readonly unknown[] = [
  "prose",
  "show",
  "claim",
  "predict",
  "aim",
  "choose",
  "order",
  "read",
  "stand-in",
];

/** Whether every block can be shown: a lesson that a page has put together by itself was read by nobody before. */
function isPlayable(lesson: Lesson, model: ReedModel): boolean {
  try {
    const marker = { lesson, map: lessonMap(lesson, model), actions: bassoonActions };
    return lesson.steps.every(({ blocks }) =>
      blocks.every((block) => {
        if (!kinds.includes(block.kind)) return false;
        const only = {
          ...lesson,
          steps: [{ title: "", line: 1, blocks: [block], notes: [], sound: true }],
        };
        stepView(only, lessonState(only), marker);
        if (isExercise(block)) return hintsFor(block, marker).length === 3 && isText(block.ask);
        if (block.kind === "prose") return isText(block.html);
        if (block.kind === "claim") return isText(block.says);
        return true;
      }),
    );
  } catch {
    return false;
  }
}

function isText(value: unknown): boolean {
  return typeof value === "string";
}

async function fetched(address: string, model: ReedModel): Promise<BroughtLesson> {
  const trouble = (says: string): BroughtLesson => ({ ...nothing, trouble: says });
  const { origin } = window;
  if (origin === "null") return trouble(words.noFetching(address));
  let [name, text] = ["", ""];
  try {
    const url = new URL(address, document.baseURI);
    if (url.origin !== origin) return trouble(words.elsewhere(address));
    const answer = await fetch(url);
    if (new URL(answer.url).origin !== origin) return trouble(words.elsewhere(address));
    if (!answer.ok) return trouble(words.refused(address, answer.status));
    text = await answer.text();
    name = url.pathname.split("/").at(-1)!;
  } catch (cause) {
    console.warn("Reedpoint: a lesson could not be loaded", cause);
    return trouble(words.unreached(address));
  }
  return readText(name, text, model);
}

/** The readers of lesson files come with the first of them. */
async function readText(name: string, text: string, model: ReedModel): Promise<BroughtLesson> {
  if (text.length > mostLetters)
    return { ...nothing, trouble: lessonShelfWords.file.tooLarge(name) };
  const reader = await import("../app/read-lesson-file.js").catch((cause: unknown) => {
    console.warn("Reedpoint: a part could not be loaded", cause);
  });
  if (!reader) return { ...nothing, trouble: words.unreached(name) };
  try {
    const { lesson, problems } = reader.readLessonFile({ name, text }, model);
    const hasSoundStep = lesson?.steps.some(({ sound }) => sound) ?? false;
    return { ...nothing, file: name, problems, ...(lesson && hasSoundStep ? { lesson } : {}) };
  } catch (cause) {
    console.error("Reedpoint: the reader of lesson files has failed", cause);
    return { ...nothing, trouble: lessonShelfWords.file.fault };
  }
}
