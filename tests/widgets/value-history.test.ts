import fc from "fast-check";
import { expect, test } from "vitest";
import {
  changed,
  noHistory,
  travelled,
  type ValueHistory,
} from "../../src/widgets/value-history.js";

const step = fc.record({ value: fc.integer(), gesture: fc.constantFrom(undefined, "a", "b") });

test("undo all the way back goes through every gesture, and redo ends where it was", () => {
  fc.assert(
    fc.property(fc.array(step, { maxLength: 30 }), (steps) => {
      let history: ValueHistory = noHistory;
      let now = { heart: 0 };
      const seen = [now];
      steps.forEach(({ value, gesture }, index) => {
        const isSame = gesture !== undefined && gesture === steps[index - 1]?.gesture;
        history = changed(history, now, gesture);
        now = { heart: value };
        if (isSame) seen.pop();
        seen.push(now);
      });
      const end = now;
      const back = [now];
      for (let one = travelled(history, now, "undo"); one; one = travelled(history, now, "undo")) {
        history = one.history;
        now = one.values as typeof now;
        back.push(now);
      }
      expect(back.toReversed()).toEqual(seen);
      for (let one = travelled(history, now, "redo"); one; one = travelled(history, now, "redo")) {
        history = one.history;
        now = one.values as typeof now;
      }
      expect(now).toEqual(end);
    }),
    { seed: 3, numRuns: 200 },
  );
});

test("a change after an undo leaves nothing to redo", () => {
  const { history, values } = travelled(changed(noHistory, { heart: 1 }), { heart: 2 }, "undo")!;
  expect(values).toEqual({ heart: 1 });
  expect(changed(history, values).future).toEqual([]);
});
