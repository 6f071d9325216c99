import { ellipseOf, shareCovariance, type CertaintyEllipse, type Matrix3 } from "./certainty.js";
import type { BlendMap } from "./compile.js";
import type { Action, FeatureId, Triple, Values } from "./model.js";

/** Every effect of an action may be this share more or less: 1 sd. Common practice, no source. */
const effectScatter = 0.2;

/** An action and how much of it. */
export interface Deed {
  readonly action: Action;
  readonly amount: number;
}

/**
 * How sure the end of a plan is: the certainty of the present point, and every effect of every step 20 % more or
 * less, each by itself.
 *
 * Shape   map, deeds, coverage, gauge errors, recipe scatter (0: the gauge alone) → covariance, half-axes, angle.
 */
export function planEllipse(
  map: BlendMap,
  deeds: readonly Deed[],
  coverage: number,
  gaugeError: Readonly<Record<FeatureId, number>>,
  recipeScatter: number = map.model.recipeScatter,
): CertaintyEllipse {
  const rows = shareCovariance(map, gaugeError, recipeScatter).map((row) => [...row]);
  for (const { action, amount } of deeds) {
    for (const [id, effect] of Object.entries(action.effects)) {
      const one = map.byId.get(id);
      if (one) addScatter(rows, one.pull, (effectScatter * amount * effect) / one.halfSpread);
    }
  }
  const covariance = rows as unknown as Matrix3;
  return { covariance, ...ellipseOf(covariance, coverage) };
}

function addScatter(rows: number[][], pull: Triple, z: number): void {
  for (let r = 0; r < 3; r += 1) {
    for (let c = 0; c < 3; c += 1) rows[r]![c]! += z * z * pull[r]! * pull[c]!;
  }
}

/** The reed after some deeds; what was not measured stays unknown. */
export function valuesAfter(values: Values, deeds: readonly Deed[]): Values {
  const after: Record<string, number> = { ...values };
  for (const { action, amount } of deeds) {
    for (const [id, effect] of Object.entries(action.effects)) {
      const value = after[id];
      if (value !== undefined) after[id] = value + amount * effect;
    }
  }
  return after;
}
