/** Whether this is an object with keys: neither null nor a list. */
export function isKeyed(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** What stands under a key of data nobody has checked yet; `undefined` if nothing does. */
export function field(value: unknown, key: string): unknown {
  return isKeyed(value) && Object.hasOwn(value, key) ? value[key] : undefined;
}

/** The list under a key of unchecked data; empty if there is none. */
export function listField(value: unknown, key: string): readonly unknown[] {
  const list = field(value, key);
  return Array.isArray(list) ? list : [];
}

/** The finite number under a key of unchecked data, if there is one. */
export function numberField(value: unknown, key: string): number | undefined {
  const number = field(value, key);
  return typeof number === "number" && Number.isFinite(number) ? number : undefined;
}
