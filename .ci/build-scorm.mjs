// What plays a lesson inside a package for a learning platform: one classic script and one style.
import { existsSync, mkdirSync, readFileSync, readdirSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { build } from "vite";
import {
  nothingLate,
  tightStyle,
  tightTemplates,
  withoutAppWords,
  withoutRemarks,
} from "./tight-templates.mjs";

const folder = "dist/scorm";

async function buildScript(root) {
  await build({
    root,
    configFile: false,
    logLevel: "warn",
    plugins: [tightTemplates(), withoutRemarks(), nothingLate(), withoutAppWords()],
    base: "./",
    build: {
      outDir: folder,
      emptyOutDir: true,
      copyPublicDir: false,
      target: "es2022",
      lib: {
        entry: "src/scorm/platform-lesson-page.ts",
        formats: ["iife"],
        name: "Reedpoint",
        fileName: () => "lesson.js",
      },
      rolldownOptions: { output: { minify: true, codeSplitting: false } },
    },
  });
}

export async function buildScorm(root) {
  await buildScript(root);
  mkdirSync(`${root}${folder}`, { recursive: true });
  const style = tightStyle(readFileSync(`${root}src/app/page.css`, "utf8"));
  writeFileSync(`${root}${folder}/lesson.css`, `${style}\n`);
}

function newest(path) {
  const files = readdirSync(path, { recursive: true, encoding: "utf8" });
  return Math.max(...files.map((file) => statSync(join(path, file)).mtimeMs));
}

/** Builds the player if there is none, or one that is older than its sources. */
export async function playerFiles(root) {
  const [script, style] = ["lesson.js", "lesson.css"].map((file) => `${root}${folder}/${file}`);
  const isFresh = [script, style].every(
    (file) => existsSync(file) && statSync(file).mtimeMs >= newest(`${root}src`),
  );
  if (!isFresh) await buildScorm(root);
  return { script: readFileSync(script, "utf8"), style: readFileSync(style, "utf8") };
}
