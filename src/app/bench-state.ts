import type { Blend } from "../engine/blend.js";
import { finishingFreedom } from "../engine/freedom.js";
import type { FeatureId, Freedom, ReedModel, Values } from "../engine/model.js";
import { solveFor, type Solution } from "../engine/solve.js";
import { isTurning, onSheet, type SheetAction } from "./sheet.js";
import { mapFor } from "./measured-map.js";
import { pinned, swapped, unpinned, withAim, withTarget, type Moment } from "./moment.js";
import { newBench, type Bench, type Layer, type PageName } from "../reed/bench.js";
import { readingsSummary } from "../reed/repeats.js";
import { toThousandths, type LengthUnit } from "../reed/units.js";

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
}

/** Everything a user can do to a bench. */
export type BenchAction =
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
      readonly readings?: Moment["readings"];
    }
  | {
      readonly type: "readings-taken";
      readonly reed: string;
      /** A new reed: what is not in the table is not measured. */
      readonly fresh: boolean;
      readonly readings: Moment["readings"];
    }
  | { readonly type: "bench-opened"; readonly bench: Bench }
  | { readonly type: "reset" }
  | { readonly type: "undo" }
  | { readonly type: "redo" };

const mostUndo = 200;

/** The state of a page that has just been opened. */
export function startState(
  model: ReedModel,
  bench: Bench = newBench(model),
  beside: Pick<Moment, "readings" | "sheet"> = { readings: {} },
): BenchState {
  return { model, present: { bench, ...beside }, past: [], future: [] };
}

/**
 * The next state. Pure; the same state comes back when nothing changes.
 *
 * @example reduce(state, { type: "unit-set", unit: "in" }).present.bench.unit → "in"
 */
export function reduce(state: BenchState, action: BenchAction): BenchState {
  const { present } = state;
  switch (action.type) {
    case "value-set":
      return step(state, withValue(present, action.feature, action.value), action.gesture);
    case "point-moved":
      return pointMoved(state, action.target, action.gesture);
    case "gesture-ended":
      return gestureEnded(state);
    case "lock-set":
      return step(
        state,
        withBench(present, {
          locked: withName(present.bench.locked, action.feature, action.locked),
        }),
      );
    case "finished-set":
      return step(state, withBench(present, { finished: action.finished }));
    case "unit-set":
      return viewed(state, { unit: action.unit });
    case "page-set":
      return viewed(state, { page: action.page });
    case "target-set":
      return step(state, withTarget(state.model, present, action.target));
    case "aim-moved":
      return step(state, withAim(present, action.aim), action.gesture);
    case "reed-pinned":
      return step(state, pinned(present));
    case "reed-unpinned":
      return step(state, unpinned(present));
    case "reeds-swapped":
      return step(state, swapped(present));
    case "layer-set":
      return viewed(state, { layers: withName(present.bench.layers, action.layer, action.on) });
    case "reed-loaded":
      return step(state, loaded(present, action));
    case "readings-taken":
      return step(state, taken(present, action));
    case "bench-opened":
      return step(state, { bench: action.bench, readings: {} });
    case "reset":
      return step(state, reset(state));
    case "undo":
      return travelled(state, "past");
    case "redo":
      return travelled(state, "future");
    default:
      return isTurning(action)
        ? { ...state, present: onSheet(present, action) }
        : step(state, onSheet(present, action));
  }
}

/** A new moment; within one gesture it takes the place of the last one. */
function step(state: BenchState, present: Moment, gesture?: string): BenchState {
  if (present === state.present) return state;
  const { model, past, future } = state;
  const same = gesture !== undefined && gesture === state.gesture;
  const before = same ? state.before : { present: state.present, past, future };
  return {
    model,
    present,
    past: same ? past : [...past, state.present].slice(-mostUndo),
    future: [],
    ...(gesture === undefined || !before ? {} : { gesture, before }),
  };
}

function withBench({ following: _over, ...moment }: Moment, change: Partial<Bench>): Moment {
  return { ...moment, bench: { ...moment.bench, ...change } };
}

/** How the bench is looked at is no step of undo. */
function viewed(state: BenchState, change: Partial<Bench>): BenchState {
  return { ...state, present: { ...state.present, bench: { ...state.present.bench, ...change } } };
}

function withValue(moment: Moment, feature: FeatureId, value: number | undefined): Moment {
  const { [feature]: _before, ...others } = moment.bench.values;
  const { [feature]: _readings, ...readings } = moment.readings;
  const values: Values =
    value === undefined ? others : { ...others, [feature]: toThousandths(value) };
  if (values[feature] === moment.bench.values[feature]) return moment;
  return { ...onlySheet(moment), bench: { ...moment.bench, values }, readings };
}

/** The sheet goes on while values change. */
function onlySheet({ sheet }: Moment): Pick<Moment, "sheet"> {
  return sheet ? { sheet } : {};
}

function withName<T extends string>(names: readonly T[], name: T, on: boolean): readonly T[] {
  const others = names.filter((one) => one !== name);
  return on ? [...others, name] : others;
}

function loaded(
  moment: Moment,
  { reed, values, readings = {} }: { reed: string; values: Values; readings?: Moment["readings"] },
): Moment {
  const fresh = {
    locked: [],
    finished: reed !== "",
    unsound: [],
    overruled: false,
    wet: "",
  } as const;
  return { bench: { ...moment.bench, reed, values, ...fresh }, readings };
}

function taken(
  moment: Moment,
  { reed, fresh, readings }: { reed: string; fresh: boolean; readings: Moment["readings"] },
): Moment {
  const means = Object.entries(readings).map(([id, all]) => [
    id,
    toThousandths(readingsSummary(id, all).mean),
  ]);
  const kept = fresh
    ? { values: {}, readings: {} }
    : { values: moment.bench.values, readings: moment.readings };
  const values = { ...kept.values, ...Object.fromEntries(means) };
  return {
    ...onlySheet(moment),
    bench: { ...moment.bench, reed, values, finished: true },
    readings: { ...kept.readings, ...readings },
  };
}

function reset({ model, present }: BenchState): Moment {
  const {
    values: _values,
    reed: _reed,
    locked: _locked,
    finished: _finished,
    ...kept
  } = present.bench;
  return { bench: { ...newBench(model), ...kept }, readings: {} };
}

function travelled(state: BenchState, way: "past" | "future"): BenchState {
  const { gesture: _open, before: _before, ...rest } = state;
  const reached = way === "past" ? state.past.at(-1) : state.future[0];
  if (!reached) return rest;
  const { unit, layers, page } = state.present.bench;
  const bench = { ...reached.bench, unit, layers, page };
  const { sheet } = state.present;
  // Undo brings readings back, not the place on the sheet.
  const turned = sheet && reached.sheet ? { sheet: { ...reached.sheet, step: sheet.step } } : {};
  const present = { ...reached, ...turned, bench };
  return way === "past"
    ? { ...rest, present, past: state.past.slice(0, -1), future: [state.present, ...state.future] }
    : { ...rest, present, past: [...state.past, state.present], future: state.future.slice(1) };
}

/**
 * The recipe follows the point. It always sets out from the values before the point was first touched, so the
 * way there does not matter: dragging out and back brings the recipe back.
 */
function pointMoved(state: BenchState, asked: Blend, gesture?: string): BenchState {
  const { present } = state;
  const from = present.following?.from ?? present.bench.values;
  const following = { from, asked };
  const solution = followPoint(state.model, { ...present, following });
  if (!solution) return state;
  const bench = { ...present.bench, values: solution.values };
  const readings = Object.fromEntries(
    Object.entries(present.readings).filter(
      ([id]) => solution.values[id] === present.bench.values[id],
    ),
  );
  return step(state, { ...onlySheet(present), bench, readings, following }, gesture);
}

/** Values are kept in whole thousandths; while a gesture runs they are left finer, so that the point does not stutter. */
function gestureEnded(state: BenchState): BenchState {
  const { gesture, before, ...rest } = state;
  const { bench } = state.present;
  const values = Object.fromEntries(
    Object.entries(bench.values).map(([id, value]) => [id, toThousandths(value)]),
  );
  const rounded = Object.entries(values).every(([id, value]) => value === bench.values[id]);
  if (gesture === undefined && rounded) return state;
  const ended = { ...state.present, bench: rounded ? bench : { ...bench, values } };
  if (before && isSameBench(before.present.bench, ended.bench)) {
    const { unit, layers, page } = bench; // may have been chosen meanwhile
    const was = before.present;
    return { ...rest, ...before, present: { ...was, bench: { ...was.bench, unit, layers, page } } };
  }
  return { ...rest, present: rounded ? state.present : ended };
}

/** Whether a gesture has changed neither a reading nor the target. */
function isSameBench(a: Bench, b: Bench): boolean {
  const ids = Object.keys({ ...a.values, ...b.values });
  const aim = (bench: Bench): string => `${bench.target} ${bench.aim?.join(" ")}`;
  return ids.every((id) => a.values[id] === b.values[id]) && aim(a) === aim(b);
}

/** What the features may do when the recipe follows the point. */
function freedomOf(model: ReedModel, bench: Bench, from: Values): Freedom {
  const finishing = bench.finished ? finishingFreedom(model, from) : {};
  return { ...finishing, ...Object.fromEntries(bench.locked.map((id) => [id, { locked: true }])) };
}

/** The recipe for the point that was asked for, and what stopped it. */
export function followPoint(model: ReedModel, { bench, following }: Moment): Solution | undefined {
  const map = following && mapFor(model, following.from);
  if (!map || !following) return undefined;
  return solveFor(map, following.from, following.asked, freedomOf(model, bench, following.from));
}
