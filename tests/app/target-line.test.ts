import { expect, test } from "vitest";
import { targetLine } from "../../src/app/target-line.js";
import type { Blend } from "../../src/engine/blend.js";
import { english } from "../../src/reed/catalogue.js";
import { targets } from "../../src/reed/targets.js";

const softLow = targets.find(({ id }) => id === "softLow")!;
const line = (raw: Blend, doubt = 0.15): string => targetLine(softLow, { raw, doubt }, english);

test("inside the zone nothing is asked for", () => {
  expect(line([0.27, 0.49, 0.24])).toBe("It lies in the zone for a soft low second part.");
});

test("outside it the purpose that differs most is told, with its sign", () => {
  expect(line([1 / 3, 1 / 3, 1 / 3])).toBe(
    "For a soft low second part it needs above all 18 percentage points more of soft and low playing: 51% instead of 33%.",
  );
  expect(line([0.1, 0.5, 0.4])).toBe(
    "For a soft low second part it needs above all 16 percentage points less of full volume: 24% instead of 40%.",
  );
});

test("a reed outside is told from the border, where its point is drawn", () => {
  expect(line([1.2, -0.1, -0.1])).toBe(line([1, 0, 0]));
});

test("with a place that is hardly one nothing is advised", () => {
  expect(line([0.1, 0.5, 0.4], 0.4)).toBe(
    "How far it is to the zone for a soft low second part cannot be said from so few readings.",
  );
});

test("the difference is that of the two shares as they are told, for every part and place", () => {
  for (const target of targets) {
    for (let high = 0; high <= 1; high += 0.037) {
      for (let low = 0; low <= 1 - high; low += 0.037) {
        const said = targetLine(target, { raw: [high, low, 1 - high - low], doubt: 0.1 }, english);
        const numbers = said.match(/\d+/g)?.map(Number);
        if (!numbers) continue;
        const [points, wanted, now] = numbers;
        expect(Math.abs(wanted! - now!), said).toBe(points);
        expect(said.includes(" more of "), said).toBe(wanted! > now!);
      }
    }
  }
});
