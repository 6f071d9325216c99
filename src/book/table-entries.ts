import type { ReadingWords } from "../reed/reading-catalogue.js";
import { type LengthUnit, parseUnit } from "../reed/units.js";
import { plain } from "./feature-finder.js";
import type { CellFault, ReadingEntry } from "./reading-entry.js";
import type { TableRow, TextTable } from "./text-table.js";

/** Which column holds what, counted from 0. */
interface Columns {
  readonly feature: number;
  readonly value: number;
  readonly unit: number;
  /** The unit that the head of the value column names: `value (in)`. */
  readonly otherwise?: LengthUnit;
  /** With a header, further columns are somebody's notes; without one they are a slip. */
  readonly hasHeader: boolean;
}

const usualColumns: Columns = { feature: 0, value: 1, unit: 2, hasHeader: false };

/**
 * The readings in a table, with or without a header row that names its columns feature, value and unit.
 *
 * Shape   a table, words for what is wrong → entries still to be checked, and cells that are no part of any.
 */
export function tableEntries(
  { rows }: TextTable,
  words: ReadingWords["faults"],
): { entries: ReadingEntry[]; faults: CellFault[] } {
  const [first, ...others] = rows;
  const faults: CellFault[] = [];
  const told: Telling = { words, faults };
  const header = first && readHeader(first, told);
  const columns = header ?? usualColumns;
  const body = header ? others : rows;
  const entries = body.flatMap((row) => rowEntry(row, columns, told));
  return { entries, faults };
}

/** Where faults go, and the words for them. */
interface Telling {
  readonly words: ReadingWords["faults"];
  readonly faults: CellFault[];
}

/** The columns that a first row names; `undefined` if it is no header but a reading. */
function readHeader(row: TableRow, told: Telling): Columns | undefined {
  const names = row.cells.map((cell) => plain(cell.replace(/[([].*$/s, "")).replace(/s$/, ""));
  const [feature, value, unit] = [
    names.indexOf("feature"),
    names.indexOf("value"),
    names.indexOf("unit"),
  ];
  if (feature < 0 && value < 0) return undefined;
  if (feature < 0 || value < 0) {
    told.faults.push({
      cell: { text: row.cells.join(" "), row: row.row, column: 1 },
      fault: told.words.missingColumn(feature < 0 ? "feature" : "value"),
    });
  }
  const otherwise = headerUnit(row, value, told);
  return {
    // With one of the two missing, they are taken to stand side by side.
    feature: feature < 0 ? Math.abs(value - 1) : feature,
    value: value < 0 ? feature + 1 : value,
    unit,
    hasHeader: true,
    ...(otherwise ? { otherwise } : {}),
  };
}

/** The unit in the head of the value column, as in `value (in)`. */
function headerUnit(
  { row, cells }: TableRow,
  value: number,
  { words, faults }: Telling,
): LengthUnit | undefined {
  const text = cells[value] ?? "";
  const named = /[([]([^)\]]*)/.exec(text)?.[1]?.trim() ?? "";
  const unit = parseUnit(named);
  if (named !== "" && !unit) {
    faults.push({ cell: { text, row, column: value + 1 }, fault: words.unknownUnit(named) });
  }
  return unit;
}

function rowEntry(
  { row, cells }: TableRow,
  columns: Columns,
  { words, faults }: Telling,
): ReadingEntry[] {
  const cellAt = (index: number) => ({ text: cells[index] ?? "", row, column: index + 1 });
  if (cells.length === 1) {
    faults.push({ cell: cellAt(0), fault: words.loneCell(cells[0] ?? "") });
    return [];
  }
  cells.forEach((text, index) => {
    if (columns.hasHeader || index <= columns.unit || text.trim() === "") return;
    faults.push({ cell: cellAt(index), fault: words.extraCell(text) });
  });
  const { otherwise } = columns;
  return [
    {
      feature: cellAt(columns.feature),
      value: cellAt(columns.value),
      ...(columns.unit < 0 ? {} : { unit: cellAt(columns.unit) }),
      ...(otherwise ? { otherwise } : {}),
    },
  ];
}
