/** Two digits, filled up with zeros. */
const two = (value: number): string => String(value).padStart(2, "0");

/** Whole hundredths of a second; what is no time counts as none. */
function hundredths(seconds: number): number {
  return Number.isFinite(seconds) && seconds > 0 ? Math.round(100 * seconds) : 0;
}

/**
 * A span of time as SCORM 1.2 writes it: HHHH:MM:SS.SS, at most 9999 hours.
 *
 * Unit    seconds.
 * Source  ADL SCORM 1.2 Run-Time Environment (2001), CMITimespan.
 *
 * @example clockSpan(3725.5) → "0001:02:05.50"
 */
export function clockSpan(seconds: number): string {
  const all = Math.min(hundredths(seconds), 9999 * 360_000 + 359_999);
  const [hours, minutes] = [Math.floor(all / 360_000), Math.floor(all / 6000) % 60];
  const [whole, part] = [Math.floor(all / 100) % 60, all % 100];
  return `${String(hours).padStart(4, "0")}:${two(minutes)}:${two(whole)}.${two(part)}`;
}

/**
 * A time of the day as SCORM 1.2 writes it, by the clock of the device.
 *
 * Source  ADL SCORM 1.2 Run-Time Environment (2001), CMITime.
 *
 * @example clockTime(new Date(2026, 0, 1, 9, 5, 7)) → "09:05:07"
 */
export function clockTime(at: Date): string {
  return [at.getHours(), at.getMinutes(), at.getSeconds()].map(two).join(":");
}

/**
 * A span of time as SCORM 2004 writes it, in hours, minutes and seconds.
 *
 * Unit    seconds.
 * Source  SCORM 2004 4th Edition Run-Time Environment (2009), timeinterval (second,10,2); ISO 8601.
 *
 * @example isoSpan(3725.5) → "PT1H2M5.5S"
 */
export function isoSpan(seconds: number): string {
  const all = hundredths(seconds);
  const hours = Math.floor(all / 360_000);
  const minutes = Math.floor(all / 6000) % 60;
  return `PT${hours > 0 ? `${hours}H` : ""}${minutes > 0 ? `${minutes}M` : ""}${(all % 6000) / 100}S`;
}

/**
 * A moment as SCORM 2004 writes it, in universal time. The zone may stand only behind a fraction of the second.
 *
 * Source  SCORM 2004 4th Edition Run-Time Environment (2009), time (second,10,0): YYYY-MM-DDThh:mm:ss[.s[TZD]].
 *
 * @example isoTime(new Date(0)) → "1970-01-01T00:00:00.00Z"
 */
export function isoTime(at: Date): string {
  return `${at.toISOString().slice(0, 22)}Z`;
}
