import type { Catalogue } from "./catalogue.js";
import { readingWords } from "./reading-words.js";

/** What a catalogue has besides where tables of readings are read, and only there. */
export type ReadingWords = typeof readingWords;

/** The words of tables of readings: the catalogue's own, or English ones. */
export function readingWordsOf(text: Catalogue & Partial<ReadingWords>): ReadingWords {
  return { ...readingWords, ...text };
}
