import fc from "fast-check";
import { expect, test } from "vitest";
import { editDistance } from "../../src/reed/edit-distance.js";

// By hand; kitten to sitting is the usual textbook example of three changes.
test.each([
  ["", "", 0],
  ["heart", "heart", 0],
  ["", "tip", 3],
  ["tip", "", 3],
  ["kitten", "sitting", 3],
  ["hart", "heart", 1],
  ["lenght", "length", 1],
  ["wigns", "wings", 1],
  ["ca", "abc", 3],
])("from “%s” to “%s” it is %d", (from, to, distance) => {
  expect(editDistance(from, to)).toBe(distance);
});

test("it is as far there as back, and no further than the longer word", () => {
  fc.assert(
    fc.property(fc.string({ maxLength: 8 }), fc.string({ maxLength: 8 }), (from, to) => {
      expect(editDistance(from, to)).toBe(editDistance(to, from));
      expect(editDistance(from, to)).toBeLessThanOrEqual(Math.max(from.length, to.length));
      expect(editDistance(from, to) === 0).toBe(from === to);
    }),
    { seed: 6 },
  );
});
