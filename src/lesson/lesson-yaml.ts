import {
  isMap,
  isNode,
  isScalar,
  isSeq,
  LineCounter,
  parseDocument,
  visit,
  type Document,
} from "yaml";
import { pathText, type Keys } from "../reed/problem-at.js";
import { lessonWords } from "../reed/lesson-words.js";
import type { TextPlace } from "./lesson.js";

/** Where a field begins: its name, and its value. */
interface FieldPlace {
  readonly key: TextPlace;
  readonly value: TextPlace;
}

/** A piece of YAML as plain data, with the place of every field, and what the reader could not make out. */
export interface ReadYaml {
  /** `undefined` when there are faults. */
  readonly data: unknown;
  readonly places: ReadonlyMap<string, FieldPlace>;
  readonly faults: readonly { readonly place: TextPlace; readonly message: string }[];
}

/**
 * Reads a piece of YAML that stands somewhere in a file. Links inside it (anchors) are refused: a few bytes of them
 * can stand for more data than any machine holds.
 *
 * Shape   text, the place of its first letter in the file → data, places, faults. Never throws.
 *
 * @example readYaml("ask: Where?", { line: 1, column: 1 }).data → { ask: "Where?" }
 */
export function readYaml(text: string, at: TextPlace): ReadYaml {
  try {
    if (isDeep(text)) throw new RangeError(tooDeep);
    return readNested(text, at);
  } catch (error) {
    // The reader goes as deep as the text does, and a text of brackets alone goes deeper than any stack.
    return { data: undefined, places: new Map(), faults: [{ place: at, message: toldOf(error) }] };
  }
}

const tooDeep = "it is nested too deeply";

/** More brackets within brackets than any block needs; in a text between quotes they hardly pile up. */
const deepest = 50;

function isDeep(text: string): boolean {
  let depth = 0;
  for (const letter of text) {
    if (letter === "[" || letter === "{") depth += 1;
    else if ((letter === "]" || letter === "}") && depth > 0) depth -= 1;
    if (depth > deepest) return true;
  }
  return false;
}

function toldOf(error: unknown): string {
  const message = error instanceof Error ? error.message : String(error);
  return /call stack|recursion/i.test(message) ? tooDeep : message;
}

function readNested(text: string, at: TextPlace): ReadYaml {
  const counter = new LineCounter();
  const document = parseDocument(text, {
    lineCounter: counter,
    schema: "core",
    logLevel: "silent",
  });
  const placeOf = (offset: number): TextPlace => {
    const { line, col } = counter.linePos(offset);
    return { line: at.line + line - 1, column: col + at.column - 1 };
  };
  const told = [...document.errors, ...document.warnings].map(({ message, pos, code }) => ({
    place: placeOf(pos[0]),
    message:
      code === "BLOCK_AS_IMPLICIT_KEY"
        ? lessonWords.colon
        : toldOf((message.split("\n")[0] ?? "").replace(/ at line \d+, column \d+:?$/, "")),
  }));
  const faults = [...told, ...aliasFaults(document, placeOf)];
  const places = new Map<string, FieldPlace>([["", { key: at, value: at }]]);
  notePlaces(document.contents, [], placeOf, places);
  if (faults.length > 0) return { data: undefined, places, faults };
  return { places, ...plainData(document, at) };
}

function aliasFaults(
  document: Document,
  placeOf: (offset: number) => TextPlace,
): ReadYaml["faults"] {
  const faults: { place: TextPlace; message: string }[] = [];
  visit(document, {
    Alias: (_key, { source, range }) => {
      faults.push({
        place: placeOf(range?.[0] ?? 0),
        message: `*${source} stands for another value`,
      });
    },
  });
  return faults;
}

function plainData(document: Document, at: TextPlace): Pick<ReadYaml, "data" | "faults"> {
  try {
    return { data: document.toJS({ maxAliasCount: 0 }) as unknown, faults: [] };
  } catch (error) {
    return { data: undefined, faults: [{ place: at, message: toldOf(error) }] };
  }
}

function notePlaces(
  node: unknown,
  keys: Keys,
  placeOf: (offset: number) => TextPlace,
  places: Map<string, FieldPlace>,
): void {
  const startOf = (one: unknown): TextPlace | undefined =>
    isNode(one) && one.range ? placeOf(one.range[0]) : undefined;
  const note = (one: unknown, key: string | number, keyNode: unknown): void => {
    const path = [...keys, key];
    const keyPlace = startOf(keyNode) ?? { line: 1, column: 1 };
    const empty = one === null || (isScalar(one) && one.value === null);
    places.set(pathText(path), {
      key: keyPlace,
      value: (empty ? undefined : startOf(one)) ?? keyPlace,
    });
    notePlaces(one, path, placeOf, places);
  };
  if (isMap(node)) {
    for (const { key, value } of node.items) {
      note(value, String(isScalar(key) ? key.value : key), key);
    }
  } else if (isSeq(node)) {
    node.items.forEach((item, index) => note(item, index, item));
  }
}
