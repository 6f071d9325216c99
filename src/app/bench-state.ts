import type { Blend } from "../engine/blend.js";
import type { FeatureId, ReedModel, Values } from "../engine/model.js";
import { reduceAdvice, type AdviceAction, type AdviceState } from "./advice-state.js";
import { isSheetAction, isTurning, onSheet, type SheetAction } from "./sheet.js";
import { anotherReed, onlySheet, pinned, swapped, unpinned, type Moment } from "./moment.js";
import type { Presenting } from "./presenting.js";
import type { LessonState } from "../lesson/lesson-state.js";
import { fileLesson, type Progress } from "../lesson/progress.js";
import { allRoundValues } from "../reed/all-round-values.js";
import type { Bench, Layer, OpenLesson, PageName } from "../reed/bench.js";
import { meanReading, placedReadings, type ListedReadings } from "../reed/readings.js";
import { toThousandths, type LengthUnit } from "../reed/units.js";
import type { Route } from "../reed/route.js";
import { isSame, step, viewed } from "./undo-step.js";
import { isReedAction, reduceReed, withChange } from "./reduce-reed.js";

export { followPoint, startState } from "./reduce-reed.js";

/** A lesson file as it was read. */
export interface LessonFile {
  readonly name: string;
  readonly text: string;
}

/** The id of a review in a link. */
export const reviewLessonId = "review";

/** The one state of the bench page. */
export interface BenchState {
  readonly model: ReedModel;
  readonly present: Moment;
  readonly past: readonly Moment[];
  readonly future: readonly Moment[];
  /** Changes of one gesture are one step of undo. */
  readonly gesture?: string;
  /** What was before the gesture that runs: a gesture that ends where it began has done nothing. */
  readonly before?: Pick<BenchState, "present" | "past" | "future">;
  /** What is asked, tried and looked at of stand-ins, plans, qualities and troubles. */
  readonly advice: AdviceState;
  /** How far the lessons are: no step of undo, for a locked guess stays locked. */
  readonly progress?: Progress;
  /** A lesson file that was opened in the page. */
  readonly lessonFile?: LessonFile;
  /** While a lesson is presented to a class. */
  readonly presenting?: Presenting;
}

/** Everything a user can do to a bench. */
export type BenchAction =
  | AdviceAction
  | {
      readonly type: "value-set";
      readonly feature: FeatureId;
      readonly value: number | undefined;
      readonly gesture?: string;
    }
  | { readonly type: "point-moved"; readonly target: Blend; readonly gesture?: string }
  | { readonly type: "gesture-ended" }
  | { readonly type: "lock-set"; readonly feature: FeatureId; readonly locked: boolean }
  | { readonly type: "finished-set"; readonly finished: boolean }
  | { readonly type: "unit-set"; readonly unit: LengthUnit }
  | SheetAction
  | { readonly type: "page-set"; readonly page: PageName }
  | { readonly type: "place-revisited"; readonly route: Route }
  | { readonly type: "lesson-opened"; readonly lesson?: OpenLesson; readonly says: string }
  | {
      readonly type: "lesson-worked";
      readonly id: string;
      readonly run: LessonState;
      readonly says: string;
    }
  | { readonly type: "progress-set"; readonly progress: Progress; readonly says: string }
  | { readonly type: "presenting-set"; readonly presenting: Presenting | undefined }
  | { readonly type: "lesson-file-opened"; readonly file: LessonFile; readonly says: string }
  | { readonly type: "target-set"; readonly target: string }
  | { readonly type: "aim-moved"; readonly aim: Blend; readonly gesture?: string }
  | { readonly type: "reed-pinned" }
  | { readonly type: "reed-unpinned" }
  | { readonly type: "reeds-swapped" }
  | { readonly type: "layer-set"; readonly layer: Layer; readonly on: boolean }
  | {
      readonly type: "reed-loaded";
      readonly reed: string;
      readonly values: Values;
      readonly readings?: ListedReadings;
    }
  | {
      readonly type: "readings-taken";
      readonly reed: string;
      /** A new reed: what is not in the table is not measured. */
      readonly fresh: boolean;
      readonly readings: ListedReadings;
    }
  | { readonly type: "bench-opened"; readonly bench: Bench }
  | { readonly type: "reset" }
  | { readonly type: "undo" }
  | { readonly type: "redo" };

/**
 * The next state. Pure; the same state comes back when nothing changes.
 *
 * @example reduce(state, { type: "unit-set", unit: "in" }).present.bench.unit → "in"
 */
export function reduce(state: BenchState, action: BenchAction): BenchState {
  const { present } = state;
  switch (action.type) {
    case "finished-set":
      return step(state, withChange(present, { finished: action.finished }));
    case "unit-set":
      return viewed(state, { unit: action.unit });
    case "lesson-opened":
      return viewed(state, { lesson: action.lesson });
    case "lesson-worked":
      return withRun(state, action);
    case "progress-set":
      return withProgress(state, action.progress);
    case "presenting-set":
      return withPresenting(state, action.presenting);
    case "lesson-file-opened":
      return withLessonFile(state, action.file);
    case "place-revisited":
      return revisited(state, action.route);
    case "page-set":
      return viewed(state, { page: action.page });
    case "reed-pinned":
      return step(state, pinned(present));
    case "reed-unpinned":
      return step(state, unpinned(present));
    case "reeds-swapped":
      return step(state, swapped(present));
    case "reed-loaded":
      return step(state, loaded(present, action));
    case "readings-taken":
      return step(state, taken(present, action));
    case "bench-opened":
      return step(state, { bench: action.bench, readings: {} });
    case "reset":
      return step(state, reset(state));
    default:
      if (isReedAction(action)) return reduceReed(state, action);
      return isSheetAction(action) ? sheetWritten(state, action) : reduceAdvice(state, action);
  }
}

function withRun(
  state: BenchState,
  { id, run }: { readonly id: string; readonly run: LessonState },
): BenchState {
  const { progress } = state;
  return withProgress(state, { ...progress, runs: { ...progress?.runs, [id]: run } });
}

function withProgress(state: BenchState, progress: Progress): BenchState {
  return isSame(progress, state.progress) ? state : { ...state, progress };
}

function withPresenting(state: BenchState, presenting: Presenting | undefined): BenchState {
  const { presenting: before, ...rest } = state;
  if (isSame(presenting, before)) return state;
  return presenting ? { ...rest, presenting } : rest;
}

/** A lesson that is left by Back is not presented any more; a page beside the lessons leaves the open one as it is. */
function revisited(state: BenchState, { page, lesson }: Route): BenchState {
  if (page !== "lessons") return viewed(state, { page });
  const left = lesson ? state : withPresenting(state, undefined);
  return viewed(left, { page, lesson });
}

/** The same file again is one that its author has mended: the step stays, the answers are those of another text. */
function withLessonFile(state: BenchState, lessonFile: LessonFile): BenchState {
  const { lesson } = state.present.bench;
  const isAgain = lesson?.id === fileLesson && state.lessonFile?.name === lessonFile.name;
  const opened = viewed(state, { lesson: { id: fileLesson, step: isAgain ? lesson.step : 0 } });
  const { [fileLesson]: _old, ...runs } = state.progress?.runs ?? {};
  return { ...opened, lessonFile, progress: { ...state.progress, runs } };
}

function sheetWritten(state: BenchState, action: SheetAction): BenchState {
  const present = onSheet(state.present, action);
  return isTurning(action) ? { ...state, present } : step(state, present);
}

function loaded(
  { bench }: Moment,
  { readings = {}, ...reed }: { reed: string; values: Values; readings?: ListedReadings },
): Moment {
  return { bench: anotherReed(bench, reed), readings: placedReadings(readings) };
}

function taken(
  moment: Moment,
  { reed, fresh, readings }: { reed: string; fresh: boolean; readings: ListedReadings },
): Moment {
  const before = fresh
    ? { bench: anotherReed(moment.bench, { reed, values: {} }), readings: {} }
    : { ...onlySheet(moment), bench: moment.bench, readings: moment.readings };
  const read = placedReadings(readings);
  const means = Object.entries(read).map(([id, all]) => [id, toThousandths(meanReading(id, all))]);
  const values = { ...before.bench.values, ...Object.fromEntries(means) };
  return {
    ...before,
    bench: { ...before.bench, reed, values, finished: true },
    readings: { ...before.readings, ...read },
  };
}

function reset({ model, present }: BenchState): Moment {
  return {
    bench: anotherReed(present.bench, { reed: "", values: allRoundValues(model) }),
    readings: {},
  };
}
