import type { Blend } from "../engine/blend.js";
import type { TriangleWords } from "../reed/triangle-words.js";

const order = ["high", "low", "loud"] as const;

/** Where a point lies, as a screen reader hears it: "34% high register, 33% soft and low, 33% full volume." */
export function sharesText(blend: Blend, text: TriangleWords): string {
  return text.shares.all(order.map((id, k) => ({ id, share: text.percent(blend[k]!) })));
}
