import { expect, test } from "vitest";
import { english } from "../../src/reed/catalogue.js";
import { percentagePoints } from "../../src/reed/percentage-words.js";

test("a difference of shares is never told as a per cent of something", () => {
  expect(percentagePoints(-0.27)).toBe("27 percentage points");
  expect(percentagePoints(0.01)).toBe("1 percentage point");
  const parts = [
    { id: "high", words: "high register", gap: -0.27 },
    { id: "loud", words: "full volume", gap: 0.2 },
  ] as const;
  expect(english.compare.place("Heron", parts)).toBe(
    "Against Heron it has, in percentage points, 27 less high register and 20 more full volume.",
  );
  expect(english.target.distance("a wind quintet", "high", 0.45, 0.18)).toBe(
    "For a wind quintet it needs above all 27 percentage points less of the high register: 18% instead of 45%.",
  );
});

test("what rounds to zero has no minus", () => {
  expect(english.number(-0.001, 2)).toBe("0.00");
});

test("a negative number has a real minus", () => {
  expect(english.number(-0.16, 2)).toBe("−0.16");
  expect(english.signedPoints(-0.031)).toBe("−3");
  expect(english.signedPoints(0.031)).toBe("+3");
  expect(english.signedPoints(-0.001)).toBe("0");
});
