import type { Feature } from "../engine/model.js";

/**
 * Whether a value is rather a slip of the unit than a reed: more than a whole range beyond the range, or, where
 * the range does not begin at 0, under a fifth of its beginning or over five times its end. A thickness of
 * 0.24 mm typed in inches, 0.0094, is less than a whole range below the range and yet no reading in mm.
 */
export function isFarOutside(feature: Feature, value: number): boolean {
  const { least, most } = outermost(feature);
  return value < least || value > most;
}

/**
 * The values beyond which a reading is rather a slip.
 *
 * Unit    the feature's own.
 *
 * @example outermost({ min: 24.5, max: 30.5 }) → { least: 18.5, most: 36.5 }
 */
export function outermost({ min, max }: Pick<Feature, "min" | "max">): {
  readonly least: number;
  readonly most: number;
} {
  const width = max - min;
  if (min <= 0) return { least: min - width, most: max + width };
  return { least: Math.max(min - width, min / 5), most: Math.min(max + width, max * 5) };
}
