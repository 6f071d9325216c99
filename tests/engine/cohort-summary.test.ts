import { describe, expect, test } from "vitest";
import {
  blendToLogRatio,
  cohortSummary,
  logRatioToBlend,
  type Blend,
  type LogRatio,
} from "../../src/lib/engine.js";
import { compositionExamples, skyeLavas, skyeLavasSummary } from "../tables/skye-lavas.js";
import { greatestGap } from "./mixed-reeds.js";
import { between, seeded } from "./random-model.js";

const lavas = skyeLavas.map(([a, f, m]): Blend => [a / 100, f / 100, m / 100]);
const summary = cohortSummary(lavas);
const { closedGeometricMean, arithmeticMean, totalVariance, variation, ilr, predictiveEllipse95 } =
  skyeLavasSummary;

// The table is told to six digits, so half a unit of the sixth; the plain mean to four.
const sixDigits = 5.5e-7;
const fourDigits = 5.5e-5;

describe("Skye lavas, against figures computed elsewhere", () => {
  test("closed geometric mean and plain mean", () => {
    expect(greatestGap(summary.geometricMean!, closedGeometricMean)).toBeLessThan(sixDigits);
    expect(greatestGap(summary.mean, arithmeticMean)).toBeLessThan(fourDigits);
    expect(summary.count).toBe(23);
  });

  test("log-ratio mean and covariance", () => {
    const { mean, covariance } = summary.logRatio!;
    expect(greatestGap(mean, ilr.mean)).toBeLessThan(sixDigits);
    expect(greatestGap(covariance!.flat(), ilr.covariance.flat())).toBeLessThan(sixDigits);
  });

  test("total variance, and the variances of the three log-ratios", () => {
    const [[xx, xy], [, yy]] = summary.logRatio!.covariance!;
    expect(Math.abs(xx + yy - totalVariance)).toBeLessThan(2 * sixDigits);
    // ln(A/F) = √2 z1; ln(A/M) and ln(F/M) = ±z1/√2 + z2 √(3/2). Factors of up to 3 widen the rounding.
    const [half, three, cross] = [xx / 2, 1.5 * yy, Math.sqrt(3) * xy];
    expect(Math.abs(2 * xx - variation.AF)).toBeLessThan(sixDigits);
    expect(Math.abs(half + three + cross - variation.AM)).toBeLessThan(5e-6);
    expect(Math.abs(half + three - cross - variation.FM)).toBeLessThan(sixDigits);
  });

  test("the 95 % ellipse in log-ratio coordinates, carried back to the triangle", () => {
    const { mean, covariance } = summary.logRatio!;
    const [[xx, xy], [, yy]] = covariance!;
    const swing = Math.hypot((xx - yy) / 2, xy);
    const angle = Math.atan2(2 * xy, xx - yy) / 2;
    const { radius, longAxisEnds, shortAxisEnds } = predictiveEllipse95;
    expect(Math.abs(Math.sqrt(-2 * Math.log(0.05)) - radius)).toBeLessThan(sixDigits);
    const end = (variance: number, turned: number, sign: number): Blend => {
      const reach = sign * radius * Math.sqrt(variance);
      const at: LogRatio = [mean[0] + reach * Math.cos(turned), mean[1] + reach * Math.sin(turned)];
      return logRatioToBlend(at);
    };
    const long = [1, -1].map((sign) => end((xx + yy) / 2 + swing, angle, sign));
    const short = [1, -1].map((sign) => end((xx + yy) / 2 - swing, angle + Math.PI / 2, sign));
    // Either end may come first; six digits, and the radius is told to six as well.
    const nearest = (found: readonly Blend[], told: readonly number[]): number =>
      Math.min(...found.map((one) => greatestGap(one, told)));
    for (const told of longAxisEnds) expect(nearest(long, told)).toBeLessThan(2e-6);
    for (const told of shortAxisEnds) expect(nearest(short, told)).toBeLessThan(2e-6);
  });
});

test("closing and perturbing come out as in the examples of a library for compositions", () => {
  const [whole, closed] = compositionExamples.closure;
  expect(greatestGap(logRatioToBlend(blendToLogRatio(whole)), closed)).toBeLessThan(1e-15);
  // Perturbing adds in log-ratio coordinates.
  const [a, b, sum] = compositionExamples.perturb;
  const [za, zb] = [blendToLogRatio(a), blendToLogRatio(b)];
  const added = logRatioToBlend([za[0] + zb[0], za[1] + zb[1]]);
  expect(greatestGap(added, sum)).toBeLessThan(1e-9);
});

describe("laws", () => {
  const random = seeded(8);
  const drawn = Array.from({ length: 60 }, (): Blend => {
    const [a, b, c] = [
      between(random, 0.01, 1),
      between(random, 0.01, 1),
      between(random, 0.01, 1),
    ];
    return [a / (a + b + c), b / (a + b + c), c / (a + b + c)];
  });

  test("log-ratio coordinates and back", () => {
    for (const blend of drawn)
      expect(greatestGap(logRatioToBlend(blendToLogRatio(blend)), blend)).toBeLessThan(1e-14);
  });

  test("rows of a covariance of shares sum to 0, and the mean is the plain mean", () => {
    const { covariance, mean } = cohortSummary(drawn);
    for (const [a, b, c] of covariance!) expect(Math.abs(a + b + c)).toBeLessThan(1e-15);
    expect(mean[0] + mean[1] + mean[2]).toBeCloseTo(1, 14);
  });

  test("the geometric mean of equal blends is that blend, and nothing spreads", () => {
    const { geometricMean, covariance, ellipse } = cohortSummary(
      Array.from({ length: 5 }, (): Blend => [0.2, 0.3, 0.5]),
    );
    expect(greatestGap(geometricMean!, [0.2, 0.3, 0.5])).toBeLessThan(1e-15);
    expect(greatestGap(covariance!.flat(), Array(9).fill(0))).toBeLessThan(1e-30);
    expect(ellipse!.semiAxes).toEqual([expect.closeTo(0, 12), expect.closeTo(0, 12)]);
  });

  // Points on a line of shares: Σ (x − mean)² of ±0.1 in high is .02 / 1; the drawing halves squares.
  test("two reeds apart in high and low alone: covariance by hand, ellipse only from three on", () => {
    const two = cohortSummary([
      [0.5, 0.2, 0.3],
      [0.3, 0.4, 0.3],
    ]);
    expect(two.covariance!.flat().map((one) => Math.round(one * 1e12) / 1e12 + 0)).toEqual([
      0.02, -0.02, 0, -0.02, 0.02, 0, 0, 0, 0,
    ]);
    expect(two.ellipse).toBeUndefined();
  });

  test("the ellipse covers what it says of a normal class", () => {
    const wide = cohortSummary(drawn, { coverage: 0.99 }).ellipse!;
    const half = cohortSummary(drawn, { coverage: 0.5 }).ellipse!;
    const ratio = Math.sqrt(Math.log(0.01) / Math.log(0.5));
    expect(wide.semiAxes[0] / half.semiAxes[0]).toBeCloseTo(ratio, 10);
    expect(wide.angle).toBeCloseTo(half.angle, 12);
  });
});

describe("edges", () => {
  test("one reed has a mean and no spread", () => {
    const one = cohortSummary([[0.2, 0.3, 0.5]]);
    expect(one.mean).toEqual([0.2, 0.3, 0.5]);
    expect(one).not.toHaveProperty("covariance");
    expect(one).not.toHaveProperty("ellipse");
    expect(one.logRatio).not.toHaveProperty("covariance");
  });

  test("a share of 0, or below it, leaves the logarithms out and nothing else", () => {
    const given: Blend[] = [
      [0, 0.5, 0.5],
      [0.2, 0.3, 0.5],
      [-0.1, 0.6, 0.5],
    ];
    const told = cohortSummary(given);
    expect(told).not.toHaveProperty("geometricMean");
    expect(told).not.toHaveProperty("logRatio");
    expect(told.ellipse).toBeDefined();
  });

  test.each([
    [[], {}, /blends is empty; allowed: at least one/],
    [undefined, {}, /blends is undefined; allowed: an array/],
    [[[0.2, NaN, 0.5]], {}, /blends\[0\]\[1\] is NaN/],
    [[[52, 42, 6]], {}, /sums to 100; allowed: shares that sum to 1/],
    [[[0.2, 0.3, 0.5]], { coverage: 1 }, /coverage is 1; allowed: between 0 and 1/],
  ])("cohortSummary %#", (blends, options, message) => {
    expect(() => cohortSummary(blends as unknown as Blend[], options)).toThrow(message);
  });

  test("a share that is not above 0 has no logarithm", () => {
    expect(() => blendToLogRatio([0, 0.5, 0.5])).toThrow(/allowed: three shares above 0/);
  });
});
