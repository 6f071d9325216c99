import { isRecord } from "./is-record.js";
import { isAnswerTo, type Answer } from "./answer.js";
import { isDay } from "./day.js";
import type { Lesson } from "./lesson.js";
import {
  exerciseAt,
  isWhole,
  lessonState,
  type ExerciseState,
  type LessonState,
} from "./lesson-state.js";

/**
 * What can be used of a run that was kept: answers that still fit their exercises, locks that have an answer.
 *
 * Shape   a lesson, anything → a state of that lesson.
 * Throws  nothing, whatever was kept.
 *
 * @example keptRun(lesson, null).step → 0
 */
export function keptRun(lesson: Lesson, kept: unknown): LessonState {
  if (!isRecord(kept)) return lessonState(lesson);
  const found = isRecord(kept["exercises"]) ? Object.entries(kept["exercises"]) : [];
  const exercises = found.flatMap(([id, state]) => {
    const sound = soundExercise(lesson, id, state);
    return sound ? [[id, sound] as const] : [];
  });
  const { step, day } = kept;
  return {
    ...lessonState(lesson, typeof step === "number" ? step : 0),
    exercises: Object.fromEntries(exercises),
    ...(isDay(day) ? { day } : {}),
  };
}

function soundExercise(lesson: Lesson, id: string, kept: unknown): ExerciseState | undefined {
  const block = exerciseAt(lesson, id);
  if (!block || !isRecord(kept)) return undefined;
  const answer = answerFrom(kept["answer"]);
  const fits = answer !== undefined && isAnswerTo(block, answer);
  const count = (value: unknown, most: number): number =>
    typeof value === "number" && Number.isInteger(value) && value > 0 ? Math.min(value, most) : 0;
  return {
    ...(fits ? { answer } : {}),
    locked: kept["locked"] === true && fits && isWhole(answer),
    hints: count(kept["hints"], 3),
    tries: count(kept["tries"], 9999),
  };
}

/** Of the right shape at least; `isAnswerTo` judges the numbers. */
function answerFrom(kept: unknown): Answer | undefined {
  if (!isRecord(kept)) return undefined;
  const { kind, guess, shares, actions, values, option } = kept;
  const isShaped =
    (kind === "predict" && Array.isArray(guess)) ||
    (kind === "read" && Array.isArray(shares)) ||
    (kind === "order" && Array.isArray(actions)) ||
    (kind === "choose" && typeof option === "number") ||
    ((kind === "aim" || kind === "stand-in") && isRecord(values));
  return isShaped ? (kept as unknown as Answer) : undefined;
}
