import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { ReedModel } from "../../src/lib/engine.js";
import { checkLesson, parseLesson } from "../../src/lib/lesson.js";
import { bassoonActions, bassoonModel } from "../../src/reed/bassoon.js";
import { soundLesson } from "./lesson-texts.js";

const folder = new URL("../../lessons/en/", import.meta.url);

/** The model with two corner values of a feature exchanged: a teacher who is of another mind. */
function otherMind(id: string, a: "high" | "low" | "loud", b: "high" | "low" | "loud"): ReedModel {
  return {
    ...bassoonModel,
    features: bassoonModel.features.map((feature) =>
      feature.id === id
        ? {
            ...feature,
            corners: { ...feature.corners, [a]: feature.corners[b], [b]: feature.corners[a] },
          }
        : feature,
    ),
  };
}

const check = (text: string, model: ReedModel): readonly string[] => {
  const { lesson, problems } = parseLesson(text, { file: "a.md", model });
  return [...problems, ...(lesson ? checkLesson(lesson, model, bassoonActions) : [])].map(
    ({ message }) => message,
  );
};

describe("a changed model", () => {
  test("turns a claim false, and says so with the sentence and the computed pull", () => {
    expect(check(soundLesson, bassoonModel)).toEqual([]);
    const found = check(soundLesson, otherMind("bladeLength", "high", "low"));
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(
      /^a\.md, line 19, column 8: “A shorter blade goes toward the high register\.” claims shorter bladeLength → high, which is false: the model says high −0\.\d+, low \+0\.\d+, loud [+−]0\.\d+;/,
    );
  });

  test("that lacks a feature of the lesson is told, not thrown", () => {
    const model = {
      ...bassoonModel,
      features: bassoonModel.features.filter(({ id }) => id !== "tipWidth"),
    };
    expect(check(soundLesson, model).join()).toMatch(/“tipWidth” is no feature/);
    const { lesson } = parseLesson(soundLesson, { file: "a.md", model: bassoonModel });
    expect(
      checkLesson(lesson!, model, bassoonActions)
        .map(({ message }) => message)
        .join(),
    ).toMatch(/tipWidth/);
  });

  test("is noticed by the course", () => {
    const course = readdirSync(folder).map((file) => readFileSync(new URL(file, folder), "utf8"));
    const mind = otherMind("openingHeight", "low", "loud");
    expect(course.flatMap((text) => check(text, mind)).length).toBeGreaterThan(0);
  });
});
