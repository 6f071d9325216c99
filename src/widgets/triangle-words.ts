import { blendDistance, type Blend } from "../engine/blend.js";
import { nearestBlend } from "../engine/nearest-blend.js";
import type { Layer } from "../reed/bench.js";
import type { TriangleWords } from "../reed/triangle-words.js";
import type { DrawnTarget } from "./triangle-layers.js";
import type { DrawnReed } from "./triangle-point.js";
import { wholeShares } from "../reed/whole-shares.js";

const order = ["high", "low", "loud"] as const;

/** What is drawn on a triangle. */
export interface Drawn {
  readonly blend: Blend | undefined;
  readonly target: DrawnTarget | undefined;
  readonly pinned: DrawnReed | undefined;
  readonly layers: readonly Layer[];
  readonly ellipse: unknown;
  readonly chain: readonly unknown[];
  readonly reach: unknown;
  readonly still?: boolean;
  readonly advice?: { readonly says?: readonly string[] } | undefined;
}

/** A triangle in words: point, target, pinned reed in shares, then what only the tables can tell. */
export function describeTriangle(drawn: Drawn, text: TriangleWords): string {
  const { blend, target, pinned } = drawn;
  const words = text.triangle;
  const shares = (one: Blend): string =>
    wholeShares(one)
      .map((share, k) => `${text.percent(share)} ${text.purposes[order[k]!]}`)
      .join(", ");
  const near = blend && nearestBlend(blend);
  const parts = [
    `${words.title}.`,
    near ? `${words.point}: ${shares(near)}.` : words.noPoint,
    near && blendDistance(near, blend) > 0.01 ? words.pointOutside : "",
    target ? words.aimAt(target.label, shares(target.blend)) : "",
    pinned ? words.aimAt(words.pinned(pinned.label), shares(nearestBlend(pinned.blend))) : "",
    alsoDrawn(drawn, words),
  ];
  return parts.filter((part) => part !== "").join(" ");
}

function alsoDrawn(
  { layers, ellipse, chain, reach, advice, still }: Drawn,
  words: TriangleWords["triangle"],
): string {
  const things = [
    layers.includes("certainty") && ellipse ? words.certainty : "",
    chain.length > 0 ? words.pulls : "",
    reach ? words.reach : "",
  ].filter((thing) => thing !== "");
  const all = [...things.map((thing) => thing.toLowerCase()), ...(advice?.says ?? [])];
  return all.length > 0 ? words.alsoDrawn(all, still) : "";
}
