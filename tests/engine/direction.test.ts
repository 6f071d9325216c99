import { describe, expect, test } from "vitest";
import { pullDirection } from "../../src/engine/direction.js";
import type { Triple } from "../../src/engine/model.js";

describe("a pull is told by the purpose it goes toward or leaves, whichever is the greater part", () => {
  test.each<[Triple, "toward" | "away", "high" | "low" | "loud"]>([
    [[0.2, -0.1, -0.1], "toward", "high"],
    [[-0.2, 0.1, 0.1], "away", "high"],
    [[-0.1, 0.2, -0.1], "toward", "low"],
    [[0.15, -0.2, 0.05], "away", "low"],
    [[0, -0.1, 0.1], "toward", "loud"],
    [[0.01, 0.19, -0.2], "away", "loud"],
  ])("%j goes %s %s", (pull, way, purpose) => {
    expect(pullDirection(pull)).toEqual({ way, purpose });
  });

  test("less than half a per cent has no direction", () => {
    expect(pullDirection([0, 0, 0])).toBeUndefined();
    expect(pullDirection([0.0015, -0.0015, 0])).toBeUndefined();
    expect(pullDirection([0.0025, -0.0025, 0])).toBeDefined();
  });
});
