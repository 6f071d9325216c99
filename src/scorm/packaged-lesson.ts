import type { Lesson } from "../lesson/lesson.js";
import type { ScormEdition } from "./manifest.js";

/** What the page of a package carries as data. */
export interface PackagedLesson {
  readonly lesson: Lesson;
  readonly edition: ScormEdition;
  /** Whole per cents from which on the lesson is passed. */
  readonly mastery?: number;
}

/** The id of the element that holds it. */
export const lessonDataId = "lesson-data";

/** A lesson without what is for its teacher or its author alone: notes, places in the file, the file's path. */
export function lessonToPlay(lesson: Lesson): Lesson {
  return {
    ...lesson,
    file: "",
    places: {},
    steps: lesson.steps.map((step) => ({
      ...step,
      line: 0,
      notes: [],
      blocks: step.blocks.map((block) => ("places" in block ? { ...block, places: {} } : block)),
    })),
  };
}

/** Data as a page can hold it between the tags of a script that is none. */
export function dataText(data: PackagedLesson): string {
  return JSON.stringify(data)
    .replaceAll("<", "\\u003c")
    .replaceAll("\u2028", "\\u2028")
    .replaceAll("\u2029", "\\u2029");
}
