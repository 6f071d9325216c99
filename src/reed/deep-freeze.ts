/**
 * Freezes plain data all the way down, and returns it.
 *
 * Shape   any tree of plain objects, arrays and primitives → the same tree, frozen in place.
 *
 * @example Object.isFrozen(deepFreeze({ a: [1] }).a) → true
 */
export function deepFreeze<T>(data: T): T {
  if (typeof data === "object" && data !== null && !Object.isFrozen(data)) {
    Object.freeze(data);
    for (const part of Object.values(data)) deepFreeze(part);
  }
  return data;
}
