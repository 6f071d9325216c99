import { expect, test } from "vitest";
import { pageName } from "../../src/app/one-page.js";

test.each([
  ["Bittern", "reedpoint-bittern-2026-11-28.html"],
  ["", "reedpoint-2026-11-28.html"],
  // A reed of one's own may be called after a person.
  ["a pupil, reed 3", "reedpoint-2026-11-28.html"],
])("a page saved with the reed “%s” is called %s", (reed, name) => {
  expect(pageName(reed, "2026-11-28")).toBe(name);
});
