/**
 * A number from 0 to 1 that a text stands for.
 *
 * Source  the hash of Fowler, Noll and Vo (FNV-1a, 32 bits), its bits mixed as at the end of MurmurHash3.
 *
 * @example drawn("a") === drawn("a") → true
 */
export function drawn(text: string): number {
  let hash = 0x811c9dc5;
  for (const character of text) {
    hash ^= character.codePointAt(0)!;
    hash = Math.imul(hash, 0x01000193);
  }
  // Texts that differ in their last letter alone must differ in every bit.
  hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b);
  hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35);
  return ((hash ^ (hash >>> 16)) >>> 0) / 2 ** 32;
}

/**
 * The whole numbers from 0 in a mixed order. Same seed, same order.
 *
 * @example mixedOrder(1, "any") → [0]
 */
export function mixedOrder(count: number, seed: string): readonly number[] {
  const draw = (index: number): number => drawn(`${index}/${seed}`);
  return Array.from({ length: count }, (_, index) => index).toSorted((a, b) => draw(a) - draw(b));
}
