import { expect, test } from "vitest";
import { bassoonQualities } from "../../src/reed/bassoon-qualities.js";
import { qualityIds } from "../../src/reed/looked-advice.js";

test("a link may name just the qualities of the file", () => {
  expect(qualityIds).toEqual(bassoonQualities.qualities.map(({ id }) => id));
});
