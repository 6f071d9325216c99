import { strToU8, zipSync } from "fflate";
import type { Lesson } from "../lesson/lesson.js";
import { platformWords } from "../reed/platform-words.js";
import { lessonPage, scriptFile, styleFile } from "./lesson-page.js";
import { manifestText, type PackageContent, type ScormEdition } from "./manifest.js";
import { lessonToPlay } from "./packaged-lesson.js";

/** What plays a lesson: the built `lesson.js` and `lesson.css`. */
export interface LessonPlayerFiles {
  readonly script: string;
  readonly style: string;
}

/** What a package is asked to be. */
export interface PackageOrder {
  readonly edition: ScormEdition;
  /** Whole per cents, 0 to 100, from which on a lesson is passed. */
  readonly mastery?: number;
}

/** Every entry of a zip says when it was made; a fixed day makes the same package of the same lessons. */
const zipDay = new Date(2000, 0, 1);

/**
 * The files of a package by their names: a page for every lesson, script and style that they share, the manifest. One
 * lesson has the page `index.html`; several have pages named after their files.
 *
 * Throws  RangeError without a lesson, or for a mastery score outside 0 to 100.
 */
export function packageFiles(
  lessons: readonly Lesson[],
  { edition, mastery }: PackageOrder,
  player: LessonPlayerFiles,
): Readonly<Record<string, string>> {
  if (lessons.length === 0) throw new RangeError("packageFiles: there is no lesson; allowed: 1 on");
  if (mastery !== undefined && !isMastery(mastery))
    throw new RangeError(`packageFiles: mastery is ${mastery}; allowed: whole per cents, 0 to 100`);
  const bar = mastery === undefined ? {} : { mastery };
  const content = { ...contentOf(lessons), ...bar };
  const pages = content.lessons.map(({ page }, index) => {
    const packaged = { lesson: lessonToPlay(lessons[index]!), edition, ...bar };
    return [page, lessonPage(packaged, platformWords.needsScript)] as const;
  });
  return {
    "imsmanifest.xml": manifestText(content, edition),
    ...Object.fromEntries(pages),
    [scriptFile]: player.script,
    [styleFile]: player.style,
  };
}

/** Whether a number can be a mastery score. */
export function isMastery(value: number): boolean {
  return Number.isInteger(value) && value >= 0 && value <= 100;
}

function contentOf(lessons: readonly Lesson[]): PackageContent {
  const names = ownNames(lessons.map(lessonName));
  const [title] = lessons.map((lesson) => lesson.title);
  return {
    name: names[0]! + (names.length > 1 ? `-and-${names.length - 1}-more` : ""),
    title: lessons.length === 1 ? title! : platformWords.courseTitle(lessons.length),
    lessons: lessons.map((lesson, index) => ({
      name: names[index]!,
      title: lesson.title,
      page: lessons.length === 1 ? "index.html" : `${names[index]}.html`,
    })),
    files: [scriptFile, styleFile],
  };
}

/**
 * What a lesson is called in names of files: its own file's name, or its title.
 *
 * @example lessonName({ file: "lessons/en/06-shape.md", title: "Long" }) → "06-shape"
 */
export function lessonName({ file, title }: Pick<Lesson, "file" | "title">): string {
  const own = file.replace(/^.*[/\\]/, "").replace(/\.[^.]*$/, "");
  return plainName(own) || plainName(title) || "lesson";
}

/** Letters, digits and hyphens, so that every platform and every disk takes it. */
function plainName(text: string): string {
  return text
    .normalize("NFKD")
    .replace(/[\u0300-\u036f]/g, "")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "")
    .slice(0, 60);
}

/** The same names, but no two alike. */
function ownNames(names: readonly string[]): string[] {
  const taken = new Set<string>();
  return names.map((name) => {
    let own = name;
    for (let count = 2; taken.has(own); count += 1) own = `${name}-${count}`;
    taken.add(own);
    return own;
  });
}

/** The name of a package as a file. */
export function packageName(lessons: readonly Lesson[], edition: ScormEdition): string {
  return `${contentOf(lessons).name}-scorm-${edition}.zip`;
}

/** Files as a zip. */
export function zipped(files: Readonly<Record<string, string>>): Uint8Array<ArrayBuffer> {
  const entries = Object.entries(files).map(([name, text]) => [name, strToU8(text)] as const);
  return zipSync(Object.fromEntries(entries), { level: 9, mtime: zipDay });
}
