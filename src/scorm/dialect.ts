import type { MarkedAnswer } from "./marked-answer.js";

/** How far a lesson is, as a platform is told. */
export interface Report {
  /** `passed` and `failed` only where the package asks for a mastery score. */
  readonly status: "incomplete" | "completed" | "passed" | "failed";
  /** Whole per cents; only once the lesson is complete. */
  readonly score?: number;
  /**
   * The step, counted from 1, and the attempt, by `packAttempt`. Absent until the student has done something: what a
   * platform could not give back at the start must not be written over by an attempt that is empty.
   */
  readonly attempt?: { readonly place: string; readonly packed: string };
}

/** Elements of the data model with their values, in the order in which they are to be set. */
export type Elements = readonly (readonly [element: string, value: string])[];

/** What one edition of the standard calls things, and how it writes them. */
export interface Dialect {
  /** The property of a window under which a platform stands. */
  readonly api: string;
  readonly initialize: string;
  readonly terminate: string;
  readonly get: string;
  readonly set: string;
  readonly commit: string;
  readonly status: string;
  /** Where it says whether the lesson was passed. */
  readonly success: string;
  readonly place: string;
  readonly packed: string;
  /** How many interactions there are already. */
  readonly count: string;
  /** Most characters of the packed attempt. */
  readonly most: number;
  /** Whether a status stands at the end of the work. */
  readonly isDone: (status: string) => boolean;
  /** What is written of a report, less the status. */
  readonly reported: (report: Report, seconds: number) => Elements;
  readonly statuses: (report: Report) => Elements;
  readonly interaction: (index: number, answer: MarkedAnswer) => Elements;
}
