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

async function makeScript(root) {
  const [{ output }] = await build({
    root,
    configFile: false,
    logLevel: "warn",
    plugins: [tightTemplates(), withoutRemarks(), nothingLate(), withoutAppWords()],
    build: {
      write: false,
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
  return output[0].code;
}

async function makePlayer(root) {
  const style = tightStyle(readFileSync(`${root}src/app/page.css`, "utf8")).trim();
  return { script: await makeScript(root), style: `${style}\n` };
}

export async function buildScorm(root) {
  const { script, style } = await makePlayer(root);
  mkdirSync(`${root}${folder}`, { recursive: true });
  writeFileSync(`${root}${folder}/lesson.js`, script);
  writeFileSync(`${root}${folder}/lesson.css`, style);
}

function newest(path) {
  const files = readdirSync(path, { recursive: true, encoding: "utf8" });
  return Math.max(...files.map((file) => statSync(join(path, file)).mtimeMs));
}

/**
 * The player as it was built, or, where there is none or its sources are newer, made anew. That is not written to
 * `dist`: the service worker there knows every file by its hash.
 */
export async function playerFiles(root) {
  const [script, style] = ["lesson.js", "lesson.css"].map((file) => `${root}${folder}/${file}`);
  const isFresh = [script, style].every(
    (file) => existsSync(file) && statSync(file).mtimeMs >= newest(`${root}src`),
  );
  if (!isFresh) return makePlayer(root);
  return { script: readFileSync(script, "utf8"), style: readFileSync(style, "utf8") };
}
