import { english, type Catalogue } from "./catalogue.js";
import { lessonPlayerWords } from "./lesson-player-words.js";

/** A catalogue with the words of lessons, which only the pages that show lessons carry. */
export type LessonCatalogue = Catalogue & { readonly lessons: typeof lessonPlayerWords };

const made = new WeakMap<Catalogue, LessonCatalogue>();

/** The catalogue with the words of lessons: its own, or English ones; the same object for the same catalogue. */
export function withLessons(text: Catalogue): LessonCatalogue {
  const known = made.get(text);
  if (known) return known;
  const whole: LessonCatalogue = { lessons: lessonPlayerWords, ...text };
  made.set(text, whole);
  return whole;
}

/** English with the words of lessons. */
export const lessonEnglish: LessonCatalogue = withLessons(english);

const named = new WeakMap<LessonCatalogue, Map<string, LessonCatalogue>>();

/** The same words, but for what a triangle's point is called; the same object for the same name. */
export function withPoint(text: LessonCatalogue, point: string): LessonCatalogue {
  const known = named.get(text) ?? new Map<string, LessonCatalogue>();
  named.set(text, known);
  const whole = known.get(point) ?? { ...text, triangle: { ...text.triangle, point } };
  known.set(point, whole);
  return whole;
}
