import { requireKeyed, requireReadable, requireWithin } from "./check.js";
import { requireMap, type BlendMap, type MappedFeature } from "./compile.js";
import type { FeatureId, Triple } from "./model.js";
import { tripleToVector } from "./plane.js";

/** Three rows of three numbers. */
export type Matrix3 = readonly [Triple, Triple, Triple];

/** How sure a point is. */
export interface CertaintyEllipse {
  /** Of the three shares; every row sums to 0. */
  readonly covariance: Matrix3;
  /** In the drawing of side 1, for the coverage asked for. */
  readonly semiAxes: readonly [major: number, minor: number];
  /** Of the major axis from +x (low to loud), radians, in (−π/2, π/2]. */
  readonly angle: number;
}

/** What is believed of the gauge and of the recipes. */
export interface CertaintyOptions {
  /** Share of cases inside the ellipse, between 0 and 1; 0.95 where it is not given. */
  readonly coverage?: number;
  /** 1 sd by feature, in the feature's unit; replaces the model's. */
  readonly gaugeError?: Readonly<Record<FeatureId, number>>;
  /** In half-spreads; the model's where it is not given; 0 = gauge alone. */
  readonly recipeScatter?: number;
}

/**
 * The ellipse around a point: gauge error, the dial's common zero error, and the scatter of recipes.
 *
 * cov(λ) = Σ_j [(σ_j/s_j)² + τ²/w_j] p_j p_jᵀ + u uᵀ, u = Σ over features read with the dial of (c/s_j) p_j.
 * With τ > 0 and without the dial's common error this is the covariance of a weighted least-squares fit, which
 * every further feature shrinks. With it, the readings in the usual measuring order still shrink the ellipse.
 *
 * Shape   a map → 3 × 3 covariance, two half-axes, an angle.
 * Unit    shares squared; half-axes in sides of the triangle; radians.
 * Throws  RangeError for a coverage outside 0…1 (ends excluded), a negative or unknown error.
 * Source  squared radius −2 ln(1 − q): chi-square with 2 degrees of freedom (5.991 at 95 %).
 *
 * @example certaintyEllipse(map, { coverage: 0.95, recipeScatter: 0 }).semiAxes[0] < 1
 */
export function certaintyEllipse(map: BlendMap, options: CertaintyOptions = {}): CertaintyEllipse {
  requireMap(map, "certaintyEllipse");
  requireKeyed(options, "certaintyEllipse: options");
  const { coverage = 0.95, gaugeError = {}, recipeScatter = map.model.recipeScatter } = options;
  requireWithin(coverage, 0, 1, "certaintyEllipse: coverage", true);
  requireNotNegative(recipeScatter, "certaintyEllipse: recipeScatter");
  requireGaugeErrors(map, gaugeError, "certaintyEllipse");
  const covariance = shareCovariance(map, gaugeError, recipeScatter);
  return { covariance, ...ellipseOf(covariance, coverage) };
}

/** Of the three shares, from gauge error, recipe scatter and the dial. */
export function shareCovariance(
  map: BlendMap,
  gaugeError: Readonly<Record<FeatureId, number>>,
  recipeScatter: number,
): Matrix3 {
  const rows = [
    [0, 0, 0],
    [0, 0, 0],
    [0, 0, 0],
  ];
  const add = (arrow: Triple, factor: number): void => {
    for (let r = 0; r < 3; r += 1) {
      for (let c = 0; c < 3; c += 1) rows[r]![c]! += factor * arrow[r]! * arrow[c]!;
    }
  };
  for (const one of map.mapped) {
    const error = (gaugeError[one.feature.id] ?? one.feature.gaugeError) / one.halfSpread;
    add(one.pull, error * error + (recipeScatter * recipeScatter) / one.feature.weight);
  }
  add(commonArrow(map), 1);
  return rows as unknown as Matrix3;
}

/** Where the point goes when every dial reading is off by the same zero error. */
function commonArrow(map: BlendMap): Triple {
  const { amount, features } = map.model.commonGaugeError;
  const shared = (one: MappedFeature): boolean => features.includes(one.feature.id);
  const sum: [number, number, number] = [0, 0, 0];
  for (const one of map.mapped.filter(shared)) {
    for (const k of [0, 1, 2] as const) sum[k] += (amount / one.halfSpread) * one.pull[k];
  }
  return sum;
}

/** Half-axes and angle of a covariance of shares, in the drawing of side 1. */
export function ellipseOf(
  covariance: Matrix3,
  coverage: number,
): Pick<CertaintyEllipse, "semiAxes" | "angle"> {
  // The plane's coordinates are orthonormal in share space; the drawing of side 1 is that over √2.
  const columns = covariance.map(tripleToVector);
  const xs = tripleToVector([columns[0]![0], columns[1]![0], columns[2]![0]]);
  const ys = tripleToVector([columns[0]![1], columns[1]![1], columns[2]![1]]);
  const [xx, xy, yy] = [xs[0] / 2, xs[1] / 2, ys[1] / 2];
  const middle = (xx + yy) / 2;
  const swing = Math.hypot((xx - yy) / 2, xy);
  const radius = Math.sqrt(chiSquareQuantile2(coverage));
  const major = Math.sqrt(middle + swing) * radius;
  const minor = Math.sqrt(Math.max(0, middle - swing)) * radius;
  const angle = Math.atan2(2 * xy, xx - yy) / 2;
  return { semiAxes: [major, minor], angle: angle <= -Math.PI / 2 ? Math.PI / 2 : angle };
}

/**
 * Quantile of the chi-square distribution with 2 degrees of freedom.
 *
 * Domain  0 < q < 1.
 * @example chiSquareQuantile2(0.95) → 5.991464547107979
 */
export function chiSquareQuantile2(q: number): number {
  return -2 * Math.log1p(-q);
}

function requireNotNegative(value: number, name: string): void {
  requireReadable(value, name);
  if (value < 0) throw new RangeError(`${name} is ${value}; allowed: 0 or more`);
}

/** Refuses gauge errors of features that the model does not have, and negative ones. */
export function requireGaugeErrors(
  map: BlendMap,
  gaugeError: Readonly<Record<FeatureId, number>>,
  who: string,
): void {
  requireKeyed(gaugeError, `${who}: gaugeError`);
  for (const [id, error] of Object.entries(gaugeError)) {
    if (!map.model.features.some((feature) => feature.id === id)) {
      throw new RangeError(
        `${who}: gaugeError names feature "${id}", which is not in model "${map.model.id}"; ` +
          `allowed: ${map.model.features.map((feature) => feature.id).join(", ")}`,
      );
    }
    requireNotNegative(error, `${who}: gaugeError.${id}`);
  }
}
