import type { Blend } from "../engine/blend.js";
import type { Triple } from "../engine/model.js";
import type { TriangleWords } from "./triangle-words.js";

const order = ["high", "low", "loud"] as const;

/**
 * Three parts in whole numbers that sum to a given one: each is rounded down, and what is left goes to the largest
 * remainders.
 *
 * Domain  finite parts, negative ones too, that sum to the total.
 * Error   each part less than 1.
 *
 * @example wholeParts([33.4, 33.3, 33.3], 100) → [34, 33, 33]
 */
export function wholeParts(parts: Triple, total: number): Triple {
  const whole: [number, number, number] = [0, 0, 0];
  parts.forEach((part, k) => (whole[k] = Math.floor(part) + 0));
  let left = total - whole[0] - whole[1] - whole[2];
  const byRemainder = [0, 1, 2].toSorted((a, b) => parts[b]! - whole[b]! - parts[a]! + whole[a]!);
  for (const k of byRemainder) {
    if (left <= 0) break;
    whole[k]! += 1;
    left -= 1;
  }
  return whole;
}

/**
 * Shares as they are shown: whole per cents that sum to 100.
 *
 * Unit    shares → shares in whole hundredths.
 *
 * @example wholeShares([1 / 3, 1 / 3, 1 / 3]) → [0.34, 0.33, 0.33]
 */
export function wholeShares(blend: Blend): Blend {
  return hundredths(blend, 100);
}

/**
 * A difference of shares as it is shown: whole percentage points that sum to 0.
 *
 * @example wholeMove([0.052, -0.026, -0.026]) → [0.05, -0.02, -0.03]
 */
export function wholeMove(move: Triple): Triple {
  return hundredths(move, 0);
}

function hundredths([high, low, loud]: Triple, total: number): Triple {
  // Nine digits: 0.57 × 100 is to be 57, not a hair less.
  const exact = [high, low, loud].map((share) => Number((share * 100).toFixed(9)));
  const [a, b, c] = wholeParts([exact[0]!, exact[1]!, exact[2]!], total);
  return [a / 100, b / 100, c / 100];
}

/** The three shares of a place in words. */
export function sharesText(blend: Blend, text: TriangleWords): string {
  const shares = wholeShares(blend);
  return text.shares.all(order.map((id, k) => ({ id, share: text.percent(shares[k]!) })));
}
