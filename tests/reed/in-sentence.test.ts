import { readFileSync, readdirSync } from "node:fs";
import { expect, test } from "vitest";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { inSentence } from "../../src/reed/in-sentence.js";

const src = new URL("../../src/", import.meta.url);

test("English writes labels small inside a sentence", () => {
  expect(bassoonModel.features.slice(0, 4).map(({ label }) => inSentence(label))).toEqual([
    "blade length",
    "tip width",
    "throat width",
    "first-wire roundness",
  ]);
});

test("one rule for all rooms: no other place makes a label small", () => {
  const files = readdirSync(src, { recursive: true, encoding: "utf8" }).filter(
    (file) => file.endsWith(".ts") && !file.endsWith("in-sentence.ts"),
  );
  expect(files.length).toBeGreaterThan(300);
  for (const file of files)
    expect([
      file,
      /label\W*\.toLowerCase\(/i.exec(readFileSync(new URL(file, src), "utf8")),
    ]).toEqual([file, null]);
});
