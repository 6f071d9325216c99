import { readFileSync, readdirSync } from "node:fs";
import { expect, test } from "vitest";
import { lessonPlayerWords } from "../../src/reed/lesson-player-words.js";
import { lipWords } from "../../src/reed/lip-words.js";
import { dist, loadedWith, packed, packedWith } from "./built-sizes.js";

/** The module script of the app's page. */
const app = /<script type="module"[^>]* src="\.\/([^"]+)"/.exec(
  readFileSync(`${dist}index.html`, "utf8"),
)![1]!;

// Bytes, minified, gzip -9: what a first visit costs.
test.each([
  ["the app's first load", () => packedWith(app), 110_000],
  ["all elements", () => packedWith("elements/reed-elements.js"), 90_000],
  ["the triangle alone with Lit", () => packedWith("elements/reed-triangle.js"), 30_000],
  ["the engine with its data", () => packedWith("lib/engine-alone.js"), 16_000],
  ["the loader of elements", () => packedWith("elements/reed-elements.lazy.js"), 1_000],
])("%s stays within its size", (_what, size, most) => {
  expect(size()).toBeLessThanOrEqual(most);
});

// The readers of a teacher's files, on a schema library, and the summary of a class are 8,000 beside the engine. One
// classic script for every element carries them all at once, because a sandbox lets nothing come later; that of a lesson
// carries every lesson and the readers of Markdown and YAML, too.
test.each([
  ["the engine with readers of files", () => packedWith("lib/engine.js"), 24_000],
  ["the classic script with elements", () => packed("elements/reed-elements.classic.js"), 125_000],
  ["the classic script of a lesson", () => packed("elements/reed-lesson.classic.js"), 182_000],
])("%s stays near what it is", (_what, size, most) => {
  expect(size()).toBeLessThanOrEqual(most);
});

/** The files in a folder that begin with a name. */
const filesOf = (folder: string, name: string): string[] =>
  readdirSync(dist + folder)
    .filter((file) => file.startsWith(name) && file.endsWith(".js"))
    .map((file) => `${folder}${file}`);

test.each([
  [app, "assets/", ["bench-lip", "measure-page", "plan-parts", "read-readings", "lessons-page"]],
  [
    "elements/reed-elements.js",
    "elements/parts/reed-elements-",
    ["bench-lip", "plan-inside", "lesson-inside", "read-lesson-file", "06-shape"],
  ],
])("what comes later than %s does come later", (entry, before, parts) => {
  const first = loadedWith(entry);
  const [folder, prefix] = /^(.*\/)([^/]*)$/.exec(before)!.slice(1) as [string, string];
  for (const part of parts) {
    const files = filesOf(folder, prefix + part);
    expect(files, part).toHaveLength(1);
    expect(first, part).not.toContain(files[0]);
  }
  const code = [...first].map((file) => readFileSync(dist + file, "utf8")).join("");
  // A label of the lip panel, and a sentence of a lesson.
  expect(code).not.toContain(lipWords.simpleModel);
  expect(code).not.toContain(lessonPlayerWords.guessHelp);
});
