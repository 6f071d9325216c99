/**
 * Cantilevers whose bending is known in closed form.
 *
 * Unit    frequencies as λ in ω = λ √(E I₀ / (ρ A₀ L⁴)); index 0 is the clamped root, the other end is free.
 *         Tip stiffness as k L³ / (E I₀). As many digits as the sources print.
 * Source  uniform: Thomson, Theory of Vibration, appendix D. Wedge and cone: classical Bessel solutions (Kirchhoff;
 *         Blevins, Formulas for Natural Frequency and Mode Shape, 1979). Double taper: Mabie & Rogers (1972),
 *         JASA 51, 1771. The rows of thickness ratios and the static rows: computed from the closed forms at 25 digits.
 */
export interface BeamRow {
  readonly name: string;
  /** Of tip over root; 0 is sharp. Width and thickness are straight between. */
  readonly thickness: number;
  readonly width: number;
  readonly lambda: readonly number[];
  /** The greatest error of the printed values, relative. */
  readonly printed: number;
}

export const beamRows: readonly BeamRow[] = [
  {
    name: "uniform",
    thickness: 1,
    width: 1,
    lambda: [3.51601527, 22.03449156, 61.69721441],
    printed: 2e-9,
  },
  {
    name: "thickness wedge",
    thickness: 0,
    width: 1,
    lambda: [5.31509942, 15.20716796, 30.01980915],
    printed: 2e-9,
  },
  {
    name: "cone",
    thickness: 0,
    width: 0,
    lambda: [8.71925886, 21.14566239, 38.45377123],
    printed: 2e-9,
  },
  {
    name: "width wedge",
    thickness: 1,
    width: 0,
    lambda: [7.15646, 31.0413, 75.4866],
    printed: 2e-6,
  },
  { name: "thickness 0.8", thickness: 0.8, width: 1, lambda: [3.60827, 20.62102], printed: 2e-6 },
  { name: "thickness 0.5", thickness: 0.5, width: 1, lambda: [3.82378, 18.31726], printed: 2e-6 },
  { name: "thickness 0.25", thickness: 0.25, width: 1, lambda: [4.17659, 16.18429], printed: 2e-6 },
  { name: "thickness 0.2", thickness: 0.2, width: 1, lambda: [4.29249, 15.7427], printed: 3e-6 },
];

/**
 * Mabie & Rogers give λ with the tip's section instead of the root's. Their printed values are known to be
 * 0.01–0.03 % low.
 */
export const doubleTaperRows: readonly Omit<BeamRow, "printed">[] = [
  {
    name: "thickness 4 : 1, width 4 : 1",
    thickness: 1 / 4,
    width: 1 / 4,
    lambda: [23.289, 73.9, 165.23],
  },
  {
    name: "thickness 4 : 1, width 5 : 1",
    thickness: 1 / 4,
    width: 1 / 5,
    lambda: [24.308, 75.56, 167.21],
  },
];

/** Tip over root thickness, even width → k L³ / (E I₀), printed to 1e-6. */
export const tipStiffnessRows: readonly (readonly [ratio: number, stiffness: number])[] = [
  [1, 3],
  [0.8, 2.544892],
  [0.5, 1.834265],
  [0.25, 1.188232],
  [0.1, 0.730765],
];
