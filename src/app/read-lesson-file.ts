import type { ReedModel } from "../engine/model.js";
import { checkLesson } from "../lesson/check-lesson.js";
import type { Lesson } from "../lesson/lesson.js";
import type { LessonProblem } from "../lesson/lesson-problem.js";
import { parseLesson } from "../lesson/parse-lesson.js";
import { bassoonActions } from "../reed/bassoon.js";
import type { LessonFile } from "./bench-state.js";

/** What came of a lesson file. */
export interface ReadLessonFile {
  /** Absent where not even its front matter can be used. */
  readonly lesson: Lesson | undefined;
  /** All of them, in the order of the file. */
  readonly problems: readonly LessonProblem[];
}

/**
 * A lesson file with everything that is wrong in it, held against the model. Steps in which something is wrong are
 * marked as not sound: they must not be played.
 */
export function readLessonFile({ name, text }: LessonFile, model: ReedModel): ReadLessonFile {
  const { lesson, problems } = parseLesson(text, { file: name, model });
  if (!lesson) return { lesson, problems };
  const held = checkLesson(lesson, model, bassoonActions);
  const doubtful = new Set(held.map(({ step }) => step));
  const steps = lesson.steps.map((step, index) =>
    doubtful.has(index) ? { ...step, sound: false } : step,
  );
  const all = [...problems, ...held].toSorted((a, b) => a.line - b.line || a.column - b.column);
  return { lesson: { ...lesson, steps }, problems: all };
}
