import type { ReadingWords } from "../reed/reading-catalogue.js";
import type { Fault } from "../reed/reading-words.js";

/** One cell of an import that could not be taken over. */
export interface ReadingProblem {
  /** The file it came from, if it has a name. */
  readonly file?: string;
  /** Line of the text, or place in a JSON list or object, counted from 1. */
  readonly row: number;
  /** Column counted from 1, or the key in JSON. */
  readonly column: number | string;
  /** What stands there. */
  readonly value: string;
  /** What may stand there, in words. */
  readonly allowed: string;
  /** One sentence with all of it. */
  readonly message: string;
}

/** A cell of an import with its place. */
export interface Cell {
  readonly text: string;
  readonly row: number;
  readonly column: number | string;
}

/**
 * A problem with its sentence.
 *
 * @example cellProblem({ text: "x", row: 2, column: 1 }, { why: "“x” is no number", allowed: "a number" }, readingWords.faults).message
 *   → "Row 2, column 1: “x” is no number; allowed is a number."
 */
export function cellProblem(
  { text, row, column }: Cell,
  fault: Fault,
  words: ReadingWords["faults"],
  file?: string,
): ReadingProblem {
  const { allowed } = fault;
  const message = words.message({ file, row, column }, fault);
  return { ...(file === undefined ? {} : { file }), row, column, value: text, allowed, message };
}
