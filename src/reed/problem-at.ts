import type { Problem } from "./model-error.js";
import { field } from "./unknown-field.js";

/** The keys and indices that lead from the top of a file to a place in it. */
export type Keys = readonly (string | number)[];

/** Notes a problem at a place: what stands there, and what may. */
export type AddProblem = (keys: Keys, found: unknown, allowed: string) => void;

/** What an entry of a list in a file is called in a sentence. */
const entryNames: Readonly<Record<string, string>> = {
  features: "Feature",
  groups: "Group",
  ratios: "Ratio",
  purposes: "Purpose",
  actions: "Action",
  qualities: "Quality",
  symptoms: "Symptom",
};

const longestShown = 60;

/**
 * A place in a file as text.
 *
 * @example pathText(["features", 3, "corners", "high"]) → "features[3].corners.high"
 */
export function pathText(keys: Keys): string {
  return keys.reduce<string>((path, key) => {
    if (typeof key === "number") return `${path}[${key}]`;
    if (!/^[A-Za-z_$][\w$-]*$/.test(key)) return `${path}[${JSON.stringify(key)}]`;
    return path === "" ? key : `${path}.${key}`;
  }, "");
}

/**
 * A problem with its sentence.
 *
 * Shape   the whole file, what it is called, the place, what stands there, what may → one problem.
 *
 * @example problemAt({}, "model", ["id"], 5, "a text").message → "id is 5, but must be a text."
 */
export function problemAt(
  file: unknown,
  what: string,
  keys: Keys,
  found: unknown,
  allowed: string,
): Problem {
  const state = found === undefined ? "is missing" : `is ${shown(found)}`;
  const message = `${subject(file, what, keys)} ${state}, but must be ${allowed}.`;
  return { path: pathText(keys), found, allowed, message };
}

/** Who the sentence is about: `Feature heart: corners.high`. */
function subject(file: unknown, what: string, keys: Keys): string {
  if (keys.length === 0) return `The ${what}`;
  const [list, index, ...rest] = keys;
  const name =
    typeof list === "string" && Object.hasOwn(entryNames, list) ? entryNames[list] : undefined;
  const entries = field(file, String(list));
  if (name === undefined || typeof index !== "number" || !Array.isArray(entries))
    return pathText(keys);
  const id = field(entries[index], "id");
  if (typeof id !== "string") return pathText(keys);
  return rest.length === 0
    ? `${name} ${shortened(id)}`
    : `${name} ${shortened(id)}: ${pathText(rest)}`;
}

/** A value as a sentence can carry it. */
function shown(value: unknown): string {
  if (typeof value === "number") return String(value);
  try {
    return shortened(JSON.stringify(value) ?? typeof value);
  } catch {
    // Circular or too deep for JSON: only an object built by a program can be so.
    return "an object";
  }
}

function shortened(text: string): string {
  return text.length > longestShown ? `${text.slice(0, longestShown - 1)}…` : text;
}
