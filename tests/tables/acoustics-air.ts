/**
 * Opening, air and closing of a reed in closed form.
 *
 * Source  quasi-static reed (Bernoulli): Wilson & Beavers (1974), JASA 56, 653; Dalmont, Gilbert & Ollivier (2003),
 *         JASA 114, 2253; double reeds: Almeida, Vergez & Caussé (2007), JASA 121, 536 (abstract read). Values computed.
 */

/** U = w h (1 − Δp/pM) √(2 Δp / ρ), ρ = 1.2 kg/m³; m, Pa → cm³/s, printed to 1e-4. */
export const flowRows: readonly (readonly [
  width: number,
  height: number,
  closingPressure: number,
  pressure: number,
  cm3PerS: number,
])[] = [
  [0.01, 0.001, 6000, 2000, 384.9002],
  [0.01, 0.001, 6000, 3000, 353.5534],
  [0.01, 0.001, 6000, 6000, 0],
  [0.007, 0.001, 9000, 3000, 329.9832],
  [0.013, 0.0005, 15000, 5000, 395.5774],
];

/** Area A₀ (1 − x)^n: the peak of √x (1 − x)^n stands at x = 1/(1 + 2n). Shares, printed to 1e-6. */
export const closingExponentRows: readonly (readonly [n: number, place: number, value: number])[] =
  [
    [0.5, 0.5, 0.5],
    [1, 0.333333, 0.3849],
    [1.5, 0.25, 0.32476],
    [2, 0.2, 0.286217],
  ];

/** Closed share ξ → open width (1 − ξ)^½, area (1 − ξ)^(3/2); derived, printed to 1e-6. */
export const cornerRows: readonly (readonly [closed: number, width: number, area: number])[] = [
  [0.1, 0.948683, 0.853815],
  [0.25, 0.866025, 0.649519],
  [0.5, Math.SQRT1_2, 0.353553],
  [0.75, 0.5, 0.125],
];

/**
 * A lip pressure l = p_lip / pM adds to the blowing pressure and moves the linear reed's peak to (1 − l)/3, scaled by
 * (1 − l)^1.5. Printed to 1e-6.
 * Source  generalised pressure: Gazengel et al. (2025), Acta Acustica 9 (abstract read).
 */
export const lipLoadRows: readonly (readonly [lip: number, place: number, value: number])[] = [
  [0, 0.333333, 0.3849],
  [0.2, 0.266667, 0.275412],
  [0.5, 0.166667, 0.136083],
];

/**
 * Linear to PM − Pe, then (PM + Pe − p)² / (4 PM Pe) to PM + Pe: PM = 6000, Pe = 1000 Pa. Printed to 1e-6.
 * Source  after Gazengel et al. (2025), Acta Acustica 9.
 */
export const elbowRows: readonly (readonly [pressure: number, open: number])[] = [
  [0, 1],
  [3000, 0.5],
  [5000, 0.166667],
  [6000, 0.041667],
  [7000, 0],
];

/**
 * Two equal circular arcs over a width, a height apart: area, printed to 1e-6.
 * Source  circular segments, CRC Standard Mathematical Tables.
 */
export const lensRows: readonly (readonly [width: number, height: number, area: number])[] = [
  [15, 0.5, 5.001111],
  [15, 1.5, 15.029957],
  [13, 1.2, 10.417702],
  [2, 2, Math.PI],
];

/** Sagitta over thickness → I of the arched blade over that of the flat one, 1 + (16/15)(c/t)²; derived. */
export const archRows: readonly (readonly [sagittaOverThickness: number, ratio: number])[] = [
  [1, 2.066667],
  [2, 5.266667],
];

/** Shallow two-bar arch, p ∝ z (1 − z²): elementary calculus. */
export const twoBarArch = { limit: 1 / Math.sqrt(3), greatest: 2 / (3 * Math.sqrt(3)) };
