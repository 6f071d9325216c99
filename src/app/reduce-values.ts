import type { FeatureId } from "../engine/model.js";
import type { Readings } from "../reed/readings.js";
import { givenValues, shownValues, triedOver, withTried, withoutTry } from "../reed/tried.js";
import { toThousandths } from "../reed/units.js";
import type { BenchAction, BenchState } from "./bench-state.js";
import type { Moment } from "./moment.js";
import { withBench, withName, type Handlers } from "./reduce-reed.js";
import { step } from "./undo-step.js";

/** What is done to a reed feature by feature. */
export const valueHandlers: Handlers<"value-set" | "try-left" | "try-accepted" | "lock-set"> = {
  "value-set": (state, action) => {
    const { feature, value, gesture } = action;
    // What is locked cannot be left out either: the lock would hold nothing.
    const isHeld = value === undefined && state.present.bench.locked.includes(feature);
    return isHeld ? state : step(state, withValue(state, action), gesture);
  },
  "try-left": (state, { feature }) =>
    step(state, withBench(state, withoutTry(state.present.bench, feature))),
  "try-accepted": (state, { feature }) => step(state, accepted(state, feature)),
  "lock-set": (state, { feature, locked }) => {
    const { bench } = state.present;
    const all = withName(bench.locked, feature, locked);
    return step(state, withBench(state, { ...bench, locked: all }));
  },
};

/**
 * What is typed into an empty row of a reed of one's own is a reading, and so is what is typed where a step has left
 * only an expectation. Everything else is tried: what the reed has stays.
 */
function withValue(
  state: BenchState,
  { feature, value, gesture }: Extract<BenchAction, { readonly type: "value-set" }>,
): Moment {
  const { bench } = state.present;
  const set = value === undefined ? undefined : toThousandths(value);
  const isUnread =
    bench.values[feature] === undefined ||
    (gesture === undefined && bench.expected?.includes(feature));
  if (set !== undefined && isUnread && !givenValues(state.model, bench))
    return withReading(state, feature, set);
  const { [feature]: _before, ...others } = shownValues(bench);
  const values = set === undefined ? others : { ...others, [feature]: set };
  return withBench(state, withTried(bench, triedOver(bench.values, values)));
}

/** A feature has been read, at nobody has said which place. */
function withReading(state: BenchState, feature: FeatureId, value: number): Moment {
  const bench = withoutTry(state.present.bench, feature);
  const values = { ...bench.values, [feature]: value };
  const readings: Readings = { ...state.present.readings, [feature]: [{ place: "one", value }] };
  return { ...withBench(state, { ...bench, values }), readings };
}

/** What is tried for one feature becomes its reading; of a reed that the product brings along nothing is read. */
function accepted(state: BenchState, feature: FeatureId): Moment {
  const { model, present } = state;
  const value = present.bench.tried?.[feature];
  const isRead = typeof value === "number" && !givenValues(model, present.bench);
  return isRead ? withReading(state, feature, value) : present;
}
