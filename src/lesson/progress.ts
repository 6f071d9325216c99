import { isRecord } from "./is-record.js";
import { isDay } from "./day.js";
import type { LessonState } from "./lesson-state.js";

/** An exercise that is asked again, days after its lesson. */
export interface ReviewItem {
  readonly lesson: string;
  /** Its name within the lesson: "2.1". */
  readonly exercise: string;
}

/** Three exercises from different lessons, asked again together. */
export interface Review {
  /** The day it was begun, counted from 1 January 1970. */
  readonly day: number;
  readonly items: readonly ReviewItem[];
  /** How far each is, in the order of the items. */
  readonly runs: readonly LessonState[];
}

/** How far a student is with everything: plain data without any outcome. */
export interface Progress {
  /** By the lesson's id. */
  readonly runs: Readonly<Record<string, LessonState>>;
  readonly review?: Review;
  /** When it was begun anew by erasing what was before, milliseconds since 1970; absent: never. */
  readonly born?: number;
}

/** The id under which the answers to a lesson file stand. They belong to that file's text, so they are kept nowhere. */
export const fileLesson = "file";

/** Progress as it may be kept or saved. */
export function keepable({ runs, ...rest }: Progress): Progress {
  const { [fileLesson]: _file, ...lessons } = runs;
  return { ...rest, runs: lessons };
}

/** Nothing has been answered yet. */
export const noProgress: Progress = { runs: {} };

/**
 * What can be used of progress that was kept. Whether a run fits its lesson is seen when the lesson is opened.
 *
 * Shape   anything → progress.
 * Throws  nothing, whatever was kept.
 *
 * @example progressFrom(null).runs → {}
 */
export function progressFrom(kept: unknown): Progress {
  if (!isRecord(kept)) return noProgress;
  const runs = isRecord(kept["runs"]) ? Object.entries(kept["runs"]).filter(hasRun) : [];
  const review = reviewFrom(kept["review"]);
  const { born } = kept;
  return {
    runs: Object.fromEntries(runs),
    ...(review ? { review } : {}),
    ...(typeof born === "number" && born > 0 && Number.isFinite(born) ? { born } : {}),
  };
}

function reviewFrom(kept: unknown): Review | undefined {
  if (!isRecord(kept)) return undefined;
  const { day, items, runs } = kept;
  if (!isDay(day) || !Array.isArray(items) || !Array.isArray(runs)) return undefined;
  const isSound =
    items.length > 0 &&
    items.length === runs.length &&
    runs.every(isRun) &&
    items.every(
      (item) =>
        isRecord(item) &&
        typeof item["lesson"] === "string" &&
        typeof item["exercise"] === "string",
    );
  return isSound ? { day, items, runs } : undefined;
}

function hasRun(entry: readonly [string, unknown]): entry is [string, LessonState] {
  return isRun(entry[1]);
}

function isRun(run: unknown): run is LessonState {
  return isRecord(run) && isRecord(run["exercises"]);
}
