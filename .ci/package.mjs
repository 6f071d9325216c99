// `npm run package -- LESSON …`: lessons as a package for a learning platform. A lesson is the name of a shipped one
// (06-shape) or the path of a file. One zip; several lessons are several items in it. The exit status is 1 when nothing
// could be made.
//   --scorm 1.2|2004   the edition of the standard (1.2)
//   --mastery N        pass mark, whole per cents (none: finishing is enough)
//   --out FILE         where the zip goes (a name made of the lesson's, in this folder)
import { existsSync, readFileSync, readdirSync, writeFileSync } from "node:fs";
import { relative } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { runnerImport } from "vite";
import { playerFiles } from "./build-scorm.mjs";

const root = fileURLToPath(new URL("..", import.meta.url));
const usage = "npm run package -- LESSON … [--scorm 1.2|2004] [--mastery N] [--out FILE]";
const load = async (file) =>
  (await runnerImport(`${root}src/${file}`, { configFile: false })).module;

/** Stops with what is wrong, where, and what is allowed. */
class Refusal extends Error {}

/** What is asked for, or a refusal with everything that is wrong about it. */
function readArguments() {
  const options = {
    scorm: { type: "string" },
    mastery: { type: "string" },
    out: { type: "string" },
    help: { type: "boolean", short: "h" },
  };
  const { values, positionals } = parseArgs({ allowPositionals: true, strict: false, options });
  if (values.help) return { isHelp: true };
  const wrong = Object.entries(values).flatMap(([name, value]) =>
    wrongOption(name, value, options),
  );
  if (positionals.length === 0) wrong.push("No lesson is named.");
  if (wrong.length > 0) throw new Refusal([...wrong, usage].join("\n"));
  const {
    scorm: edition = "1.2",
    mastery,
    out,
  } = /** @type {Record<string, string | undefined>} */ (values);
  const order = mastery === undefined ? { edition } : { edition, mastery: Number(mastery) };
  return { order, out, names: positionals };
}

function wrongOption(name, value, options) {
  if (!Object.hasOwn(options, name))
    return [`--${name} is no option; allowed are --scorm, --mastery, --out and --help.`];
  if (typeof value !== "string") return [`--${name} wants a value.`];
  if (name === "scorm" && value !== "1.2" && value !== "2004")
    return [`--scorm is “${value}”; allowed is 1.2 or 2004.`];
  if (name === "mastery" && !/^(100|\d{1,2})$/.test(value))
    return [`--mastery is “${value}”; allowed is a whole number from 0 to 100.`];
  return [];
}

/** Names of the shipped lessons with their files. */
function shipped() {
  const folder = `${root}lessons/`;
  const files = readdirSync(folder, { recursive: true, encoding: "utf8" });
  return new Map(
    files
      .filter((file) => file.endsWith(".md"))
      .toSorted()
      .map((file) => [file.replace(/^.*[/\\]|\.md$/g, ""), folder + file]),
  );
}

function textOf(name) {
  const known = shipped();
  const path = existsSync(name) ? name : known.get(name);
  if (path === undefined)
    throw new Refusal(
      `“${name}” is neither a file nor a shipped lesson; shipped are ${[...known.keys()].join(", ")}.`,
    );
  try {
    return { file: relative(process.cwd(), path), text: readFileSync(path, "utf8") };
  } catch (error) {
    throw new Refusal(`${name}: cannot be read (${error.code ?? error.message})`);
  }
}

/** The lessons, or a refusal with all problems of all of them. */
async function readLessons(names) {
  const { parseLesson, checkLesson } = await load("lib/lesson.ts");
  const { bassoonModel, bassoonActions } = await load("reed/bassoon.ts");
  const read = names.map(textOf).map(({ file, text }) => {
    const { lesson, problems } = parseLesson(text, { file, model: bassoonModel });
    const more = lesson ? checkLesson(lesson, bassoonModel, bassoonActions) : [];
    return { lesson, problems: [...problems, ...more] };
  });
  const problems = read.flatMap((one) =>
    one.problems.toSorted((a, b) => a.line - b.line || a.column - b.column),
  );
  if (problems.length > 0)
    throw new Refusal(
      `No package is made: these must be mended first.\n${problems.map(({ message }) => message).join("\n")}`,
    );
  return read.map(({ lesson }) => lesson);
}

function write(file, zip) {
  try {
    writeFileSync(file, zip);
  } catch (error) {
    throw new Refusal(`--out is “${file}”: it cannot be written (${error.code ?? error.message})`);
  }
}

async function makePackage() {
  const { isHelp, order, out, names } = readArguments();
  if (isHelp) {
    console.log(usage);
    return;
  }
  const lessons = await readLessons(names);
  const { packageFiles, packageName, zipped } = await load("scorm/lesson-package.ts");
  const zip = zipped(packageFiles(lessons, order, await playerFiles(root)));
  const file = out ?? packageName(lessons, order.edition);
  write(file, zip);
  const bar = order.mastery === undefined ? "" : `, pass mark ${order.mastery}`;
  const titles = lessons.map(({ title }) => `“${title}”`).join(", ");
  console.log(
    `${file}: SCORM ${order.edition}${bar}; ${Math.round(zip.length / 1000)} kB; ${titles}.`,
  );
}

try {
  await makePackage();
} catch (error) {
  if (!(error instanceof Refusal)) throw error;
  console.error(error.message);
  process.exitCode = 1;
}
