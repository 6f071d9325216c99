import type { Blend } from "../engine/blend.js";
import type { ReedModel } from "../engine/model.js";
import { allRoundValues } from "./all-round-values.js";
import type { Bench } from "./bench.js";

/** The target whose place is the bench's own `aim`. */
export const ownTarget = "own";

/** The bench that a user meets first. */
export function newBench(model: ReedModel): Bench {
  return {
    model: model.id,
    reed: "",
    values: allRoundValues(model),
    locked: [],
    finished: false,
    unit: "mm",
    target: "",
    layers: ["certainty"],
    page: "bench",
    unsound: [],
    overruled: false,
    wet: "",
  };
}

/**
 * A blend of whole thousandths, as the compact form holds it.
 *
 * @example thousandthsBlend(250, 510) → [0.25, 0.51, 0.24]
 */
export function thousandthsBlend(high: number, low: number): Blend {
  return [high / 1000, low / 1000, (1000 - high - low) / 1000];
}
