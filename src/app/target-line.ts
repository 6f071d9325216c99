import { blendDistance, type Blend } from "../engine/blend.js";
import type { Catalogue } from "../reed/catalogue.js";
import { targetRadius, type Target } from "../reed/targets.js";

const order = ["high", "low", "loud"] as const;

/**
 * How far a reed is from the zone of a part, in words: the purpose that differs most, and by how much.
 *
 * @example targetLine(target, target.blend, english) → "The reed lies in the zone for …"
 */
export function targetLine(target: Target, place: Blend, text: Catalogue): string {
  if (blendDistance(place, target.blend) <= targetRadius) return text.target.within(target.label);
  const missing = target.blend.map((share, k) => share - place[k]!);
  const most = missing.reduce(
    (best, gap, k) => (Math.abs(gap) > Math.abs(missing[best]!) ? k : best),
    0,
  );
  const share = text.percent(Math.abs(missing[most]!));
  return text.target.distance(target.label, share, order[most]!, missing[most]! > 0);
}
