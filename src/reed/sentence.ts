import { centreBlend } from "../engine/blend.js";
import type { BlendMap } from "../engine/compile.js";
import type { Feature, FeatureId, Purpose, ReedModel, Values } from "../engine/model.js";
import type { Placed } from "../engine/place.js";
import { pulls, type Pull } from "../engine/pulls.js";
import type { Catalogue, Sentence } from "./catalogue.js";
import { inSentence } from "./in-sentence.js";
import { allRoundValue } from "./reading-text.js";

/** What the sentence is about: the reed's readings, and its place where it has one. */
export interface Described {
  readonly model: ReedModel;
  readonly values: Values;
  /** Absent when the readings cannot place the reed. */
  readonly place?: { readonly map: BlendMap; readonly placed: Placed };
  /** What the reed has, where something else is tried on it. */
  readonly measured?: Values;
  /** Greatest standard deviation of a share, where it is known: above a quarter a place is hardly one. */
  readonly doubt?: number;
}

const order: readonly Purpose[] = ["high", "low", "loud"];
/** In shares: nearer than this to the centre is the middle; gauge and recipe are not surer than that. */
const middleRadius = 0.06;
/** Two purposes closer than this are told as a tie. */
const tieWidth = 0.06;
/** Below this distance outside (sides of the triangle) a reed still lies on the border. */
const beyondLeast = 0.015;
/** Gauge error alone gives 0.28 (median) and 0.40 (95 %). */
const mismatchLeast = 0.5;
/** In shares (1 sd): three readings in the middle of a blade give about 0.3, a whole recipe 0.17. */
export const doubtLeast = 0.35;

/**
 * What a good teacher would say now: where the reed lies, what pulls it there most, what pulls back,
 * what is not measured.
 *
 * @example sentenceText(describeReed({ model, values: {} }, english)) → "Nothing is measured yet. …"
 */
export function describeReed(
  { model, values, measured: base = values, place, doubt = 0 }: Described,
  text: Catalogue,
): Sentence {
  const words = text.sentence;
  const measured = model.features.filter((feature) => values[feature.id] !== undefined);
  if (measured.length === 0) return words.nothing;
  if (!place)
    return words.cannotPlace(
      measured.map((one, i) => (i === 0 ? one.label : inSentence(one.label))),
    );
  const { map, placed } = place;
  const told = pulls(map, values).map((pull) => toldPull(model, values, pull));
  const missing = model.features.filter((feature) => values[feature.id] === undefined);
  const leftOut = missing.filter(({ id }) => base[id] !== undefined);
  const unread = missing.filter(({ id }) => base[id] === undefined);
  const gone = (all: readonly Feature[], tried: boolean): Sentence =>
    all.length > 0
      ? [
          words.unmeasured(
            all.map(({ label }) => inSentence(label)),
            tried,
          ),
        ]
      : [];
  return [
    ...wherePart(placed, words),
    whyPart(told, placed, words),
    ...(placed.mismatch > mismatchLeast && severalFarOut(told) ? [words.cancels] : []),
    ...(doubt > doubtLeast ? [words.tooFew] : []),
    ...gone(unread, false),
    ...gone(leftOut, true),
  ];
}

function wherePart({ raw, blend, beyond }: Placed, words: Catalogue["sentence"]): Sentence {
  const [first, second, third] = order
    .map((id, k) => ({ id, share: raw[k]!, inside: blend[k]! }))
    .toSorted((a, b) => b.share - a.share) as [Share, Share, Share];
  if (beyond > beyondLeast) {
    // Nearest to a corner it goes further than the corner reed, nearest to a side it lacks the third purpose.
    return first.inside > 0.999 ? words.beyondCorner(first.id) : words.beyondSide(third.id);
  }
  if (isMiddle(raw)) return words.middle;
  if (first.share > 0.88) return words.corner(first.id);
  if (first.share - second.share < tieWidth) return words.between(first.id, second.id, third.id);
  const degree = first.share > 0.65 ? "strongly" : first.share > 0.44 ? "clearly" : "slightly";
  return words.leans(first.id, degree, third.share < 0.05 ? third.id : undefined);
}

interface Share {
  readonly id: Purpose;
  readonly share: number;
  /** The same share of the nearest place inside the triangle. */
  readonly inside: number;
}

function isMiddle(raw: Placed["raw"]): boolean {
  return Math.hypot(...raw.map((share, k) => share - centreBlend[k]!)) < middleRadius;
}

/** A pull with what is needed to speak of it. */
interface ToldPull {
  readonly id: FeatureId;
  readonly label: string;
  /** More of the feature than in the all-round reed. */
  readonly more: boolean;
  /** The reading differs from the all-round value in the digits that are shown: else nobody could see why. */
  readonly visible: boolean;
  readonly now: Pull["now"];
}

function toldPull(model: ReedModel, values: Values, { feature: id, now }: Pull): ToldPull {
  const feature = model.features.find((one) => one.id === id)!;
  const [value, allRound] = [values[id]!, allRoundValue(feature)];
  const visible = value.toFixed(feature.decimals) !== allRound.toFixed(feature.decimals);
  return { id, label: feature.label, more: value > allRound, visible, now };
}

/** Extremes can only cancel when there are two of them. */
function severalFarOut(told: readonly ToldPull[]): boolean {
  return told.filter(({ now }) => Math.hypot(...now) > 0.06).length > 1;
}

function whyPart(told: readonly ToldPull[], placed: Placed, words: Catalogue["sentence"]): string {
  const away = placed.raw.map((share, k) => share - centreBlend[k]!);
  const size = Math.hypot(...away);
  if (isMiddle(placed.raw)) {
    const strongest = rank(told, (now) => Math.hypot(...now), 0.035);
    return strongest.length > 1 ? words.balanced(strongest.slice(0, 3)) : words.nothingPulls;
  }
  const onWay = (now: Pull["now"]): number =>
    now.reduce((sum, part, k) => sum + (part * away[k]!) / size, 0);
  const forward = rank(told, onWay, 0.1 * size);
  const back = rank(told, (now) => -onWay(now), 0.12 * size);
  const outside = placed.beyond > beyondLeast;
  const why = forward.length > 0 ? words.pulledBy(forward.slice(0, 3), outside) : words.end;
  return why + (back.length > 0 ? words.pulledBack(back.slice(0, 2)) : "");
}

/** The visible pulls whose measure is at least `least`, strongest first. */
function rank(
  told: readonly ToldPull[],
  measure: (now: Pull["now"]) => number,
  least: number,
): ToldPull[] {
  return told
    .filter(({ now, visible }) => visible && measure(now) >= least)
    .toSorted((a, b) => measure(b.now) - measure(a.now));
}
