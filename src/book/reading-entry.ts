import type { FeatureId } from "../engine/model.js";
import type { ReadingWords } from "../reed/reading-catalogue.js";
import type { Fault } from "../reed/reading-words.js";
import { type LengthUnit, parseUnit, toMillimetres } from "../reed/units.js";
import type { FeatureFinder } from "./feature-finder.js";
import type { Cell } from "./reading-problem.js";
import { readingUnit, valueFault, valueParts } from "./reading-value.js";

/** One reading as it stands in a text: three cells, the last of which may be absent. */
export interface ReadingEntry {
  readonly feature: Cell;
  readonly value: Cell;
  readonly unit?: Cell;
  /** The unit if neither value nor unit cell names one; without it, the unit of the import. */
  readonly otherwise?: LengthUnit;
}

/** A cell and what is wrong with it. */
export interface CellFault {
  readonly cell: Cell;
  readonly fault: Fault;
}

/** A reading in the model's units. */
export interface TakenReading {
  readonly feature: FeatureId;
  readonly value: number;
}

/** How the cells of an import are to be read. */
export interface EntryRules {
  readonly find: FeatureFinder;
  readonly unit: LengthUnit;
  readonly decimalComma: boolean;
  /** What is said of a cell that cannot be taken over. */
  readonly words: ReadingWords["faults"];
}

/**
 * Takes one reading over, or says which of its cells are wrong; a wrong feature and an unreadable value are
 * both reported.
 */
export function takeEntry(
  entry: ReadingEntry,
  rules: EntryRules,
): TakenReading | readonly CellFault[] {
  const name = nameAndUnit(entry.feature.text);
  const found = rules.find(name.feature);
  const parts = valueParts(entry.value.text, rules);
  const faults: CellFault[] = [];
  if ("fault" in found) faults.push({ cell: entry.feature, fault: found.fault });
  if ("fault" in parts) faults.push({ cell: entry.value, fault: parts.fault });
  if ("fault" in found || "fault" in parts) return faults;
  const { feature } = found;
  const unitCell = entry.unit?.text.trim() ? entry.unit : entry.value;
  const read = readingUnit(
    feature,
    [parts.unit, entry.unit?.text ?? ""].some((text) => text.trim() !== "")
      ? [parts.unit, entry.unit?.text ?? ""]
      : [name.unit],
    entry.otherwise ?? rules.unit,
    rules.words,
  );
  if ("fault" in read) return [{ cell: unitCell, fault: read.fault }];
  const fault = valueFault(feature, parts, read.unit, rules.words);
  if (fault) return [{ cell: entry.value, fault }];
  const value = read.unit ? toMillimetres(parts.value, read.unit) : parts.value;
  return { feature: feature.id, value };
}

/** Spreadsheets often carry the unit in the name: "Tip width (mm)", "heart, in". */
function nameAndUnit(text: string): { readonly feature: string; readonly unit: string } {
  const [, feature = text, unit = ""] = /^(.*?)[\s,]*[([\s]([a-z"]+)[)\]]?\s*$/i.exec(text) ?? [];
  return parseUnit(unit) ? { feature, unit } : { feature: text, unit: "" };
}
