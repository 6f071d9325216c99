import { mainEffect } from "./action-room.js";
import type { Blend } from "./blend.js";
import { requireHolds, requireKeyed } from "./check.js";
import { requireMapAndValues, type BlendMap } from "./compile.js";
import type { Action, Actions, FeatureId, ReedModel, Triple, Values } from "./model.js";
import { place } from "./place.js";
import type { Plan, PlanStep } from "./plan-adjustments.js";
import { planEllipse, valuesAfter, type Deed } from "./plan-end.js";
import { isClip, thinsTip } from "./sitting-rules.js";
import type { FeatureChange } from "./stand-ins.js";

/** What someone who does a step needs to be told, beside the step itself. */
export interface StepNotes {
  readonly action: Action;
  readonly amount: number;
  /** What it does: first what the hand is after, then the by-effects. */
  readonly changes: readonly FeatureChange[];
  /** What the hand is after is smaller than the gauge error: told by strokes and by ear, not by a number. */
  readonly isBelowGauge: boolean;
  /** Its caution comes for the first time in this plan: told in full, later in short. */
  readonly isNewCaution: boolean;
  /** Every gauge place moves with it. */
  readonly movesGaugePlaces: boolean;
  /** Features to read again before it. */
  readonly readFirst: readonly FeatureId[];
  /** Features to read again after it: the opening first, for every other reading disturbs it. */
  readonly readAgain: readonly FeatureId[];
  /** The reed after it, as the effects say: what new readings can be expected. */
  readonly values: Values;
  /** Its arrow. */
  readonly from: Blend;
  readonly to: Blend;
}

/** A plan as it is told. */
export interface PlanNotes {
  readonly steps: readonly StepNotes[];
  /** The readings are less sure than the plan is long (1 sd along its way, by gauge and effects alone). */
  readonly measureFirst: boolean;
}

/** What opens and closes with every move; read before anything touches the tip. */
const openingGroup = "opening";

/**
 * What the steps of a plan need to be told: arrows, expected readings, and what to read again.
 *
 * After a clip every gauge place is read again; after a wire move the wires and the opening; after every other
 * move what it touches and the opening. A tip is read again before it is thinned when it has been clipped.
 *
 * Shape   map, the present values, actions, a plan → one entry a step, in the plan's order.
 * Unit    values and changes in the model's own units; arrows in shares.
 * Throws  RangeError for a step whose action is unknown, or a missing value.
 * Source  the rules of the actions file: common practice, no source.
 *
 * @example planNotes(map, values, bassoonActions, { steps: [] }).steps → []
 */
export function planNotes(
  map: BlendMap,
  values: Values,
  actions: Actions,
  plan: Pick<Plan, "steps">,
): PlanNotes {
  requireMapAndValues(map, values, "planNotes");
  requireHolds(actions, "actions", "planNotes: actions", "actions from readActions");
  requireKeyed(plan, "planNotes: plan");
  const deeds = plan.steps.map((step) => deedOf(actions, step));
  const steps: StepNotes[] = [];
  let reed = values;
  for (const [index, { action, amount }] of deeds.entries()) {
    const after = valuesAfter(reed, [{ action, amount }]);
    const before = deeds.slice(0, index).map((deed) => deed.action);
    steps.push({
      ...notesOf(map.model, action, amount, before),
      values: after,
      from: place(map, reed).raw,
      to: place(map, after).raw,
    });
    reed = after;
  }
  const measureFirst = isWithinDoubt(map, deeds, place(map, values).raw, place(map, reed).raw);
  return { steps, measureFirst };
}

function deedOf(actions: Actions, { action: id, amount }: PlanStep): Deed {
  const action = actions.actions.find((one) => one.id === id);
  if (action) return { action, amount };
  const allowed = actions.actions.map((one) => one.id).join(", ");
  throw new RangeError(`planNotes: a step names action "${id}"; allowed: ${allowed}`);
}

function notesOf(
  model: ReedModel,
  action: Action,
  amount: number,
  before: readonly Action[],
): Omit<StepNotes, "values" | "from" | "to"> {
  const main = mainEffect(action);
  const gaugeError = model.features.find(({ id }) => id === main)?.gaugeError ?? 0;
  const size = Math.abs(amount * action.effects[main]!);
  return {
    action,
    amount,
    changes: Object.entries(action.effects).map(([feature, effect]) => ({
      feature,
      change: amount * effect,
    })),
    // Ten times 0.01 is not quite 0.1: a hair in favour of the number.
    isBelowGauge: size < gaugeError * (1 - 1e-9),
    isNewCaution: before.every(({ caution }) => caution !== action.caution),
    movesGaugePlaces: isClip(action),
    readFirst: thinsTip(action) && before.some(isClip) ? [main] : [],
    readAgain: readingsAfter(model, action),
  };
}

/**
 * The features to read again after an action: the opening first, then the rest in the model's order.
 *
 * @example readingsAfter(bassoonModel, bassoonActions.actions[4]) → ["openingHeight", "openingWidth", "tip"]
 */
export function readingsAfter(model: ReedModel, action: Action): FeatureId[] {
  const main = model.features.find(({ id }) => id === mainEffect(action));
  const dial = new Set(model.commonGaugeError.features);
  const dialGroups = new Set(
    model.features.filter(({ id }) => dial.has(id)).map(({ group }) => group),
  );
  const touched = model.features.filter(({ id, group, unit }) => {
    if (action.effects[id] !== undefined || group === openingGroup) return true;
    if (action.reversible) return group === main?.group; // the other wire gives way
    return isClip(action) && dialGroups.has(group) && unit === "mm"; // differences of dial readings too
  });
  const isOpening = ({ group }: { readonly group: string }): boolean => group === openingGroup;
  return [...touched.filter(isOpening), ...touched.filter((one) => !isOpening(one))].map(
    ({ id }) => id,
  );
}

/** Whether one standard deviation of gauge and effects along the plan's way is longer than the way. */
function isWithinDoubt(map: BlendMap, deeds: readonly Deed[], from: Blend, to: Blend): boolean {
  const way: Triple = [to[0] - from[0], to[1] - from[1], to[2] - from[2]];
  const square = way[0] ** 2 + way[1] ** 2 + way[2] ** 2;
  if (deeds.length === 0) return false;
  const { covariance } = planEllipse(map, deeds, 0.5, {}, 0);
  const along = covariance.reduce(
    (sum, row, r) => sum + way[r]! * (row[0] * way[0] + row[1] * way[1] + row[2] * way[2]),
    0,
  );
  return along >= square * square;
}
