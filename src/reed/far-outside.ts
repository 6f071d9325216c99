import type { Feature } from "../engine/model.js";

/**
 * Whether a value is rather a slip of the unit than a reed: more than a whole range beyond the range, or, where
 * the range does not begin at 0, under a fifth of its beginning or over five times its end. A thickness of
 * 0.24 mm typed in inches, 0.0094, is less than a whole range below the range and yet no reading in mm.
 */
export function isFarOutside({ min, max }: Feature, value: number): boolean {
  const width = max - min;
  if (value < min - width || value > max + width) return true;
  return min > 0 && (value < min / 5 || value > max * 5);
}
