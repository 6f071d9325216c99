import { editDistance } from "./edit-distance.js";

/** Longer than this no misspelt name is; comparing letters would only cost time. */
const longestTypo = 60;

/**
 * The known word that was probably meant: the only one that begins so, or the fewest letters away, if no more than half
 * of the word is wrong.
 *
 * Shape   a word, the known ones → one of them, or undefined where none is near. Case does not count.
 *
 * @example nearestWord("chnage", ["ask", "change"]) → "change"
 */
export function nearestWord(word: string, known: readonly string[]): string | undefined {
  if (word.length > longestTypo) return undefined;
  const typed = word.toLowerCase();
  // The beginning of one name alone is no slip of letters: "throat" is short for "throatWidth".
  const begun = known.filter((name) => typed !== "" && name.toLowerCase().startsWith(typed));
  if (begun.length === 1 && typed.length >= 3) return begun[0];
  const nearest = known
    .map((name) => ({ name, distance: editDistance(typed, name.toLowerCase()) }))
    .toSorted((a, b) => a.distance - b.distance)[0];
  return nearest && nearest.distance <= typed.length / 2 ? nearest.name : undefined;
}
