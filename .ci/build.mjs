// `npm run build`: the app, the library with its types, the schemas of the files.
//   dist/index.html, dist/assets   the app
//   dist/lib                       one module a door, readable types beside it
//   dist/schema                    JSON Schemas for a teacher's own files
//   dist/elements                  elements for other people's pages
//   dist/frame.html                the page for their frames
//   dist/lesson-frame.html         the same for a lesson
//   dist/reedpoint.html            the whole product in one file
//   dist/scorm                     what plays a lesson in a package for a learning platform
//   dist/examples.html             eleven snippets, each running
//   dist/service-worker.js         keeps all of it for a visit without a connection
import { spawnSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { build } from "vite";
import { buildElements, buildFrames } from "./build-elements.mjs";
import { buildExamples } from "./build-examples.mjs";
import { buildOnePage } from "./build-one-page.mjs";
import { buildScorm } from "./build-scorm.mjs";
import { buildServiceWorker } from "./build-service-worker.mjs";
import { writeSchemas } from "./schemas.mjs";
import { withoutRemarks } from "./tight-templates.mjs";

const root = fileURLToPath(new URL("..", import.meta.url));
// What doors share lies beside them; the one that is to be small shares nothing.
const shared = ["engine", "acoustics", "lesson"];
const alone = ["engine-alone"];
const doors = [...shared, ...alone];

async function buildApp() {
  await build({ root, logLevel: "warn" });
}

async function buildDoors(names) {
  await build({
    root,
    configFile: false,
    logLevel: "warn",
    plugins: [withoutRemarks()],
    // A door opens in Node and in a worker, too: of a package with two faces it takes the one that needs no document.
    resolve: { conditions: ["module", "import", "default"] },
    build: {
      outDir: "dist/lib",
      emptyOutDir: false,
      copyPublicDir: false,
      target: "es2022",
      lib: {
        entry: Object.fromEntries(names.map((door) => [door, `src/lib/${door}.ts`])),
        formats: ["es"],
      },
      // Library mode leaves the white space of ES modules alone unless told here.
      rolldownOptions: { output: { minify: true } },
    },
  });
}

function writeTypes() {
  const compiler = "node_modules/typescript/bin/tsc";
  const args = [compiler, "-p", ".ci/tsconfig.lib.json"];
  const { status } = spawnSync(process.execPath, args, { cwd: root, stdio: "inherit" });
  if (status !== 0) throw new Error("build: the types of the library do not compile");
  for (const door of doors) {
    writeFileSync(`${root}dist/lib/${door}.d.ts`, `export * from "./types/lib/${door}.js";\n`);
  }
  // Copied elsewhere, the folder must still say that its modules are ES modules.
  writeFileSync(`${root}dist/lib/package.json`, '{ "type": "module" }\n');
}

await buildApp();
await buildDoors(shared);
await buildDoors(alone);
writeTypes();
for (const door of doors) await import(`${root}dist/lib/${door}.js`);
await writeSchemas(root);
await buildElements(root);
await buildFrames(root);
await buildOnePage(root);
await buildScorm(root);
buildExamples(root);
await buildServiceWorker(root, `${root}dist`);
console.log(
  "Built dist: app, frame, one page, examples, lib, schema, elements, scorm, service worker.",
);
