import { defineConfig } from "vitest/config";
import { firstLoad } from "./.ci/first-load.mjs";
import { lessonFiles } from "./.ci/lesson-files.mjs";
import { tightTemplates, withoutRemarks } from "./.ci/tight-templates.mjs";

const unit = [
  "engine",
  "acoustics",
  "reed",
  "book",
  "lesson",
  "scorm",
  "guards",
  "tables",
  "app",
  "embed",
];
const dom = ["drawing", "widgets", "scenes"];

export default defineConfig({
  // The built app works in any folder of any server.
  base: "./",
  plugins: [lessonFiles(), tightTemplates(), withoutRemarks(), firstLoad()],
  build: { target: "es2022" },
  // The other pages of the product stand on built files, which the development server does not have.
  optimizeDeps: { entries: ["index.html"] },
  test: {
    reporters: ["default", "./.ci/closing-line-reporter.mjs"],
    projects: [
      {
        extends: true,
        test: {
          name: "unit",
          environment: "node",
          include: unit.map((room) => `tests/${room}/**/*.test.ts`),
        },
      },
      {
        extends: true,
        test: {
          name: "dom",
          environment: "jsdom",
          include: dom.map((room) => `tests/${room}/**/*.test.ts`),
        },
      },
      {
        extends: true,
        test: {
          name: "browser",
          environment: "node",
          include: ["tests/browser/**/*.test.ts"],
          globalSetup: "./.ci/serve-built-app.ts",
          // Two pages at once: most of a walk is waiting for the page.
          maxWorkers: 2,
          // The rooms without a browser go first, and have the machine for themselves.
          sequence: { groupOrder: 1 },
          // A walk that a busy machine has held up is walked once more; one that fails twice has failed.
          retry: 1,
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
    ],
  },
});
