const mostSweeps = 30;

/**
 * The eigenvalues of a symmetric matrix, greatest first.
 *
 * Shape   n × n in rows → n numbers.
 * Error   about 1e-14 of the greatest eigenvalue.
 * Throws  RangeError when thirty sweeps do not bring the matrix to its diagonal.
 * Source  Jacobi's method, cyclic by rows: Golub & Van Loan, Matrix Computations, section 8.5.
 *
 * @example symmetricEigenvalues([[2, 1], [1, 2]]) → [3, 1]
 */
export function symmetricEigenvalues(rows: readonly (readonly number[])[]): number[] {
  const a = rows.map((row) => Float64Array.from(row));
  const n = a.length;
  for (let sweep = 0; sweep < mostSweeps; sweep += 1) {
    if (offDiagonal(a) <= 1e-28 * diagonal(a)) {
      return a.map((row, i) => row[i]!).sort((one, other) => other - one);
    }
    for (let p = 0; p < n - 1; p += 1) for (let q = p + 1; q < n; q += 1) rotate(a, p, q);
  }
  throw new RangeError(
    `symmetricEigenvalues: a ${n} × ${n} matrix is not diagonal after ${mostSweeps} sweeps; allowed: finite numbers`,
  );
}

function offDiagonal(a: readonly Float64Array[]): number {
  let sum = 0;
  for (let i = 1; i < a.length; i += 1) for (let j = 0; j < i; j += 1) sum += a[i]![j]! ** 2;
  return sum;
}

function diagonal(a: readonly Float64Array[]): number {
  return a.reduce((sum, row, i) => sum + row[i]! ** 2, 0);
}

/** Turns rows and columns p and q so that the entry where they meet becomes 0. */
function rotate(a: readonly Float64Array[], p: number, q: number): void {
  const [rowP, rowQ] = [a[p]!, a[q]!];
  const apq = rowP[q]!;
  if (apq === 0) return;
  const theta = (rowQ[q]! - rowP[p]!) / (2 * apq);
  const t = (theta >= 0 ? 1 : -1) / (Math.abs(theta) + Math.hypot(theta, 1));
  const c = 1 / Math.hypot(t, 1);
  const s = t * c;
  for (const row of a) {
    const [left, right] = [row[p]!, row[q]!];
    row[p] = c * left - s * right;
    row[q] = s * left + c * right;
  }
  for (let k = 0; k < rowP.length; k += 1) {
    const [left, right] = [rowP[k]!, rowQ[k]!];
    rowP[k] = c * left - s * right;
    rowQ[k] = s * left + c * right;
  }
}

const mostRounds = 500;

/**
 * The greatest eigenvalue of a symmetric matrix that has none below 0: much cheaper than all of them.
 *
 * Error   about 1e-14 of itself where the next one is clearly smaller, as of a beam's inertia: a quarter or less.
 * Throws  RangeError when five hundred rounds do not settle it.
 * Source  power method with Rayleigh's quotient: Golub & Van Loan, Matrix Computations, section 8.2.
 *
 * @example greatestEigenvalue([[2, 0], [0, 1]]) → 2
 */
export function greatestEigenvalue(rows: readonly (readonly number[])[]): number {
  let vector = rows.map((row) => row[0]!);
  let before = 0;
  for (let round = 0; round < mostRounds; round += 1) {
    const next = rows.map((row) => row.reduce((sum, value, j) => sum + value * vector[j]!, 0));
    const along = next.reduce((sum, value, i) => sum + value * vector[i]!, 0);
    const value = along / vector.reduce((sum, one) => sum + one * one, 0);
    if (Math.abs(value - before) <= 1e-14 * value) return value;
    before = value;
    const size = Math.hypot(...next);
    vector = next.map((one) => one / size);
  }
  throw new RangeError(
    `greatestEigenvalue: a ${rows.length} × ${rows.length} matrix has not settled after ${mostRounds} rounds; ` +
      `allowed: finite numbers, one eigenvalue greater than all others`,
  );
}
