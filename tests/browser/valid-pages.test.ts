import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { HtmlValidate } from "html-validate";
import { describe, expect, test } from "vitest";
import { embedded, snippet, type Embedding } from "../../src/app/snippet.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { newBench } from "../../src/reed/bench.js";

const root = fileURLToPath(new URL("../..", import.meta.url));
const read = (file: string): string => readFileSync(`${root}${file}`, "utf8");

const rules = new HtmlValidate({ root: true, extends: ["html-validate:standard"] });

/** What the standard refuses, each with its line. */
async function faults(html: string): Promise<string[]> {
  const { results } = await rules.validateString(html);
  return results.flatMap(({ messages }) =>
    messages.map(({ line, ruleId, message }) => `line ${line}: ${message} (${ruleId})`),
  );
}

const pages = readdirSync(`${root}dist`, { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".html"))
  .toSorted();

// The HTML standard, as html-validate's standard rules hold it.
describe("the built pages", () => {
  test("are there", () => {
    expect(pages).toContain("index.html");
    expect(pages.length).toBeGreaterThan(4);
  });

  test.each(pages)("%s is valid", async (page) => {
    expect(await faults(read(`dist/${page}`))).toEqual([]);
  });

  test("have titles of their own", () => {
    const titles = pages.map((page) => /<title>([^<]+)<\/title>/.exec(read(`dist/${page}`))?.[1]);
    expect(titles).not.toContain(undefined);
    expect(new Set(titles).size).toBe(titles.length);
  });
});

const body = (html: string): string =>
  `<!doctype html>\n<html lang="en"><head><title>A course page</title></head><body>\n${html}\n</body></html>\n`;

describe("lines for a course page", () => {
  const bench = {
    ...newBench(bassoonModel),
    reed: `A "reed" & <more>`,
    values: { tip: 0.1, spine: 0.5 },
    lesson: { id: "06-shape", step: 1 },
  };
  const how = embedded.flatMap((show) =>
    (["element", "frame"] as const).flatMap((as) => [
      { show, as, theme: "night" as const, locked: true },
      { show, as, theme: "" as const, locked: false },
    ]),
  );

  test.each(how)(
    "as the dialog makes them are valid: $show as $as, theme “$theme”",
    async (one) => {
      const asked: Embedding = {
        ...one,
        folder: "https://school.example/reedpoint/",
        says: "A reed.",
      };
      expect(await faults(body(snippet(bench, bassoonModel, asked)))).toEqual([]);
    },
  );

  const blocks = [...read("README.md").matchAll(/```html\n([\s\S]*?)```/g)].map(
    ([, html]) => html!,
  );

  test.each(blocks)("of the README are valid: %s", async (html) => {
    expect(await faults(/<html/.test(html) ? html : body(html))).toEqual([]);
  });
});
