import type { FeatureId, Values } from "../engine/model.js";
import type { PlanKind } from "../engine/plan-adjustments.js";
import { valuesAfter } from "../engine/plan-end.js";
import { readingsAfter } from "../engine/plan-notes.js";
import type { SevenValues } from "../engine/qualities.js";
import type { FeatureChange, StandInRequest } from "../engine/stand-ins.js";
import { actionsOf } from "../reed/actions-of.js";
import type { Bench } from "../reed/bench.js";
import type { DoneStep, Sitting } from "../reed/done-steps.js";
import { judgement } from "../reed/looked-advice.js";
import { meanReading, placedReadings, type ListedReadings } from "../reed/readings.js";
import { triedOver, withTried, type Tried } from "../reed/tried.js";
import { toThousandths } from "../reed/units.js";
import type { BenchState } from "./bench-state.js";
import { onlySheet, type Moment } from "./moment.js";
import type { Handlers } from "./reduce-reed.js";
import { isSame, step, viewed } from "./undo-step.js";

/** A stand-in that is tried on the bench. */
export interface Trial {
  /** Which one, by its id in the list. */
  readonly what: string;
  /** What it tries: anything else tried, and the trial is over. */
  readonly tried: Tried;
}

/** What is asked and tried of the advice. No step of undo, and not in the address; what is looked at is in the bench. */
export interface AdviceState {
  /** What the stand-ins are asked for; absent while their list is closed. */
  readonly asked?: StandInRequest;
  readonly trial?: Trial;
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

/** What is done with advice. */
export const adviceHandlers: Handlers<AdviceAction["type"]> = {
  "stand-ins-asked": (state, { request }) => asked(state, request),
  "stand-in-tried": (state, { what, changes }) => tried(state, what, changes),
  "trial-ended": (state) => trialEnded(state),
  "step-done": (state, action) => step(state, stepDone(state, action.step, action.readings)),
  "sitting-begun": (state) => sittingBegun(state),
  "plan-looked-at": (state, { kind }) => viewed(state, { plan: kind }),
  "quality-shown": (state, { quality }) => viewed(state, { quality }),
  "quality-judged": (state, { quality, values }) => judged(state, quality, values),
  "symptom-picked": (state, { symptom }) => looking(state, { symptom }),
};

/** The stand-in that is tried now; undefined once anything else is. */
export function trialOf({ advice, present }: BenchState): Trial | undefined {
  const { trial } = advice;
  return trial && isSame(trial.tried, present.bench.tried) ? trial : undefined;
}

type Change = { readonly [Key in keyof AdviceState]?: AdviceState[Key] | undefined };

function looking(state: BenchState, change: Change): BenchState {
  const all = Object.entries({ ...state.advice, ...change });
  const known = Object.fromEntries(all.filter(([, value]) => value !== undefined));
  return isSame(known, state.advice) ? state : { ...state, advice: known };
}

/** Another question ends a trial: what was tried belongs to the question before. */
function asked(state: BenchState, request: StandInRequest | undefined): BenchState {
  return looking(trialEnded(state), { asked: request });
}

/** Changes are tried over what the reed has; what was tried before gives way. */
function tried(state: BenchState, what: string, changes: readonly FeatureChange[]): BenchState {
  const { bench } = state.present;
  const values = { ...bench.values };
  for (const { feature, change } of changes) {
    const value = bench.values[feature];
    if (value !== undefined) values[feature] = toThousandths(value + change);
  }
  const over = triedOver(bench.values, values);
  if (!over) return state;
  const next = step(state, { ...state.present, bench: withTried(bench, over) });
  return looking(next, { trial: { what, tried: over } });
}

/** Nothing is tried any more. */
function trialEnded(state: BenchState): BenchState {
  const over = looking(state, { trial: undefined });
  if (!trialOf(state)) return over;
  const { present } = over;
  return step(over, { ...present, bench: withTried(present.bench, undefined) });
}

/** The single readings of what has not changed. */
function stillRead({ bench, readings }: Moment, values: Values): Moment["readings"] {
  return Object.fromEntries(
    Object.entries(readings).filter(([id]) => values[id] === bench.values[id]),
  );
}

function stepDone({ model, present }: BenchState, done: DoneStep, listed: ListedReadings): Moment {
  const bench = withTried(present.bench, undefined);
  const read = placedReadings(listed);
  const action = actionsOf(model).actions.find(({ id }) => id === done.action);
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
