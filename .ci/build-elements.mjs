// What other people's pages load: the elements as one module and as one classic script, a loader that fetches each
// element's code when such an element is in the page, source maps, types, the manifest, and the hashes to pin them by.
import { createHash } from "node:crypto";
import { readFileSync, writeFileSync } from "node:fs";
import { build } from "vite";
import { tightTemplates } from "./tight-templates.mjs";

/** One file, whatever is imported later: it must work where a page may fetch nothing more. */
async function buildOne(root, { entry, file, format, sourcemap = true, outDir = "dist/elements" }) {
  await build({
    root,
    configFile: false,
    logLevel: "warn",
    plugins: [tightTemplates()],
    build: {
      outDir,
      emptyOutDir: false,
      copyPublicDir: false,
      target: "es2022",
      sourcemap,
      lib: { entry, formats: [format], name: "Reedpoint", fileName: () => file },
      rolldownOptions: {
        output: {
          minify: true,
          codeSplitting: false,
          // A classic script leaves one name behind on the page; the elements need none.
          ...(format === "iife" ? { extend: true } : {}),
        },
      },
    },
  });
}

/** One module an element, and what they share, for the loader. */
async function buildLazy(root) {
  await build({
    root,
    configFile: false,
    logLevel: "warn",
    plugins: [tightTemplates()],
    base: "./",
    build: {
      outDir: "dist/elements",
      emptyOutDir: false,
      copyPublicDir: false,
      target: "es2022",
      sourcemap: true,
      modulePreload: false,
      lib: {
        entry: { "reed-elements.lazy": "src/embed/reed-elements-lazy.ts" },
        formats: ["es"],
      },
      rolldownOptions: {
        output: { minify: true, chunkFileNames: "lazy/[name]-[hash].js" },
      },
    },
  });
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
  const entry = "src/embed/reed-elements.ts";
  await buildOne(root, { entry, file: "reed-elements.js", format: "es" });
  await buildOne(root, { entry, file: "reed-elements.classic.js", format: "iife" });
  await buildLazy(root);
  writeIntegrity(root, ["reed-elements.js", "reed-elements.classic.js", "reed-elements.lazy.js"]);
}
