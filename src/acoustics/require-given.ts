/**
 * Refuses anything but an object, so that a forgotten argument is named rather than a property of nothing.
 *
 * Throws  TypeError that names the function, the argument and what was allowed.
 */
export function requireGiven(value: unknown, name: string, allowed: string): void {
  if (typeof value === "object" && value !== null) return;
  throw new TypeError(`${name} is ${String(value)}; allowed: ${allowed}`);
}
