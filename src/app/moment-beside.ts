import type { FeatureId } from "../engine/model.js";
import { isRecord } from "../lesson/is-record.js";
import { progressFrom } from "../lesson/progress.js";
import type { Bench } from "../reed/bench.js";
import { placesOf, type Place } from "../reed/places.js";
import { inOrder, meanReading, type Reading } from "../reed/readings.js";
import { toThousandths } from "../reed/units.js";
import { isWire } from "../reed/wire-reading.js";
import type { BenchState, LessonFile } from "./bench-state.js";
import type { Moment } from "./moment.js";
import { presentingFrom } from "./presenting.js";
import { blankSheet, type Sheet } from "./blank-sheet.js";

type Beside = Pick<Moment, "readings" | "sheet">;

/**
 * What a reload brings back beside the bench: single readings whose mean is still the bench's value, and the sheet. What
 * does not fit, or is nothing of the kind, is left out.
 */
export function momentBeside(kept: unknown, bench: Bench): Beside {
  const { readings, sheet } = isRecord(kept) ? kept : {};
  const entries = isRecord(readings) ? Object.entries(readings) : [];
  const fitting = entries.flatMap(([id, all]) => {
    const read = readingsFrom(id, all);
    return fits(id, read, bench) ? [[id, read] as const] : [];
  });
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

/** The readings of a feature as they were kept; an earlier version kept them without their places, in the sheet's order. */
function readingsFrom(feature: FeatureId, kept: unknown): readonly Reading[] {
  const all: readonly unknown[] = Array.isArray(kept) ? kept : [];
  const places = placesOf(feature);
  if (isNumbers(all))
    return all.length < places.length
      ? all.map((value, i) => ({ place: places[i]!, value }))
      : inOrder(feature, all);
  return all.every((one) => isReading(one, places)) ? all : [];
}

function isReading(one: unknown, places: readonly Place[]): one is Reading {
  if (!isRecord(one)) return false;
  const { place, value } = one;
  return Number.isFinite(value) && (place === "one" || places.some((known) => known === place));
}

function fits(feature: FeatureId, all: readonly Reading[], { values }: Bench): boolean {
  return all.length > 0 && toThousandths(meanReading(feature, all)) === values[feature];
}

function sheetFrom(kept: unknown): Sheet | undefined {
  if (!isRecord(kept)) return undefined;
  const { step, sound, zero, before, height } = kept;
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
    ...(isHeight(height) ? { height: { feature: height.feature, value: height.value } } : {}),
  };
}

function isHeight(kept: unknown): kept is NonNullable<Sheet["height"]> {
  return isRecord(kept) && isWire(String(kept["feature"])) && Number.isFinite(kept["value"]);
}

function isNumbers(all: readonly unknown[]): all is readonly number[] {
  return all.every((one) => Number.isFinite(one));
}
