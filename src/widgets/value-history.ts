import type { Values } from "../engine/model.js";

/** What values were before, and what was undone: plain data. */
export interface ValueHistory {
  readonly past: readonly Values[];
  readonly future: readonly Values[];
  /** Changes of one gesture are one step. */
  readonly gesture?: string | undefined;
}

/** Nothing has been changed yet. */
export const noHistory: ValueHistory = { past: [], future: [] };

const most = 100;

/** The history after a change, given what was there before it. */
export function changed(history: ValueHistory, before: Values, gesture?: string): ValueHistory {
  if (gesture !== undefined && gesture === history.gesture) return history;
  return { past: [...history.past, before].slice(-most), future: [], gesture };
}

/**
 * One step back or forth from the values that are there now; undefined where there is none.
 *
 * @example travelled(changed(noHistory, a), b, "undo")?.values → a
 */
export function travelled(
  { past, future }: ValueHistory,
  now: Values,
  way: "undo" | "redo",
): { readonly history: ValueHistory; readonly values: Values } | undefined {
  const values = way === "undo" ? past.at(-1) : future[0];
  if (!values) return undefined;
  const history =
    way === "undo"
      ? { past: past.slice(0, -1), future: [now, ...future] }
      : { past: [...past, now], future: future.slice(1) };
  return { history, values };
}
