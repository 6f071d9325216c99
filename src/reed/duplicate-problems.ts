import type { AddProblem, Keys } from "./problem-at.js";
import { field, listField } from "./unknown-field.js";

/** The ids in a list of an unchecked file. */
export function idsIn(json: unknown, list: string): ReadonlySet<string> {
  const ids = listField(json, list).map((entry) => field(entry, "id"));
  return new Set(ids.filter((id) => typeof id === "string"));
}

/** Reports every id that an earlier entry of the same list has already. */
export function duplicateIds(json: unknown, list: string, add: AddProblem): void {
  const ids = listField(json, list).map((entry) => field(entry, "id"));
  duplicates(ids, (index) => [list, index, "id"], add);
}

/** Reports every text that stands in a list for the second time. */
export function duplicates(
  texts: readonly unknown[],
  keysOf: (index: number) => Keys,
  add: AddProblem,
): void {
  const seen = new Set<unknown>();
  texts.forEach((text, index) => {
    if (typeof text !== "string") return;
    if (seen.has(text)) add(keysOf(index), text, "different from every id before it in the list");
    seen.add(text);
  });
}
