import { blendDistance, type Blend } from "../engine/blend.js";
import type { FeatureId } from "../engine/model.js";
import type { Adjustments, Plan } from "../engine/plan-adjustments.js";
import type { PlanNotes, StepNotes } from "../engine/plan-notes.js";
import { isRipeFor } from "../engine/sitting-rules.js";
import type { AdviceWords } from "./advice-words.js";
import { cautionText, nameOf } from "./hand-care.js";
import type { Spoken } from "./stand-in-sentences.js";
import { measuringSteps } from "./measuring-steps.js";
import { isWire } from "./wire-reading.js";
import { nearestTarget, targetRadius, type Target } from "./targets.js";

/** Farther from the middle of a zone than so many radii a reed is not one for that part. */
const nearEnough = 2.5;

/** What is said about a step, sentence by sentence. */
export interface StepSentences {
  /** What to do, and how much of it. */
  readonly deed: string;
  readonly how: string;
  /** The reading at which to stop, where the gauge can tell. */
  readonly until?: string;
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
  { measureFirst, steps: notes }: PlanNotes,
  now: Blend,
  target: Target,
  { plan: words }: AdviceWords,
): string[] {
  const part = words.target(target.id, target.label);
  const doubt = measureFirst ? [words.measureFirst] : [];
  const young = notes.some(({ action }) => !isRipeFor(action, 0)) ? [words.youngReed] : [];
  if (reached)
    return steps.length === 0
      ? [words.there(part)]
      : [words.reached(steps.length, part), ...doubt, ...young, words.ownRules];
  const nearest = nearestTarget(now);
  const isNear = blendDistance(nearest.blend, now) <= nearEnough * targetRadius;
  const told = [words.asNear(part, words.target(nearest.id, nearest.label), isNear)];
  if (obstacle) told.push(words.obstacles[obstacle]);
  if (steps.length === 0) return told;
  const toZone = (from: Blend): number => blendDistance(from, target.blend) - targetRadius;
  const left = toZone(blend) / toZone(now);
  return [...told, words.wayLeft(steps.length, left), ...doubt, ...young, words.ownRules];
}

/**
 * What is said about each step of a plan, or of the help for a trouble.
 *
 * Shape   notes of a plan, what to say it with, what the steps are for → one entry a step.
 */
export function stepSentences(
  { steps }: PlanNotes,
  spoken: Spoken,
  purpose: "plan" | "help" = "plan",
): StepSentences[] {
  const { playNext, playLast, playHelp } = spoken.words.plan;
  return steps.map((step, index) => {
    const play = index === steps.length - 1 ? playLast : playNext;
    return oneStep(step, purpose === "help" ? playHelp : play, spoken);
  });
}

function oneStep(step: StepNotes, play: string, spoken: Spoken): StepSentences {
  const { words, actions, by } = spoken;
  const {
    action,
    amount,
    changes,
    isBelowGauge,
    readFirst,
    readAgain,
    movesGaugePlaces,
    isNewCaution,
  } = step;
  const { feature, change } = changes[0]!;
  const names = (ids: readonly FeatureId[]): string[] => ids.map((id) => nameOf(id, spoken));
  return {
    deed: `${words.plan.step(amount, action.id, action.label, by(feature, Math.abs(change)), isBelowGauge)}.`,
    how: action.how,
    ...untilText(step, spoken),
    ...byEarText(step, words),
    undo: action.reversible ? words.plan.reversible : words.plan.irreversible,
    caution: cautionText(action.caution, isNewCaution, actions.cautions, words),
    pitch: words.plan.pitch(action.pitch),
    ...(readFirst.length > 0 ? { readFirst: words.plan.readFirst(names(readFirst)) } : {}),
    readAgain: words.plan.readAgain(names(readAgain), movesGaugePlaces),
    play,
  };
}

/** What no gauge reads, or not so finely; a clip is no stroke. */
function byEarText(
  { action, changes, isBelowGauge, movesGaugePlaces }: StepNotes,
  { plan: { byEar } }: AdviceWords,
): Pick<StepSentences, "byEar"> {
  if (isPicture(changes[0]!.feature)) return { byEar: byEar.look };
  if (!isBelowGauge || action.reversible) return {};
  return { byEar: movesGaugePlaces ? byEar.ear : byEar.strokes };
}

function isPicture(feature: FeatureId): boolean {
  return measuringSteps.some((one) => one.feature === feature && one.asks === "picture");
}

function untilText(
  { changes, isBelowGauge, values }: StepNotes,
  spoken: Spoken,
): Pick<StepSentences, "until"> {
  const { feature } = changes[0]!;
  const value = values[feature];
  if (isBelowGauge || isPicture(feature) || value === undefined) return {};
  const { plan } = spoken.words;
  return { until: plan.until(nameOf(feature, spoken), spoken.by(feature, value), isWire(feature)) };
}
