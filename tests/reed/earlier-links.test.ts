import { expect, test } from "vitest";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { decodeBench, encodeBench } from "../../src/reed/bench.js";
import { givenValues, shownValues } from "../../src/reed/tried.js";
import links from "../fixtures/links.json" with { type: "json" };

// Links as an earlier version wrote them, with what it read in them.
test.each(links)("the link “$name” of an earlier version opens as it did", ({ code, bench }) => {
  const { bench: opened, problems } = decodeBench(code, bassoonModel);
  const { tried: _tried, ...rest } = opened;
  expect({ ...rest, values: shownValues(opened) }).toEqual(bench);
  expect(problems).toEqual([]);
});

test.each(links)(
  "an earlier version finds what the reed has in a link of today: “$name”",
  ({ code }) => {
    const { bench } = decodeBench(code, bassoonModel);
    const field = new URLSearchParams(encodeBench(bench, bassoonModel)).get("values");
    // The values of a link were whole thousandths in the model's order, `_` where nothing was measured.
    const cells = bassoonModel.features.map(({ id }) => {
      const value = bench.values[id];
      return value === undefined ? "_" : String(Math.round(value * 1000));
    });
    expect(field).toBe(cells.join("."));
    const given = givenValues(bassoonModel, bench);
    if (given) expect(bench.values).toEqual(given);
  },
);
