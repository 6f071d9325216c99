import type { Assumptions } from "../acoustics/assumptions.js";
import type { LipResponse } from "../acoustics/lip-response.js";
import { reedMechanics, type LipRecipe, type ReedMechanics } from "../acoustics/reed-mechanics.js";
import type { FeatureId, ReedModel, Values } from "../engine/model.js";
import { allRoundValues } from "./all-round-values.js";

/** What the lip model does not read of a recipe: its blade ends at the collar. */
const unread: ReadonlySet<FeatureId> = new Set(["secondWire"]);

/**
 * A recipe as the lip model reads it: what is not measured is as on the all-round reed.
 *
 * @example lipRecipe(bassoonModel, { heart: 0.5 }).heart → 0.5
 */
export function lipRecipe(model: ReedModel, values: Values): LipRecipe {
  return { ...allRoundValues(model), ...values } as unknown as LipRecipe;
}

/** The features that `lipRecipe` fills in and the lip model reads, in the model's order. */
export function filledIn(model: ReedModel, values: Values): FeatureId[] {
  return model.features
    .map(({ id }) => id)
    .filter((id) => values[id] === undefined && !unread.has(id));
}

/** The mechanics of a reed, or nothing where its recipe is none that the model can take. */
export function lipMechanics(
  model: ReedModel,
  values: Values,
  given: Assumptions,
): ReedMechanics | undefined {
  return orNothing(() => reedMechanics(lipRecipe(model, values), given));
}

/** What comes of a computation, or nothing where it refuses its numbers. */
export function orNothing<T>(compute: () => T): T | undefined {
  try {
    return compute();
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

/** A reed as the panel shows it: what it is called, its mechanics, and what it does under the present lips and breath. */
export interface LipReed {
  readonly name: string;
  readonly reed: ReedMechanics;
  readonly response: LipResponse;
}
