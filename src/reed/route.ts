import type { OpenLesson, PageName } from "./bench.js";

/** Where in the app somebody is: the page, and on the page of lessons the lesson and its step. */
export interface Route {
  readonly page: PageName;
  readonly lesson?: OpenLesson | undefined;
}

/**
 * A place in the app as one line: two benches at the same place have the same.
 *
 * @example routeKey({ page: "lessons", lesson: { id: "06-shape", step: 1 } }) → "lessons 06-shape.2"
 */
export function routeKey({ page, lesson }: Route): string {
  const inside = page === "lessons" && lesson ? ` ${lesson.id}.${lesson.step + 1}` : "";
  return `${page}${inside}`;
}

/** Keys by which a short address names a place and nothing of a reed. */
const routeKeys = new Set(["page", "lesson"]);

/**
 * Whether an address names only a place in the app: `page=measure`, `lesson=06-shape.2`. It leaves the reed that is on
 * the bench alone; a link names its version.
 *
 * @example isShortAddress("lesson=06-shape.2") → true
 */
export function isShortAddress(code: string): boolean {
  const keys = code.split("&").map((part) => part.split("=")[0]!);
  return code !== "" && keys.every((key) => routeKeys.has(key));
}

/** The page that an address without one means: a lesson lies on the page of lessons. */
export function pageOf(page: PageName | undefined, hasLesson: boolean): PageName {
  return page ?? (hasLesson ? "lessons" : "bench");
}
