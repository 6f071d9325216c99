import { type LessonFault, lessonWords } from "../reed/lesson-words.js";
import type { TextPlace } from "./lesson.js";

/** One thing that is wrong in a lesson file. */
export interface LessonProblem extends TextPlace {
  readonly file: string;
  /** The step it stands in, counted from 0; absent in the front matter and before the first step. */
  readonly step?: number;
  /** What stands there. */
  readonly found: string;
  /** What may stand there, in words. */
  readonly allowed: string;
  /** The right word that was probably meant. */
  readonly nearest?: string;
  /** One sentence with all of it. */
  readonly message: string;
}

/** Takes a fault with its place. */
export type Tell = (place: TextPlace, fault: LessonFault) => void;

/**
 * A fault with its place as a problem with its sentence.
 *
 * @example lessonProblem("a.md", { line: 2, column: 1 }, lessonWords.faults.noStep, undefined).message
 *          → "a.md, line 2, column 1: there is no step; allowed is at least one heading that begins with ##."
 */
export function lessonProblem(
  file: string,
  { line, column }: TextPlace,
  fault: LessonFault,
  step: number | undefined,
): LessonProblem {
  const { found, allowed, nearest } = fault;
  return {
    file,
    line,
    column,
    ...(step === undefined ? {} : { step }),
    found,
    allowed,
    ...(nearest === undefined ? {} : { nearest }),
    message: lessonWords.message({ file, line, column }, fault),
  };
}

/** Problems in the order of the file. */
export function inFileOrder(problems: readonly LessonProblem[]): LessonProblem[] {
  return problems.toSorted((a, b) => a.line - b.line || a.column - b.column);
}
