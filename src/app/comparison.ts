import type { Blend } from "../engine/blend.js";
import { recipeDifferences, type RecipeDifference } from "../engine/differences.js";
import type { FeatureId, ReedModel, Values } from "../engine/model.js";
import { place } from "../engine/place.js";
import type { PinnedReed } from "../reed/bench.js";
import { mapFor } from "./measured-map.js";

/** The reed on the bench against the pinned one. */
export interface Comparison {
  /** The pinned reed; its name is empty for the all-round reed. */
  readonly pinned: PinnedReed;
  /** Its raw place, where its readings give one. */
  readonly blend?: Blend;
  /** From the pinned reed to the one on the bench, over the features that both have; what matters most first. */
  readonly differences: readonly RecipeDifference[];
  /** Features measured on one of the two only. */
  readonly onlyOne: readonly FeatureId[];
}

/** Two readings nearer than this are the same: the bench keeps whole thousandths. */
const same = 0.0005;

/** Compares the reed on the bench with the pinned one. */
export function compareReeds(model: ReedModel, values: Values, pinned: PinnedReed): Comparison {
  const ids = model.features.map(({ id }) => id);
  const common = ids.filter((id) => values[id] !== undefined && pinned.values[id] !== undefined);
  const onlyOne = ids.filter(
    (id) => (values[id] === undefined) !== (pinned.values[id] === undefined),
  );
  const own = mapFor(model, pinned.values);
  const shared = mapFor(model, Object.fromEntries(common.map((id) => [id, 0])));
  const differences = shared ? recipeDifferences(shared, pinned.values, values) : [];
  return {
    pinned,
    ...(own ? { blend: place(own, pinned.values).raw } : {}),
    differences: differences.filter(({ change }) => Math.abs(change) >= same),
    onlyOne,
  };
}
