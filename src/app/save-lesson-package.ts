import type { Lesson } from "../lesson/lesson.js";
import {
  type LessonPlayerFiles,
  packageFiles,
  packageName,
  type PackageOrder,
  zipped,
} from "../scorm/lesson-package.js";
import { saveFile } from "../widgets/picture-file.js";

/** A built file beside this page. */
async function fileBeside(page: Document, name: string): Promise<string> {
  const answer = await fetch(new URL(`scorm/${name}`, page.baseURI));
  const kind = answer.headers.get("content-type") ?? "";
  // A server may answer with a page of its own for what it does not have.
  if (!answer.ok || kind.includes("html"))
    throw new Error(`saveLessonPackage: scorm/${name} answers ${answer.status} ${kind}`);
  return answer.text();
}

/**
 * Makes the package of a lesson in the browser and saves it; the name of its file.
 *
 * Throws  when what plays the lesson cannot be fetched.
 */
export async function saveLessonPackage(
  page: Document,
  lesson: Lesson,
  order: PackageOrder,
): Promise<string> {
  const [script, style] = await Promise.all(
    ["lesson.js", "lesson.css"].map((name) => fileBeside(page, name)),
  );
  const player: LessonPlayerFiles = { script: script!, style: style! };
  const name = packageName([lesson], order.edition);
  const zip = zipped(packageFiles([lesson], order, player));
  saveFile(new Blob([zip], { type: "application/zip" }), name);
  return name;
}
