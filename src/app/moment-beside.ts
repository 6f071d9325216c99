import { isRecord } from "../lesson/is-record.js";
import type { FeatureId } from "../engine/model.js";
import { progressFrom } from "../lesson/progress.js";
import type { Bench } from "../reed/bench.js";
import { readingsSummary } from "../reed/repeats.js";
import { toThousandths } from "../reed/units.js";
import type { BenchState, LessonFile } from "./bench-state.js";
import type { Moment } from "./moment.js";
import { presentingFrom } from "./presenting.js";
import { blankSheet, type Sheet } from "./sheet.js";

type Beside = Pick<Moment, "readings" | "sheet">;

/**
 * What a reload brings back beside the bench: single readings whose mean is still the bench's value, and the sheet. What
 * does not fit, or is nothing of the kind, is left out.
 */
export function momentBeside(kept: unknown, bench: Bench): Beside {
  const { readings, sheet } = isRecord(kept) ? kept : {};
  const entries = isRecord(readings) ? Object.entries(readings) : [];
  const fitting = entries.filter(
    (entry): entry is [FeatureId, number[]] =>
      isNumbers(entry[1]) && fits(entry[0], entry[1], bench),
  );
  const found = sheetFrom(sheet);
  return { readings: Object.fromEntries(fitting), ...(found ? { sheet: found } : {}) };
}

/** What a reload brings back of lessons; whether runs fit their lessons is seen when one is opened. */
export function lessonsBeside(
  kept: unknown,
): Pick<BenchState, "progress" | "lessonFile" | "presenting"> {
  if (!isRecord(kept)) return {};
  const { progress, lessonFile } = kept;
  const presenting = presentingFrom(kept["presenting"]);
  const isFile =
    isRecord(lessonFile) &&
    typeof lessonFile["name"] === "string" &&
    typeof lessonFile["text"] === "string";
  return {
    progress: progressFrom(progress),
    ...(presenting ? { presenting } : {}),
    ...(isFile ? { lessonFile: lessonFile as unknown as LessonFile } : {}),
  };
}

function fits(feature: FeatureId, all: readonly number[], { values }: Bench): boolean {
  return all.length > 0 && toThousandths(readingsSummary(feature, all).mean) === values[feature];
}

function sheetFrom(kept: unknown): Sheet | undefined {
  if (!isRecord(kept)) return undefined;
  const { step, sound, zero, before } = kept;
  const answers = isRecord(sound) ? Object.entries(sound) : [];
  const numbers = isRecord(before) ? Object.entries(before) : [];
  return {
    step: typeof step === "number" && Number.isInteger(step) && step >= 0 ? step : blankSheet.step,
    zero: zero === true,
    sound: Object.fromEntries(
      answers.filter((one): one is [string, "ok" | "not"] => one[1] === "ok" || one[1] === "not"),
    ),
    before: Object.fromEntries(
      numbers.filter((one): one is [string, number] => Number.isFinite(one[1])),
    ),
  };
}

function isNumbers(value: unknown): value is number[] {
  return Array.isArray(value) && value.every((one) => Number.isFinite(one));
}
