import { expect, test } from "vitest";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { decodeBench } from "../../src/reed/bench.js";
import links from "../fixtures/links.json" with { type: "json" };

// Links as an earlier version wrote them, with what it read in them.
test.each(links)("the link “$name” of an earlier version opens as it did", ({ code, bench }) => {
  expect(decodeBench(code, bassoonModel)).toEqual({ bench, problems: [] });
});
