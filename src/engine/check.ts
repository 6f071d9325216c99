/**
 * Refuses a number that is not finite, so that no point is ever drawn somewhere plausible.
 *
 * Throws  RangeError that names the function, the argument and the value; TypeError for what is no number.
 */
export function requireFinite(value: unknown, name: string): asserts value is number {
  if (typeof value !== "number") {
    throw new TypeError(`${name} is ${String(value)} (${typeof value}); allowed: a finite number`);
  }
  if (!Number.isFinite(value))
    throw new RangeError(`${name} is ${value}; allowed: a finite number`);
}

/** Refuses anything but an array of `length` finite numbers; `name` is told with the index. */
export function requireFiniteTuple(values: readonly number[], length: number, name: string): void {
  if (!Array.isArray(values) || values.length !== length) {
    throw new TypeError(`${name} is ${JSON.stringify(values)}; allowed: ${length} finite numbers`);
  }
  for (let i = 0; i < length; i += 1) requireFinite(values[i], `${name}[${i}]`);
}

/** Refuses a value outside [low, high] (`exclusive`: the ends too). */
export function requireWithin(
  value: number,
  low: number,
  high: number,
  name: string,
  exclusive = false,
): void {
  requireFinite(value, name);
  const inside = exclusive ? value > low && value < high : value >= low && value <= high;
  if (inside) return;
  const allowed = exclusive ? `between ${low} and ${high}, ends excluded` : `${low} to ${high}`;
  throw new RangeError(`${name} is ${value}; allowed: ${allowed}`);
}
