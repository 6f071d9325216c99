import { expect, test } from "vitest";
import * as acoustics from "../../src/lib/acoustics.js";

// Called as a script without types would call them.
const loose = acoustics as unknown as Readonly<Record<string, (...given: unknown[]) => unknown>>;
const functions = Object.entries(loose).filter(([, one]) => typeof one === "function");

test.each(functions)(
  "%s names a forgotten or wrong argument, and what was allowed",
  (_name, call) => {
    for (const given of [[], [null], [undefined, 1], ["x"], [7, 7, 7]]) {
      try {
        call(...given);
      } catch (error) {
        const { name, message } = error as Error;
        expect(["RangeError", "TypeError"]).toContain(name);
        expect(message).toMatch(/^\w+: .*; allowed: ./);
      }
    }
    expect(() => call()).toThrow(/allowed/);
  },
);
