import { dsvFormat } from "d3";

/** A record of a text table: its cells, and the line it begins on, counted from 1. */
export interface TableRow {
  readonly row: number;
  readonly cells: readonly string[];
}

/** A text as a table. */
export interface TextTable {
  readonly delimiter: string;
  readonly rows: readonly TableRow[];
}

const delimiters = ["\t", ";", ","] as const;
type Delimiter = (typeof delimiters)[number];

/** No cell of a table of readings runs over more lines than this; an open quote that does is a slip. */
const longestCell = 50;

/**
 * A pasted text or a file as a table, without blank lines and lines that begin with #.
 *
 * The delimiter is the first of tab, semicolon and comma that stands in at least half of the lines. A quoted
 * cell may run over several lines; a quote that is never closed counts as a slip of its own line only, and a
 * quote that is a whole cell is an inch mark.
 *
 * Shape   any text → delimiter and rows, each with the number of its first line.
 *
 * @example textTable("a;1\n\n# note\nb;2").rows → [{ row: 1, cells: ["a", "1"] }, { row: 4, cells: ["b", "2"] }]
 */
export function textTable(text: string): TextTable {
  const written = text.split(/\r\n|\n|\r/);
  const delimiter = findDelimiter(written.filter((line) => !isIgnored(line)));
  const lines = written.map((line) =>
    line.replace(new RegExp(`(${delimiter})"(?=${delimiter}|$)`, "g"), "$1″"),
  );
  const { parseRows } = dsvFormat(delimiter);
  const rows: TableRow[] = [];
  for (let first = 0; first < lines.length;) {
    const next = isIgnored(lines[first] ?? "") ? first + 1 : recordEnd(lines, first, delimiter);
    const record = lines.slice(first, next).join("\n");
    const cells = isIgnored(record) ? [] : (parseRows(closed(record, delimiter))[0] ?? []);
    if (cells.some((cell) => cell.trim() !== "")) rows.push({ row: first + 1, cells });
    first = next;
  }
  return { delimiter, rows };
}

function isIgnored(line: string): boolean {
  return /^\s*(?:#|$)/.test(line);
}

function findDelimiter(lines: readonly string[]): Delimiter {
  const counts = delimiters.map((delimiter) => ({
    delimiter,
    count: lines.filter((line) => line.includes(delimiter)).length,
  }));
  const most = counts.toSorted((a, b) => b.count - a.count)[0];
  const usual = counts.find(({ count }) => count > 0 && count >= lines.length / 2);
  return (usual ?? most)?.delimiter ?? ",";
}

/** The line behind the record that begins at `first`. */
function recordEnd(lines: readonly string[], first: number, delimiter: Delimiter): number {
  for (let end = first + 1; end <= Math.min(lines.length, first + longestCell); end += 1) {
    if (!hasOpenQuote(lines.slice(first, end).join("\n"), delimiter)) return end;
  }
  return first + 1;
}

function hasOpenQuote(record: string, delimiter: Delimiter): boolean {
  const withoutQuoted = record.replace(
    new RegExp(`(^|${delimiter})"[^"]*(?:""[^"]*)*"(?=${delimiter}|$)`, "g"),
    "$1",
  );
  return new RegExp(`(?:^|${delimiter})"`).test(withoutQuoted);
}

/** A record whose quote never closes, without the quotes that open a cell. */
function closed(record: string, delimiter: Delimiter): string {
  return hasOpenQuote(record, delimiter)
    ? record.replace(new RegExp(`(^|${delimiter})"`, "g"), "$1")
    : record;
}
