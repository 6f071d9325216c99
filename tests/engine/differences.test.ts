import { expect, test } from "vitest";
import { pullWay, recipeDifferences } from "../../src/engine/differences.js";
import { place } from "../../src/engine/place.js";
import { greatestGap } from "./mixed-reeds.js";
import { randomMap, randomValues, seeded } from "./random-model.js";

const seeds = Array.from({ length: 40 }, (_, i) => i + 1);

test.each(seeds)(
  "seed %d: what two reeds differ in adds up to the way between their places",
  (seed) => {
    const random = seeded(seed);
    const map = randomMap(random, 3 + (seed % 12));
    const [from, to] = [randomValues(random, map.model), randomValues(random, map.model)];
    const differences = recipeDifferences(map, from, to);
    const [start, end] = [place(map, from).raw, place(map, to).raw];
    const size = Math.max(1, ...differences.flatMap(({ move }) => move.map(Math.abs)));
    [0, 1, 2].forEach((k) => {
      const sum = differences.reduce((all, { move }) => all + move[k]!, 0);
      expect(Math.abs(sum - (end[k]! - start[k]!))).toBeLessThan(1e-12 * size * 14);
    });
    const sizes = differences.map(({ move }) => Math.hypot(...move));
    expect(sizes).toEqual(sizes.toSorted((a, b) => b - a));
    expect(differences.map(({ feature }) => feature).toSorted()).toEqual(
      [...map.features].toSorted(),
    );
    for (const { feature, change } of differences)
      expect(from[feature]! + change).toBeCloseTo(to[feature]!, 9);
    const back = recipeDifferences(map, to, from);
    expect(new Map(back.map(({ feature, change }) => [feature, -change + 0]))).toEqual(
      new Map(differences.map(({ feature, change }) => [feature, change + 0])),
    );
  },
);

test.each(seeds)(
  "seed %d: the way starts at the first reed and ends at the second, a bend a group",
  (seed) => {
    const random = seeded(seed + 500);
    const map = randomMap(random, 3 + (seed % 12));
    const from = randomValues(random, map.model);
    const changed = map.features.filter((_, i) => i % 2 === seed % 2);
    const other = randomValues(random, map.model);
    const to = { ...from, ...Object.fromEntries(changed.map((id) => [id, other[id]!])) };
    const way = pullWay(map, from, to, (id) => id);
    expect(way).toHaveLength(changed.length + 1);
    expect(greatestGap(way[0]!, place(map, from).raw)).toBe(0);
    expect(greatestGap(way.at(-1)!, place(map, to).raw)).toBe(0);
    expect(pullWay(map, from, to, () => "all")).toHaveLength(2);
    // Each leg is the change of one feature alone.
    const first = { ...from, [changed[0]!]: to[changed[0]!]! };
    const size = Math.max(1, ...way.flat().map(Math.abs));
    expect(greatestGap(way[1]!, place(map, first).raw)).toBeLessThan(1e-12 * size * 14);
  },
);

test("a reed that does not change goes no way", () => {
  const random = seeded(7);
  const map = randomMap(random, 6);
  const values = randomValues(random, map.model);
  expect(pullWay(map, values, values, (id) => id)).toEqual([place(map, values).raw]);
});

test("a missing value is named", () => {
  const random = seeded(8);
  const map = randomMap(random, 4);
  const values = randomValues(random, map.model);
  const [first] = map.features;
  const { [first!]: _left, ...rest } = values;
  expect(() => recipeDifferences(map, values, rest)).toThrow(new RegExp(first!));
});
