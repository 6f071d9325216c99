import type { Blend } from "./blend.js";
import { ellipseOf, type CertaintyEllipse, type Matrix3 } from "./certainty.js";
import { requireKeyed, requireShares, requireWithin, shown } from "./check.js";
import { blendToLogRatio, logRatioBasis, logRatioToBlend, type LogRatio } from "./log-ratio.js";

/** Two rows of two numbers. */
export type Matrix2 = readonly [readonly [number, number], readonly [number, number]];

/** A class of reeds in numbers. */
export interface CohortSummary {
  readonly count: number;
  /** Plain mean of the shares: a place of the triangle, also with shares of 0. */
  readonly mean: Blend;
  /** Of the shares, divided by n − 1; left out for a single reed. */
  readonly covariance?: Matrix3;
  /** Where further reeds of the class would lie: from three reeds on. */
  readonly ellipse?: CertaintyEllipse;
  /** Closed geometric mean: the centre of Aitchison's geometry; only when every share is above 0. */
  readonly geometricMean?: Blend;
  /** The same in log-ratio coordinates; the covariance from two reeds on. */
  readonly logRatio?: {
    readonly mean: LogRatio;
    readonly covariance?: Matrix2;
    readonly basis: string;
  };
}

/**
 * Mean and spread of a class of reeds.
 *
 * Shape   n blends → count, plain mean, covariance (n − 1), ellipse (n ≥ 3); geometric mean and log-ratio moments
 *         when every share is above 0.
 * Unit    shares; the ellipse in the drawing of side 1.
 * Domain  n ≥ 1; shares outside 0…1 are allowed and leave the logarithms out.
 * Throws  RangeError for no blend, a number that is not finite, shares that do not sum to 1, or a coverage
 *         outside 0…1 (ends excluded).
 * Source  Aitchison (1986), The Statistical Analysis of Compositional Data; squared radius −2 ln(1 − q),
 *         chi-square with 2 degrees of freedom.
 *
 * @example cohortSummary([[0.5, 0.25, 0.25], [0.25, 0.5, 0.25]]).mean → [0.375, 0.375, 0.25]
 */
export function cohortSummary(
  blends: readonly Blend[],
  options: { readonly coverage?: number } = {},
): CohortSummary {
  requireBlends(blends);
  requireKeyed(options, "cohortSummary: options");
  const { coverage = 0.95 } = options;
  requireWithin(coverage, 0, 1, "cohortSummary: coverage", true);
  const count = blends.length;
  const mean = meanOf(blends) as unknown as Blend;
  const covariance = count > 1 ? (covarianceOf(blends, mean) as unknown as Matrix3) : undefined;
  return {
    count,
    mean,
    ...(covariance && { covariance }),
    ...(covariance && count > 2 && { ellipse: { covariance, ...ellipseOf(covariance, coverage) } }),
    ...(blends.every((blend) => blend.every((share) => share > 0)) && logarithms(blends)),
  };
}

function logarithms(
  blends: readonly Blend[],
): Required<Pick<CohortSummary, "geometricMean" | "logRatio">> {
  const points = blends.map(blendToLogRatio);
  const mean = meanOf(points) as unknown as LogRatio;
  const covariance = points.length > 1 && {
    covariance: covarianceOf(points, mean) as unknown as Matrix2,
  };
  return {
    geometricMean: logRatioToBlend(mean),
    logRatio: { mean, ...covariance, basis: logRatioBasis },
  };
}

function meanOf(rows: readonly (readonly number[])[]): number[] {
  return rows[0]!.map((_, k) => rows.reduce((sum, row) => sum + row[k]!, 0) / rows.length);
}

function covarianceOf(rows: readonly (readonly number[])[], mean: readonly number[]): number[][] {
  const part = (r: number, c: number): number =>
    rows.reduce((sum, row) => sum + (row[r]! - mean[r]!) * (row[c]! - mean[c]!), 0) /
    (rows.length - 1);
  return mean.map((_, r) => mean.map((__, c) => part(r, c)));
}

function requireBlends(blends: readonly Blend[]): void {
  if (!Array.isArray(blends)) {
    throw new TypeError(`cohortSummary: blends is ${shown(blends)}; allowed: an array of blends`);
  }
  if (blends.length === 0) {
    throw new RangeError("cohortSummary: blends is empty; allowed: at least one blend");
  }
  blends.forEach((blend: Blend, index) => requireShares(blend, `cohortSummary: blends[${index}]`));
}
