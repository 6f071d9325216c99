import type { FeatureId } from "../engine/model.js";
import type { Lesson } from "../lesson/lesson.js";

/** What a list shows of a lesson. */
export interface LessonHead {
  readonly title: string;
  readonly minutes: number;
  readonly goal?: string;
  readonly features?: readonly FeatureId[];
  readonly steps: number;
  readonly exercises: number;
}

const heads = import.meta.glob<LessonHead>("../../lessons/en/*.md", {
  query: "?head",
  import: "default",
  eager: true,
});
const lessons = import.meta.glob<Lesson>("../../lessons/en/*.md", {
  query: "?lesson",
  import: "default",
});

/** "06-shape", the name of its file. */
const idOf = (path: string): string => path.slice(path.lastIndexOf("/") + 1).replace(/\.md$/, "");

/** The shipped lessons in their order, by id. */
export const shippedLessons: readonly (LessonHead & { readonly id: string })[] = Object.entries(
  heads,
)
  .map(([path, head]) => ({ id: idOf(path), ...head }))
  .toSorted((a, b) => a.id.localeCompare(b.id));

const byId = new Map(Object.entries(lessons).map(([path, load]) => [idOf(path), load]));

/** Fetches a lesson; undefined where there is none of that id. */
export async function loadLesson(id: string): Promise<Lesson | undefined> {
  return await byId.get(id)?.();
}
