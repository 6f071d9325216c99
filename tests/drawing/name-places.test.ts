import { expect, test } from "vitest";
import { boxAround, placeNames, type Box, type NamedMark } from "../../src/drawing/name-places.js";
import type { Point } from "../../src/engine/frame.js";
import { between, seeded } from "../engine/random-model.js";

const room = { width: 400, height: 360 };
const covers = (a: Box, b: Box): boolean =>
  a.left < b.right - 1e-9 &&
  b.left < a.right - 1e-9 &&
  a.top < b.bottom - 1e-9 &&
  b.top < a.bottom - 1e-9;
const mark = (at: Point, clearance = 8, width = 60): NamedMark => ({
  at,
  clearance,
  width,
  height: 16,
});

test("a lone name stands below its mark, and above it where something is below", () => {
  expect(placeNames([mark([200, 100])], [], room)).toEqual([[200, 116]]);
  const below = boxAround([200, 120], 50, 30);
  expect(placeNames([mark([200, 100])], [below], room)).toEqual([[200, 84]]);
});

test.each(Array.from({ length: 60 }, (_, i) => i + 1))(
  "seed %d: three names stay inside the drawing and off each other, wherever their marks are",
  (seed) => {
    const random = seeded(seed);
    const anywhere = (): Point => [between(random, 20, 380), between(random, 40, 320)];
    const near = anywhere();
    const marks = [
      mark(near),
      mark([near[0] + between(random, -9, 9), near[1] + between(random, -9, 9)], 24, 90),
      mark(anywhere(), 12, 70),
    ];
    const places = placeNames(marks, [], room);
    const boxes = places.map((middle, i) => boxAround(middle!, marks[i]!.width, marks[i]!.height));
    boxes.forEach((box, i) => {
      expect(box.left).toBeGreaterThanOrEqual(0);
      expect(box.right).toBeLessThanOrEqual(room.width);
      for (const other of boxes.slice(i + 1)) expect(covers(box, other)).toBe(false);
    });
  },
);

test("a name wider than the drawing is left out", () => {
  expect(placeNames([mark([100, 100], 8, 500), mark([100, 100])], [], room)[0]).toBeUndefined();
});
