import type { FeatureId, ReedModel, Values } from "../engine/model.js";
import type { Wet } from "../reed/bench.js";
import { meanReading, type Reading } from "../reed/readings.js";
import { givenValues, withTried, withoutTry } from "../reed/tried.js";
import { toThousandths } from "../reed/units.js";
import type { BenchState } from "./bench-state.js";
import { blankSheet, type Sheet } from "./blank-sheet.js";
import { anotherReed, type Moment } from "./moment.js";
import type { Handlers } from "./reduce-reed.js";
import { isSame, step as recordStep } from "./undo-step.js";

/** What a user can do on the guided sheet. */
export type SheetAction =
  | { readonly type: "sheet-moved"; readonly step: number }
  | { readonly type: "zero-set"; readonly on: boolean }
  | { readonly type: "height-read"; readonly height: Sheet["height"] | undefined }
  | { readonly type: "sound-set"; readonly check: string; readonly answer: "ok" | "not" }
  | { readonly type: "overruled-set"; readonly on: boolean }
  | { readonly type: "wet-set"; readonly wet: Wet }
  | { readonly type: "set-started"; readonly reed: string; readonly wet: Wet }
  | {
      readonly type: "places-read";
      readonly feature: FeatureId;
      /** All readings of it, in its own unit; none: not measured. */
      readonly readings: readonly Reading[];
      /** What the reed is called once it has readings, if it is one that the product brings along. */
      readonly own: string;
    }
  | {
      readonly type: "reed-worked";
      readonly features: readonly FeatureId[];
      readonly own: string;
    };

type SheetType = SheetAction["type"];

/** Actions that only turn the pages of the sheet, or tell of the gauge, are no step of undo. */
const turning: ReadonlySet<SheetType> = new Set(["sheet-moved", "zero-set", "height-read"]);

/** A reed that the product brings along becomes one of one's own as soon as something is read on it. */
function ownReed(model: ReedModel, moment: Moment, own: string): Moment {
  const { bench } = moment;
  if (!givenValues(model, bench)) return moment;
  return { ...moment, bench: { ...withTried(bench, undefined), reed: own, finished: true } };
}

type Change<T extends SheetType> = (
  moment: Moment,
  action: Extract<SheetAction, { readonly type: T }>,
) => Moment;

const changes: { readonly [T in SheetType]: Change<T> } = {
  "sheet-moved": (moment, { step }) => written(moment, { step }),
  "zero-set": (moment, { on }) => written(moment, { zero: on }),
  "height-read": (moment, { height }) => withHeight(moment, height),
  "sound-set": (moment, { check, answer }) => {
    const sound = { ...(moment.sheet ?? blankSheet).sound, [check]: answer };
    // What a link says of the reed stays true until that very look is answered.
    const others = moment.bench.unsound.filter((id) => id !== check);
    const unsound = answer === "not" ? [...others, check] : others;
    return withFields(written(moment, { sound }), { unsound });
  },
  "overruled-set": (moment, { on }) => withFields(moment, { overruled: on }),
  "wet-set": (moment, { wet }) => withFields(moment, { wet }),
  "set-started": ({ bench, sheet = blankSheet }, { reed, wet }) => {
    const { sound, zero, step } = sheet;
    // Another set of the same reed: what the looks have found still holds.
    const { unsound, overruled } = bench;
    const looks = reed === bench.reed ? { unsound, overruled } : {};
    const fresh = { ...anotherReed(bench, { reed, values: {} }), finished: true, wet, ...looks };
    return { bench: fresh, readings: {}, sheet: { ...blankSheet, sound, zero, step } };
  },
  "places-read": (moment, { feature, readings }) => {
    const { [feature]: _value, ...values } = moment.bench.values;
    const { [feature]: _all, ...others } = moment.readings;
    const read = withHeight({ ...moment, bench: withoutTry(moment.bench, feature) }, undefined);
    if (readings.length === 0) return { ...unmeasured(read, values), readings: others };
    const mean = toThousandths(meanReading(feature, readings));
    const all = { ...others, [feature]: readings };
    return { ...withFields(read, { values: { ...values, [feature]: mean } }), readings: all };
  },
  "reed-worked": (moment, { features }) => {
    const left = <T>(all: Readonly<Record<FeatureId, T>>): Record<FeatureId, T> =>
      Object.fromEntries(Object.entries(all).filter(([id]) => !features.includes(id)));
    const { values } = moment.bench;
    const before = { ...(moment.sheet ?? blankSheet).before, ...values };
    const bench = { ...withTried(moment.bench, undefined), values: left(values) };
    return {
      bench,
      readings: left(moment.readings),
      sheet: { ...(moment.sheet ?? blankSheet), before },
    };
  },
};

/** What is not measured any more is not held either. */
function unmeasured(moment: Moment, values: Values): Moment {
  return withFields(moment, { values, locked: moment.bench.locked.filter((id) => id in values) });
}

function withHeight(moment: Moment, read: Sheet["height"]): Moment {
  const { height: _before, ...sheet } = moment.sheet ?? blankSheet;
  if (!read && !moment.sheet) return moment;
  return { ...moment, sheet: read ? { ...sheet, height: read } : sheet };
}

function written(moment: Moment, change: Partial<Sheet>): Moment {
  return { ...moment, sheet: { ...(moment.sheet ?? blankSheet), ...change } };
}

function withFields(moment: Moment, change: Partial<Moment["bench"]>): Moment {
  return { ...moment, bench: { ...moment.bench, ...change } };
}

function onSheet(state: BenchState, action: SheetAction): BenchState {
  const { model, present } = state;
  const change = changes[action.type] as (before: Moment, done: SheetAction) => Moment;
  const moment = "own" in action ? ownReed(model, present, action.own) : present;
  const next = change(moment, action);
  if (!turning.has(action.type)) return recordStep(state, next);
  return isSame(next, present) ? state : { ...state, present: next };
}

/** What is done on the guided sheet. */
export const sheetHandlers = Object.fromEntries(
  Object.keys(changes).map((type) => [type, onSheet]),
) as unknown as Handlers<SheetType>;
