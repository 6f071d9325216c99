/** Halves the interval with the greatest change until next to nothing is left of it: what remains is a jump. */
export function jumpBetween(f: (t: number) => number, steps: number): { at: number; size: number } {
  const values = Array.from({ length: steps + 1 }, (_, i) => f(i / steps));
  const scale = Math.max(...values.map(Math.abs), Number.MIN_VALUE);
  const gaps = values.slice(1).map((value, i) => Math.abs(value - values[i]!));
  const worst = gaps.indexOf(Math.max(...gaps));
  let [a, b] = [worst / steps, (worst + 1) / steps];
  for (let i = 0; i < 36; i += 1) {
    const middle = (a + b) / 2;
    const [left, right] = [Math.abs(f(middle) - f(a)), Math.abs(f(b) - f(middle))];
    if (left > right) b = middle;
    else a = middle;
  }
  return { at: (a + b) / 2, size: Math.abs(f(b) - f(a)) / scale };
}
