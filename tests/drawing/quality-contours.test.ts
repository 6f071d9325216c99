import { describe, expect, test } from "vitest";
import { qualityContours } from "../../src/drawing/quality-contours.js";
import { triangleLayout } from "../../src/drawing/triangle-layout.js";
import { blendToPoint, pointToBlend, type Point } from "../../src/engine/frame.js";
import { qualityAt, type SevenValues } from "../../src/engine/qualities.js";
import { bassoonQualities } from "../../src/reed/bassoon-qualities.js";
import { pathPoints } from "./path-points.js";

const { frame, side } = triangleLayout(480);
const isInside = (point: Point): boolean =>
  pointToBlend(point, frame).every((share) => share > 0.02);

describe("contours of a quality", () => {
  test.each(bassoonQualities.qualities.map((quality) => [quality.id, quality.values] as const))(
    "of %s run where the quality has their value",
    (_id, values) => {
      const lines = qualityContours(values, frame);
      expect(lines.length).toBeGreaterThan(2);
      for (const { value, path } of lines) {
        const points = pathPoints(path).filter(isInside);
        // Between grid points d3 takes the quality to be linear: on a cell of side/63 the surface bends by less.
        for (const point of points)
          expect(Math.abs(qualityAt(values, pointToBlend(point, frame)) - value)).toBeLessThan(
            0.05,
          );
      }
      const levels = lines.map(({ value }) => value);
      expect(levels).toEqual(levels.toSorted((a, b) => a - b));
    },
  );

  test("of what is the same everywhere there are none", () => {
    expect(qualityContours([5, 5, 5, 5, 5, 5, 5], frame)).toEqual([]);
  });

  test("of what rises evenly toward one corner are level lines", () => {
    // The quality is 10 times the share of high: the line of 5 is where that share is one half.
    const even: SevenValues = [10, 0, 0, 5, 0, 5, 10 / 3];
    const half = qualityContours(even, frame).find(({ value }) => value === 5)!;
    const y = blendToPoint([0.5, 0.25, 0.25], frame)[1];
    const line = pathPoints(half.path).filter(
      (point) => isInside(point) && point[1] > y - side / 10,
    );
    expect(line.length).toBeGreaterThan(10);
    for (const point of line) expect(point[1]).toBeCloseTo(y, 0);
  });

  test("are numbered on the line and inside the triangle", () => {
    for (const { values } of bassoonQualities.qualities) {
      for (const { value, label } of qualityContours(values, frame)) {
        if (!label) continue;
        expect(isInside(label)).toBe(true);
        expect(qualityAt(values, pointToBlend(label, frame))).toBeCloseTo(value, 1);
      }
    }
  });
});
