import type { Bench } from "../reed/bench.js";
import type { BenchState } from "./bench-state.js";
import type { Moment } from "./moment.js";

const mostUndo = 200;

/** A new moment; within one gesture it takes the place of the last one. */
export function step(state: BenchState, present: Moment, gesture?: string): BenchState {
  if (present === state.present) return state;
  const { model, past, future, advice } = state;
  const same = gesture !== undefined && gesture === state.gesture;
  const before = same ? state.before : { present: state.present, past, future };
  return {
    model,
    present,
    past: same ? past : [...past, state.present].slice(-mostUndo),
    future: [],
    advice,
    ...(gesture === undefined || !before ? {} : { gesture, before }),
  };
}

/** How the bench is looked at is no step of undo. */
export function viewed(state: BenchState, change: Partial<Bench>): BenchState {
  return { ...state, present: { ...state.present, bench: { ...state.present.bench, ...change } } };
}

/** One step back or forth; how the bench is looked at stays. */
export function travelled(state: BenchState, way: "past" | "future"): BenchState {
  const { gesture: _open, before: _before, ...rest } = state;
  const reached = way === "past" ? state.past.at(-1) : state.future[0];
  if (!reached) return rest;
  const present = seenAs(state, reached);
  return way === "past"
    ? { ...rest, present, past: state.past.slice(0, -1), future: [state.present, ...state.future] }
    : { ...rest, present, past: [...state.past, state.present], future: state.future.slice(1) };
}

/** Another moment, looked at as the present one is. */
export function seenAs({ present }: BenchState, moment: Moment): Moment {
  const { unit, layers, page } = present.bench;
  const { sheet } = present;
  // Undo brings readings back, not the place on the sheet.
  const turned = sheet && moment.sheet ? { sheet: { ...moment.sheet, step: sheet.step } } : {};
  return { ...moment, ...turned, bench: { ...moment.bench, unit, layers, page } };
}
