import { isDay } from "./kept-run.js";
import type { ExerciseState, LessonState } from "./lesson-state.js";

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
  return { runs: Object.fromEntries(runs), ...(review ? { review } : {}) };
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

/**
 * Two progresses as one: of every exercise the state with more tries, so that nothing that was locked is open again;
 * where they are alike, mine. Of two reviews the later.
 *
 * @example mergedProgress(mine, mine) → the same as mine
 */
export function mergedProgress(mine: Progress, theirs: Progress): Progress {
  const ids = new Set([...Object.keys(mine.runs), ...Object.keys(theirs.runs)]);
  const runs = [...ids].map((id) => [id, mergedRun(mine.runs[id], theirs.runs[id])] as const);
  const review = (theirs.review?.day ?? 0) > (mine.review?.day ?? 0) ? theirs.review : mine.review;
  return { runs: Object.fromEntries(runs), ...(review ? { review } : {}) };
}

function mergedRun(mine: LessonState | undefined, theirs: LessonState | undefined): LessonState {
  if (!mine || !theirs) return (mine ?? theirs)!;
  const ids = new Set([...Object.keys(mine.exercises), ...Object.keys(theirs.exercises)]);
  const exercises = [...ids].map(
    (id) => [id, furtherOf(mine.exercises[id], theirs.exercises[id])] as const,
  );
  const day = Math.max(mine.day ?? 0, theirs.day ?? 0);
  return {
    step: mine.step,
    exercises: Object.fromEntries(exercises),
    ...(day > 0 ? { day } : {}),
  };
}

function furtherOf(
  mine: ExerciseState | undefined,
  theirs: ExerciseState | undefined,
): ExerciseState {
  if (!mine || !theirs) return (mine ?? theirs)!;
  return theirs.tries > mine.tries ? theirs : mine;
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
