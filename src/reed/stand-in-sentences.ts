import type { BlendMap } from "../engine/compile.js";
import type { HandStandIn } from "../engine/hand-stand-ins.js";
import type { Actions, FeatureId, Purpose, Triple } from "../engine/model.js";
import type { FeatureChange, StandIn, StandInPair, StandInRequest } from "../engine/stand-ins.js";
import type { ByEffect } from "./advice-terms.js";
import type { AdviceWords } from "./advice-words.js";

/** A size in the unit of the user's gauge with its sign, without plus or minus: "0.5 mm". */
export type AmountText = (feature: FeatureId, size: number) => string;

/** What a sentence about a reed is made with. */
export interface Spoken {
  readonly map: BlendMap;
  readonly actions: Actions;
  readonly words: AdviceWords;
  readonly by: AmountText;
}

/** Less alike than this is not worth a sentence. */
const leastLikeness = 0.5;
/** Shares that would be told as 0 %. */
const leastShare = 0.005;
/** By-effects whose arrow is shorter than this part of the whole are left out. */
const leastByEffect = 0.25;

const order: readonly Purpose[] = ["high", "low", "loud"];

/**
 * The features that are worth a sentence, in the order of telling: alike enough, and by a change that can be seen;
 * first what this reed allows in full, then what it allows in part, then the rest, each as it was sorted.
 */
export function singlesWorthTelling(singles: readonly StandIn[], { map }: Spoken): StandIn[] {
  const isSeen = ({ feature, change }: StandIn): boolean =>
    Math.abs(change) >= map.byId.get(feature)!.feature.step / 2;
  return inOrderOfTelling(singles.filter(isSeen));
}

/** The same of what hands can do. */
export function handsWorthTelling(hands: readonly HandStandIn[]): HandStandIn[] {
  return inOrderOfTelling(hands);
}

function inOrderOfTelling<One extends { readonly likeness: number; readonly possible: number }>(
  standIns: readonly One[],
): One[] {
  const rank = ({ possible }: One): number =>
    possible > 0.995 ? 0 : possible < leastShare ? 2 : 1;
  return standIns
    .filter(({ likeness }) => likeness >= leastLikeness)
    .toSorted((a, b) => rank(a) - rank(b));
}

/** The pairs in which both changes can be seen: each at least a step of its slider. */
export function pairsWorthTelling(pairs: readonly StandInPair[], { map }: Spoken): StandInPair[] {
  return pairs.filter(({ changes }) =>
    changes.every(({ feature, change }) => Math.abs(change) >= map.byId.get(feature)!.feature.step),
  );
}

/** "Instead of a blade shorter by 0.5 mm:" */
export function requestSentence(request: StandInRequest, spoken: Spoken): string {
  const change = changeText(request, spoken);
  const { instead, offset } = spoken.words.standIns;
  return request.mode === "instead" ? instead(change) : offset(change);
}

/** One feature in place of another, what it leaves over, and whether this reed allows it. */
export function featureSentence(single: StandIn, spoken: Spoken): string {
  const { standIns } = spoken.words;
  const { feature, change, likeness, leftover, possible } = single;
  return standIns.feature(
    changeText(single, spoken),
    likeness,
    leftoverText(leftover, spoken.words),
    possibleText(possible, isBarred(feature, change, spoken), spoken.words),
  );
}

/** Two features that together do it. */
export function pairSentence({ changes: [a, b] }: StandInPair, spoken: Spoken): string {
  return spoken.words.standIns.pair(changeText(a, spoken), changeText(b, spoken));
}

/** Something hands do in place of a change, with its by-effects. */
export function handSentence(hand: HandStandIn, spoken: Spoken): string {
  const { standIns } = spoken.words;
  const effects = effectsText(hand, spoken);
  const { possible } = hand;
  return standIns.hand(
    deedText(hand, spoken),
    hand.likeness,
    leftoverText(hand.leftover, spoken.words),
    effects.length > 0 ? standIns.also(effects) : "",
    possible > 0.995
      ? ""
      : possible < leastShare
        ? standIns.impossible
        : standIns.partlyByHand(possible),
  );
}

/**
 * Why an action stands in less well than the feature that it is after; `undefined` where there is nothing to explain.
 *
 * @example differenceSentence(hands[1], singles, spoken) → "A first wire rounder by 0.05 would pull …"
 */
export function differenceSentence(
  hand: HandStandIn,
  singles: readonly StandIn[],
  spoken: Spoken,
): string | undefined {
  const single = singles.find(({ feature }) => feature === hand.changes[0]!.feature);
  const effects = effectsText(hand, spoken);
  const isWorse = single && single.likeness >= 0.9 && hand.likeness < single.likeness - 0.05;
  const sameSense = single && single.change * hand.changes[0]!.change > 0;
  if (hand.actions.length > 1 || !isWorse || !sameSense || effects.length === 0) return undefined;
  const { label } = spoken.actions.actions.find(({ id }) => id === hand.id)!;
  return spoken.words.standIns.difference(changeText(single, spoken), label, effects);
}

function changeText({ feature, change }: FeatureChange, { map, words, by }: Spoken): string {
  return words.standIns.change(
    feature,
    labelOf(feature, map),
    change > 0,
    by(feature, Math.abs(change)),
  );
}

/** What hands do, and how much of it: "Round both wires by 0.02 each". */
function deedText({ id, actions: ids, amount, changes }: HandStandIn, spoken: Spoken): string {
  const { actions, words, by } = spoken;
  const { feature, change } = changes[0]!;
  const size = by(feature, Math.abs(change));
  if (ids.length > 1) return words.standIns.bothWires(id === "roundBothWires", size);
  const action = actions.actions.find((one) => one.id === id)!;
  return words.plan.step(amount, id, action.label, size, isBelowGauge(changes[0]!, spoken));
}

function isBelowGauge({ feature, change }: FeatureChange, { map }: Spoken): boolean {
  const gaugeError = map.model.features.find(({ id }) => id === feature)?.gaugeError ?? 0;
  return Math.abs(change) < gaugeError * (1 - 1e-9);
}

/** The by-effects that count, strongest first, at most two. */
function effectsText(hand: HandStandIn, { map, words }: Spoken): ByEffect[] {
  const pull = ({ feature, change }: FeatureChange): number => {
    const one = map.byId.get(feature);
    return one ? Math.hypot(...one.arrow) * Math.abs(change / one.halfSpread) : 0;
  };
  const mains = hand.actions.length;
  const all = hand.changes.map(pull);
  const strongest = Math.max(...all);
  return hand.changes
    .slice(mains)
    .filter((change) => pull(change) >= leastByEffect * strongest)
    .toSorted((a, b) => pull(b) - pull(a))
    .slice(0, 2)
    .map(({ feature, change }) =>
      words.standIns.byEffect(feature, labelOf(feature, map), change > 0),
    );
}

/** What is missing or too much, of the purpose where it shows most. */
function leftoverText(leftover: Triple, { standIns }: AdviceWords): string {
  const sizes = leftover.map(Math.abs);
  const most = sizes.indexOf(Math.max(...sizes));
  const share = leftover[most]!;
  if (Math.abs(share) < leastShare) return standIns.nothingLeft;
  return share > 0 ? standIns.lacks(order[most]!, share) : standIns.tooMuch(order[most]!, -share);
}

function possibleText(possible: number, isBarredByFinishing: boolean, words: AdviceWords): string {
  const { impossible, cannotPutBack, partly } = words.standIns;
  if (possible > 0.995) return "";
  if (possible >= leastShare) return partly(possible);
  return isBarredByFinishing ? cannotPutBack : impossible;
}

/** Whether finishing cannot move the feature this way. */
function isBarred(feature: FeatureId, change: number, { map }: Spoken): boolean {
  const finishing = map.model.features.find(({ id }) => id === feature)?.finishing;
  return finishing === "down" && change > 0;
}

function labelOf(feature: FeatureId, map: BlendMap): string {
  return map.model.features.find(({ id }) => id === feature)?.label ?? feature;
}
