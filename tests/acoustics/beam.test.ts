import { describe, expect, test } from "vitest";
import { beamFrequencies } from "../../src/acoustics/beam.js";
import {
  cantileverFrequencies,
  cantileverTipStiffness,
  type Cantilever,
} from "../../src/acoustics/cantilever.js";
import { gaussLegendre } from "../../src/acoustics/gauss-legendre.js";
import {
  greatestEigenvalue,
  symmetricEigenvalues,
} from "../../src/acoustics/symmetric-eigenvalues.js";
import { between, seeded } from "../engine/random-model.js";
import { beamRows, doubleTaperRows, tipStiffnessRows } from "../tables/acoustics-beam.js";
import { stodolaFrequency } from "./stodola.js";

/** Length, root thickness and modulus that make E I₀ = ρ A₀ = L = 1, so that 2πf is λ. */
const unit = { length: 1, youngsModulus: 12, density: 1 };
const straight =
  (tip: number) =>
  (x: number): number =>
    tip + (1 - tip) * x;

function lambdas(thickness: number, width: number, modes: number): number[] {
  const found = cantileverFrequencies({
    ...unit,
    thickness: straight(thickness),
    width: straight(width),
    modes,
  });
  return found.map((f) => 2 * Math.PI * f);
}

describe("frequencies of cantilevers known in closed form", () => {
  // The solver's own residual is below 1e-8 for straight tapers; what is left is the print.
  test.each(beamRows)("$name", ({ thickness, width, lambda, printed }) => {
    const found = lambdas(thickness, width, lambda.length);
    lambda.forEach((value, i) => expect(Math.abs(found[i]! / value - 1)).toBeLessThan(printed));
  });

  // The published values are 0.01–0.03 % low (in the highest mode a little more): ours lie above them, by no more than that.
  test.each(doubleTaperRows)("$name", ({ thickness, width, lambda }) => {
    const found = lambdas(thickness, width, lambda.length);
    lambda.forEach((value, i) => {
      const gap = found[i]! / thickness / value - 1;
      expect(gap).toBeGreaterThan(1e-4);
      expect(gap).toBeLessThan(3.5e-4);
    });
  });
});

describe("tip stiffness known in closed form", () => {
  const of = (thickness: (x: number) => number, width: (x: number) => number): number =>
    cantileverTipStiffness({ ...unit, thickness, width });

  // Printed to half of 1e-6; the integral itself is good to 1e-8 here.
  test.each(tipStiffnessRows)("thickness ratio %d gives %d", (ratio, stiffness) => {
    expect(Math.abs(of(straight(ratio), () => 1) - stiffness)).toBeLessThan(6e-7);
  });

  test("a triangle of even thickness has 2 E I₀ / L³", () => {
    expect(of(() => 1, straight(0))).toBeCloseTo(2, 7);
  });

  test("a sharp wedge has none, and nearly sharp ones come down to it like 1 / (−ln r − 3/2)", () => {
    expect(of(straight(0), () => 1)).toBe(0);
    for (const r of [1e-2, 1e-4, 1e-8]) {
      const c = (-Math.log(r) + 2 * r - (r * r) / 2 - 1.5) / (1 - r) ** 3;
      expect(of(straight(r), () => 1) * c).toBeCloseTo(1, 7);
    }
  });

  test("near the even blade it goes smoothly to 3", () => {
    for (const r of [1 - 1e-3, 1 - 1e-6, 1 - 1e-9, 1 + 1e-9]) {
      // Slope at r = 1: k = 3 − 9/4 (1 − r) + …, from the series of the closed form.
      expect(of(straight(r), () => 1)).toBeCloseTo(3 - 2.25 * (1 - r), 5);
    }
  });
});

describe("laws of scale", () => {
  const random = seeded(61);
  const blades = Array.from({ length: 20 }, (_, i) => {
    const [a, b, c] = [between(random, 0.1, 1.5), between(random, -0.6, 2), between(random, 0, 1)];
    return {
      seed: i,
      thickness: (s: number): number => (a + b * s * s + c * Math.sin(2 * s)) * 4e-4,
      width: (s: number): number => 0.014 - 0.005 * s ** (1 + c),
    };
  }).filter(({ thickness }) =>
    Array.from({ length: 50 }, (_, i) => thickness(i / 49)).every((t) => t > 1e-5),
  );

  test.each(blades)("frequency ∝ √(E/ρ) h / L², stiffness ∝ E b h³ / L³ (blade $seed)", (blade) => {
    const scaled = (length: number, b: number, h: number, youngsModulus: number): Cantilever => ({
      length,
      youngsModulus,
      width: (x) => b * blade.width(x / length),
      thickness: (x) => h * blade.thickness(x / length),
    });
    const [one, other] = [scaled(0.027, 1, 1, 5e9), scaled(0.031, 1.3, 0.8, 7e9)];
    const f = cantileverFrequencies({ ...one, density: 900 });
    const g = cantileverFrequencies({ ...other, density: 700 });
    // Only rounding parts the two sides: they run through the same steps.
    const factor = Math.sqrt((7 / 5) * (9 / 7)) * 0.8 * (27 / 31) ** 2;
    f.forEach((value, i) => expect(g[i]! / value / factor).toBeCloseTo(1, 9));
    const stiffer = (7 / 5) * 1.3 * 0.8 ** 3 * (27 / 31) ** 3;
    const [k, l] = [cantileverTipStiffness(one), cantileverTipStiffness(other)];
    expect(l / k / stiffer).toBeCloseTo(1, 9);
  });
});

describe("another way to the same frequency", () => {
  // Stodola's iteration on 4000 steps of the trapezoidal rule: good to about 1e-5 on smooth blades.
  test.each([
    ["even", () => 1, () => 1],
    ["nearly even", straight(0.999), straight(1.001)],
    ["nearly sharp", straight(0.003), () => 1],
    ["waisted", (x: number) => 0.2 + 0.8 * x - 0.5 * x * (1 - x), straight(1.4)],
    ["bulging", (x: number) => 0.3 + 0.7 * Math.sin(2.5 * x), straight(0.5)],
    ["thin at the clamp", (x: number) => 1 - 0.6 * Math.exp(-60 * (x - 0.95) ** 2), () => 1],
  ] as const)("%s", (_name, thickness, width) => {
    const [f] = cantileverFrequencies({ ...unit, thickness, width, modes: 1 });
    const other = stodolaFrequency(1, (x) => ({
      stiffness: width(x) * thickness(x) ** 3,
      mass: width(x) * thickness(x),
    }));
    expect(Math.abs(f! / other - 1)).toBeLessThan(1e-4);
  });
});

describe("a beam that cannot be computed is an error", () => {
  const blade = { ...unit, thickness: () => 1, width: () => 1 };

  test("a blade with a step does not converge to 0.1 %, and says so", () => {
    const thickness = (x: number): number => (x < 0.37 ? 0.3 : 1);
    expect(() => cantileverFrequencies({ ...blade, thickness })).toThrow(/not converged/);
  });

  test.each([
    [{ length: 0 }, /length is 0/],
    [{ youngsModulus: NaN }, /youngsModulus is NaN/],
    [{ density: -1 }, /density is -1/],
    [{ modes: 1.5 }, /modes is 1.5/],
    [{ thickness: (x: number) => x - 0.5 }, /stiffness .* from the tip/],
    [{ width: () => NaN }, /stiffness NaN/],
  ])("%o", (wrong, message) => {
    expect(() => cantileverFrequencies({ ...blade, ...wrong })).toThrow(message);
    expect(() => cantileverFrequencies({ ...blade, ...wrong })).toThrow(RangeError);
  });

  test("of a tip stiffness too", () => {
    expect(() => cantileverTipStiffness({ ...blade, thickness: () => NaN })).toThrow(/NaN/);
    expect(() => cantileverTipStiffness({ ...blade, length: Infinity })).toThrow(/length/);
  });
});

test("stiffness and mass may be anything that is above 0, not only a rectangle's", () => {
  const [f] = beamFrequencies(1, () => ({ stiffness: 4, mass: 1 }), 1);
  expect(2 * Math.PI * f!).toBeCloseTo(2 * 3.51601527, 7);
});

test.each([1, 2, 4, 8, 16, 64])("Gauss points: %d integrate a polynomial of degree 2n − 1", (n) => {
  const { places, weights } = gaussLegendre(n);
  for (const degree of [0, 1, n, 2 * n - 1]) {
    const sum = places.reduce((all, x, i) => all + weights[i]! * x ** degree, 0);
    expect(sum).toBeCloseTo(1 / (degree + 1), 13);
  }
});

test("the lowest frequency alone is the first of several", () => {
  for (const thickness of [0, 0.003, 0.3, 1, 3]) {
    // Both are good to about 1e-13; the levels they stop at may differ by one.
    expect(lambdas(thickness, 0.7, 1)[0]! / lambdas(thickness, 0.7, 3)[0]!).toBeCloseTo(1, 6);
  }
  expect(() => greatestEigenvalue([[NaN]])).toThrow(/has not settled/);
});

test("eigenvalues: their sum is the trace, their squares' sum that of the entries", () => {
  const random = seeded(5);
  for (let n = 1; n <= 12; n += 1) {
    const half = Array.from({ length: n }, () =>
      Array.from({ length: n }, () => between(random, -1, 1)),
    );
    const rows = half.map((row, i) => row.map((value, j) => value + half[j]![i]!));
    const found = symmetricEigenvalues(rows);
    const trace = rows.reduce((sum, row, i) => sum + row[i]!, 0);
    const squares = rows.flat().reduce((sum, value) => sum + value * value, 0);
    expect(found.reduce((sum, value) => sum + value, 0)).toBeCloseTo(trace, 10);
    expect(found.reduce((sum, value) => sum + value * value, 0)).toBeCloseTo(squares, 10);
    expect([...found].sort((a, b) => b - a)).toEqual(found);
  }
  expect(() =>
    symmetricEigenvalues([
      [1, NaN],
      [NaN, 1],
    ]),
  ).toThrow(RangeError);
});
