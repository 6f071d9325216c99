import { expect, test } from "vitest";
import { readCommand, readHeight } from "../../src/embed/frame-messages.js";

test.each([
  { reedpoint: 1, type: "open", code: "v=1" },
  { reedpoint: 1, type: "theme", theme: "auto" },
  { reedpoint: 1, type: "measure" },
  { reedpoint: 1, type: "tell" },
])("%j is a command", (command) => {
  expect(readCommand(command)).toEqual(command);
});

test.each([
  undefined,
  "open",
  [],
  {},
  { type: "measure" },
  { reedpoint: "1", type: "measure" },
  { reedpoint: 1, type: "toString" },
  { reedpoint: 1, type: "measure", more: true },
  { reedpoint: 1, type: "open" },
  { reedpoint: 1, type: "open", code: 5 },
  { reedpoint: 1, type: "open", code: "x".repeat(8001) },
  { reedpoint: 1, type: "theme", theme: "pink" },
])("%j is none", (data) => {
  expect(readCommand(data)).toBeUndefined();
});

test("a height stays within reason, and what is no height is none", () => {
  const said = (height: unknown): number | undefined =>
    readHeight({ reedpoint: 1, type: "height", height });
  expect([said(400.2), said(3), said(1e9)]).toEqual([401, 80, 8000]);
  for (const wrong of [Number.NaN, Infinity, "400", undefined]) expect(said(wrong)).toBeUndefined();
  expect(readHeight({ reedpoint: 1, type: "changed", height: 400 })).toBeUndefined();
});
