import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  clickerKey,
  isNewer,
  leastType,
  readEnvelope,
  typeShare,
} from "../../src/app/presenter-messages.js";
import { presentingFrom } from "../../src/app/presenting.js";
import { lessonMap } from "../../src/lesson/exercise-reed.js";
import { isExercise } from "../../src/lesson/lesson.js";
import { lessonState } from "../../src/lesson/lesson-state.js";
import { stepView } from "../../src/lesson/lesson-view.js";
import { parseLesson } from "../../src/lesson/parse-lesson.js";
import { bassoonActions, bassoonModel } from "../../src/reed/bassoon.js";

// AVIXA DISCAS, basic decision making: element height % = farthest viewer ÷ (image height × 200).
test("type for the last row follows the rule for displayed images", () => {
  expect(typeShare(10_500, 1500)).toBeCloseTo(0.035, 12);
  expect(typeShare(3, 2)).toBe(leastType);
  expect(leastType * 1080).toBeCloseTo(28, 12);
  expect(typeShare(NaN, 0)).toBe(leastType);
});

test.each([
  ["PageDown", "next"],
  ["PageUp", "previous"],
  [".", "blank"],
  ["Escape", "plain"],
  ["F5", undefined],
  ["ArrowRight", undefined],
  ["toString", undefined],
])("a clicker's %s asks for %s", (key, asked) => {
  const plain = { key, ctrlKey: false, altKey: false, metaKey: false };
  expect(clickerKey(plain)).toBe(asked);
  expect(clickerKey({ ...plain, ctrlKey: true })).toBe(undefined);
});

describe("messages between two windows", () => {
  const sound = {
    reedpoint: "presenter",
    pair: "12",
    from: "presenter",
    session: 5,
    number: 1,
    message: { kind: "ping" },
  };

  test.each([
    [{ ...sound, pair: "13" }],
    [{ ...sound, from: "audience" }],
    [{ ...sound, reedpoint: 1 }],
    [{ ...sound, number: 0.5 }],
    [{ ...sound, message: { kind: "slide" } }],
    [{ ...sound, message: { kind: "slide", slide: { view: { blocks: [] } } } }],
    [{ ...sound, message: { kind: "slide", slide: { title: "a", view: { blocks: [null] } } } }],
    [{ ...sound, message: { kind: "key", key: "next" } }],
  ])("of another pair, end or shape are none: %o", (data) => {
    expect(readEnvelope(sound, "12", "presenter")).toBe(sound);
    expect(readEnvelope(data, "12", "presenter")).toBe(undefined);
  });

  test("whatever arrives, it never throws", () => {
    fc.assert(
      fc.property(fc.anything(), (message) => {
        readEnvelope(message, "12", "audience");
        const one = readEnvelope({ ...sound, from: "audience", message }, "12", "audience");
        expect(one === undefined || typeof one.message === "object").toBe(true);
        expect(presentingFrom(message)).toBe(undefined);
      }),
      { seed: 4, numRuns: 300 },
    );
  });

  test("late and double ones are not taken; those of a reloaded window are", () => {
    const last = { session: 5, number: 7 };
    expect(isNewer({ session: 5, number: 8 }, last)).toBe(true);
    expect(isNewer(last, last)).toBe(false);
    expect(isNewer({ session: 5, number: 6 }, last)).toBe(false);
    expect(isNewer({ session: 6, number: 1 }, last)).toBe(true);
    expect(isNewer({ session: 4, number: 99 }, last)).toBe(false);
  });
});

test("what the class is sent of an open question holds neither key nor reason nor outcome", () => {
  const file = new URL("../../lessons/en/06-shape.md", import.meta.url);
  const { lesson } = parseLesson(readFileSync(file, "utf8"), { file: "a", model: bassoonModel });
  const marking = { map: lessonMap(lesson!, bassoonModel), actions: bassoonActions };
  lesson!.steps.forEach(({ blocks }, step) => {
    const open = blocks.find(isExercise)!;
    const sent = JSON.stringify(stepView(lesson!, lessonState(lesson!, step), marking));
    expect(sent).toContain(JSON.stringify(open.ask).slice(1, -1));
    if (open.kind === "predict") expect(sent).not.toContain('"change"');
    if (open.why !== undefined) expect(sent).not.toContain(open.why);
    if (open.kind === "choose") for (const { why } of open.options) expect(sent).not.toContain(why);
    expect(sent).not.toMatch(/"right":|"mark":|"claim"/);
  });
});
