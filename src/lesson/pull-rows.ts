import type { RecipeDifference } from "../engine/differences.js";
import type { FeatureId, Triple } from "../engine/model.js";
import { wholeParts } from "../reed/whole-shares.js";

/** What one change did to the point, in whole tenths of a per cent. */
export interface PullRow {
  readonly feature: FeatureId;
  /** In the feature's own unit. */
  readonly change: number;
  readonly tenths: Triple;
}

/** Pulls as they are shown, and what they sum to. */
export interface PullRows {
  readonly rows: readonly PullRow[];
  readonly sum: Triple;
}

/**
 * Pulls rounded so that they still sum to the move that is shown, and each to 0: the running sums are rounded, and
 * each row is what it adds to them.
 *
 * Unit    shares → whole tenths of a per cent.
 * Error   each share of a row within a tenth and a half of the pull, the sum's within one tenth.
 *
 * @example pullRows([]).sum → [0, 0, 0]
 */
export function pullRows(pulls: readonly RecipeDifference[]): PullRows {
  let exact: Triple = [0, 0, 0];
  let sum: Triple = [0, 0, 0];
  const rows = pulls.map(({ feature, change, move }) => {
    exact = [exact[0] + move[0], exact[1] + move[1], exact[2] + move[2]];
    const next = roundedTenths(exact);
    const tenths: Triple = [next[0] - sum[0], next[1] - sum[1], next[2] - sum[2]];
    sum = next;
    return { feature, change, tenths };
  });
  return { rows, sum };
}

/** A move in whole tenths of a per cent that sums to 0. */
function roundedTenths([high, low, loud]: Triple): Triple {
  return wholeParts([high * 1000, low * 1000, loud * 1000], 0);
}
