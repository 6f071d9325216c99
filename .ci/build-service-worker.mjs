// The service worker, last of all: it carries a list of every file that was built, each with its hash.
import { createHash } from "node:crypto";
import { readFileSync, readdirSync, writeFileSync } from "node:fs";
import { join, relative, sep } from "node:path";
import { build } from "vite";

const own = "service-worker.js";

/** Source maps and types are for programmers, who are connected. */
const isKept = (path) => path !== own && !/\.(map|d\.ts)$/.test(path);

const hashOf = (data, coding) => createHash("sha256").update(data).digest(coding);

/** Every file of a folder that is to be there without a connection, with the hash that the browser checks it by. */
function builtFiles(folder) {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .map((path) => [relative(folder, path).split(sep).join("/"), path])
    .filter(([name]) => isKept(name))
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, path]) => [name, `sha256-${hashOf(readFileSync(path), "base64")}`]);
}

/** Writes the service worker of a built folder, for just the files that lie there now. */
export async function buildServiceWorker(root, folder) {
  const files = builtFiles(folder);
  const version = hashOf(JSON.stringify(files), "hex").slice(0, 12);
  const [{ output }] = await build({
    root,
    configFile: false,
    logLevel: "warn",
    define: { BUILT: JSON.stringify({ version, files }) },
    build: {
      write: false,
      target: "es2022",
      lib: {
        entry: "src/app/service-worker.ts",
        formats: ["iife"],
        name: "Reedpoint",
        fileName: () => own,
      },
    },
  });
  writeFileSync(join(folder, own), output[0].code);
  return files;
}
