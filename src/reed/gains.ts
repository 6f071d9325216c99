import { centreBlend, type Blend } from "../engine/blend.js";
import { qualitiesAt, type Qualities } from "../engine/qualities.js";
import type { AdviceWords } from "./advice-words.js";

/** A quality at a place against another place. */
export interface Gain {
  readonly id: string;
  readonly label: string;
  readonly value: number;
  readonly against: number;
  /** Above 0 it gains, below it pays. */
  readonly difference: number;
}

/** Less than this nobody would notice. */
const noticeable = 0.25;

/** What a reed at a place gains and pays against the all-round reed, or a reed at another place. */
export function gainsAt(
  qualities: Qualities,
  blend: Blend,
  against: Blend = centreBlend,
): readonly Gain[] {
  const other = qualitiesAt(qualities, against);
  return qualitiesAt(qualities, blend).map(({ id, value }, index) => ({
    id,
    label: qualities.qualities[index]!.label,
    value,
    against: other[index]!.value,
    difference: value - other[index]!.value,
  }));
}

/** The same in one sentence, against the all-round reed: the greatest first, at most three of each. */
export function gainsSentence(gains: readonly Gain[], { qualities: words }: AdviceWords): string {
  // Equal differences keep the file's order, whatever their last binary digit.
  const rounded = (difference: number): number => Math.round(difference * 1e6);
  const told = (sign: 1 | -1): string[] =>
    gains
      .filter(({ difference }) => sign * difference >= noticeable)
      .toSorted((a, b) => sign * (rounded(b.difference) - rounded(a.difference)))
      .slice(0, 3)
      .map(({ id, label }) => words.name(id, label));
  return words.against(told(1), told(-1));
}
