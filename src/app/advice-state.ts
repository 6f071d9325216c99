import type { FeatureId, Values } from "../engine/model.js";
import type { HandStandIn } from "../engine/hand-stand-ins.js";
import type { PlanKind } from "../engine/plan-adjustments.js";
import { valuesAfter } from "../engine/plan-end.js";
import { readingsAfter } from "../engine/plan-notes.js";
import type { SevenValues } from "../engine/qualities.js";
import type { FeatureChange, StandInRequest } from "../engine/stand-ins.js";
import { bassoonActions } from "../reed/bassoon.js";
import type { Bench } from "../reed/bench.js";
import type { DoneStep, Sitting } from "../reed/done-steps.js";
import { judgement } from "../reed/looked-advice.js";
import { meanReading, placedReadings, type ListedReadings } from "../reed/readings.js";
import { toThousandths } from "../reed/units.js";
import type { BenchState } from "./bench-state.js";
import { onlySheet, type Moment } from "./moment.js";
import { isSame, seenAs, step, viewed } from "./undo-step.js";

/** A stand-in that is on the reed to be looked at: kept or taken back. */
export interface Trial {
  /** Which one, by its id in the list. */
  readonly what: string;
  /** The reed before it, and what redo would have brought. */
  readonly base: Moment;
  readonly future: readonly Moment[];
  /** The reed with it: any other values, and the trial is over. */
  readonly values: Values;
}

/** What is asked and tried of the advice. No step of undo, and not in the address; what is looked at is in the bench. */
export interface AdviceState {
  /** What the stand-ins are asked for; absent while their list is closed. */
  readonly asked?: StandInRequest;
  readonly trial?: Trial;
  /** What hands do that was kept last, and the reed with it. */
  readonly kept?: { readonly hand: HandStandIn; readonly values: Values };
  /** The trouble that is looked into. */
  readonly symptom?: string;
}

/** What a user can do with advice. */
export type AdviceAction =
  | { readonly type: "stand-ins-asked"; readonly request: StandInRequest | undefined }
  | {
      readonly type: "stand-in-tried";
      readonly what: string;
      readonly changes: readonly FeatureChange[];
    }
  | {
      readonly type: "trial-kept";
      /** What hands do, where it was that. */
      readonly hand?: HandStandIn | undefined;
    }
  | { readonly type: "trial-ended" }
  | {
      readonly type: "step-done";
      readonly step: DoneStep;
      /** New readings; what was not read again is taken as the effects say. */
      readonly readings: ListedReadings;
    }
  | { readonly type: "sitting-begun" }
  | { readonly type: "plan-looked-at"; readonly kind: PlanKind }
  | { readonly type: "quality-shown"; readonly quality: string | undefined }
  | {
      readonly type: "quality-judged";
      readonly quality: string;
      /** Undefined: as it came. */
      readonly values: SevenValues | undefined;
    }
  | { readonly type: "symptom-picked"; readonly symptom: string | undefined };

/** A link stays short: older sittings are for the reed's own record. */
const mostSittings = 8;

/** The next state after something done with advice. */
export function reduceAdvice(state: BenchState, action: AdviceAction): BenchState {
  switch (action.type) {
    case "stand-ins-asked":
      return asked(state, action.request);
    case "stand-in-tried":
      return tried(state, action.what, action.changes);
    case "trial-kept":
      return kept(state, action.hand);
    case "trial-ended":
      return trialEnded(state);
    case "step-done":
      return step(state, stepDone(state, action.step, action.readings));
    case "sitting-begun":
      return sittingBegun(state);
    case "plan-looked-at":
      return viewed(state, { plan: action.kind });
    case "quality-shown":
      return viewed(state, { quality: action.quality });
    case "quality-judged":
      return judged(state, action.quality, action.values);
    case "symptom-picked":
      return looking(state, { symptom: action.symptom });
  }
}

/** The trial that is on the reed now; undefined once anything else has changed the reed. */
export function trialOf({ advice, present, past }: BenchState): Trial | undefined {
  const { trial } = advice;
  const isOn = trial && past.at(-1) === trial.base && present.bench.values === trial.values;
  return isOn ? trial : undefined;
}

/** What hands do that was kept last; undefined once anything else has changed the reed. */
export function keptOf({ advice, present }: BenchState): HandStandIn | undefined {
  return advice.kept?.values === present.bench.values ? advice.kept?.hand : undefined;
}

function kept(state: BenchState, hand: HandStandIn | undefined): BenchState {
  const { values } = state.present.bench;
  return looking(state, { trial: undefined, kept: hand && { hand, values } });
}

type Change = { readonly [Key in keyof AdviceState]?: AdviceState[Key] | undefined };

function looking(state: BenchState, change: Change): BenchState {
  const all = Object.entries({ ...state.advice, ...change });
  const known = Object.fromEntries(all.filter(([, value]) => value !== undefined));
  return isSame(known, state.advice) ? state : { ...state, advice: known };
}

/** Another question ends a trial: what was tried belongs to the question before. */
function asked(state: BenchState, request: StandInRequest | undefined): BenchState {
  return looking(trialEnded(state), { asked: request, kept: undefined });
}

function tried(state: BenchState, what: string, changes: readonly FeatureChange[]): BenchState {
  const { base, future } = trialOf(state) ?? { base: state.present, future: state.future };
  const from = trialEnded(state);
  const before = base.bench.values;
  const values = { ...before };
  for (const { feature, change } of changes) {
    const value = before[feature];
    if (value !== undefined) values[feature] = toThousandths(value + change);
  }
  const bench = { ...from.present.bench, values };
  const next = step(from, {
    ...onlySheet(from.present),
    bench,
    readings: stillRead(from.present, values),
  });
  return looking(next, {
    kept: undefined,
    trial: { what, base: next.past.at(-1)!, future, values },
  });
}

/** The reed as it was before the trial; the trial leaves no step of undo. */
function trialEnded(state: BenchState): BenchState {
  const trial = trialOf(state);
  const over = looking(state, { trial: undefined });
  if (!trial) return state.advice.trial ? over : state;
  const { gesture: _open, before: _before, ...rest } = over;
  const present = seenAs(state, trial.base);
  return { ...rest, present, past: state.past.slice(0, -1), future: trial.future };
}

/** The single readings of what has not changed. */
function stillRead({ bench, readings }: Moment, values: Values): Moment["readings"] {
  return Object.fromEntries(
    Object.entries(readings).filter(([id]) => values[id] === bench.values[id]),
  );
}

function stepDone({ model, present }: BenchState, done: DoneStep, listed: ListedReadings): Moment {
  const { bench } = present;
  const read = placedReadings(listed);
  const action = bassoonActions.actions.find(({ id }) => id === done.action);
  if (!action) return present;
  const expected = valuesAfter(bench.values, [{ action, amount: done.amount }]);
  const values: Record<FeatureId, number> = {};
  for (const [id, value] of Object.entries(expected))
    values[id] = value === bench.values[id] ? value : toThousandths(value);
  for (const [id, all] of Object.entries(read)) values[id] = toThousandths(meanReading(id, all));
  const { done: sittings = [] } = bench;
  const sitting = [...(sittings.at(-1) ?? []), done];
  const unread = notRead(bench, readingsAfter(model, action), Object.keys(read));
  return {
    ...onlySheet(present),
    bench: {
      ...bench,
      values,
      finished: true,
      done: [...sittings.slice(0, -1), sitting],
      ...(unread.length > 0 ? { expected: unread } : {}),
    },
    readings: { ...stillRead(present, values), ...read },
  };
}

/** What a step should have changed and nobody has read since: what the effects say is no reading. */
function notRead(
  { values, expected = [] }: Bench,
  touched: readonly FeatureId[],
  read: readonly FeatureId[],
): FeatureId[] {
  const all = [...new Set([...expected, ...touched])];
  return all.filter((id) => values[id] !== undefined && !read.includes(id));
}

/** Another day: what was done so far no longer limits what may be done. */
function sittingBegun(state: BenchState): BenchState {
  const { present } = state;
  if (today(state).length === 0) return state;
  const done = [...(present.bench.done ?? []), []].slice(-mostSittings);
  return step(state, { ...present, bench: { ...present.bench, done } });
}

const nothingDone: Sitting = [];

/** What has been done to the reed in today's sitting. */
export function today({ present }: BenchState): Sitting {
  return present.bench.done?.at(-1) ?? nothingDone;
}

function judged(state: BenchState, quality: string, values: SevenValues | undefined): BenchState {
  const { [quality]: _before, ...others } = state.present.bench.judged ?? {};
  const all = values
    ? { ...others, [quality]: values.map(judgement) as unknown as SevenValues }
    : others;
  return viewed(state, { judged: Object.keys(all).length > 0 ? all : undefined });
}
