import type { Blend } from "../engine/blend.js";
import type { FeatureId, ReedModel, Values } from "../engine/model.js";
import { solveFor, type Solution } from "../engine/solve.js";
import { reduceAdvice, type AdviceAction, type AdviceState } from "./advice-state.js";
import { freedomOf } from "./bench-freedom.js";
import { isSheetAction, isTurning, onSheet, type SheetAction } from "./sheet.js";
import { mapFor } from "./measured-map.js";
import {
  onlySheet,
  pinned,
  swapped,
  unpinned,
  withAim,
  withTarget,
  type Moment,
} from "./moment.js";
import { newBench, type Bench, type Layer, type PageName } from "../reed/bench.js";
import { readingsSummary } from "../reed/repeats.js";
import { toThousandths, type LengthUnit } from "../reed/units.js";
import { lookedAt, step, travelled, viewed } from "./undo-step.js";

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

/** The state of a page that has just been opened. */
export function startState(
  model: ReedModel,
  bench: Bench = newBench(model),
  beside: Pick<Moment, "readings" | "sheet"> = { readings: {} },
): BenchState {
  return { model, present: { bench, ...beside }, past: [], future: [], advice: {} };
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
      return isSheetAction(action) ? sheetWritten(state, action) : reduceAdvice(state, action);
  }
}

function sheetWritten(state: BenchState, action: SheetAction): BenchState {
  const present = onSheet(state.present, action);
  return isTurning(action) ? { ...state, present } : step(state, present);
}

function withBench({ following: _over, ...moment }: Moment, change: Partial<Bench>): Moment {
  return { ...moment, bench: { ...moment.bench, ...change } };
}

function withValue(moment: Moment, feature: FeatureId, value: number | undefined): Moment {
  const { [feature]: _before, ...others } = moment.bench.values;
  const { [feature]: _readings, ...readings } = moment.readings;
  const values: Values =
    value === undefined ? others : { ...others, [feature]: toThousandths(value) };
  const { expected = [] } = moment.bench;
  const isExpected = expected.includes(feature);
  if (values[feature] === moment.bench.values[feature] && !isExpected) return moment;
  const bench = { ...moment.bench, values };
  // What is typed has been read, also where it is just what was expected.
  if (isExpected)
    return {
      ...onlySheet(moment),
      bench: { ...bench, expected: expected.filter((id) => id !== feature) },
      readings,
    };
  return { ...onlySheet(moment), bench, readings };
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
  const { done: _others, expected: _expected, ...bench } = moment.bench;
  return { bench: { ...bench, reed, values, ...fresh }, readings };
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
  const { done, expected, ...bench } = moment.bench;
  const same = { ...(done ? { done } : {}), ...(expected ? { expected } : {}) };
  return {
    ...onlySheet(moment),
    bench: { ...bench, ...(fresh ? {} : same), reed, values, finished: true },
    readings: { ...kept.readings, ...readings },
  };
}

function reset({ model, present }: BenchState): Moment {
  const {
    values: _values,
    reed: _reed,
    locked: _locked,
    finished: _finished,
    done: _done,
    expected: _expected,
    ...kept
  } = present.bench;
  return { bench: { ...newBench(model), ...kept }, readings: {} };
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
    const was = before.present; // how it is looked at may have been chosen meanwhile
    return { ...rest, ...before, present: { ...was, bench: lookedAt(bench, was.bench) } };
  }
  return { ...rest, present: rounded ? state.present : ended };
}

/** Whether a gesture has changed neither a reading nor the target. */
function isSameBench(a: Bench, b: Bench): boolean {
  const ids = Object.keys({ ...a.values, ...b.values });
  const aim = (bench: Bench): string => `${bench.target} ${bench.aim?.join(" ")}`;
  return ids.every((id) => a.values[id] === b.values[id]) && aim(a) === aim(b);
}

/** The recipe for the point that was asked for, and what stopped it. */
export function followPoint(model: ReedModel, { bench, following }: Moment): Solution | undefined {
  const map = following && mapFor(model, following.from);
  if (!map || !following) return undefined;
  return solveFor(map, following.from, following.asked, freedomOf(model, bench, following.from));
}
