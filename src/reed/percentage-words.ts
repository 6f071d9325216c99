/** A real minus: a hyphen is none, and a screen reader may pass over it. */
export function withMinus(number: string): string {
  return number.replace("-", "−");
}

/**
 * A difference of two shares. Never "27% less", which may be 27 of the 100 parts of the whole or 27 of every 100 that are
 * there.
 *
 * @example percentagePoints(-0.27) → "27 percentage points"
 */
export function percentagePoints(difference: number): string {
  const points = Math.round(Math.abs(difference) * 100);
  return points === 1 ? "1 percentage point" : `${points} percentage points`;
}
