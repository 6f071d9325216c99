import type { Blend } from "../engine/blend.js";
import type { BlendMap } from "../engine/compile.js";
import type { FeatureId, Values } from "../engine/model.js";
import { place } from "../engine/place.js";
import { planAdjustments, type Adjustments, type Plan } from "../engine/plan-adjustments.js";
import { planNotes, type PlanNotes } from "../engine/plan-notes.js";
import { restOfSitting } from "../engine/sitting-rules.js";
import type { Qualities } from "../engine/qualities.js";
import { actionsOf } from "../reed/actions-of.js";
import { bassoonQualities } from "../reed/bassoon-qualities.js";
import type { Bench } from "../reed/bench.js";
import type { Sitting } from "../reed/done-steps.js";
import type { Catalogue } from "../reed/catalogue.js";
import { planSentences, stepSentences, type StepSentences } from "../reed/plan-sentences.js";
import type { Spoken } from "../reed/stand-in-sentences.js";
import { targetOf, type Target } from "../reed/targets.js";
import { remembered } from "../widgets/remembered.js";
import { today } from "./advice-state.js";
import { locksOf } from "./bench-freedom.js";
import type { BenchState } from "./bench-state.js";
import { gaugeErrors } from "./gauge-errors.js";
import { spokenOf } from "./stand-in-list.js";

/** A plan with everything that is told of it. */
export interface ToldPlan {
  readonly plan: Plan;
  readonly notes: PlanNotes;
  /** What is said before the steps. */
  readonly before: readonly string[];
  readonly steps: readonly StepSentences[];
}

/** The plans of a reed toward the part to play. */
export interface PlanView {
  readonly target: Target;
  readonly plans: readonly ToldPlan[];
  /** The one whose steps are shown and whose arrows are drawn. */
  readonly looked: ToldPlan;
}

type Search = (
  map: BlendMap,
  values: Values,
  target: Blend,
  locked: Bench["locked"],
  readings: BenchState["present"]["readings"],
  coverage: number,
  done: Sitting,
) => Adjustments;

/** The plans for a bench; the search is the dear part, and its last answer is kept. */
export function planner(): (state: BenchState, text: Catalogue) => PlanView | undefined {
  const search: Search = remembered((map, values, target, locked, readings, coverage, done) => {
    const all = actionsOf(map.model);
    const { actions, mostMoves } = restOfSitting(
      all,
      done.map(({ action }) => action),
    );
    const options = {
      freedom: locksOf({ locked }),
      gaugeError: measuredErrors(map, gaugeErrors(map.model, readings)),
      coverage,
    };
    const found = planAdjustments(map, values, target, actions, { ...options, mostMoves });
    if (found.obstacle !== "reach" || done.length === 0) return found;
    // What this sitting has used up, a new one has again: then it is the sitting that ends, not the reed.
    const fresh = planAdjustments(map, values, target, all, options);
    return fresh.obstacle === "reach" ? found : { ...found, obstacle: "rules" };
  });
  return (state, text) => {
    const { bench, readings } = state.present;
    const target = targetOf(bench, text.target.own);
    const spoken = spokenOf(state, text);
    if (!target || !spoken) return undefined;
    const coverage = bench.layers.includes("coverage95") ? 0.95 : 0.68;
    const { values, locked } = bench;
    const found = search(
      spoken.map,
      values,
      target.blend,
      locked,
      readings,
      coverage,
      today(state),
    );
    const plans = found.plans.map((plan) => toldPlan(found, plan, values, target, spoken));
    const looked = plans.find(({ plan }) => plan.kind === bench.plan) ?? plans[0]!;
    return { target, plans, looked };
  };
}

function toldPlan(
  found: Adjustments,
  plan: Plan,
  values: Values,
  target: Target,
  spoken: Spoken,
): ToldPlan {
  const { map, words } = spoken;
  const notes = planNotes(map, values, spoken.actions, plan);
  const now = place(map, values).raw;
  return {
    plan,
    notes,
    before: planSentences(found, plan, notes, now, target, words),
    steps: stepSentences(notes, spoken),
  };
}

function measuredErrors(
  map: BlendMap,
  errors: Readonly<Record<FeatureId, number>>,
): Record<FeatureId, number> {
  return Object.fromEntries(Object.entries(errors).filter(([id]) => map.byId.has(id)));
}

/** The qualities as they came, with a teacher's own values in place of them. */
export const judgedQualities: (judged: Bench["judged"]) => Qualities = remembered(
  (judged: Bench["judged"]): Qualities => ({
    ...bassoonQualities,
    qualities: bassoonQualities.qualities.map((one) => ({
      ...one,
      values: judged?.[one.id] ?? one.values,
    })),
  }),
);
