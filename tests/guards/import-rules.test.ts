import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import {
  doorProblems,
  importProblems,
  nameProblems,
  readImports,
  topLevelProblems,
} from "./import-rules.js";

const root = fileURLToPath(new URL("../..", import.meta.url));

const sources = readdirSync(`${root}src`, { recursive: true, encoding: "utf8" })
  .map((path) => `src/${path.replaceAll("\\", "/")}`)
  .filter((path) => path.endsWith(".ts"));
const read = (file: string): string => readFileSync(`${root}${file}`, "utf8");

describe("this tree", () => {
  test("has sources to look at", () => {
    expect(sources.length).toBeGreaterThan(5);
    expect(sources).toContain("src/lib/engine.ts");
  });

  test.each(sources)("%s imports only what its room may", (file) => {
    expect(importProblems(file, readImports(file, read(file)))).toEqual([]);
  });

  test("has file names that say what is inside", () => {
    expect(sources.flatMap(nameProblems)).toEqual([]);
  });

  test("has doors that only re-export", () => {
    const doors = sources.filter((file) => file.startsWith("src/lib/"));
    expect(doors.flatMap((file) => doorProblems(file, read(file)))).toEqual([]);
  });

  test("imports only packages that users of the app install, too", () => {
    const { dependencies } = JSON.parse(read("package.json")) as { dependencies: object };
    const used = sources
      .flatMap((file) => readImports(file, read(file)))
      .map(({ from }) => from)
      .filter((from) => !from.startsWith("."))
      .map((from) =>
        from
          .split("/")
          .slice(0, from.startsWith("@") ? 2 : 1)
          .join("/"),
      );
    expect(Object.keys(dependencies)).toEqual(expect.arrayContaining([...new Set(used)]));
  });

  test("shows nothing else on its top level", () => {
    const ignored = read(".gitignore").split("\n").filter(Boolean);
    expect(topLevelProblems(readdirSync(root), ignored)).toEqual([]);
  });
});

const problemsOf = (file: string, source: string): string[] =>
  importProblems(file, readImports(file, source));

describe("the guard refuses", () => {
  const wrong: readonly [file: string, source: string, reason: RegExp][] = [
    ["src/engine/place.ts", `import { x } from "../reed/x.js";`, /engine must not know reed/],
    ["src/engine/place.ts", `import type { X } from "../reed/x.js";`, /engine must not know reed/],
    ["src/engine/place.ts", `export { x } from "../reed/x.js";`, /engine must not know reed/],
    ["src/engine/place.ts", `export * from "../reed/x.js";`, /engine must not know reed/],
    ["src/engine/place.ts", `const x = import("../reed/x.js");`, /engine must not know reed/],
    ["src/engine/place.ts", `import { x } from "../acoustics/x.js";`, /sideways/],
    ["src/acoustics/beam.ts", `import { x } from "../engine/x.js";`, /sideways/],
    ["src/lesson/run.ts", `import { x } from "../book/x.js";`, /lesson must not know book/],
    ["src/drawing/ticks.ts", `import "../widgets/x.js";`, /drawing must not know widgets/],
    ["src/widgets/a/b.ts", `import { x } from "../../app/x.js";`, /widgets must not know app/],
    ["src/app/state.ts", `import { x } from "../lib/x.js";`, /app must not know lib/],
    ["src/app/state.ts", `import { x } from "../../tests/x.js";`, /no room/],
    ["src/main.ts", ``, /no room/],
    ["src/things/a.ts", ``, /no room/],
    ["src/engine/place.ts", `import * as v from "valibot";`, /engine imports no package/],
    ["src/acoustics/beam.ts", `import { max } from "d3";`, /acoustics imports no package/],
    ["src/reed/units.ts", `import { format } from "d3";`, /d3 is for drawing/],
    ["src/reed/read-model.ts", `import { parse } from "yaml";`, /yaml is for lesson/],
    ["src/reed/units.ts", `import { micromark } from "micromark";`, /micromark is for lesson/],
    ["src/book/csv.ts", `import { csvParse, max } from "d3";`, /d3 is for drawing/],
    ["src/book/csv.ts", `import * as d3 from "d3";`, /d3 is for drawing/],
    ["src/drawing/ticks.ts", `import { svg } from "lit";`, /lit is for widgets/],
    ["src/drawing/ticks.ts", `import { x } from "lit/directives/x.js";`, /lit is for widgets/],
    ["src/app/state.ts", `import { x } from "node:fs";`, /no room may use/],
    ["src/app/state.ts", `import { x } from "@made/up";`, /no room may use/],
    ["src/engine/place.ts", `import { x } from "./compile";`, /needs its ending/],
  ];
  test.each(wrong)("%s: %s", (file, source, reason) => {
    expect(problemsOf(file, source)).toEqual([expect.stringMatching(reason)]);
  });

  test.each(["src/engine/index.ts", "src/app/utils.ts", "src/reed/types/unit.ts"])(
    "the name %s",
    (file) => {
      expect(nameProblems(file)).toHaveLength(1);
    },
  );

  test.each([`export const a = 1;`, `import { a } from "../engine/a.js"; export { a };`])(
    "a door that holds %s",
    (source) => {
      expect(doorProblems("src/lib/engine.ts", source)).not.toEqual([]);
    },
  );

  test("an entry of the top level that has no place there", () => {
    expect(topLevelProblems(["src", "notes.txt", ".ci", "dist"], ["dist"])).toEqual(["notes.txt"]);
  });
});

describe("the guard lets pass", () => {
  const right: readonly [file: string, source: string][] = [
    ["src/engine/place.ts", `import { x } from "./compile.js";`],
    ["src/reed/read-model.ts", `import * as v from "valibot"; import { x } from "../engine/x.js";`],
    ["src/reed/bassoon.ts", `import data from "./data/bassoon.json";`],
    ["src/book/csv.ts", `import { csvParse, csvFormat } from "d3";`],
    ["src/lesson/prose.ts", `import { micromark } from "micromark"; import { x } from "yaml";`],
    ["src/widgets/row.ts", `import { html } from "lit"; import { x } from "lit/directives/x.js";`],
    [
      "src/lib/engine.ts",
      `export { x } from "../engine/x.js"; export type { Y } from "../reed/y.js";`,
    ],
  ];
  test.each(right)("%s: %s", (file, source) => {
    expect(problemsOf(file, source)).toEqual([]);
  });
});
