import { describe, expect, test } from "vitest";
import { arrow } from "../../src/drawing/arrow.js";
import type { Point } from "../../src/engine/frame.js";
import { between, seeded } from "../engine/random-model.js";
import { pathPoints } from "./path-points.js";

/** A path is written in tenths of a px: each coordinate is off by up to 0.05. */
const written = 0.05 * Math.SQRT2 + 1e-9;
const distance = (a: Point, b: Point): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

const arrows = Array.from({ length: 100 }, (_, i) => {
  const random = seeded(i + 1);
  const from: Point = [between(random, 0, 500), between(random, 0, 500)];
  const [angle, length] = [between(random, -Math.PI, Math.PI), between(random, 1, 300)];
  const to: Point = [from[0] + length * Math.cos(angle), from[1] + length * Math.sin(angle)];
  return { seed: i + 1, from, to, length, drawn: arrow(from, to, 9)! };
});

describe("an arrow", () => {
  test("begins at its start and has its tip at its end", () => {
    for (const { seed, from, to, drawn } of arrows) {
      expect(distance(pathPoints(drawn.shaft)[0]!, from), `seed ${seed}`).toBeLessThanOrEqual(
        written,
      );
      expect(distance(pathPoints(drawn.head)[0]!, to), `seed ${seed}`).toBeLessThanOrEqual(written);
    }
  });

  test("has a head as long as asked for, but never longer than itself", () => {
    for (const { seed, to, length, drawn } of arrows) {
      const neck = pathPoints(drawn.shaft)[1]!;
      const gap = Math.abs(distance(neck, to) - Math.min(9, length));
      expect(gap, `seed ${seed}`).toBeLessThanOrEqual(written);
    }
  });

  test("has a head that is even on both sides of the shaft, and closed", () => {
    for (const { seed, drawn } of arrows) {
      const [tip, left, right] = pathPoints(drawn.head);
      const gap = Math.abs(distance(tip!, left!) - distance(tip!, right!));
      expect(gap, `seed ${seed}`).toBeLessThanOrEqual(4 * written);
      const middle: Point = [(left![0] + right![0]) / 2, (left![1] + right![1]) / 2];
      const neck = pathPoints(drawn.shaft)[1]!;
      expect(distance(middle, neck), `seed ${seed}`).toBeLessThanOrEqual(2 * written);
      expect(drawn.head.endsWith("Z")).toBe(true);
    }
  });

  test("too short to have a direction is not drawn", () => {
    expect(arrow([5, 5], [5, 5], 9)).toBeUndefined();
    expect(arrow([5, 5], [5.5, 5.5], 9)).toBeUndefined();
    expect(arrow([5, 5], [6, 5], 9)).toEqual({ shaft: "M5,5L5,5", head: "M6,5L5,5.5L5,4.6Z" });
  });
});
