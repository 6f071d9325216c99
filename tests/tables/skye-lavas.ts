/**
 * Skye lavas: percentages of A, F and M in 23 specimens.
 *
 * Unit    per cent; the rows are printed in whole per cent and each sums to 100.
 * Source  Aitchison, J. (1986), The Statistical Analysis of Compositional Data, Chapman & Hall, Data 6 (after
 *         Thompson, Esson & Duncan 1972, J. Petrology 13, 219-235). Rows read from a stored copy of the data set;
 *         centre, variation and ellipse figures computed from them in base R 4.2.2, not copied from the book,
 *         to six digits (the plain mean to four).
 */
export const skyeLavas: readonly (readonly [a: number, f: number, m: number])[] = [
  [52, 42, 6],
  [52, 44, 4],
  [47, 48, 5],
  [45, 49, 6],
  [40, 50, 10],
  [37, 54, 9],
  [27, 58, 15],
  [27, 54, 19],
  [23, 59, 18],
  [22, 59, 19],
  [21, 60, 19],
  [25, 53, 22],
  [24, 54, 22],
  [22, 55, 23],
  [22, 56, 22],
  [20, 58, 22],
  [16, 62, 22],
  [17, 57, 26],
  [14, 54, 32],
  [13, 55, 32],
  [13, 52, 35],
  [14, 47, 39],
  [24, 56, 20],
];

/** What is known of them; `variation` is the variance of each log-ratio. */
export const skyeLavasSummary = {
  closedGeometricMean: [0.258542, 0.566507, 0.174951],
  arithmeticMean: [0.2683, 0.5374, 0.1943],
  totalVariance: 0.581846,
  variation: { AF: 0.251145, AM: 1.14414, FM: 0.350253 },
  ilr: {
    mean: [-0.554677, 0.639129],
    covariance: [
      [0.125573, 0.229176],
      [0.229176, 0.456274],
    ],
    eigenvalues: [0.573522, 0.008324],
  },
  predictiveEllipse95: {
    radius: 2.447747,
    longAxisEnds: [
      [0.057113, 0.413011, 0.529877],
      [0.583675, 0.387518, 0.028807],
    ],
    shortAxisEnds: [
      [0.3012, 0.49822, 0.20058],
      [0.217857, 0.632345, 0.149799],
    ],
  },
} as const;

/** Small cases. Source: docstrings of scikit-bio, skbio/stats/composition (an open-source library). */
export const compositionExamples = {
  closure: [
    [2, 2, 6],
    [0.2, 0.2, 0.6],
  ],
  perturb: [
    [0.3333333333, 0.3333333333, 0.3333333333],
    [0.5, 0.5, 1],
    [0.25, 0.25, 0.5],
  ],
} as const;
