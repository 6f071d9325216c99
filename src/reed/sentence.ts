import { centreBlend } from "../engine/blend.js";
import type { BlendMap } from "../engine/compile.js";
import type { FeatureId, Purpose, ReedModel, Values } from "../engine/model.js";
import type { Placed } from "../engine/place.js";
import { pulls, type Pull } from "../engine/pulls.js";
import type { Catalogue, Sentence } from "./catalogue.js";

/** What the sentence is about: the reed's readings, and its place where it has one. */
export interface Described {
  readonly model: ReedModel;
  readonly values: Values;
  /** Absent when the readings cannot place the reed. */
  readonly place?: { readonly map: BlendMap; readonly placed: Placed };
}

const order: readonly Purpose[] = ["high", "low", "loud"];
/** In shares: nearer than this to the centre is the middle; gauge and recipe are not surer than that. */
const middleRadius = 0.06;
/** Two purposes closer than this are told as a tie. */
const tieWidth = 0.06;
/** Below this distance outside (sides of the triangle) a reed still lies on the border. */
const beyondLeast = 0.015;
/** engine.md, section 3: gauge error alone gives up to 0.40. */
const mismatchLeast = 0.5;

/**
 * What a good teacher would say now: where the reed lies, what pulls it there most, what pulls back,
 * what is not measured.
 *
 * @example sentenceText(describeReed({ model, values: {} }, english)) → "Nothing is measured yet. …"
 */
export function describeReed({ model, values, place }: Described, text: Catalogue): Sentence {
  const words = text.sentence;
  const measured = model.features.filter((feature) => values[feature.id] !== undefined);
  if (measured.length === 0) return words.nothing;
  if (!place)
    return words.cannotPlace(
      measured.map((one, i) => (i === 0 ? one.label : one.label.toLowerCase())),
    );
  const { map, placed } = place;
  const missing = model.features.filter((feature) => values[feature.id] === undefined);
  return [
    ...wherePart(placed, words),
    whyPart(model, placed, pulls(map, values), words),
    ...(placed.mismatch > mismatchLeast ? [words.cancels] : []),
    ...(missing.length > 0
      ? [words.unmeasured(missing.map((one) => one.label.toLowerCase()))]
      : []),
  ];
}

function wherePart({ raw, beyond }: Placed, words: Catalogue["sentence"]): Sentence {
  const ranked = order
    .map((id, k) => ({ id, share: raw[k]! }))
    .toSorted((a, b) => b.share - a.share) as [Share, Share, Share];
  const [first, second, third] = ranked;
  if (beyond > beyondLeast)
    return first.share > 1 ? words.beyondCorner(first.id) : words.beyondSide(third.id);
  if (isMiddle(raw)) return words.middle;
  if (first.share > 0.88) return words.corner(first.id);
  if (first.share - second.share < tieWidth) return words.between(first.id, second.id, third.id);
  return words.leans(
    first.id,
    first.share > 0.65 ? "strongly" : first.share > 0.44 ? "clearly" : "slightly",
  );
}

interface Share {
  readonly id: Purpose;
  readonly share: number;
}

function isMiddle(raw: Placed["raw"]): boolean {
  return Math.hypot(...raw.map((share, k) => share - centreBlend[k]!)) < middleRadius;
}

interface Named {
  readonly id: FeatureId;
  readonly label: string;
  readonly more: boolean;
  readonly size: number;
}

function whyPart(
  model: ReedModel,
  placed: Placed,
  all: readonly Pull[],
  words: Catalogue["sentence"],
): string {
  const away = placed.raw.map((share, k) => share - centreBlend[k]!);
  const size = Math.hypot(...away);
  if (isMiddle(placed.raw)) {
    const strongest = rank(model, all, (now) => Math.hypot(...now)).filter(
      (one) => one.size > 0.06,
    );
    return strongest.length > 1 ? words.balanced(strongest.slice(0, 3)) : words.nothingPulls;
  }
  const onWay = (now: Pull["now"]): number =>
    now.reduce((sum, part, k) => sum + (part * away[k]!) / size, 0);
  const forward = rank(model, all, onWay).filter((one) => one.size >= 0.1 * size);
  const back = rank(model, all, (now) => -onWay(now)).filter((one) => one.size >= 0.12 * size);
  // Far pulls that cancel leave a place that nothing "pulls to": then the strongest is still named.
  const told = forward.length > 0 ? words.pulledBy(forward.slice(0, 3)) : words.end;
  return told + (back.length > 0 ? words.pulledBack(back.slice(0, 2)) : "");
}

function rank(
  model: ReedModel,
  all: readonly Pull[],
  measure: (now: Pull["now"]) => number,
): Named[] {
  return all
    .map(({ feature: id, now, perUnit }): Named => {
      const label = model.features.find((feature) => feature.id === id)!.label;
      // The present pull runs with the pull per unit when there is more of the feature than in the all-round reed.
      const more = now.reduce((sum, part, k) => sum + part * perUnit[k]!, 0) > 0;
      return { id, label, more, size: measure(now) };
    })
    .filter((one) => one.size > 1e-9)
    .toSorted((a, b) => b.size - a.size);
}
