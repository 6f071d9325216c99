const dayLength = 24 * 60 * 60 * 1000;

/**
 * The calendar day where the clock stands, counted from 1 January 1970.
 *
 * @example calendarDay(new Date(1970, 0, 2)) → 1
 */
export function calendarDay(now: Date): number {
  return Date.UTC(now.getFullYear(), now.getMonth(), now.getDate()) / dayLength;
}

/**
 * A day as it is written in names of files.
 *
 * @example dayName(20783) → "2026-11-26"
 */
export function dayName(day: number): string {
  return new Date(day * dayLength).toISOString().slice(0, 10);
}
