/**
 * Refuses a number that is not finite, so that no point is ever drawn somewhere plausible.
 *
 * Throws  RangeError that names the function, the argument and the value; TypeError for what is no number.
 */
export function requireFinite(value: unknown, name: string): asserts value is number {
  if (typeof value !== "number") {
    throw new TypeError(`${name} is ${shown(value)}; allowed: a finite number`);
  }
  if (!Number.isFinite(value))
    throw new RangeError(`${name} is ${value}; allowed: a finite number`);
}

/** Refuses anything but an array of `length` finite numbers; `name` is told with the index. */
export function requireFiniteTuple(values: readonly number[], length: number, name: string): void {
  if (!Array.isArray(values) || values.length !== length) {
    throw new TypeError(`${name} is ${shown(values)}; allowed: ${length} finite numbers`);
  }
  for (let i = 0; i < length; i += 1) requireFinite(values[i], `${name}[${i}]`);
}

/** Refuses anything but three finite shares that sum to 1; targets are written down with six digits. */
export function requireShares(shares: readonly number[], name: string): void {
  requireFiniteTuple(shares, 3, name);
  const sum = shares[0]! + shares[1]! + shares[2]!;
  if (Math.abs(sum - 1) <= 1e-5) return;
  throw new RangeError(
    `${name} ${shares.join(", ")} sums to ${sum}; allowed: shares that sum to 1`,
  );
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

/** Sizes above this are slips, not reeds; below it no product of two of them can overflow. */
const largest = 1e9;

/** Refuses a number that is not finite or so large that sums of it would lose all meaning. */
export function requireReadable(value: unknown, name: string): asserts value is number {
  requireFinite(value, name);
  if (Math.abs(value) <= largest) return;
  throw new RangeError(`${name} is ${value}; allowed: at most ${largest} either way`);
}

/** Refuses anything but an object with keys, so that a forgotten argument is named. */
export function requireKeyed(value: unknown, name: string): void {
  if (typeof value === "object" && value !== null && !Array.isArray(value)) return;
  throw new TypeError(`${name} is ${shown(value)}; allowed: an object`);
}

/** Refuses anything but an object that holds an array under `key`. */
export function requireHolds(value: unknown, key: string, name: string, allowed: string): void {
  requireKeyed(value, name);
  if (Array.isArray((value as Readonly<Record<string, unknown>>)[key])) return;
  throw new TypeError(`${name} is an object without ${key}; allowed: ${allowed}`);
}

/** A value as an error can show it. */
export function shown(value: unknown): string {
  if (typeof value === "string") return JSON.stringify(value);
  if (Array.isArray(value)) return `[${value.map(shown).join(", ")}]`;
  if (typeof value === "object" && value !== null) return "an object";
  return typeof value === "function" ? "a function" : String(value);
}

/** Refuses anything but rows of doubles. */
export function requireRows(rows: unknown, name: string): void {
  if (rows instanceof Float64Array) return;
  throw new TypeError(`${name} is ${shown(rows)}; allowed: a Float64Array`);
}
