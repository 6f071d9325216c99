import { blendDistance, type Blend } from "../engine/blend.js";
import type { Actions, FeatureId } from "../engine/model.js";
import type { Adjustments, Plan } from "../engine/plan-adjustments.js";
import type { PlanNotes, StepNotes } from "../engine/plan-notes.js";
import type { AdviceWords } from "./advice-words.js";
import type { Spoken } from "./stand-in-sentences.js";
import { nearestTarget, targetRadius, type Target } from "./targets.js";

/** Farther from the middle of a zone than so many radii a reed is not one for that part. */
const nearEnough = 2.5;

/** What is said about a step, sentence by sentence. */
export interface StepSentences {
  /** What to do, and how much of it. */
  readonly deed: string;
  readonly how: string;
  /** Where the amount is below what the gauge can read. */
  readonly byEar?: string;
  readonly undo: string;
  /** In full where the tool comes for the first time, in short later. */
  readonly caution: string;
  readonly pitch: string;
  readonly readFirst?: string;
  readonly readAgain: string;
  readonly play: string;
}

/**
 * What is said before the steps: whether the plan reaches the part, else what the reed is good for instead.
 *
 * Shape   the plans and one of them, where the reed lies now, the part to play → sentences in order.
 */
export function planSentences(
  { reached, obstacle }: Adjustments,
  { steps, blend }: Plan,
  { measureFirst }: Pick<PlanNotes, "measureFirst">,
  now: Blend,
  target: Target,
  { plan: words }: AdviceWords,
): string[] {
  const part = words.target(target.id, target.label);
  const doubt = measureFirst ? [words.measureFirst] : [];
  if (reached)
    return steps.length === 0
      ? [words.there(part)]
      : [words.reached(steps.length, part), ...doubt, words.ownRules];
  const nearest = nearestTarget(now);
  const isNear = blendDistance(nearest.blend, now) <= nearEnough * targetRadius;
  const told = [words.asNear(part, words.target(nearest.id, nearest.label), isNear)];
  if (obstacle) told.push(words.obstacles[obstacle]);
  if (steps.length === 0) return told;
  const share = 1 - blendDistance(blend, target.blend) / blendDistance(now, target.blend);
  return [...told, words.someOfTheWay(steps.length, share), ...doubt, words.ownRules];
}

/**
 * What is said about each step of a plan.
 *
 * Shape   notes of a plan, what to say it with → one entry a step.
 */
export function stepSentences({ steps }: PlanNotes, spoken: Spoken): StepSentences[] {
  return steps.map((step, index) => oneStep(step, index === steps.length - 1, spoken));
}

function oneStep(step: StepNotes, isLast: boolean, spoken: Spoken): StepSentences {
  const { words, actions, by } = spoken;
  const { action, amount, changes, isBelowGauge, readFirst, readAgain, movesGaugePlaces } = step;
  const { feature, change } = changes[0]!;
  const names = (ids: readonly FeatureId[]): string[] => ids.map((id) => nameOf(id, spoken));
  return {
    deed: `${words.plan.step(amount, action.id, action.label, by(feature, Math.abs(change)), isBelowGauge)}.`,
    how: action.how,
    ...(isBelowGauge && !action.reversible ? { byEar: byEarText(step, words) } : {}),
    undo: action.reversible ? words.plan.reversible : words.plan.irreversible,
    caution: cautionText(step, actions, words),
    pitch: words.plan.pitch(action.pitch),
    ...(readFirst.length > 0 ? { readFirst: words.plan.readFirst(names(readFirst)) } : {}),
    readAgain: words.plan.readAgain(names(readAgain), movesGaugePlaces),
    play: isLast ? words.plan.playLast : words.plan.playNext,
  };
}

/** A clip is no stroke. */
function byEarText({ movesGaugePlaces }: StepNotes, { plan }: AdviceWords): string {
  return movesGaugePlaces ? plan.byEar.ear : plan.byEar.strokes;
}

/** In full once a plan; a caution that has no short form is told in full again. */
function cautionText(
  { action: { caution }, isNewCaution }: StepNotes,
  { cautions }: Actions,
  { plan }: AdviceWords,
): string {
  const full = cautions[caution] ?? caution;
  return isNewCaution ? full : (plan.shortCautions[caution] ?? full);
}

function nameOf(id: FeatureId, { map }: Spoken): string {
  return (map.model.features.find((one) => one.id === id)?.label ?? id).toLowerCase();
}
