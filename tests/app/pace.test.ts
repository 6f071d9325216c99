import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { Pace } from "../../src/app/pace.js";

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

test("outside a gesture, and when changes come slowly, nothing waits", () => {
  const pace = new Pace<number>(45, () => undefined);
  expect([1, 2, 3].map((value, i) => pace.take(value, false, i * 5))).toEqual([1, 2, 3]);
  expect([4, 5, 6].map((value, i) => pace.take(value, true, 1000 + i * 40))).toEqual([4, 5, 6]);
});

test("in a fast gesture every third move is shown, and the last one at the latest when it is over", () => {
  const renew = vi.fn<() => void>();
  const pace = new Pace<number>(45, renew);
  const shown = Array.from({ length: 7 }, (_, i) => pace.take(i, true, i * 16));
  expect(shown).toEqual([0, 0, 0, 3, 3, 3, 6]);
  pace.take(7, true, 7 * 16);
  vi.advanceTimersByTime(200);
  expect(renew).toHaveBeenCalledOnce();
  expect(pace.take(7, true, 400)).toBe(7);
});

test("the end of the gesture shows what was held back at once", () => {
  const pace = new Pace<number>(45, () => undefined);
  expect([0, 1].map((value, i) => pace.take(value, true, i * 16))).toEqual([0, 0]);
  expect(pace.take(1, false, 20)).toBe(1);
});
