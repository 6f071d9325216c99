// What other people's pages load: the elements as one module and as one classic script, a loader that fetches each
// element's code when such an element is in the page, source maps, types, the manifest, and the hashes to pin them by.
import { createHash } from "node:crypto";
import { copyFileSync, readFileSync, writeFileSync } from "node:fs";
import { build } from "vite";
import { firstLoad } from "./first-load.mjs";
import { lessonFiles } from "./lesson-files.mjs";
import { writeManifest } from "./manifest.mjs";
import {
  nothingLate,
  tightStyle,
  tightTemplates,
  withoutAppWords,
  withoutHowTo,
  withoutRemarks,
} from "./tight-templates.mjs";

const plugins = [lessonFiles(), tightTemplates(), withoutRemarks()];

function libraryBuild(root, lib, output, more = [], outDir = "dist/elements") {
  return build({
    root,
    configFile: false,
    logLevel: "warn",
    plugins: [...plugins, ...more],
    base: "./",
    build: {
      outDir,
      emptyOutDir: false,
      copyPublicDir: false,
      target: "es2022",
      sourcemap: true,
      modulePreload: false,
      lib,
      rolldownOptions: {
        // What a later part shares with its entry stays in the entry.
        preserveEntrySignatures: "allow-extension",
        output: { minify: true, ...output },
      },
    },
  });
}

/** One file, whatever is imported later: it must work where a page may fetch nothing more. */
function buildClassic(root, source, file, { outDir, more = [withoutAppWords()] } = {}) {
  return libraryBuild(
    root,
    {
      entry: `src/embed/${source}.ts`,
      formats: ["iife"],
      name: "Reedpoint",
      fileName: () => file,
    },
    { codeSplitting: false },
    [nothingLate(), ...more],
    outDir,
  );
}

/** A module; large parts come when they are shown first. */
function buildModule(root, name, source, more = []) {
  return libraryBuild(
    root,
    { entry: { [name]: `src/embed/${source}.ts` }, formats: ["es"] },
    { chunkFileNames: `parts/${name}-[name]-[hash].js` },
    [withoutAppWords(), ...more],
  );
}

/** The hash that a page can pin a script by. */
export function integrityOf(path) {
  return `sha384-${createHash("sha384").update(readFileSync(path)).digest("base64")}`;
}

function writeIntegrity(root, files) {
  const hashes = Object.fromEntries(
    files.map((file) => [file, integrityOf(`${root}dist/elements/${file}`)]),
  );
  writeFileSync(`${root}dist/elements/integrity.json`, `${JSON.stringify(hashes, null, 2)}\n`);
  for (const [file, hash] of Object.entries(hashes)) console.log(`${file}  ${hash}`);
}

export async function buildElements(root) {
  await buildClassic(root, "reed-elements-classic", "reed-elements.classic.js");
  await buildClassic(root, "reed-lesson-classic", "reed-lesson.classic.js");
  await buildClassic(root, "frame-parent", "reed-frame.js");
  await buildModule(root, "reed-elements", "reed-elements", [firstLoad()]);
  await buildModule(root, "reed-triangle", "reed-triangle", [withoutHowTo()]);
  await buildModule(root, "reed-elements.lazy", "reed-elements-lazy");
  await writeManifest(root);
  writeIntegrity(root, [
    "reed-elements.js",
    "reed-elements.classic.js",
    "reed-elements.lazy.js",
    "reed-lesson.classic.js",
    "reed-triangle.js",
    "reed-frame.js",
  ]);
}

/** The pages that stand in other people's frames; classic, for a sandbox and a file load no modules. */
export async function buildFrames(root) {
  // A link may hold a reed that has failed a look before measuring: the words for that are the guided sheet's.
  await buildClassic(root, "frame-page", "frame.js", { outDir: "dist/assets", more: [] });
  const styles = ["src/app/page.css", "src/embed/frame.css"];
  const style = styles.map((file) => tightStyle(readFileSync(root + file, "utf8"))).join("");
  writeFileSync(`${root}dist/assets/frame.css`, `${style}\n`);
  copyFileSync(`${root}src/embed/frame.html`, `${root}dist/frame.html`);
  await buildClassic(root, "lesson-frame-page", "lesson-frame.js", { outDir: "dist/assets" });
  copyFileSync(`${root}src/embed/lesson-frame.html`, `${root}dist/lesson-frame.html`);
}
