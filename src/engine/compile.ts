import { requireHolds, requireKeyed, requireReadable, shown } from "./check.js";
import type { Feature, FeatureId, ReedModel, Triple } from "./model.js";
import { dot, tripleToVector, vectorToTriple, type Vector } from "./plane.js";

/** One feature of a compiled map, in half-spreads (z) around the all-round value. */
export interface MappedFeature {
  readonly feature: Feature;
  /** The mean of the three corner values: the all-round value. */
  readonly mean: number;
  /** Half the distance between the least and the greatest corner value. */
  readonly halfSpread: number;
  /** The corner reeds in z, order high, low, loud; they sum to 0. */
  readonly corners: Triple;
  /** The feature's pull per z: how the point moves when this feature alone moves; sums to 0. */
  readonly pull: Triple;
  /** The same in the two coordinates of the plane. */
  readonly arrow: Vector;
}

/** A model made ready for the features that count: reeds in, points out. */
export interface BlendMap {
  readonly model: ReedModel;
  readonly features: readonly FeatureId[];
  readonly mapped: readonly MappedFeature[];
  readonly byId: ReadonlyMap<FeatureId, MappedFeature>;
  /** raw share k = offset[k] + Σ_j value_j · perUnit[3j + k]. */
  readonly offset: Triple;
  readonly perUnit: Float64Array;
  /** Condition number of G: how well the features tell the three purposes apart (1 best). */
  readonly condition: number;
}

/** The features cannot tell the three purposes apart. */
class InseparableError extends RangeError {}

/** Above this the features do not separate the purposes: opening height and width alone, for instance. */
const greatestCondition = 50;

/**
 * The map from feature values to blends for a model, or for those of its features that were measured.
 *
 * It solves the weighted least-squares problem of mixing the three corner reeds once, so that
 * placing a reed is a sum: λ = (⅓,⅓,⅓) + Σ z_j p_j with p_j = E G⁻¹ (w_j e_j), G = Σ w_j e_j e_jᵀ.
 *
 * Shape   a model and, optionally, feature ids → a map with `features` in the order asked for.
 * Throws  RangeError for an unknown or repeated feature, for a feature with three equal corner
 *         values, and when the features cannot separate the purposes (condition number of G above 50).
 *
 * @example compileModel(bassoonModel, { features: ["throatWidth", "tipWidth", "spine"] }).features
 *          → ["throatWidth", "tipWidth", "spine"]
 */
export function compileModel(
  model: ReedModel,
  options: { readonly features?: readonly FeatureId[] } = {},
): BlendMap {
  requireModel(model, "compileModel");
  requireKeyed(options, "compileModel: options");
  const features = chosenFeatures(model, options.features);
  // The arrows do not depend on the scale of the weights, and shares of them cannot underflow.
  const total = features.reduce((sum, feature) => sum + feature.weight, 0);
  const scaled = features.map((feature) => scaleFeature(feature, total));
  const [xx, xy, yy] = normalMatrix(scaled);
  const condition = conditionNumber(xx, xy, yy);
  if (!(condition <= greatestCondition)) {
    const names = features.map((feature) => feature.id).join(", ") || "(none)";
    const told = Number.isFinite(condition) ? condition.toFixed(0) : "infinite";
    throw new InseparableError(
      `compileModel: features ${names} cannot separate the three purposes ` +
        `(condition number ${told}; allowed: at most ${greatestCondition})`,
    );
  }
  const determinant = xx * yy - xy * xy;
  const mapped = scaled.map((one): MappedFeature => {
    const [x, y] = one.direction;
    const w = one.weight / determinant;
    const arrow: Vector = [w * (yy * x - xy * y), w * (xx * y - xy * x)];
    const { feature, mean, halfSpread, corners } = one;
    return { feature, mean, halfSpread, corners, arrow, pull: vectorToTriple(arrow) };
  });
  return {
    model,
    features: mapped.map((one) => one.feature.id),
    byId: new Map(mapped.map((one) => [one.feature.id, one])),
    mapped,
    condition,
    ...affine(mapped),
  };
}

/**
 * The map as `compileModel` makes it, or undefined when the features cannot separate the purposes: too few of them
 * were measured, say.
 *
 * Throws  RangeError for everything else that `compileModel` refuses.
 */
export function tryCompile(...asked: Parameters<typeof compileModel>): BlendMap | undefined {
  try {
    return compileModel(...asked);
  } catch (error) {
    if (error instanceof InseparableError) return undefined;
    throw error;
  }
}

function chosenFeatures(model: ReedModel, ids?: readonly FeatureId[]): readonly Feature[] {
  if (ids === undefined) return model.features;
  if (!Array.isArray(ids)) {
    throw new TypeError(
      `compileModel: features is ${shown(ids)}; allowed: an array of feature ids`,
    );
  }
  const seen = new Set<FeatureId>();
  return ids.map((id) => {
    const feature = model.features.find((one) => one.id === id);
    const allowed = model.features.map((one) => one.id).join(", ");
    if (!feature) {
      throw new RangeError(
        `compileModel: feature "${id}" is not in model "${model.id}"; allowed: ${allowed}`,
      );
    }
    if (seen.has(id))
      throw new RangeError(`compileModel: feature "${id}" is named twice; allowed: once`);
    seen.add(id);
    return feature;
  });
}

function scaleFeature(feature: Feature, total: number) {
  const { high, low, loud } = feature.corners;
  const mean = (high + low + loud) / 3;
  const halfSpread = (Math.max(high, low, loud) - Math.min(high, low, loud)) / 2;
  if (!(halfSpread > 0)) {
    throw new RangeError(
      `compileModel: feature "${feature.id}" has the corner values ${high}, ${low}, ${loud}; ` +
        "allowed: at least two different ones",
    );
  }
  const corners: Triple = [
    (high - mean) / halfSpread,
    (low - mean) / halfSpread,
    (loud - mean) / halfSpread,
  ];
  const weight = feature.weight / total;
  return { feature, mean, halfSpread, corners, weight, direction: tripleToVector(corners) };
}

function normalMatrix(
  scaled: readonly { readonly weight: number; readonly direction: Vector }[],
): [xx: number, xy: number, yy: number] {
  let [xx, xy, yy] = [0, 0, 0];
  for (const { weight, direction } of scaled) {
    xx += weight * direction[0] * direction[0];
    xy += weight * direction[0] * direction[1];
    yy += weight * direction[1] * direction[1];
  }
  return [xx, xy, yy];
}

/** Greatest over least eigenvalue of the symmetric matrix [[xx, xy], [xy, yy]]; infinite when it is singular. */
function conditionNumber(xx: number, xy: number, yy: number): number {
  const middle = (xx + yy) / 2;
  const swing = Math.hypot((xx - yy) / 2, xy);
  const least = middle - swing;
  return least > 0 ? (middle + swing) / least : Infinity;
}

/** The same map as one matrix and offset on plain values, for placing many reeds at once. */
function affine(mapped: readonly MappedFeature[]): { offset: Triple; perUnit: Float64Array } {
  const offset: [number, number, number] = [1 / 3, 1 / 3, 1 / 3];
  const perUnit = new Float64Array(mapped.length * 3);
  mapped.forEach(({ mean, halfSpread, pull }, j) => {
    for (const k of [0, 1, 2] as const) {
      perUnit[3 * j + k] = pull[k] / halfSpread;
      offset[k] -= (mean / halfSpread) * pull[k];
    }
  });
  return { offset, perUnit };
}

/**
 * A feature's value in half-spreads around the all-round value.
 *
 * Throws  RangeError that names the feature when its value is missing or not finite.
 */
export function standardise(
  one: MappedFeature,
  values: Readonly<Record<FeatureId, number>>,
  who: string,
): number {
  const value = values[one.feature.id];
  if (value === undefined) {
    throw new RangeError(
      `${who}: no value for feature "${one.feature.id}"; allowed: a number for every feature of the map ` +
        "(compile a smaller map for a reed that is measured in part)",
    );
  }
  requireReadable(value, `${who}: feature "${one.feature.id}"`);
  return (value - one.mean) / one.halfSpread;
}

/** The arrow of several moves in z laid head to tail. */
export function sumArrows(mapped: readonly MappedFeature[], moves: ArrayLike<number>): Vector {
  let [x, y] = [0, 0];
  mapped.forEach(({ arrow }, j) => {
    x += moves[j]! * arrow[0];
    y += moves[j]! * arrow[1];
  });
  return [x, y];
}

/** How much of a move along `direction` one feature makes per z. */
export function along(one: MappedFeature, direction: Vector): number {
  return dot(one.arrow, direction);
}

/** Refuses anything but a model as `readModel` gives it. */
export function requireModel(model: unknown, who: string): void {
  requireHolds(model, "features", `${who}: model`, "a model from readModel");
}

/** Refuses anything but a map as `compileModel` gives it. */
export function requireMap(map: unknown, who: string): void {
  requireHolds(map, "mapped", `${who}: map`, "a map from compileModel");
}

/** The same with values that are no object: named before the inner loops. */
export function requireMapAndValues(map: unknown, values: unknown, who: string): void {
  requireMap(map, who);
  requireKeyed(values, `${who}: values`);
}
