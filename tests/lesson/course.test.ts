import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { checkLesson, parseLesson } from "../../src/lib/lesson.js";
import { isExercise, type Lesson } from "../../src/lesson/lesson.js";
import { bassoonActions, bassoonModel } from "../../src/reed/bassoon.js";

const folder = new URL("../../lessons/en/", import.meta.url);
const files = readdirSync(folder).toSorted();

function messagesOf(
  text: string,
  file: string,
): { lesson: Lesson | undefined; messages: string[] } {
  const { lesson, problems } = parseLesson(text, { file, model: bassoonModel });
  const checked = lesson ? checkLesson(lesson, bassoonModel, bassoonActions) : [];
  return { lesson, messages: [...problems, ...checked].map(({ message }) => message) };
}

describe("the shipped course", () => {
  test("is numbered from 01 without a gap", () => {
    expect(files.map((file) => Number(file.slice(0, 2)))).toEqual(
      files.map((_, index) => index + 1),
    );
    expect(files.every((file) => /^\d\d-[a-z-]+\.md$/.test(file))).toBe(true);
  });

  test.each(files)("%s holds against the model", (file) => {
    const { messages } = messagesOf(readFileSync(new URL(file, folder), "utf8"), file);
    expect(messages).toEqual([]);
  });

  test.each(files)(
    "%s takes 8 to 15 minutes, lets predict, and asks something else, too",
    (file) => {
      const { lesson } = messagesOf(readFileSync(new URL(file, folder), "utf8"), file);
      const kinds = lesson!.steps.flatMap(({ blocks }) =>
        blocks.filter(isExercise).map(({ kind }) => kind),
      );
      expect(lesson!.minutes).toBeGreaterThanOrEqual(8);
      expect(lesson!.minutes).toBeLessThanOrEqual(15);
      expect(kinds).toContain("predict");
      expect(new Set(kinds).size).toBeGreaterThan(1);
      expect(lesson!.goal).toMatch(/^You .*\.$/);
    },
  );
});

test("whatever caption speaks of points or arrows stands under a triangle that shows them", () => {
  const spoken = files.flatMap((file) => {
    const { lesson } = messagesOf(readFileSync(new URL(file, folder), "utf8"), file);
    return lesson!.steps
      .flatMap(({ blocks }) => blocks.filter((block) => block.kind === "show"))
      .filter(({ caption = "" }) => /\b(?:points?|arrows?)\b/.test(caption))
      .map(({ caption, layers, target, reed, place }) => ({
        where: { file, caption },
        // Beside an open question a triangle is drawn only where the author has laid something on it.
        isDrawn: [layers, target, reed].some((one) => one !== undefined) && place === undefined,
      }));
  });
  expect(spoken.length).toBeGreaterThan(2);
  for (const { where, isDrawn } of spoken)
    expect({ ...where, isDrawn }).toEqual({ ...where, isDrawn: true });
});

describe("the README page for authors", () => {
  const readme = readFileSync(new URL("../../README.md", import.meta.url), "utf8");
  const examples = [...readme.matchAll(/^````markdown\n(.*?)^````$/gms)].map(([, text]) => text!);

  test("has one lesson of two steps that passes", () => {
    expect(examples).toHaveLength(1);
    const { lesson, messages } = messagesOf(examples[0]!, "README");
    expect(messages).toEqual([]);
    expect(lesson!.steps.map(({ title }) => title)).toEqual(["One change", "Which one first"]);
  });

  test("shows only claims that are true", () => {
    const table = readme.slice(
      readme.indexOf("Claims can say:"),
      readme.indexOf("More: more, longer"),
    );
    const firstCells = table.split("\n").map((line) => line.split("|")[1] ?? "");
    const claims = [
      ...firstCells
        .join("\n")
        .matchAll(/`([^`]+ (?:→|like|stronger|raises|gives|can|cannot|near|far) [^`]+)`/g),
    ]
      .map(([, claim]) => claim!)
      .filter((claim) => !claim.startsWith("→") && claim !== "can be undone");
    expect(claims.length).toBeGreaterThanOrEqual(12);
    const means = claims.map((claim) => `  - ${claim}`).join("\n");
    const text = `---\ntitle: A\nminutes: 2\n---\n## A\n\`\`\`claim\nsays: A.\nmeans:\n${means}\n\`\`\`\n\`\`\`predict\nask: A?\nchange: { tip: 0.14 }\n\`\`\`\n:::notes\nA.\n:::\n`;
    expect(messagesOf(text, "README").messages).toEqual([]);
  });
});
