import { type LengthUnit, parseUnit } from "../reed/units.js";
import { plain } from "./feature-names.js";
import type { CellFault, ReadingEntry } from "./reading-entry.js";
import { quoted } from "./reading-problem.js";
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

const columnsAllowed = "the columns feature, value and, if need be, unit";

/**
 * The readings in a table, with or without a header row that names its columns feature, value and unit.
 *
 * Shape   a table → entries still to be checked, and cells that are no part of any.
 */
export function tableEntries({ rows }: TextTable): {
  entries: ReadingEntry[];
  faults: CellFault[];
} {
  const [first, ...others] = rows;
  const faults: CellFault[] = [];
  const header = first && readHeader(first, faults);
  const columns = header ?? usualColumns;
  const body = header ? others : rows;
  const entries = body.flatMap((row) => rowEntry(row, columns, faults));
  return { entries, faults };
}

/** The columns that a first row names; `undefined` if it is no header but a reading. */
function readHeader(row: TableRow, faults: CellFault[]): Columns | undefined {
  const names = row.cells.map((cell) => plain(cell.replace(/[([].*$/s, "")).replace(/s$/, ""));
  const [feature, value, unit] = [
    names.indexOf("feature"),
    names.indexOf("value"),
    names.indexOf("unit"),
  ];
  if (feature < 0 && value < 0) return undefined;
  if (feature < 0 || value < 0) {
    const why = `the header names no column “${feature < 0 ? "feature" : "value"}”`;
    faults.push({
      cell: { text: row.cells.join(" "), row: row.row, column: 1 },
      fault: { why, allowed: columnsAllowed },
    });
  }
  const otherwise = headerUnit(row, value, faults);
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
  faults: CellFault[],
): LengthUnit | undefined {
  const text = cells[value] ?? "";
  const named = /[([]([^)\]]*)/.exec(text)?.[1]?.trim() ?? "";
  const unit = parseUnit(named);
  if (named !== "" && !unit) {
    const fault = { why: `${quoted(named)} is no unit of length`, allowed: "mm, in or thou" };
    faults.push({ cell: { text, row, column: value + 1 }, fault });
  }
  return unit;
}

function rowEntry({ row, cells }: TableRow, columns: Columns, faults: CellFault[]): ReadingEntry[] {
  const cellAt = (index: number) => ({ text: cells[index] ?? "", row, column: index + 1 });
  if (cells.length === 1) {
    const why = `${quoted(cells[0] ?? "")} stands alone in its row`;
    faults.push({
      cell: cellAt(0),
      fault: { why, allowed: `${columnsAllowed}, parted by tab, semicolon or comma` },
    });
    return [];
  }
  cells.forEach((text, index) => {
    if (columns.hasHeader || index <= columns.unit || text.trim() === "") return;
    faults.push({
      cell: cellAt(index),
      fault: { why: `${quoted(text)} is one column too many`, allowed: columnsAllowed },
    });
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
