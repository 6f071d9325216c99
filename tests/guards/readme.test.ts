import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { assumptions } from "../../src/acoustics/assumptions.js";
import { readReadings } from "../../src/book/read-readings.js";
import * as engine from "../../src/lib/engine.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { lipWords } from "../../src/reed/lip-words.js";

const root = fileURLToPath(new URL("../..", import.meta.url));
const readme = readFileSync(`${root}README.md`, "utf8");
const blocks = (language: string): string[] =>
  [...readme.matchAll(new RegExp(`^\`\`\`${language}\\n(.*?)^\`\`\`$`, "gms"))].map(
    ([, body]) => body!,
  );

/** Runs a block: what stands before a line `// → value` must give that value. */
function runBlock(body: string): { readonly got: unknown; readonly wanted: unknown }[] {
  const imported = /import \{([^}]*)\} from "\.\/dist\/lib\/engine\.js";/.exec(body)![1]!;
  const code = body
    .replace(/import .*?;\n/s, "")
    .replace(
      /(^|;\n+|→ .*\n+)([^;]*?);\n\/\/ → (.*)$/gm,
      "$1results.push({ got: $2, wanted: $3 });",
    );
  // The README is ours and this is a test: its examples are meant to be run.
  // oxlint-disable-next-line no-new-func, no-implied-eval
  const run = new Function(
    "engine",
    `const { ${imported} } = engine; const results = []; ${code}; return results;`,
  ) as (library: typeof engine) => { got: unknown; wanted: unknown }[];
  return run(engine);
}

test("the engine example of the README gives what it says", () => {
  const results = blocks("js").flatMap(runBlock);
  expect(results).toHaveLength(3);
  for (const { got, wanted } of results) expect(got).toEqual(wanted);
});

test.each(["csv", "json"])(
  "the %s readings of the README are read without a problem",
  (language) => {
    const texts = blocks(language);
    expect(texts.length).toBeGreaterThan(0);
    for (const text of texts) {
      const { readings, problems } = readReadings(text, { model: bassoonModel, unit: "mm" });
      expect(problems).toEqual([]);
      expect(Object.keys(readings).length).toBeGreaterThanOrEqual(4);
    }
  },
);

test("the README's table of features is the model's", () => {
  const rows = readme
    .split("\n")
    .map((line) => line.split("|").map((cell) => cell.trim()))
    .filter((cells) => cells.length === 12 && /^`\w+`$/.test(cells[2]!));
  const told = rows.map((cells) => [
    cells[2]!.slice(1, -1),
    cells[4],
    cells.slice(5, 10).join(" | "),
  ]);
  const model = bassoonModel.features.map(({ id, min, max, gaugeError, corners, weight }) => [
    id,
    `${min}–${max}`,
    [gaugeError, corners.high, corners.low, corners.loud, weight].join(" | "),
  ]);
  expect(told).toEqual(model);
});

test("the README's table of the lip model's constants is the model's", () => {
  const told = readme
    .split("\n")
    .map((line) => line.split("|").map((cell) => cell.trim()))
    .filter((cells) => cells.length === 8 && /^`\w+`$/.test(cells[2]!))
    .map((cells) => cells.slice(1, 7));
  const model = Object.entries(lipWords.assumptions.words).map(([id, { label, unit, factor }]) => {
    const { value, min, max, basis, source } = assumptions[id as keyof typeof assumptions] as {
      value: number;
      min: number;
      max: number;
      basis: "assumption" | "range" | "law";
      source?: string;
    };
    const shown = (one: number): string => String(Math.round(one * factor * 100) / 100);
    const from = {
      assumption: "assumption",
      range: `assumption within a published range: ${source}`,
      law: `assumption; the law after ${source}`,
    }[basis];
    return [label, `\`${id}\``, shown(value), `${shown(min)}–${shown(max)}`, unit, from];
  });
  expect(told).toEqual(model);
});

test("every file and npm script that the README names exists", () => {
  const scripts = (
    JSON.parse(readFileSync(`${root}package.json`, "utf8")) as { scripts: Record<string, string> }
  ).scripts;
  for (const [, script] of readme.matchAll(/`?npm run (\w+)/g))
    expect(scripts, script).toHaveProperty(script!);
  for (const [, path] of readme.matchAll(/\]\(([^)#:]+)\)/g))
    expect(existsSync(root + path!), path).toBe(true);
});
