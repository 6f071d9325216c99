import type { FeatureId, Values } from "../engine/model.js";
import type { Wet } from "../reed/bench.js";
import { readingsSummary } from "../reed/repeats.js";
import { toThousandths } from "../reed/units.js";
import type { Moment } from "./moment.js";

/** How far a person has come on the guided sheet. */
export interface Sheet {
  /** 0 soundness, 1 state, then the features in the order of measuring, last the summary. */
  readonly step: number;
  /** The answers to the look before measuring. */
  readonly sound: Readonly<Record<string, "ok" | "not">>;
  /** Whether the gauge's zero has been checked. */
  readonly zero: boolean;
  /** What was read before something was done to the reed: a guide where it is to be read again. */
  readonly before: Values;
}

/** What a user can do on the guided sheet. */
export type SheetAction =
  | { readonly type: "sheet-moved"; readonly step: number }
  | { readonly type: "zero-set"; readonly on: boolean }
  | { readonly type: "sound-set"; readonly check: string; readonly answer: "ok" | "not" }
  | { readonly type: "overruled-set"; readonly on: boolean }
  | { readonly type: "wet-set"; readonly wet: Wet }
  | { readonly type: "set-started"; readonly reed: string; readonly wet: Wet }
  | {
      readonly type: "places-read";
      readonly feature: FeatureId;
      /** All readings of it, in its own unit; none: not measured. */
      readonly readings: readonly number[];
    }
  | { readonly type: "reed-worked"; readonly features: readonly FeatureId[] };

/** A sheet nobody has written on. */
export const blankSheet: Sheet = { step: 0, sound: {}, zero: false, before: {} };

/** Whether an action is one of the sheet's. */
export function isSheetAction(action: { readonly type: string }): action is SheetAction {
  return action.type in changes;
}

/** Whether an action only turns the pages of the sheet: no step of undo. */
export function isTurning({ type }: SheetAction): boolean {
  return type === "sheet-moved" || type === "zero-set";
}

/** The moment after an action on the sheet; the same one when nothing changes. */
export function onSheet(moment: Moment, action: SheetAction): Moment {
  const change = changes[action.type] as (before: Moment, done: SheetAction) => Moment;
  return change(moment, action);
}

type Change<T extends SheetAction["type"]> = (
  moment: Moment,
  action: Extract<SheetAction, { readonly type: T }>,
) => Moment;

const changes: { readonly [T in SheetAction["type"]]: Change<T> } = {
  "sheet-moved": (moment, { step }) => written(moment, { step }),
  "zero-set": (moment, { on }) => written(moment, { zero: on }),
  "sound-set": (moment, { check, answer }) => {
    const sound = { ...(moment.sheet ?? blankSheet).sound, [check]: answer };
    const unsound = Object.keys(sound).filter((id) => sound[id] === "not");
    return withFields(written(moment, { sound }), { unsound });
  },
  "overruled-set": (moment, { on }) => withFields(moment, { overruled: on }),
  "wet-set": (moment, { wet }) => withFields(moment, { wet }),
  "set-started": (moment, { reed, wet }) => {
    const { sound, zero } = moment.sheet ?? blankSheet;
    const { done: _others, expected: _expected, ...before } = moment.bench;
    const bench = { ...before, reed, wet, values: {}, locked: [], finished: true };
    return {
      bench,
      readings: {},
      sheet: { ...blankSheet, sound, zero, step: moment.sheet?.step ?? 0 },
    };
  },
  "places-read": (moment, { feature, readings }) => {
    const { [feature]: _value, ...values } = moment.bench.values;
    const { [feature]: _all, ...others } = moment.readings;
    if (readings.length === 0) return { ...moment, ...kept(moment, values), readings: others };
    const mean = toThousandths(readingsSummary(feature, readings).mean);
    const read = { ...others, [feature]: readings };
    return { ...moment, ...kept(moment, { ...values, [feature]: mean }), readings: read };
  },
  "reed-worked": (moment, { features }) => {
    const left = (all: Readonly<Record<FeatureId, unknown>>) =>
      Object.fromEntries(Object.entries(all).filter(([id]) => !features.includes(id)));
    const { values } = moment.bench;
    const before = { ...(moment.sheet ?? blankSheet).before, ...values };
    const bench = { ...moment.bench, values: left(values) as Values };
    const readings = left(moment.readings) as Moment["readings"];
    return { bench, readings, sheet: { ...(moment.sheet ?? blankSheet), before } };
  },
};

function kept({ bench }: Moment, values: Values): Pick<Moment, "bench"> {
  return { bench: { ...bench, values } };
}

function written(moment: Moment, change: Partial<Sheet>): Moment {
  return { ...moment, sheet: { ...(moment.sheet ?? blankSheet), ...change } };
}

function withFields(moment: Moment, change: Partial<Moment["bench"]>): Moment {
  return { ...moment, bench: { ...moment.bench, ...change } };
}
