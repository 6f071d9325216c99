import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { strFromU8, unzipSync } from "fflate";
import { afterAll, expect, test } from "vitest";
import { soundLesson } from "../lesson/lesson-texts.js";

const root = fileURLToPath(new URL("../..", import.meta.url));
const folder = mkdtempSync(join(tmpdir(), "reedpoint-package-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** The command as `npm run package -- …` starts it, in a folder of its own. */
function run(...words: readonly string[]) {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [join(root, ".ci/package.mjs"), ...words],
    { cwd: folder, encoding: "utf8" },
  );
  return { status, stdout, stderr };
}

const own = join(folder, "own.md");
writeFileSync(own, soundLesson);
const broken = join(folder, "broken.md");
writeFileSync(broken, soundLesson.replace("bladeLength: 26.2 mm", "bladeLenght: 26.2 mm"));

test("shipped lessons and a file become one zip", () => {
  const { status, stdout } = run(
    "06-shape",
    own,
    "--scorm",
    "2004",
    "--mastery",
    "70",
    "--out",
    "a.zip",
  );
  expect(status).toBe(0);
  expect(stdout).toMatch(
    /^a\.zip: SCORM 2004, pass mark 70; \d+ kB; “Long, short, wide, narrow”, “Two moves”\.\n$/,
  );
  const files = unzipSync(new Uint8Array(readFileSync(join(folder, "a.zip"))));
  expect(Object.keys(files).toSorted()).toEqual([
    "06-shape.html",
    "imsmanifest.xml",
    "lesson.css",
    "lesson.js",
    "own.html",
  ]);
  const manifest = strFromU8(files["imsmanifest.xml"]!);
  expect(manifest).toContain("<schemaversion>2004 4th Edition</schemaversion>");
  expect(manifest.match(/<imsss:minNormalizedMeasure>0.7</g)).toHaveLength(2);
  expect(strFromU8(files["own.html"]!)).not.toContain("Let everybody point");
  expect(strFromU8(files["lesson.js"]!)).toContain("LMSInitialize");
}, 30_000);

test("without options: SCORM 1.2, no pass mark, a name made of the lesson's", () => {
  expect(run(own).stdout).toMatch(/^own-scorm-1\.2\.zip: SCORM 1\.2; \d+ kB; “Two moves”\.\n$/);
  expect(existsSync(join(folder, "own-scorm-1.2.zip"))).toBe(true);
}, 30_000);

test("the README's commands do what it says", () => {
  const readme = readFileSync(join(root, "README.md"), "utf8");
  const commands = [...readme.matchAll(/^npm run package -- (.*)$/gm)].map(([, words]) => words!);
  writeFileSync(join(folder, "my-lesson.md"), soundLesson);
  expect(commands.length).toBeGreaterThan(1);
  for (const words of commands)
    expect(run(...words.split(" "))).toMatchObject({ status: 0, stderr: "" });
  expect(existsSync(join(folder, "06-shape-scorm-1.2.zip"))).toBe(true);
  expect(existsSync(join(folder, "course.zip"))).toBe(true);
}, 30_000);

test("help tells how it is called, and everything wrong about a call is told at once", () => {
  const help = run("--help");
  expect([help.status, help.stdout]).toEqual([0, expect.stringMatching(/^npm run package -- /)]);
  const { status, stderr } = run("--scorm", "3", "--mastery", "x", "--colour");
  expect(status).toBe(1);
  for (const part of ["--scorm is “3”", "--mastery is “x”", "--colour is no option", "No lesson"])
    expect(stderr).toContain(part);
});

test("lessons with problems are refused with all of them, each with its place", () => {
  const { status, stdout, stderr } = run(own, broken, "--out", "b.zip");
  expect([status, stdout]).toEqual([1, ""]);
  expect(stderr).toMatch(
    /^No package is made: these must be mended first\.\nbroken\.md, line \d+, column \d+: .*“bladeLenght”.*Did you mean “bladeLength”\?\n$/s,
  );
  expect(existsSync(join(folder, "b.zip"))).toBe(false);
}, 30_000);

test.each([
  [[], /^No lesson is named\.\nnpm run package -- LESSON/],
  [
    ["66-nothing"],
    /“66-nothing” is neither a file nor a shipped lesson; shipped are 01-parts, 02-/,
  ],
  [[own, "--scorm", "1.3"], /^--scorm is “1\.3”; allowed is 1\.2 or 2004\./],
  [[own, "--mastery", "101"], /^--mastery is “101”; allowed is a whole number from 0 to 100\./],
  [[own, "--loud"], /--loud.*npm run package -- LESSON/s],
  [
    [own, "--out", "no/such/folder/x.zip"],
    /^--out is “no\/such\/folder\/x\.zip”: it cannot be written \(ENOENT\)/,
  ],
])(
  "%j is refused",
  (words, message) => {
    const { status, stdout, stderr } = run(...words);
    expect([status, stdout]).toEqual([1, ""]);
    expect(stderr).toMatch(message);
  },
  30_000,
);
