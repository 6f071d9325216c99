import type { Blend } from "../engine/blend.js";
import type { ReedModel } from "../engine/model.js";
import { solveFor, type Solution } from "../engine/solve.js";
import type { Bench } from "../reed/bench.js";
import { newBench } from "../reed/new-bench.js";
import { shownValues, triedOver, withTried } from "../reed/tried.js";
import { toThousandths } from "../reed/units.js";
import { freedomOf } from "./bench-freedom.js";
import type { BenchAction, BenchState } from "./bench-state.js";
import { mapFor } from "./measured-map.js";
import { withAim, withTarget, type Moment } from "./moment.js";
import { lookedAt, step, travelled, viewed } from "./undo-step.js";

/** What some actions do to a state: one function a type. Pure; the same state comes back when nothing changes. */
export type Handlers<T extends BenchAction["type"]> = {
  readonly [Type in T]: (
    state: BenchState,
    action: Extract<BenchAction, { readonly type: Type }>,
  ) => BenchState;
};

/** The state of a page that has just been opened. */
export function startState(
  model: ReedModel,
  bench: Bench = newBench(model),
  beside: Pick<Moment, "readings" | "sheet"> = { readings: {} },
): BenchState {
  return { model, present: { bench, ...beside }, past: [], future: [], advice: {} };
}

/** What is done to a reed by moving its point: all that an element needs which shows nothing else. */
export const pointHandlers: Handlers<
  | "as-measured"
  | "point-moved"
  | "gesture-ended"
  | "layer-set"
  | "target-set"
  | "aim-moved"
  | "undo"
  | "redo"
> = {
  "as-measured": (state) =>
    step(state, withBench(state, withTried(state.present.bench, undefined))),
  "point-moved": (state, { target, gesture }) => pointMoved(state, target, gesture),
  "gesture-ended": (state) => gestureEnded(state),
  "layer-set": (state, { layer, on }) =>
    viewed(state, { layers: withName(state.present.bench.layers, layer, on) }),
  "target-set": (state, { target }) => step(state, withTarget(state.model, state.present, target)),
  "aim-moved": (state, { aim, gesture }) => step(state, withAim(state.present, aim), gesture),
  undo: (state) => travelled(state, "past"),
  redo: (state) => travelled(state, "future"),
};

/** The next state after an action that these handlers know; the same one after any other. */
export function handled(
  handlers: Partial<Handlers<BenchAction["type"]>>,
  state: BenchState,
  action: BenchAction,
): BenchState {
  const handle = handlers[action.type] as
    | ((before: BenchState, done: BenchAction) => BenchState)
    | undefined;
  return handle ? handle(state, action) : state;
}

/** The present moment with another bench; what followed the point no longer does. */
export function withBench({ present }: BenchState, bench: Bench): Moment {
  const { following: _over, ...moment } = present;
  return { ...moment, bench };
}

/** A list of names with one put in or taken out. */
export function withName<T extends string>(
  names: readonly T[],
  name: T,
  on: boolean,
): readonly T[] {
  if (names.includes(name) === on) return names;
  const others = names.filter((one) => one !== name);
  return on ? [...others, name] : others;
}

/**
 * The recipe follows the point. It always sets out from what was shown before the point was first touched, so the
 * way there does not matter: dragging out and back brings the recipe back.
 */
function pointMoved(state: BenchState, asked: Blend, gesture?: string): BenchState {
  const { present } = state;
  const from = present.following?.from ?? shownValues(present.bench);
  const following = { from, asked };
  const solution = followPoint(state.model, { ...present, following });
  if (!solution) return state;
  const tried = triedOver(present.bench.values, solution.values);
  return step(state, { ...present, bench: withTried(present.bench, tried), following }, gesture);
}

/** Values are kept in whole thousandths; while a gesture runs they are left finer, so that the point does not stutter. */
function gestureEnded(state: BenchState): BenchState {
  const { gesture, before, ...rest } = state;
  const { bench } = state.present;
  const finer = shownValues(bench);
  const values = Object.fromEntries(
    Object.entries(finer).map(([id, value]) => [id, toThousandths(value)]),
  );
  const rounded = Object.entries(values).every(([id, value]) => value === finer[id]);
  if (gesture === undefined && rounded) return state;
  const whole = rounded ? bench : withTried(bench, triedOver(bench.values, values));
  if (before && isSameBench(before.present.bench, whole)) {
    const was = before.present; // how it is looked at may have been chosen meanwhile
    return { ...rest, ...before, present: { ...was, bench: lookedAt(bench, was.bench) } };
  }
  return { ...rest, present: rounded ? state.present : { ...state.present, bench: whole } };
}

/** Whether a gesture has changed neither what is shown nor the target. */
function isSameBench(a: Bench, b: Bench): boolean {
  const aim = (bench: Bench): string => `${bench.target} ${bench.aim?.join(" ")}`;
  return triedOver(shownValues(a), shownValues(b)) === undefined && aim(a) === aim(b);
}

/** The recipe for the point that was asked for, and what stopped it. */
export function followPoint(model: ReedModel, { bench, following }: Moment): Solution | undefined {
  const map = following && mapFor(model, following.from);
  if (!map || !following) return undefined;
  return solveFor(map, following.from, following.asked, freedomOf(model, bench));
}
