import { expect, test } from "vitest";
import { readReadings } from "../../src/book/read-readings.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { decodeBench } from "../../src/reed/bench.js";
import { english, sentenceText, type Catalogue } from "../../src/reed/catalogue.js";
import { readingWords } from "../../src/reed/reading-words.js";
import type { ReadingWords } from "../../src/reed/reading-catalogue.js";
import { describeReed } from "../../src/reed/sentence.js";

/** A catalogue in which every word is marked: what comes back unmarked did not come from it. */
function marked<T>(part: T): T {
  if (typeof part === "string") return `«${part}»` as T;
  if (typeof part === "function") return ((...given: unknown[]) => marked(part(...given))) as T;
  if (Array.isArray(part)) return part.map(marked) as T;
  if (typeof part !== "object" || part === null) return part;
  return Object.fromEntries(Object.entries(part).map(([key, value]) => [key, marked(value)])) as T;
}

const other: Catalogue = marked(english);

test("problems of a pasted table are told in the words of the catalogue that is given", () => {
  const translated: Catalogue & Partial<ReadingWords> = {
    ...other,
    faults: marked(readingWords.faults),
  };
  const { problems } = readReadings("heart\tthick\nBark\t3\nspine\t17", {
    model: bassoonModel,
    unit: "mm",
    text: translated,
  });
  expect(problems).toHaveLength(3);
  for (const { message } of problems) expect(message).toContain("«");
});

test("problems of a link too", () => {
  const { problems } = decodeBench("v=1&model=bassoon&values=1.2&unit=ell", bassoonModel, other);
  expect(problems).toHaveLength(2);
  for (const problem of problems) expect(problem).toContain("«");
});

test("and the sentence about a reed", () => {
  const said = sentenceText(describeReed({ model: bassoonModel, values: {} }, other));
  expect(said).toContain("«");
});
