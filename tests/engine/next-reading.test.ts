import { describe, expect, test } from "vitest";
import { mostUsefulReading } from "../../src/engine/next-reading.js";
import type { ReedModel } from "../../src/engine/model.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { randomModel, seeded } from "./random-model.js";

/**
 * Brute force of its own: the covariance written out from the fit's normal matrix in share space, by Cramer's rule, and
 * the area of its ellipse from the principal minor; undefined where the features cannot tell the purposes apart.
 */
function areaByHand(model: ReedModel, ids: readonly string[]): number | undefined {
  const features = ids.map((id) => model.features.find((one) => one.id === id)!);
  const rows = features.map(({ corners, weight, gaugeError, id }) => {
    const all = [corners.high, corners.low, corners.loud];
    const mean = (all[0]! + all[1]! + all[2]!) / 3;
    const s = (Math.max(...all) - Math.min(...all)) / 2;
    // Two free shares: x = high, y = low; loud = 1 − x − y.
    const d = all.map((one) => (one - mean) / s);
    return { x: d[0]! - d[2]!, y: d[1]! - d[2]!, w: weight, e: gaugeError / s, s, id, d };
  });
  const sum = (term: (row: (typeof rows)[number]) => number): number =>
    rows.reduce((all, row) => all + term(row), 0);
  const [xx, xy, yy] = [
    sum((r) => r.w * r.x * r.x),
    sum((r) => r.w * r.x * r.y),
    sum((r) => r.w * r.y * r.y),
  ];
  const det = xx * yy - xy * xy;
  // The engine's rule on separation, in its own basis of the plane: condition number of G above 50.
  const r2 = Math.SQRT1_2;
  const r6 = 1 / Math.sqrt(6);
  const u = rows.map((r) => ({
    w: r.w,
    a: r2 * (r.d[2]! - r.d[1]!),
    b: r6 * (2 * r.d[0]! - r.d[1]! - r.d[2]!),
  }));
  const g = (f: (one: (typeof u)[number]) => number): number =>
    u.reduce((all, one) => all + f(one), 0);
  const [aa, ab, bb] = [
    g((o) => o.w * o.a * o.a),
    g((o) => o.w * o.a * o.b),
    g((o) => o.w * o.b * o.b),
  ];
  const swing = Math.hypot((aa - bb) / 2, ab);
  const [most, least] = [(aa + bb) / 2 + swing, (aa + bb) / 2 - swing];
  if (!(most / least <= 50)) return undefined;
  const pulls = rows.map((r) => ({
    x: (r.w * (yy * r.x - xy * r.y)) / det,
    y: (r.w * (xx * r.y - xy * r.x)) / det,
    v: r.e * r.e + model.recipeScatter ** 2 / r.w,
    c: model.commonGaugeError.features.includes(r.id) ? model.commonGaugeError.amount / r.s : 0,
  }));
  const cx = pulls.reduce((all, p) => all + p.c * p.x, 0);
  const cy = pulls.reduce((all, p) => all + p.c * p.y, 0);
  const vxx = pulls.reduce((all, p) => all + p.v * p.x * p.x, cx * cx);
  const vxy = pulls.reduce((all, p) => all + p.v * p.x * p.y, cx * cy);
  const vyy = pulls.reduce((all, p) => all + p.v * p.y * p.y, cy * cy);
  // The drawing of side 1 has √3/2 of the area that the two shares span at right angles.
  return (Math.sqrt(3) / 2) * Math.PI * Math.sqrt(vxx * vyy - vxy * vxy) * -2 * Math.log(0.05);
}

function bestByHand(model: ReedModel, measured: readonly string[]) {
  return model.features
    .map(({ id }) => id)
    .filter((id) => !measured.includes(id))
    .flatMap((id) => {
      const area = areaByHand(model, [...measured, id]);
      return area === undefined ? [] : [{ id, area }];
    })
    .toSorted((a, b) => a.area - b.area);
}

describe("the next most useful reading", () => {
  test.each(Array.from({ length: 60 }, (_, i) => i + 1))(
    "seed %d: is the one that brute force finds, over all features",
    (seed) => {
      const random = seeded(seed);
      const model = seed % 2 === 0 ? bassoonModel : randomModel(random, 8);
      const ids = model.features.map(({ id }) => id);
      const measured = ids.filter(() => random() < 0.5);
      const [first, second] = bestByHand(model, measured);
      const found = mostUsefulReading(model, measured);
      if (!first) {
        if (found) expect(found.area).toBe(Infinity);
        return;
      }
      expect(found!.area).toBeCloseTo(first.area, 9);
      // Two that are alike to the last digits may change places.
      if (!second || second.area - first.area > 1e-9) expect(found!.feature).toBe(first.id);
    },
  );

  test("a sheet that follows it tightens the place with every reading, where the dial has no zero error", () => {
    // With a common zero error one more reading of the same dial can loosen it a little.
    const model = { ...bassoonModel, commonGaugeError: { amount: 0, features: [] } };
    const measured: string[] = [];
    const areas: number[] = [];
    for (let next = mostUsefulReading(model, measured); next;) {
      measured.push(next.feature);
      areas.push(next.area);
      next = mostUsefulReading(model, measured);
    }
    expect(measured).toHaveLength(model.features.length);
    const placed = areas.filter((area) => area < Infinity);
    expect(placed).toEqual(placed.toSorted((a, b) => b - a));
    expect(areas.filter((area) => area === Infinity).length).toBeLessThanOrEqual(2);
  });

  test("throat width, tip width and spine place a reed best of all threes: common practice, no source", () => {
    expect(mostUsefulReading(bassoonModel, ["throatWidth", "tipWidth"])!.feature).toBe("spine");
  });

  test("with everything measured there is none", () => {
    expect(
      mostUsefulReading(
        bassoonModel,
        bassoonModel.features.map(({ id }) => id),
      ),
    ).toBeUndefined();
  });
});
