import type { Blend } from "../engine/blend.js";

/** What a reading of three shares is told. */
export interface ReadMark {
  readonly kind: "read";
  readonly right: boolean;
  readonly shares: Blend;
  /** The true shares. */
  readonly truth: Blend;
  /** For each share, whether it is right. */
  readonly each: readonly [boolean, boolean, boolean];
  /** The usual slip that the answer looks like. */
  readonly slip?: "upsideDown" | "otherCorners" | "notWhole";
}

/**
 * A reading held against the place, and the slip it may have been: each share counted from the wrong end, shares
 * given to the wrong corners, or three that do not make a whole.
 *
 * Unit    shares.
 *
 * @example markRead([0.2, 0.6, 0.2], [0.6, 0.2, 0.2], 0.05).slip → "otherCorners"
 */
export function markRead(shares: Blend, truth: Blend, within: number): ReadMark {
  const near = (a: number, b: number): boolean => Math.abs(a - b) <= within + 1e-9;
  const each = [0, 1, 2].map((k) => near(shares[k]!, truth[k]!)) as [boolean, boolean, boolean];
  const right = each.every(Boolean);
  const slip = right ? undefined : slipOf(shares, truth, near);
  return { kind: "read", right, shares, truth, each, ...(slip ? { slip } : {}) };
}

const otherOrders = [
  [0, 2, 1],
  [1, 0, 2],
  [1, 2, 0],
  [2, 0, 1],
  [2, 1, 0],
] as const;

function slipOf(
  shares: Blend,
  truth: Blend,
  near: (a: number, b: number) => boolean,
): ReadMark["slip"] {
  if (shares.every((share, k) => near(1 - share, truth[k]!))) return "upsideDown";
  const isOther = (order: readonly [0 | 1 | 2, 0 | 1 | 2, 0 | 1 | 2]): boolean =>
    shares.every((share, k) => near(share, truth[order[k as 0 | 1 | 2]]));
  if (otherOrders.some(isOther)) return "otherCorners";
  const sum = shares[0] + shares[1] + shares[2];
  return Math.abs(sum - 1) > 0.02 ? "notWhole" : undefined;
}
