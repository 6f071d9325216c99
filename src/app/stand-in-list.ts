import type { Blend } from "../engine/blend.js";
import type { BlendMap } from "../engine/compile.js";
import { handStandIns, type HandStandIn } from "../engine/hand-stand-ins.js";
import type { FeatureId } from "../engine/model.js";
import { place } from "../engine/place.js";
import { dot, tripleToVector, vectorToTriple } from "../engine/plane.js";
import {
  standIns,
  wantedMove,
  type FeatureChange,
  type StandIn,
  type StandInRequest,
} from "../engine/stand-ins.js";
import { amountText } from "../reed/amount-text.js";
import { actionsOf } from "../reed/actions-of.js";
import type { Catalogue } from "../reed/catalogue.js";
import { allRoundValue } from "../reed/reading-text.js";
import { handCares, type HandCare } from "../reed/hand-care.js";
import {
  differenceSentence,
  featureSentence,
  handSentence,
  handsWorthTelling,
  pairSentence,
  pairsWorthTelling,
  requestSentence,
  singlesWorthTelling,
  type Spoken,
} from "../reed/stand-in-sentences.js";
import { targetOf } from "../reed/targets.js";
import { shownValues } from "../reed/tried.js";
import { trialOf } from "./advice-state.js";
import { freedomOf } from "./bench-freedom.js";
import type { BenchState } from "./bench-state.js";
import { isUnsound, mapFor } from "./measured-map.js";

/** One line of a list of stand-ins. */
export interface Offer {
  readonly id: string;
  readonly words: string;
  /** What trying it changes; none where this reed does not allow it. */
  readonly changes: readonly FeatureChange[];
  /** What hands do when it is tried, and what they need to be told. */
  readonly hand?: HandStandIn;
  readonly care?: HandCare;
}

/** What stands in for a change on this reed, in words, best first. */
export interface StandInList {
  readonly sentence: string;
  readonly hands: readonly Offer[];
  readonly features: readonly Offer[];
  readonly pairs: readonly Offer[];
  readonly differences: readonly string[];
}

/** As many of each kind as one can still choose from. */
const most = { singles: 4, pairs: 2 };

/** What sentences about this reed are made with; undefined while it has no place. */
export function spokenOf({ model, present }: BenchState, text: Catalogue): Spoken | undefined {
  const map = isUnsound(present.bench) ? undefined : mapFor(model, present.bench.values);
  const by = amountText(model, present.bench.unit, text);
  return map && { map, actions: actionsOf(model), words: text.advice, by };
}

/**
 * The stand-ins for what is asked, told of what the reed has; undefined where the feature
 * is not measured or the reed has no place.
 */
export function standInList(state: BenchState, text: Catalogue): StandInList | undefined {
  const { model, advice } = state;
  const request = advice.asked;
  const spoken = spokenOf(state, text);
  if (!request || !spoken?.map.byId.has(request.feature)) return undefined;
  const { bench } = state.present;
  const { values } = bench;
  const freedom = freedomOf(model, bench);
  const { singles, pairs } = standIns(spoken.map, values, request, freedom);
  const hands = handsWorthTelling(
    handStandIns(spoken.map, values, request, spoken.actions, freedom),
  ).slice(0, most.singles);
  const deeds = hands.map(({ actions }) => actions);
  const cares = handCares(deeds, spoken);
  return {
    sentence: requestSentence(request, spoken),
    hands: hands.map((one, i) => {
      const hand = possibleByHand(one);
      const offer = { id: one.id, words: handSentence(one, spoken), care: cares[i]! };
      return hand ? { ...offer, changes: hand.changes, hand } : { ...offer, changes: [] };
    }),
    features: singlesWorthTelling(singles, spoken)
      .slice(0, most.singles)
      .map((one) => ({
        id: one.feature,
        words: featureSentence(one, spoken),
        changes: possibleChange(one),
      })),
    pairs: pairsWorthTelling(pairs, spoken)
      .slice(0, most.pairs)
      .map((one) => ({
        id: one.changes.map(({ feature }) => feature).join("+"),
        words: pairSentence(one, spoken),
        changes: one.changes,
      })),
    differences: hands.flatMap((one) => differenceSentence(one, singles, spoken) ?? []),
  };
}

/** As many whole units as one easy sitting allows. */
function possibleByHand(hand: HandStandIn): HandStandIn | undefined {
  const { amount, possible, changes } = hand;
  const units = Math.floor(amount * possible + 1e-9);
  if (units < 1) return undefined;
  return {
    ...hand,
    amount: units,
    changes: changes.map(({ feature, change }) => ({ feature, change: (change * units) / amount })),
  };
}

function possibleChange({ feature, change, possible }: StandIn): FeatureChange[] {
  return possible < 0.005 ? [] : [{ feature, change: change * possible }];
}

/** What a stand-in that is being tried leaves over: from where the reed is to where the change would have brought it. */
export function leftoverOf(
  state: BenchState,
): { readonly from: Blend; readonly to: Blend } | undefined {
  const { model, advice, present } = state;
  const before = trialOf(state) && present.bench.values;
  const map = before && mapFor(model, before);
  if (!map || !advice.asked) return undefined;
  const start = place(map, before).raw;
  const move = vectorToTriple(wantedMove(map, before, advice.asked, {}, "leftoverOf"));
  return {
    from: place(map, shownValues(present.bench)).raw,
    to: [start[0] + move[0], start[1] + move[1], start[2] + move[2]],
  };
}

/** A tenth of the usual range is a change that can be felt. Common practice, no source. */
const firstPart = 0.1;

/**
 * The change that is asked about first: toward the part to play if one is picked, else toward the all-round reed;
 * away from it where the reed is there already.
 */
export function firstRequest(state: BenchState, id: FeatureId, text: Catalogue): StandInRequest {
  const { model, present } = state;
  const feature = model.features.find((one) => one.id === id)!;
  const size = Math.max(1, Math.round((firstPart * (feature.max - feature.min)) / feature.step));
  const sign = senseOf(state, id, mapFor(model, present.bench.values), text);
  return { feature: id, change: sign * size * feature.step, mode: "instead" };
}

function senseOf(
  { model, present: { bench } }: BenchState,
  id: FeatureId,
  map: BlendMap | undefined,
  text: Catalogue,
): 1 | -1 {
  const one = map?.byId.get(id);
  const target = targetOf(bench, text.target.own);
  if (map && one && target) {
    const now = place(map, bench.values).raw;
    const way = tripleToVector([
      target.blend[0] - now[0],
      target.blend[1] - now[1],
      target.blend[2] - now[2],
    ]);
    return dot(way, one.arrow) < 0 ? -1 : 1;
  }
  const feature = model.features.find((other) => other.id === id)!;
  return allRoundValue(feature) - (bench.values[id] ?? Infinity) > feature.step / 2 ? 1 : -1;
}
