import { describe, expect, test } from "vitest";
import { compass } from "../../src/drawing/compass.js";
import { triangleLayout } from "../../src/drawing/triangle-layout.js";
import { compileModel } from "../../src/engine/compile.js";
import { blendToPoint, type Frame, type Point } from "../../src/engine/frame.js";
import type { Triple } from "../../src/engine/model.js";
import { pulls } from "../../src/engine/pulls.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { mixedReed } from "../engine/mixed-reeds.js";
import { pathPoints } from "./path-points.js";

const values = mixedReed(bassoonModel, [1.4, -0.2, -0.2]);
const big = triangleLayout(600).frame;

/** A move as a step on the screen, in sides of the triangle it is drawn in. */
function stepIn(frame: Frame, [high, low, loud]: Triple): Point {
  const [cx, cy] = blendToPoint([1 / 3, 1 / 3, 1 / 3], frame);
  const [x, y] = blendToPoint([1 / 3 + high, 1 / 3 + low, 1 / 3 + loud], frame);
  const side = Math.hypot(frame[1][0] - frame[2][0], frame[1][1] - frame[2][1]);
  return [(x - cx) / side, (y - cy) / side];
}

const drawings = pulls(compileModel(bassoonModel), values).map((pull) => {
  const { high, low, loud } = bassoonModel.features.find(({ id }) => id === pull.feature)!.corners;
  const halfSpread = (Math.max(high, low, loud) - Math.min(high, low, loud)) / 2;
  // Large, so that the tenths of a px of a path are next to nothing.
  const drawn = compass(pull, halfSpread, 4000);
  const [from, to] = pathPoints(drawn.way);
  return {
    ...pull,
    drawn,
    way: [to![0] - from![0], to![1] - from![1]] as Point,
    expected: stepIn(big, pull.perUnit.map((part) => 2 * halfSpread * part) as unknown as Triple),
  };
});

const angleOf = ([x, y]: Point): number => Math.atan2(y, x);
const lengthOf = ([x, y]: Point): number => Math.hypot(x, y);
const turn = (a: Point, b: Point): number =>
  Math.abs(Math.atan2(Math.sin(angleOf(a) - angleOf(b)), Math.cos(angleOf(a) - angleOf(b))));

describe("the compass of every bassoon feature", () => {
  // Ways are some hundreds of px long here and their ends are written to 0.05 px.
  const written = 1e-3;

  test("shows the direction that the point takes in the big triangle", () => {
    for (const { feature, way, expected } of drawings) {
      expect(turn(way, expected), feature).toBeLessThanOrEqual(written);
    }
  });

  test("is as long as the point's way, all of them drawn at one scale", () => {
    const scales = drawings.map(({ way, expected }) => lengthOf(way) / lengthOf(expected));
    for (const scale of scales)
      expect(Math.abs(scale / scales[0]! - 1)).toBeLessThanOrEqual(written);
  });

  test("ends toward more where its way ends, and goes through the centre", () => {
    for (const { feature, drawn } of drawings) {
      const [from, to] = pathPoints(drawn.way);
      expect(drawn.more, feature).toEqual(to);
      const corners = pathPoints(drawn.outline);
      const centre = [0, 1].map((i) => (corners[0]![i]! + corners[1]![i]! + corners[2]![i]!) / 3);
      expect(Math.abs((from![0] + to![0]) / 2 - centre[0]!), feature).toBeLessThanOrEqual(0.2);
      expect(Math.abs((from![1] + to![1]) / 2 - centre[1]!), feature).toBeLessThanOrEqual(0.2);
    }
  });

  test("has an arrow that points the way of the present pull, from the centre", () => {
    for (const { feature, drawn, now } of drawings) {
      const [centre] = pathPoints(drawn.now!.shaft);
      const [tip] = pathPoints(drawn.now!.head);
      const shown: Point = [tip![0] - centre![0], tip![1] - centre![1]];
      // The shortest is some tens of px.
      expect(turn(shown, stepIn(big, now)), feature).toBeLessThanOrEqual(0.01);
    }
  });
});

test("a feature that does not pull now has no arrow", () => {
  const pull = { perUnit: [0.1, -0.05, -0.05] as Triple, now: [0, 0, 0] as Triple };
  expect("now" in compass(pull, 1)).toBe(false);
});
