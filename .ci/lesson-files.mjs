// Lesson files in the build: `?lesson` gives the lesson, read once here so that no page carries the readers;
// `?head` only what a list shows of it.
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { runnerImport } from "vite";

const root = fileURLToPath(new URL("..", import.meta.url));

let doors;
const load = async (file) =>
  (await runnerImport(`${root}src/${file}`, { configFile: false })).module;

/** Parser and model, loaded once a build. */
function tools() {
  doors ??= Promise.all([
    load("lib/lesson.ts"),
    load("lesson/lesson.ts"),
    load("reed/bassoon.ts"),
  ]).then(([door, lesson, bassoon]) => ({ ...door, ...lesson, ...bassoon }));
  return doors;
}

async function read(path) {
  const { parseLesson, bassoonModel } = await tools();
  const file = path.slice(root.length);
  const { lesson, problems } = parseLesson(readFileSync(path, "utf8"), {
    file,
    model: bassoonModel,
  });
  if (!lesson || problems.length > 0)
    throw new Error(problems.map(({ message }) => message).join("\n"));
  return lesson;
}

/** Where a field stood in the file matters to its author alone. */
const withoutPlaces = (key, value) => (key === "places" ? {} : value);

async function head(lesson) {
  const { isExercise } = await tools();
  const { title, minutes, goal, features, steps } = lesson;
  const exercises = steps.flatMap(({ blocks }) => blocks.filter(isExercise)).length;
  return { title, minutes, goal, features, steps: steps.length, exercises };
}

/** The plugin that makes modules of lesson files. */
export function lessonFiles() {
  return {
    name: "lesson-files",
    async load(id) {
      const [, path, query] = /^(.*\.md)\?(lesson|head)$/.exec(id) ?? [];
      if (!path) return undefined;
      this.addWatchFile(path);
      const lesson = await read(path);
      const data = query === "head" ? await head(lesson) : lesson;
      return { code: `export default ${JSON.stringify(data, withoutPlaces)};`, moduleType: "js" };
    },
  };
}
