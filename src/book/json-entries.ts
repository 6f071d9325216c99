import type { ReadingWords } from "../reed/reading-catalogue.js";
import type { Fault } from "../reed/reading-words.js";
import { field, isKeyed } from "../reed/unknown-field.js";
import { type LengthUnit, parseUnit } from "../reed/units.js";
import type { CellFault, ReadingEntry } from "./reading-entry.js";
import type { Cell } from "./reading-problem.js";

/** Entries still to be checked, and cells that are no part of any. */
export interface FoundEntries {
  readonly entries: ReadingEntry[];
  readonly faults: CellFault[];
}

/**
 * The readings in a JSON text: an object from feature to a value or a list of values, the same under
 * `readings`, or a list of objects with feature, value and unit. A `unit` beside the readings holds for all.
 *
 * Shape   any text, words for what is wrong → entries and faults; rows count the keys or items from 1, columns are keys.
 */
export function jsonEntries(text: string, words: ReadingWords["faults"]): FoundEntries {
  const whole: Cell = { text, row: 1, column: 1 };
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    return wrong(whole, words.badJson(text));
  }
  const inner = field(json, "readings");
  const readings = typeof inner === "object" && inner !== null ? inner : json;
  const unit = readUnit(json, words);
  const stated: FoundEntries = { entries: [], faults: unit.faults };
  if (Array.isArray(readings)) {
    return merged([
      stated,
      ...readings.map((item: unknown, index) => itemEntries(item, index + 1, unit.known, words)),
    ]);
  }
  if (!isKeyed(readings)) return wrong(whole, words.emptyJson(text));
  const rows = Object.entries(readings).map(([key, value], index) => ({
    key,
    value,
    row: index + 1,
  }));
  const kept = rows.filter(({ key }) => !(readings === json && key === "unit"));
  return merged([
    stated,
    ...kept.map(({ key, value, row }) => keyEntries(key, value, row, unit.known)),
  ]);
}

/** The unit that the file states for all of its readings. */
function readUnit(
  json: unknown,
  words: ReadingWords["faults"],
): {
  readonly known: LengthUnit | undefined;
  readonly faults: CellFault[];
} {
  const text = cellText(field(json, "unit"));
  const known = parseUnit(text);
  if (text === "" || known) return { known, faults: [] };
  const cell: Cell = { text, row: 1, column: "unit" };
  return { known, faults: [{ cell, fault: words.unknownUnit(text) }] };
}

function keyEntries(
  key: string,
  value: unknown,
  row: number,
  unit: LengthUnit | undefined,
): FoundEntries {
  const feature: Cell = { text: key, row, column: key };
  const values: readonly unknown[] = Array.isArray(value) ? value : [value];
  const entries = values.map((one) => ({
    feature,
    value: { text: cellText(one), row, column: key },
    ...(unit ? { otherwise: unit } : {}),
  }));
  return { entries, faults: [] };
}

function itemEntries(
  item: unknown,
  row: number,
  unit: LengthUnit | undefined,
  words: ReadingWords["faults"],
): FoundEntries {
  if (!isKeyed(item)) {
    const text = cellText(item);
    return wrong({ text, row, column: "feature" }, words.badJsonItem(text));
  }
  const cell = (column: string): Cell => ({ text: cellText(field(item, column)), row, column });
  const entry = { feature: cell("feature"), value: cell("value"), unit: cell("unit") };
  return { entries: [unit ? { ...entry, otherwise: unit } : entry], faults: [] };
}

function merged(parts: readonly FoundEntries[]): FoundEntries {
  return {
    entries: parts.flatMap(({ entries }) => entries),
    faults: parts.flatMap(({ faults }) => faults),
  };
}

function wrong(cell: Cell, fault: Fault): FoundEntries {
  return { entries: [], faults: [{ cell, fault }] };
}

/** What stands in a JSON value, as the text of a cell; nothing for null. */
function cellText(value: unknown): string {
  if (value === undefined || value === null) return "";
  if (typeof value === "string") return value;
  try {
    return JSON.stringify(value);
  } catch {
    // JSON nested some thousands deep can be read but not written.
    return "…";
  }
}
