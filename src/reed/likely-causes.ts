import type { Feature, ReedModel, Values } from "../engine/model.js";
import { allRoundValue } from "./reading-text.js";
import type { Cause, Symptom } from "./symptoms.js";

/** A cause of a symptom, and whether this reed has it. */
export interface LikelyCause extends Cause {
  /** Half-spreads beyond the all-round reed in the cause's sense; negative when the reed differs the other way. */
  readonly by?: number;
  /** The reed has it; `undefined` where it was not measured. */
  readonly holds?: boolean;
}

/** Nearer to the all-round reed than this (half-spreads) nobody would call it thick or thin. */
const noticeable = 0.15;

/**
 * The causes of a symptom, those first that this reed has, most marked first; then those that were not measured.
 *
 * Shape   a symptom, a model, the reed's values → one entry a cause.
 * Unit    half-spreads of the corner values, for a ratio those of the three ratios.
 * Source  the causes: common practice, no source.
 *
 * @example likelyCauses(symptom, bassoonModel, {}).every(({ holds }) => holds === undefined) → true
 */
export function likelyCauses(
  { causes }: Symptom,
  model: ReedModel,
  values: Values,
): readonly LikelyCause[] {
  const rank = ({ by, holds }: LikelyCause): number =>
    holds === undefined ? 0 : holds ? 1 + (by ?? 0) : (by ?? 0) - 100;
  return causes
    .map((cause): LikelyCause => {
      const away = awayFromAllRound(cause.what, model, values);
      if (away === undefined) return cause;
      const by = (cause.is === "more" ? away : -away) + 0;
      return { ...cause, by, holds: by >= noticeable };
    })
    .toSorted((a, b) => rank(b) - rank(a));
}

/** How far a feature or ratio is from the all-round reed, in half-spreads; `undefined` where it was not measured. */
function awayFromAllRound(what: string, model: ReedModel, values: Values): number | undefined {
  const featureOf = (id: string): Feature | undefined =>
    model.features.find((one) => one.id === id);
  const feature = featureOf(what);
  if (feature) {
    const { high, low, loud } = feature.corners;
    return inHalfSpreads(values[what], allRoundValue(feature), [high, low, loud]);
  }
  const ratio = model.ratios.find(({ id }) => id === what);
  const [of, to] = ratio ? [featureOf(ratio.of), featureOf(ratio.to)] : [];
  if (!of || !to) return undefined;
  const [a, b] = [values[of.id], values[to.id]];
  return inHalfSpreads(
    a === undefined || b === undefined ? undefined : a / b,
    allRoundValue(of) / allRoundValue(to),
    (["high", "low", "loud"] as const).map((purpose) => of.corners[purpose] / to.corners[purpose]),
  );
}

function inHalfSpreads(
  value: number | undefined,
  allRound: number,
  corners: readonly number[],
): number | undefined {
  if (value === undefined) return undefined;
  return (2 * (value - allRound)) / (Math.max(...corners) - Math.min(...corners));
}
