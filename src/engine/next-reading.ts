import { certaintyEllipse, type CertaintyOptions } from "./certainty.js";
import { requireKeyed } from "./check.js";
import { tryCompile } from "./compile.js";
import type { FeatureId, ReedModel } from "./model.js";

/** What one more reading would do. */
export interface NextReading {
  readonly feature: FeatureId;
  /** Area of the ellipse with it, in squared sides of the triangle; Infinity where it cannot place the reed alone. */
  readonly area: number;
}

/**
 * The reading that would tighten the place most: the one with which the ellipse is smallest. Where no single reading
 * can place the reed yet, the first of the two that together do it best.
 *
 * Shape   a model, the features measured so far → a feature and the area of the ellipse with it; undefined when
 *         everything is measured, or when no two more can place the reed.
 * Unit    squared sides of the triangle.
 * Throws  RangeError for an unknown feature, as `compileModel`.
 *
 * @example mostUsefulReading(bassoonModel, ["throatWidth", "tipWidth"]).feature → "spine"
 */
export function mostUsefulReading(
  model: ReedModel,
  measured: readonly FeatureId[],
  options: CertaintyOptions = {},
): NextReading | undefined {
  requireKeyed(options, "mostUsefulReading: options");
  const missing = model.features.map(({ id }) => id).filter((id) => !measured.includes(id));
  const single = best(
    missing.map((feature) => ({ feature, area: areaWith(model, [...measured, feature], options) })),
  );
  if (!single || single.area < Infinity) return single;
  const pairs = missing.flatMap((feature, i) =>
    missing.slice(i + 1).map((other) => ({
      feature,
      other,
      area: areaWith(model, [...measured, feature, other], options),
    })),
  );
  const pair = best(pairs);
  return pair && pair.area < Infinity ? { feature: pair.feature, area: Infinity } : undefined;
}

function best<T extends { readonly area: number }>(all: readonly T[]): T | undefined {
  return all.length === 0 ? undefined : all.reduce((a, b) => (b.area < a.area ? b : a));
}

/** Infinity where the features cannot tell the purposes apart. */
function areaWith(
  model: ReedModel,
  features: readonly FeatureId[],
  options: CertaintyOptions,
): number {
  const map = tryCompile(model, { features });
  if (!map) return Infinity;
  const [major, minor] = certaintyEllipse(map, options).semiAxes;
  return Math.PI * major * minor;
}
