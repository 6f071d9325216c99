import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";

const read = (file: string): string =>
  readFileSync(fileURLToPath(new URL(`../../${file}`, import.meta.url)), "utf8");

/** Every block of custom properties that holds the ground of the night, as sorted lines. */
function nights(text: string): string[] {
  return [...text.matchAll(/\{([^{}]*--reed-ground: #191613;[^{}]*)\}/g)].map(([, body]) =>
    body!
      .split(";")
      .map((line) => line.trim())
      .filter((line) => line.startsWith("--reed-"))
      .toSorted()
      .join("\n"),
  );
}

test("the night of the elements is the night of the app", () => {
  const app = nights(read("src/app/page.css"));
  const elements = nights(read("src/embed/embed-style.ts"));
  expect(app).toHaveLength(2);
  expect(elements).toHaveLength(2);
  expect(new Set([...app, ...elements]).size).toBe(1);
});

test("the elements carry the version of the package", () => {
  const told = /version = "([^"]+)"/.exec(read("src/embed/define-element.ts"))![1];
  expect(told).toBe((JSON.parse(read("package.json")) as { version: string }).version);
});

test("nothing on other people's pages is as tall as their window", () => {
  for (const file of [
    "embed-style.ts",
    "embedded-element.ts",
    "embedded-reed.ts",
    "lesson-element.ts",
    "lesson-inside.ts",
    "bench-element.ts",
    "plan-inside.ts",
    "late-words.ts",
    "frame.css",
  ])
    expect(read(`src/embed/${file}`), file).not.toMatch(/\d(s|d|l)?vh\b/);
});
