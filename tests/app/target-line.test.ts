import { expect, test } from "vitest";
import { targetLine } from "../../src/app/target-line.js";
import { english } from "../../src/reed/catalogue.js";
import { targets } from "../../src/reed/targets.js";

const softLow = targets.find(({ id }) => id === "softLow")!;

test("inside the zone nothing is asked for", () => {
  expect(targetLine(softLow, [0.27, 0.49, 0.24], english)).toBe(
    "It lies in the zone for soft low second part.",
  );
});

test("outside it the purpose that differs most is told, with its sign", () => {
  expect(targetLine(softLow, [1 / 3, 1 / 3, 1 / 3], english)).toBe(
    "For soft low second part it needs above all 18% more of soft and low playing.",
  );
  expect(targetLine(softLow, [0.1, 0.5, 0.4], english)).toBe(
    "For soft low second part it needs above all 16% less of full volume.",
  );
});
