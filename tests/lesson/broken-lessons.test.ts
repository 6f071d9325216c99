import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { checkLesson, parseLesson } from "../../src/lib/lesson.js";
import { blockSchemas } from "../../src/lesson/block-schemas.js";
import { bassoonActions, bassoonModel } from "../../src/reed/bassoon.js";
import { broken, untrue } from "./broken-lessons.js";
import { soundLesson } from "./lesson-texts.js";

const parse = (text: string) => parseLesson(text, { file: "a.md", model: bassoonModel });
const saidOf = (problems: readonly { readonly message: string }[]): string[] =>
  problems.map(({ message }) => message.replace(/^a\.md, /, ""));

describe("a broken file is told", () => {
  test("nothing when it is not broken", () => {
    const { lesson, problems } = parse(soundLesson);
    expect(problems).toEqual([]);
    expect(checkLesson(lesson!, bassoonModel, bassoonActions)).toEqual([]);
  });

  test.each(broken)("$what", ({ text, messages }) => {
    expect(saidOf(parse(text).problems)).toEqual(messages);
  });

  test.each(untrue)("what the model says: $what", ({ text, messages }) => {
    const { lesson, problems } = parse(text);
    expect(problems).toEqual([]);
    expect(saidOf(checkLesson(lesson!, bassoonModel, bassoonActions))).toEqual(messages);
  });

  test("whatever it claims of whatever features count, with a sentence and never with an exception", () => {
    const ids = bassoonModel.features.map(({ id }) => id);
    const names = [
      ...ids,
      ...bassoonModel.ratios.map(({ id }) => id),
      "clipTip",
      "Heron",
      "everyday",
      "x",
    ];
    const mover = fc.tuple(
      fc.constantFrom("thinner", "stronger", "more", "round", ""),
      fc.constantFrom(...names),
    );
    const rest = fc.constantFrom(
      "→ high",
      "-> less loud",
      "like thinner spine",
      "against longer bladeLength",
      "raises tip",

      "stronger than wider tipWidth",
      "gives more peakFlow at middle",
      "gives less usable at fullVolume",

      "gives more x at middle",
      "near everyday",
      "far from Teal",
      "can be undone",
      "like heartToWings",
    );
    fc.assert(
      fc.property(fc.subarray(ids, { minLength: 4 }), mover, rest, (features, who, what) => {
        const claim = [...who, what].join(" ").trim();
        const { lesson, problems } = parse(
          soundLesson
            .replace("[bladeLength, tipWidth, throatWidth, firstWire]", `[${features.join(", ")}]`)
            .replace("shorter bladeLength → high", claim),
        );
        const held = lesson ? checkLesson(lesson, bassoonModel, bassoonActions) : [];
        for (const { message } of [...problems, ...held])
          expect(message).toMatch(/^a\.md, line \d+, column \d+: .*; allowed is /s);
      }),
      { seed: 11, numRuns: 600 },
    );
  });

  test("there are forty of them or more, each with its own sentences", () => {
    const all = [...broken, ...untrue];
    expect(all.length).toBeGreaterThanOrEqual(40);
    expect(all.every(({ messages }) => messages.length > 0)).toBe(true);
  });

  test("each problem of a problem is in its data as well as in its sentence", () => {
    const [, problem] = parse(soundLesson.replace("change: {", "chnage: {")).problems;
    expect(problem).toMatchObject({
      file: "a.md",
      line: 14,
      column: 1,
      step: 0,
      found: "chnage",
      allowed: "ask, why, hints, reed, values, change",
      nearest: "change",
    });
  });

  test("all at once, in the order of the file", () => {
    const text = soundLesson
      .replace("minutes: 4", "minutes: soon")
      .replace("26.2 mm", "262 mm")
      .replace("[pulls]", "[pull]")
      .replace("A blade", "<i>A</i> blade");
    const lines = parse(text).problems.map(({ line }) => line);
    expect(lines).toEqual([3, 10, 10, 14, 30]);
  });

  test("and its good steps are kept", () => {
    const { lesson } = parse(soundLesson.replace("26.2 mm", "262 mm"));
    expect(lesson!.steps.map(({ sound }) => sound)).toEqual([false, true]);
  });
});

test("line ends and a byte-order mark change nothing but themselves", () => {
  const windows = parse(`\uFEFF${soundLesson.replaceAll("\n", "\r\n")}`);
  expect(windows).toEqual(parse(soundLesson));
});

describe("whatever the text, nothing is thrown", () => {
  const never = (text: string): void => {
    const { lesson, problems } = parse(text);
    expect(lesson !== undefined || problems.length > 0).toBe(true);
    for (const { line, column, message } of problems) {
      expect(line).toBeGreaterThanOrEqual(1);
      expect(line).toBeLessThanOrEqual(text.split(/\r\n?|\n/).length + 1);
      expect(column).toBeGreaterThanOrEqual(1);
      expect(message).not.toMatch(/undefined|NaN|\[object/);
    }
    if (lesson) checkLesson(lesson, bassoonModel, bassoonActions);
  };

  const lines = [
    ...new Set(
      [soundLesson, ...[...broken, ...untrue].map(({ text }) => text)].flatMap((text) =>
        text.split("\n"),
      ),
    ),
  ];

  test("lines of lessons in any order", () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...lines), { maxLength: 40 }), (some) => {
        never(["---", "title: A", "minutes: 5", "---", "## A", ...some].join("\n"));
        never(some.join("\n"));
      }),
      { seed: 7, numRuns: 300 },
    );
    expect(lines.length).toBeGreaterThan(100);
  });

  test("letters that were knocked out or put in", () => {
    const cut = fc.record({
      at: fc.nat(soundLesson.length),
      length: fc.nat(12),
      by: fc.oneof(
        fc.string({ unit: "binary", maxLength: 6 }),
        fc.constantFrom(
          "```",
          "---\n",
          ":::",
          "{",
          "&a ",
          "*a",
          "!!binary ",
          "\0",
          "\t",
          "? ",
          "- ",
        ),
      ),
    });
    fc.assert(
      fc.property(fc.array(cut, { minLength: 1, maxLength: 4 }), (cuts) => {
        const text = cuts.reduce(
          (whole, { at, length, by }) => whole.slice(0, at) + by + whole.slice(at + length),
          soundLesson,
        );
        never(text);
      }),
      { seed: 11, numRuns: 250 },
    );
    expect(parse(soundLesson).problems).toEqual([]);
  });

  test("data of any shape in a block or in front", () => {
    const kinds = ["show", "predict", "aim", "choose", "order", "read", "stand-in", "claim"];
    const keys = [
      "ask",
      "change",
      "target",
      "options",
      "actions",
      "at",
      "missing",
      "says",
      "means",
      "values",
      "reed",
      "locked",
      "hints",
      "text",
      "why",
      "right",
      "tip",
      "__proto__",
      "constructor",
    ];
    const { tree } = fc.letrec((tie) => ({
      tree: fc.oneof(
        { maxDepth: 3 },
        fc.oneof(
          fc.constant(null),
          fc.boolean(),
          fc.double(),
          fc.integer(),
          fc.string(),
          fc.constantFrom(...keys),
        ),
        fc.array(tie("tree"), { maxLength: 4 }),
        fc.dictionary(fc.constantFrom(...keys), tie("tree"), { maxKeys: 5 }),
      ),
    }));
    fc.assert(
      fc.property(fc.constantFrom(...kinds), tree, tree, (kind, block, front) => {
        const data = JSON.stringify(block) ?? "";
        never(`---\ntitle: A\nminutes: 2\n---\n## A\n\`\`\`${kind}\n${data}\n\`\`\`\n`);
        never(`---\n${JSON.stringify(front) ?? ""}\n---\n## A\n\`\`\`${kind}\n${data}\n\`\`\`\n`);
      }),
      { seed: 13, numRuns: 300 },
    );
    expect(kinds).toEqual(Object.keys(blockSchemas));
  });
});
