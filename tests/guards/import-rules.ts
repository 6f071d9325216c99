import { parseSync } from "vite";

/** Rooms from left to right; an import points left or stays at home. Rooms of one row do not know each other. */
const rows = [
  ["engine", "acoustics"],
  ["reed"],
  ["lesson", "book"],
  ["drawing"],
  ["widgets"],
  ["scorm"],
  ["app", "lib"],
  ["embed"],
];

/** The first row of rooms that may use a package. A package that stands nowhere here is refused until it does. */
const packageRows: Readonly<Record<string, string>> = {
  valibot: "reed",
  yaml: "lesson",
  micromark: "lesson",
  d3: "drawing",
  lit: "widgets",
  idb: "app",
  fflate: "scorm",
};

/** The reader and writer of separated values: the one part of d3 that the reed book may use. */
const separatedValues =
  /^(csv|tsv)(Parse|ParseRows|Format|FormatBody|FormatRows|FormatRow|FormatValue)$|^(dsvFormat|autoType)$/;

const refusedNames = ["index", "utils", "helpers", "common", "types", "misc"];

export interface ImportRecord {
  readonly from: string;
  /** Names taken from the module; undefined when the whole module is taken. */
  readonly names: readonly string[] | undefined;
}

const rowOf = (room: string): number => rows.findIndex((row) => row.includes(room));
const isRelative = (specifier: string): boolean => /^\.{1,2}\//.test(specifier);

const packageOf = (specifier: string): string =>
  specifier
    .split("/")
    .slice(0, specifier.startsWith("@") ? 2 : 1)
    .join("/");

/** Every import, re-export and `import()` of a source text, types included. */
export function readImports(file: string, source: string): ImportRecord[] {
  const { module, errors } = parseSync(file, source);
  if (errors.length > 0) throw new SyntaxError(`${file}: ${errors[0]?.message}`);
  const whole = (names: readonly (string | null | undefined)[]) =>
    names.some((name) => name === null || name === undefined) ? undefined : (names as string[]);
  const taken = module.staticImports.map((found) => ({
    from: found.moduleRequest.value,
    names: whole(found.entries.map((entry) => entry.importName.name)),
  }));
  const passedOn = module.staticExports.flatMap((found) =>
    found.entries.flatMap((entry) =>
      entry.moduleRequest === null
        ? []
        : [{ from: entry.moduleRequest.value, names: whole([entry.importName.name]) }],
    ),
  );
  const later = module.dynamicImports.map(({ moduleRequest: { start, end } }) => ({
    from: source.slice(start, end).replace(/^["'`]|["'`]$/g, ""),
    names: undefined,
  }));
  return [...taken, ...passedOn, ...later];
}

function relativeProblem(file: string, room: string, specifier: string): string | undefined {
  if (!/\.(js|json|css)(\?\w+)?$/.test(specifier)) {
    return `${file}: "${specifier}" needs its ending (.js for a module)`;
  }
  const path = new URL(specifier, `file:///${file}`).pathname.slice(1);
  const target = /^src\/([^/]+)\//.exec(path)?.[1];
  if (target === undefined || rowOf(target) < 0) return `${file}: "${specifier}" lies in no room`;
  if (target === room || rowOf(target) < rowOf(room)) return undefined;
  return `${file}: "${specifier}" points right or sideways: ${room} must not know ${target}`;
}

function packageProblem(file: string, room: string, found: ImportRecord): string | undefined {
  const name = packageOf(found.from);
  if (rowOf(room) === 0) return `${file}: ${room} imports no package, but "${found.from}"`;
  if (
    name === "d3" &&
    room === "book" &&
    found.names?.every((part) => separatedValues.test(part))
  ) {
    return undefined;
  }
  const first = packageRows[name];
  if (first === undefined) return `${file}: no room may use the package "${found.from}" yet`;
  if (rowOf(room) >= rowOf(first)) return undefined;
  return `${file}: ${name} is for ${first} and the rooms right of it, not for ${room}`;
}

/** Why each of a file's imports is refused; empty when all may stay. `file` is its path from the top, with slashes. */
export function importProblems(file: string, imports: readonly ImportRecord[]): string[] {
  const room = /^src\/([^/]+)\//.exec(file)?.[1];
  if (room === undefined || rowOf(room) < 0) return [`${file}: lies in no room`];
  return imports.flatMap(
    (found) =>
      (isRelative(found.from)
        ? relativeProblem(file, room, found.from)
        : packageProblem(file, room, found)) ?? [],
  );
}

/** Why a path is refused for its name; empty when it may stay. */
export function nameProblems(file: string): string[] {
  const refused = file
    .split("/")
    .map((part) => part.split(".")[0] ?? "")
    .filter((part) => refusedNames.includes(part));
  return refused.map((part) => `${file}: "${part}" does not say what is inside`);
}

/** Why a file of `src/lib` is refused: a door re-exports and does nothing else. */
export function doorProblems(file: string, source: string): string[] {
  const isReexport = ({ type, ...rest }: { type: string; source?: unknown }): boolean =>
    type === "ExportAllDeclaration" || (type === "ExportNamedDeclaration" && rest.source !== null);
  return parseSync(file, source)
    .program.body.filter((statement) => !isReexport(statement))
    .map((statement) => `${file}: a door only re-exports, but holds a ${statement.type}`);
}

/** Entries of the top level that a visitor may see. */
const visible = [
  "package.json",
  "package-lock.json",
  "tsconfig.json",
  "vite.config.ts",
  "index.html",
  "src",
  "lessons",
  "tests",
  "README.md",
  "DEVELOPERS.md",
  "LICENSE",
];

/** Top-level entries that belong elsewhere; what git ignores by name is not looked at. */
export function topLevelProblems(entries: readonly string[], ignored: readonly string[]): string[] {
  return entries.filter(
    (entry) => !entry.startsWith(".") && !visible.includes(entry) && !ignored.includes(entry),
  );
}
