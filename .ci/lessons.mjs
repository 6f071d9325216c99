// `npm run lessons`: holds every shipped lesson against the model; `npm run lessons -- FILE …` any other.
// One line a lesson, its problems below it; the exit status is 1 when there is one.
import { readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { runnerImport } from "vite";

const root = fileURLToPath(new URL("..", import.meta.url));
const load = async (file) =>
  (await runnerImport(`${root}src/${file}`, { configFile: false })).module;
const { parseLesson, checkLesson } = await load("lib/lesson.ts");
const { choiceRemarks } = await load("lesson/choice-remarks.ts");
const { isExercise } = await load("lesson/lesson.ts");
const { bassoonModel, bassoonActions } = await load("reed/bassoon.ts");
const { lessonWords } = await load("reed/lesson-words.ts");

function shippedLessons() {
  const folder = join(root, "lessons");
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".md"))
    .toSorted()
    .map((file) => join(folder, file));
}

function read(file) {
  try {
    return readFileSync(file, "utf8");
  } catch (error) {
    console.error(`${file}: cannot be read (${error.code ?? error.message})`);
    return undefined;
  }
}

/** The lessons that could be read. */
const lessons = [];

/** Prints a lesson's line, its problems and remarks; how many problems there are. */
function tell(path) {
  const file = relative(process.cwd(), path);
  const text = read(path);
  if (text === undefined) return 1;
  const { lesson, problems: found } = parseLesson(text, { file, model: bassoonModel });
  const problems = lesson
    ? [...found, ...checkLesson(lesson, bassoonModel, bassoonActions)]
    : found;
  const steps = lesson?.steps ?? [];
  const exercises = steps.flatMap(({ blocks }) => blocks.filter(isExercise)).length;
  console.log(
    lessonWords.summary(file, steps.length, exercises, lesson?.minutes ?? 0, problems.length),
  );
  for (const { message } of problems.toSorted((a, b) => a.line - b.line || a.column - b.column))
    console.log(`  ${message}`);
  if (lesson) lessons.push(lesson);
  for (const remark of choiceRemarks(lesson ? [lesson] : [])) console.log(`  ${remark}`);
  return problems.length;
}

const named = process.argv.slice(2);
const counts = (named.length > 0 ? named : shippedLessons()).map(tell);
const remarks = lessons.length > 1 ? choiceRemarks(lessons) : [];
if (remarks.length > 0) console.log([lessonWords.remarks.together, ...remarks].join("\n  "));
process.exitCode = counts.some((count) => count > 0) ? 1 : 0;
