import { blendDistance, type Blend } from "../engine/blend.js";
import { nearestBlend } from "../engine/nearest-blend.js";
import type { Catalogue } from "../reed/catalogue.js";
import { wholeShares } from "../reed/whole-shares.js";
import { doubtLeast } from "../reed/sentence.js";
import { targetRadius, type Target } from "../reed/targets.js";

const order = ["high", "low", "loud"] as const;

/**
 * How far a reed is from the zone of a part, in words: the purpose that differs most, and by how much.
 *
 * @example targetLine(target, { raw: target.blend, doubt: 0.1 }, english) → "It lies in the zone for …"
 */
export function targetLine(
  target: Target,
  { raw, doubt }: { readonly raw: Blend; readonly doubt: number },
  text: Catalogue,
): string {
  const part = text.advice.plan.target(target.id, target.label);
  if (doubt > doubtLeast) return text.target.unsure(part);
  // A reed outside is shown on the border, and told from there: all shares on the screen are of one kind.
  const place = nearestBlend(raw);
  if (blendDistance(place, target.blend) <= targetRadius) return text.target.within(part);
  const missing = target.blend.map((share, k) => share - place[k]!);
  const most = missing.reduce(
    (best, gap, k) => (Math.abs(gap) > Math.abs(missing[best]!) ? k : best),
    0,
  );
  // As they stand on the screen: the difference is that of the two numbers that are told.
  const [now, wanted] = [wholeShares(place)[most]!, wholeShares(target.blend)[most]!];
  return text.target.distance(part, order[most]!, now, wanted);
}
