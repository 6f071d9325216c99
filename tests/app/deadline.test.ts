import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { Deadline } from "../../src/app/deadline.js";

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

test("it runs once, so long after it was last asked for", () => {
  const run = vi.fn<() => void>();
  const deadline = new Deadline(run);
  for (let i = 0; i < 20; i += 1) {
    deadline.set(100);
    vi.advanceTimersByTime(16);
  }
  expect(run).not.toHaveBeenCalled();
  vi.advanceTimersByTime(83);
  expect(run).not.toHaveBeenCalled();
  vi.advanceTimersByTime(3);
  expect(run).toHaveBeenCalledOnce();
  expect(deadline.isSet).toBe(false);
  vi.advanceTimersByTime(1000);
  expect(run).toHaveBeenCalledOnce();
});

test("an earlier time counts, and cleared it does not run", () => {
  const run = vi.fn<() => void>();
  const deadline = new Deadline(run);
  deadline.set(1000);
  deadline.set(20);
  vi.advanceTimersByTime(25);
  expect(run).toHaveBeenCalledOnce();
  deadline.set(20);
  deadline.clear();
  vi.advanceTimersByTime(100);
  expect(run).toHaveBeenCalledOnce();
});
