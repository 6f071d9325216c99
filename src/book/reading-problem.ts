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

/** What is wrong with a cell: why in a clause, what may stand there, and a question where a slip is likely. */
export interface Fault {
  readonly why: string;
  readonly allowed: string;
  readonly ask?: string;
}

const longestShown = 40;

/**
 * A problem with its sentence.
 *
 * @example cellProblem({ text: "x", row: 2, column: 1 }, { why: "“x” is no number", allowed: "a number" }).message
 *   → "Row 2, column 1: “x” is no number; allowed is a number."
 */
export function cellProblem(
  { text, row, column }: Cell,
  { why, allowed, ask }: Fault,
  file?: string,
): ReadingProblem {
  const place =
    file === undefined ? `Row ${row}, column ${column}` : `${file}, row ${row}, column ${column}`;
  const message = `${place}: ${why}; ${ask === undefined ? `allowed is ${allowed}.` : `${ask}?`}`;
  return { ...(file === undefined ? {} : { file }), row, column, value: text, allowed, message };
}

/** A cell as a sentence can carry it. */
export function quoted(text: string): string {
  return `“${text.length > longestShown ? `${text.slice(0, longestShown - 1)}…` : text}”`;
}
