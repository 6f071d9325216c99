import { expect, test } from "vitest";
import { planBounds } from "../../src/engine/plan-bounds.js";
import type { SearchMove } from "../../src/engine/search-space.js";
import { inOrderOfTrying } from "../../src/engine/sitting-rules.js";
import { bassoonActions } from "../../src/lib/engine.js";
import { between, seeded } from "./random-model.js";

test("no sum of moves ends nearer than its bound, or costs less; and the bounds are tight", () => {
  const random = seeded(3);
  const tightness = { least: Infinity, cost: Infinity };
  for (let round = 0; round < 200; round += 1) {
    const moves = Array.from({ length: 6 }, (): SearchMove => {
      const action = { ...bassoonActions.actions[0]!, cost: between(random, 0.5, 4) };
      const arrow = [between(random, -1, 1), between(random, -1, 1)] as const;
      return { action, arrow, most: 1 + Math.floor(3 * random()), effects: new Float64Array() };
    });
    const bounds = planBounds(moves, 3);
    const first = Math.floor(4 * random());
    const way = [between(random, -4, 4), between(random, -4, 4)] as const;
    const radius = between(random, 0.1, 2);
    const used = moves
      .slice(first)
      .filter(() => random() < 0.4)
      .slice(0, 3);
    let [x, y, cost] = [way[0], way[1], 0];
    for (const { arrow, most, action } of used) {
      // Mostly the full amount, for bounds are about the most that can be done.
      const amount = random() < 0.7 ? most : 1;
      x -= amount * arrow[0];
      y -= amount * arrow[1];
      cost += amount * action.cost;
    }
    const end = Math.hypot(x, y);
    const slack = end - bounds.least(first, 3, way);
    expect(slack, `round ${round}`).toBeGreaterThanOrEqual(-1e-9);
    tightness.least = Math.min(tightness.least, slack);
    const within = Math.max(radius, end);
    const costSlack = cost - bounds.leastCost(first, 3, way, within);
    expect(costSlack, `round ${round}`).toBeGreaterThanOrEqual(-1e-9);
    if (used.length > 0) tightness.cost = Math.min(tightness.cost, costSlack / cost);
  }
  expect(tightness.least).toBeLessThan(0.1);
  expect(tightness.cost).toBeLessThan(0.1);
});

test("what can be undone is tried first, whatever order a teacher's actions have", () => {
  const late = { ...bassoonActions.actions[0]!, order: 9 };
  const early = { ...bassoonActions.actions[6]!, order: 1 };
  const steps = inOrderOfTrying([{ action: early }, { action: late }]);
  expect(steps.map(({ action }) => action)).toEqual([late, early]);
});
