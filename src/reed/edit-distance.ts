/**
 * How many letters apart two words are: insertions, deletions, changes, and swaps of neighbours.
 *
 * Shape   two words → a whole number, 0 for the same word.
 * Source  optimal string alignment; the recurrence is the textbook one (Levenshtein with neighbour swaps).
 *
 * @example editDistance("lenght", "length") → 1
 */
export function editDistance(from: string, to: string): number {
  const [a, b] = [Array.from(from), Array.from(to)];
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, column) => column);
  a.forEach((letter, row) => {
    const current = [row + 1];
    b.forEach((other, column) => {
      const change = (last[column] ?? 0) + (letter === other ? 0 : 1);
      const swapped = row > 0 && column > 0 && letter === b[column - 1] && a[row - 1] === other;
      const swap = swapped ? (beforeLast[column - 1] ?? 0) + 1 : Infinity;
      current.push(Math.min(change, swap, (last[column + 1] ?? 0) + 1, (current[column] ?? 0) + 1));
    });
    beforeLast = last;
    last = current;
  });
  return last[b.length] ?? a.length;
}
