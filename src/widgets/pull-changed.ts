import type { Pull } from "../engine/pulls.js";

/** Whether a pull is another one by its numbers: pulls are computed anew with every move, and most stay as they were. */
export function pullChanged(next: Pull | undefined, before: Pull | undefined): boolean {
  if (!next || !before) return next !== before;
  const same = [0, 1, 2].every(
    (k) => next.now[k] === before.now[k] && next.perUnit[k] === before.perUnit[k],
  );
  return !same || next.feature !== before.feature;
}
