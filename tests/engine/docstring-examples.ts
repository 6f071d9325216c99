import { readdirSync, readFileSync } from "node:fs";

/** One `@example` of a docstring, as one line. */
export interface Example {
  readonly file: string;
  readonly text: string;
}

const source = new URL("../../src/", import.meta.url);

/** Every `@example` of the files of one room: up to the next tag, a blank line or the end of the docstring. */
export function examplesOf(room: string): Example[] {
  const folder = new URL(`${room}/`, source);
  const files = readdirSync(folder).filter((file) => file.endsWith(".ts"));
  return files.flatMap((file) => examplesIn(readFileSync(new URL(file, folder), "utf8"), file));
}

export function examplesIn(code: string, file: string): Example[] {
  const docstrings = code.match(/\/\*\*[\s\S]*?\*\//g) ?? [];
  return docstrings.flatMap((docstring) => {
    const lines = docstring
      .replace(/^\/\*\*|\*\/$/g, "")
      .split("\n")
      .map((line) => line.replace(/^\s*\* ?/, "").trim());
    return lines.flatMap((line, i) => {
      if (!line.startsWith("@example")) return [];
      const rest = lines.slice(i + 1);
      const end = rest.findIndex((next) => next === "" || next.startsWith("@"));
      const text = [line.slice("@example".length), ...rest.slice(0, end < 0 ? rest.length : end)];
      return [{ file, text: text.join(" ").trim() }];
    });
  });
}
