import { requireKeyed } from "./check.js";
import { requireMap, standardise, type BlendMap, type MappedFeature } from "./compile.js";
import type { FeatureId, Triple, Values } from "./model.js";

/** How one feature moves the point. */
export interface Pull {
  readonly feature: FeatureId;
  /** Per unit of the feature (mm, ratio, 0–1); sums to 0. */
  readonly perUnit: Triple;
  /** For the feature's present distance from the all-round value; sums to 0. */
  readonly now: Triple;
}

/**
 * The pull of every feature: the arrow along which the point moves when only that feature moves.
 * The raw blend is the centre plus all `now` arrows laid head to tail.
 *
 * Shape   a map and, optionally, values → one pull a feature, in the map's order.
 * Unit    share per unit of the feature; `now` in shares (0 without values: the all-round reed).
 * Throws  RangeError naming the feature whose value is missing or not finite.
 *
 * @example pulls(map).find((p) => p.feature === "bladeLength").perUnit[0] < 0   // longer: away from high
 */
export function pulls(map: BlendMap, values?: Values): Pull[] {
  requireMap(map, "pulls");
  if (values !== undefined) requireKeyed(values, "pulls: values");
  return map.mapped.map((one) => ({
    feature: one.feature.id,
    perUnit: scale(one.pull, 1 / one.halfSpread),
    now: scale(one.pull, values !== undefined ? standardise(one, values, "pulls") : 0),
  }));
}

/**
 * The pull of a ratio: both thicknesses changed by the same small share, in opposite senses,
 * (m_a/s_a) p_a − (m_b/s_b) p_b.
 *
 * Unit    share per relative change.
 * Throws  RangeError for a ratio that is not in the model, or one of whose features is not in the map.
 *
 * @example ratioPull(map, "heartToWings")[0] > 0   // more heart to wings: toward high
 */
export function ratioPull(map: BlendMap, ratioId: string): Triple {
  requireMap(map, "ratioPull");
  const ratio = map.model.ratios.find((one) => one.id === ratioId);
  if (!ratio) {
    const allowed = map.model.ratios.map((one) => one.id).join(", ");
    throw new RangeError(`ratioPull: ratio "${ratioId}" is not in the model; allowed: ${allowed}`);
  }
  const a = member(map, ratio.of, ratioId);
  const b = member(map, ratio.to, ratioId);
  const up = scale(a.pull, a.mean / a.halfSpread);
  const down = scale(b.pull, b.mean / b.halfSpread);
  return [up[0] - down[0], up[1] - down[1], up[2] - down[2]];
}

function member(map: BlendMap, id: FeatureId, ratioId: string): MappedFeature {
  const found = map.mapped.find((one) => one.feature.id === id);
  if (found) return found;
  throw new RangeError(
    `ratioPull: ratio "${ratioId}" needs feature "${id}", which the map leaves out; ` +
      `allowed: ${map.features.join(", ")}`,
  );
}

function scale(triple: Triple, factor: number): Triple {
  // Adding 0 turns −0 into 0, which a reader would wonder about.
  return [triple[0] * factor + 0, triple[1] * factor + 0, triple[2] * factor + 0];
}
