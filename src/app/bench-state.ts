import type { Blend } from "../engine/blend.js";
import type { FeatureId, ReedModel, Values } from "../engine/model.js";
import { adviceHandlers, type AdviceAction, type AdviceState } from "./advice-state.js";
import { sheetHandlers, type SheetAction } from "./sheet.js";
import { anotherReed, onlySheet, pinned, swapped, unpinned, type Moment } from "./moment.js";
import type { Presenting } from "./presenting.js";
import type { LessonState } from "../lesson/lesson-state.js";
import { fileLesson, type Progress } from "../lesson/progress.js";
import { allRoundValues } from "../reed/all-round-values.js";
import type { Bench, Layer, OpenLesson, PageName } from "../reed/bench.js";
import { meanReading, placedReadings, type ListedReadings } from "../reed/readings.js";
import { toThousandths, type LengthUnit } from "../reed/units.js";
import type { Route } from "../reed/route.js";
import { withTried } from "../reed/tried.js";
import { isSame, step, viewed } from "./undo-step.js";
import { handled, pointHandlers, withBench, type Handlers } from "./reduce-reed.js";
import { valueHandlers } from "./reduce-values.js";

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
  /** One feature is tried no more. */
  | { readonly type: "try-left"; readonly feature: FeatureId }
  /** What is tried for a feature has been read. */
  | { readonly type: "try-accepted"; readonly feature: FeatureId }
  /** Nothing is tried any more. */
  | { readonly type: "as-measured" }
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

const handlers: Handlers<BenchAction["type"]> = {
  ...pointHandlers,
  ...valueHandlers,
  ...sheetHandlers,
  ...adviceHandlers,
  "finished-set": (state, { finished }) =>
    step(state, withBench(state, { ...state.present.bench, finished })),
  "unit-set": (state, { unit }) => viewed(state, { unit }),
  "page-set": (state, { page }) => viewed(state, { page }),
  "place-revisited": (state, { route }) => revisited(state, route),
  "lesson-opened": (state, { lesson }) => viewed(state, { lesson }),
  "lesson-worked": (state, action) => withRun(state, action),
  "progress-set": (state, { progress }) => withProgress(state, progress),
  "presenting-set": (state, { presenting }) => withPresenting(state, presenting),
  "lesson-file-opened": (state, { file }) => withLessonFile(state, file),
  "reed-pinned": (state) => step(state, pinned(state.present)),
  "reed-unpinned": (state) => step(state, unpinned(state.present)),
  "reeds-swapped": (state) => step(state, swapped(state.model, state.present)),
  "reed-loaded": (state, action) => step(state, loaded(state.present, action)),
  "readings-taken": (state, action) => step(state, taken(state.present, action)),
  "bench-opened": (state, { bench }) => step(state, { bench, readings: {} }),
  reset: (state) => step(state, reset(state)),
};

/**
 * The next state. Pure; the same state comes back when nothing changes.
 *
 * @example reduce(state, { type: "unit-set", unit: "in" }).present.bench.unit → "in"
 */
export function reduce(state: BenchState, action: BenchAction): BenchState {
  return handled(handlers, state, action);
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
  const progress = { ...state.progress, runs };
  const isKnown = isSame([lessonFile, progress], [state.lessonFile, state.progress]);
  return isKnown ? opened : { ...opened, lessonFile, progress };
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
    bench: { ...withTried(before.bench, undefined), reed, values, finished: true },
    readings: { ...before.readings, ...read },
  };
}

function reset({ model, present }: BenchState): Moment {
  return {
    bench: anotherReed(present.bench, { reed: "", values: allRoundValues(model) }),
    readings: {},
  };
}
