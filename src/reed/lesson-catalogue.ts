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
