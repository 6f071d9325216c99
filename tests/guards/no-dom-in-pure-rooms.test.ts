import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** What the compiler says of a text under the options of the pure rooms. */
function compileAsPure(source: string): { status: number | null; output: string } {
  const cache = join(root, "node_modules", ".cache");
  mkdirSync(cache, { recursive: true });
  const folder = mkdtempSync(join(cache, "pure-"));
  try {
    writeFileSync(join(folder, "probe.ts"), source);
    const config = {
      extends: join(root, ".ci", "tsconfig.pure.json"),
      compilerOptions: { rootDir: "." },
      include: ["probe.ts"],
    };
    writeFileSync(join(folder, "tsconfig.json"), JSON.stringify(config));
    const compiler = join(root, "node_modules", "typescript", "bin", "tsc");
    const { status, stdout } = spawnSync(process.execPath, [compiler, "-p", folder], {
      encoding: "utf8",
    });
    return { status, output: stdout };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

test("plain arithmetic compiles in a pure room", () => {
  expect(compileAsPure("export const half = (x: number): number => x / 2;\n")).toEqual({
    status: 0,
    output: "",
  });
});

test.each(["document.title", "new Event('change')", "process.env", "localStorage.length"])(
  "%s is a compile error in a pure room",
  (expression) => {
    const { status, output } = compileAsPure(`export const probe: unknown = ${expression};\n`);
    expect(status).not.toBe(0);
    expect(output).toMatch(/Cannot find name '(document|Event|process|localStorage)'/);
  },
);
