/** Whether something is a day as it is counted here: whole days since 1 January 1970. */
export function isDay(value: unknown): value is number {
  return Number.isInteger(value) && (value as number) > 0 && (value as number) < 1e6;
}
