import type { FeatureId, ReedModel, Values } from "../engine/model.js";
import { english, type Catalogue } from "./catalogue.js";
import { allRoundValue } from "./reading-text.js";
import { targets } from "./targets.js";
import { toThousandths, type LengthUnit } from "./units.js";

/** What can be laid over the triangle. */
export type Layer = "readingLines" | "certainty" | "pulls" | "eachPull" | "reach";

/** The state of a bench: what a link, a lesson step, a saved file and a test fixture hold. */
export interface Bench {
  /** The model's id. */
  readonly model: string;
  /** What the reed is called; empty for the all-round reed. */
  readonly reed: string;
  /** Readings in the model's units, whole thousandths; a feature that is not measured is absent. */
  readonly values: Values;
  readonly locked: readonly FeatureId[];
  /** Whether the recipe follows the point as on a finished reed (cane does not go back). */
  readonly finished: boolean;
  readonly unit: LengthUnit;
  /** Id of the kind of part aimed for; empty for none. */
  readonly target: string;
  readonly layers: readonly Layer[];
}

/** The version of the compact form; another one is refused with a clear word. */
export const benchVersion = 1;

const layerNames: readonly Layer[] = ["readingLines", "certainty", "pulls", "eachPull", "reach"];
const unitNames: readonly LengthUnit[] = ["mm", "in", "thou"];

/** Every feature at the mean of its three corner values, in whole thousandths. */
export function allRoundValues(model: ReedModel): Values {
  return Object.fromEntries(
    model.features.map((feature) => [feature.id, toThousandths(allRoundValue(feature))]),
  );
}

/** The bench that a user meets first. */
export function newBench(model: ReedModel): Bench {
  return {
    model: model.id,
    reed: "",
    values: allRoundValues(model),
    locked: [],
    finished: false,
    unit: "mm",
    target: "",
    layers: ["certainty"],
  };
}

/**
 * A bench as one short text: `v=1&model=bassoon&reed=Bittern&values=27700.15300.…`.
 * Values are whole thousandths in the model's order, `_` where nothing was measured.
 *
 * @example encodeBench(newBench(bassoonModel), bassoonModel).startsWith("v=1&model=bassoon") → true
 */
export function encodeBench(bench: Bench, model: ReedModel): string {
  const cells = model.features.map(({ id }) => {
    const value = bench.values[id];
    return value === undefined ? "_" : String(Math.round(value * 1000));
  });
  const parts = [
    ["v", String(benchVersion)],
    ["model", bench.model],
    ["reed", bench.reed],
    ["values", cells.join(".")],
    ["locked", bench.locked.join(".")],
    ["finished", bench.finished ? "1" : ""],
    ["unit", bench.unit === "mm" ? "" : bench.unit],
    ["target", bench.target],
    ["layers", bench.layers.join(".") || "none"],
  ];
  return parts
    .filter(([, value]) => value !== "")
    .map(([key, value]) => `${key}=${encodeURIComponent(value!)}`)
    .join("&");
}

/**
 * The inverse of `encodeBench`. What cannot be read is told and left as on a new bench; the rest is kept.
 *
 * Shape   text, model, catalogue → a bench and a sentence for every problem.
 * Domain  any text; never throws.
 */
export function decodeBench(
  text: string,
  model: ReedModel,
  words: Catalogue = english,
): { readonly bench: Bench; readonly problems: readonly string[] } {
  const problems: string[] = [];
  const told: Telling = { words: words.linkProblems, problems };
  const fields = splitFields(text, told);
  const fresh = newBench(model);
  const version = fields.get("v");
  if (version !== String(benchVersion)) {
    problems.push(told.words.version(version, benchVersion));
    return { bench: fresh, problems };
  }
  if (fields.get("model") !== model.id) {
    problems.push(told.words.model(fields.get("model"), model.id));
    return { bench: fresh, problems };
  }
  const ids = model.features.map((feature) => feature.id);
  const bench: Bench = {
    model: model.id,
    reed: (fields.get("reed") ?? "").slice(0, 80),
    values: readValues(fields.get("values"), model, told),
    locked: readNames(fields.get("locked"), ids, "locked", told),
    finished: readFlag(fields.get("finished"), told),
    unit: readNames(fields.get("unit"), unitNames, "unit", told)[0] ?? "mm",
    target:
      readNames(
        fields.get("target"),
        targets.map(({ id }) => id),
        "target",
        told,
      )[0] ?? "",
    layers: readLayers(fields.get("layers"), told),
  };
  return { bench, problems };
}

/** Where problems go, and the words for them. */
interface Telling {
  readonly words: Catalogue["linkProblems"];
  readonly problems: string[];
}

function splitFields(text: string, { words, problems }: Telling): Map<string, string> {
  const fields = new Map<string, string>();
  for (const part of text.replace(/^#/, "").split("&")) {
    const [key = "", ...rest] = part.split("=");
    try {
      fields.set(key, decodeURIComponent(rest.join("=")));
    } catch {
      problems.push(words.encoding(key, rest.join("=")));
    }
  }
  return fields;
}

function readValues(
  cells: string | undefined,
  model: ReedModel,
  { words, problems }: Telling,
): Values {
  if (cells === undefined) return allRoundValues(model);
  const parts = cells.split(".");
  if (parts.length !== model.features.length) {
    problems.push(words.cellCount(parts.length, model.features.length));
    return allRoundValues(model);
  }
  const values: Record<FeatureId, number> = {};
  model.features.forEach(({ id }, i) => {
    const cell = parts[i]!;
    if (cell === "_") return;
    if (/^-?\d{1,7}$/.test(cell)) values[id] = Number(cell) / 1000;
    else problems.push(words.value(id, cell));
  });
  return values;
}

function readNames<T extends string>(
  text: string | undefined,
  allowed: readonly T[],
  field: string,
  { words, problems }: Telling,
): T[] {
  const names = (text ?? "").split(".").filter((name) => name !== "");
  return [...new Set(names)].filter((name): name is T => {
    const known = (allowed as readonly string[]).includes(name);
    if (!known) problems.push(words.name(field, name, allowed));
    return known;
  });
}

function readFlag(text: string | undefined, { words, problems }: Telling): boolean {
  if (text !== undefined && text !== "1" && text !== "0") {
    problems.push(words.finished(text));
  }
  return text === "1";
}

function readLayers(text: string | undefined, told: Telling): readonly Layer[] {
  if (text === undefined) return ["certainty"];
  return text === "none" ? [] : readNames(text, layerNames, "layers", told);
}
