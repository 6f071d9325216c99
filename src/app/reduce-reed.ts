import type { Blend } from "../engine/blend.js";
import type { FeatureId, ReedModel, Values } from "../engine/model.js";
import { solveFor, type Solution } from "../engine/solve.js";
import type { Bench } from "../reed/bench.js";
import { newBench } from "../reed/new-bench.js";
import { toThousandths } from "../reed/units.js";
import { freedomOf } from "./bench-freedom.js";
import type { BenchAction, BenchState } from "./bench-state.js";
import { mapFor } from "./measured-map.js";
import { onlySheet, withAim, withTarget, type Moment } from "./moment.js";
import { lookedAt, step, travelled, viewed } from "./undo-step.js";

const types = [
  "value-set",
  "point-moved",
  "gesture-ended",
  "lock-set",
  "layer-set",
  "target-set",
  "aim-moved",
  "undo",
  "redo",
] as const;

/** What is done to a reed by moving it: all that an element needs which shows nothing but its place. */
export type ReedAction = Extract<BenchAction, { readonly type: (typeof types)[number] }>;

export function isReedAction(action: BenchAction): action is ReedAction {
  return (types as readonly string[]).includes(action.type);
}

/** The state of a page that has just been opened. */
export function startState(
  model: ReedModel,
  bench: Bench = newBench(model),
  beside: Pick<Moment, "readings" | "sheet"> = { readings: {} },
): BenchState {
  return { model, present: { bench, ...beside }, past: [], future: [], advice: {} };
}

/** The next state after a reed was moved. Pure; the same state comes back when nothing changes. */
export function reduceReed(state: BenchState, action: ReedAction): BenchState {
  const { present } = state;
  switch (action.type) {
    case "value-set":
      // What is locked cannot be forgotten either: the lock would hold nothing.
      if (action.value === undefined && present.bench.locked.includes(action.feature)) return state;
      return step(state, withValue(present, action.feature, action.value), action.gesture);
    case "point-moved":
      return pointMoved(state, action.target, action.gesture);
    case "gesture-ended":
      return gestureEnded(state);
    case "lock-set":
      return step(
        state,
        withChange(present, {
          locked: withName(present.bench.locked, action.feature, action.locked),
        }),
      );
    case "layer-set":
      return viewed(state, { layers: withName(present.bench.layers, action.layer, action.on) });
    case "target-set":
      return step(state, withTarget(state.model, present, action.target));
    case "aim-moved":
      return step(state, withAim(present, action.aim), action.gesture);
    case "undo":
      return travelled(state, "past");
    case "redo":
      return travelled(state, "future");
  }
}

/** The moment with another bench; what followed the point no longer does. */
export function withChange(
  { following: _over, ...moment }: Moment,
  change: Partial<Bench>,
): Moment {
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

/** A list of names with one put in or taken out. */
function withName<T extends string>(names: readonly T[], name: T, on: boolean): readonly T[] {
  if (names.includes(name) === on) return names;
  const others = names.filter((one) => one !== name);
  return on ? [...others, name] : others;
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
