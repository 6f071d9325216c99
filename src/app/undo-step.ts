import type { Bench } from "../reed/bench.js";
import type { BenchState } from "./bench-state.js";
import type { Moment } from "./moment.js";
import { blankSheet } from "./blank-sheet.js";

const mostUndo = 200;

/** A new moment; within one gesture it takes the place of the last one. What changes nothing is no step. */
export function step(state: BenchState, present: Moment, gesture?: string): BenchState {
  if (isSame(present, state.present)) return state;
  const { gesture: open, before: begun, ...rest } = state;
  const { past, future } = rest;
  const same = gesture !== undefined && gesture === open;
  const before = same ? begun : { present: state.present, past, future };
  return {
    ...rest,
    present: withoutRead(present),
    past: same ? past : [...past, state.present].slice(-mostUndo),
    future: [],
    ...(gesture === undefined || !before ? {} : { gesture, before }),
  };
}

/** What has been read, or is not measured any more, is no longer only expected. */
function withoutRead(moment: Moment): Moment {
  const { expected, ...bench } = moment.bench;
  const left = expected?.filter((id) => !(id in moment.readings) && id in bench.values);
  if (!expected || !left || left.length === expected.length) return moment;
  return { ...moment, bench: left.length > 0 ? { ...bench, expected: left } : bench };
}

/** A bench of which some things may be missing. */
type Loose = { readonly [Key in keyof Bench]?: Bench[Key] | undefined };

/** What is undefined is not there at all. */
function defined(bench: Loose): Bench {
  const there = Object.entries(bench).filter(([, value]) => value !== undefined);
  return Object.fromEntries(there) as unknown as Bench;
}

/** How the bench is looked at is no step of undo. */
export function viewed(state: BenchState, change: Loose): BenchState {
  const { present } = state;
  const bench = defined({ ...present.bench, ...change });
  return isSame(bench, present.bench) ? state : { ...state, present: { ...present, bench } };
}

/** Whether two plain values hold the same. */
export function isSame(a: unknown, b: unknown): boolean {
  return a === b || JSON.stringify(a) === JSON.stringify(b);
}

/** One step back or forth; how the bench is looked at stays. */
export function travelled(state: BenchState, way: "past" | "future"): BenchState {
  const { gesture: _open, before: _before, ...rest } = state;
  const reached = way === "past" ? state.past.at(-1) : state.future[0];
  if (!reached) return state.gesture === undefined ? state : rest;
  const present = seenAs(state, reached);
  return way === "past"
    ? { ...rest, present, past: state.past.slice(0, -1), future: [state.present, ...state.future] }
    : { ...rest, present, past: [...state.past, state.present], future: state.future.slice(1) };
}

/** Another moment, looked at as the present one is. */
export function seenAs({ present }: BenchState, moment: Moment): Moment {
  return {
    ...moment,
    ...sheetThen(present, moment),
    bench: lookedAt(present.bench, moment.bench),
  };
}

/** Undo brings answers and readings back; neither the page of the sheet nor what was done to the gauge. */
function sheetThen(present: Moment, moment: Moment): Pick<Moment, "sheet"> {
  const isSameReed = present.bench.reed === moment.bench.reed;
  if (!present.sheet || (!moment.sheet && !isSameReed)) return {};
  const { step: page, zero } = present.sheet;
  return { sheet: { ...(moment.sheet ?? blankSheet), step: page, zero } };
}

/** A bench, looked at as another one is. */
export function lookedAt(looks: Bench, bench: Bench): Bench {
  const { unit, layers, page, lesson, plan, quality, judged } = looks;
  return defined({ ...bench, unit, layers, page, lesson, plan, quality, judged });
}
