import { describe, expect, test } from "vitest";
import type { Triple } from "../../src/engine/model.js";
import { pullRows } from "../../src/lesson/pull-rows.js";
import { between, seeded } from "../engine/random-model.js";

const random = seeded(91);
const rounds = Array.from({ length: 300 }, (_, round) => ({
  round,
  pulls: Array.from({ length: 1 + (round % 9) }, (__, k) => {
    const [a, b] = [between(random, -0.4, 0.4), between(random, -0.4, 0.4)];
    return { feature: `f${k}`, change: 1, move: [a, b, -a - b] as Triple };
  }),
}));

describe("pulls as they are shown", () => {
  test.each(rounds)(
    "round $round: rows sum to the sum, everything sums to 0, nothing is far off",
    ({ pulls }) => {
      const { rows, sum } = pullRows(pulls);
      for (const k of [0, 1, 2] as const) {
        expect(rows.reduce((total, { tenths }) => total + tenths[k], 0)).toBe(sum[k]);
        const exact = pulls.reduce((total, { move }) => total + move[k], 0) * 1000;
        expect(Math.abs(sum[k] - exact)).toBeLessThanOrEqual(1);
        rows.forEach(({ tenths }, i) =>
          expect(Math.abs(tenths[k] - pulls[i]!.move[k] * 1000)).toBeLessThanOrEqual(2),
        );
      }
      for (const { tenths } of [...rows, { tenths: sum }])
        expect(tenths[0] + tenths[1] + tenths[2]).toBe(0);
    },
  );
});
