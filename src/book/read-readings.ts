import type { FeatureId, ReedModel } from "../engine/model.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import { readingWordsOf } from "../reed/reading-catalogue.js";
import type { Fault } from "../reed/reading-words.js";
import type { LengthUnit } from "../reed/units.js";
import { featureFinder } from "./feature-finder.js";
import { jsonEntries } from "./json-entries.js";
import { type EntryRules, takeEntry } from "./reading-entry.js";
import { type Cell, cellProblem, type ReadingProblem } from "./reading-problem.js";
import { tableEntries } from "./table-entries.js";
import { textTable } from "./text-table.js";

/** How a text of readings is to be read. */
export interface ReadingOptions {
  readonly model: ReedModel;
  /** The unit of lengths that name none. */
  readonly unit: LengthUnit;
  /** Name of the file, for the problems. */
  readonly file?: string;
  /** Words of the problems; English if not given. */
  readonly text?: Catalogue;
  /** Without it, a text that begins with a brace or a bracket is JSON, any other a table. */
  readonly format?: "csv" | "json" | "paste";
}

/** More is no table of a reed, and would only keep the page busy. */
const mostLetters = 200_000;

/** What an import yields. */
export interface ImportedReadings {
  /** Every good reading, by feature, in the model's units and in the order of the text. */
  readonly readings: Readonly<Record<FeatureId, readonly number[]>>;
  readonly problems: readonly ReadingProblem[];
}

/**
 * The readings in a pasted text or a file: columns feature, value and, if need be, unit, parted by tabs,
 * semicolons or commas; or JSON. Good cells are kept, every bad one is reported.
 *
 * A feature that stands there several times keeps all of its readings. A value outside the model's range is kept;
 * one far outside is a problem that asks about its unit.
 *
 * Shape   any text → readings and problems; a text without any reading is a problem too.
 * Unit    as written in the value or its unit cell, else `unit` → mm (ratios and judgements stay as they are).
 * Throws  nothing, whatever the text.
 *
 * @example readReadings("Heart thickness\t17 thou", { model: bassoonModel, unit: "mm" }).readings → { heart: [0.4318] }
 */
export function readReadings(text: string, options: ReadingOptions): ImportedReadings {
  const { model, unit, file } = options;
  const said = readingWordsOf(options.text ?? english);
  const { faults: words } = said;
  const problem = (cell: Cell, fault: Fault): ReadingProblem =>
    cellProblem(cell, fault, words, file);
  const empty = problem({ text: "", row: 1, column: 1 }, words.noReading);
  const plainText = text.replace(/^\uFEFF/, "");
  if (plainText.trim() === "") return { readings: {}, problems: [empty] };
  if (plainText.length > mostLetters)
    return {
      readings: {},
      problems: [problem({ text: "", row: 1, column: 1 }, words.tooLong(mostLetters))],
    };
  const isJson = options.format ? options.format === "json" : /^\s*[[{]/.test(plainText);
  const table = textTable(isJson ? "" : plainText);
  const { entries, faults } = isJson ? jsonEntries(plainText, words) : tableEntries(table, words);
  const rules: EntryRules = {
    find: featureFinder(model, said),
    unit,
    decimalComma: isJson || table.delimiter !== ",",
    words,
  };
  const readings = new Map<FeatureId, number[]>();
  const problems = faults.map(({ cell, fault }) => problem(cell, fault));
  for (const entry of entries) {
    const taken = takeEntry(entry, rules);
    if ("feature" in taken) add(readings, taken.feature, taken.value);
    else problems.push(...taken.map(({ cell, fault }) => problem(cell, fault)));
  }
  if (readings.size === 0 && problems.length === 0) problems.push(empty);
  problems.sort((a, b) => a.row - b.row);
  return { readings: Object.fromEntries(readings), problems };
}

function add(readings: Map<FeatureId, number[]>, feature: FeatureId, value: number): void {
  const earlier = readings.get(feature);
  if (earlier) earlier.push(value);
  else readings.set(feature, [value]);
}
