import { expect, test } from "vitest";
import { clockSpan, clockTime, isoSpan, isoTime } from "../../src/scorm/cmi-time.js";

test.each([
  [0, "0000:00:00.00", "PT0S"],
  [0.004, "0000:00:00.00", "PT0S"],
  [0.005, "0000:00:00.01", "PT0.01S"],
  [59.999, "0000:01:00.00", "PT1M0S"],
  [61.5, "0000:01:01.50", "PT1M1.5S"],
  [3725.5, "0001:02:05.50", "PT1H2M5.5S"],
  [36_000_000, "9999:59:59.99", "PT10000H0S"],
  [NaN, "0000:00:00.00", "PT0S"],
  [-3, "0000:00:00.00", "PT0S"],
])("%d s", (seconds, clock, iso) => {
  expect(clockSpan(seconds)).toBe(clock);
  expect(isoSpan(seconds)).toBe(iso);
});

test("moments", () => {
  expect(clockTime(new Date(2026, 0, 1, 9, 5, 7, 900))).toBe("09:05:07");
  expect(isoTime(new Date(Date.UTC(2026, 0, 1, 9, 5, 7, 900)))).toBe("2026-01-01T09:05:07.90Z");
});
