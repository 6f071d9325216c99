import type { FeatureId, ReedModel, Values } from "../engine/model.js";
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
 * Shape   text, model → a bench and a sentence for every problem.
 * Domain  any text; never throws.
 */
export function decodeBench(
  text: string,
  model: ReedModel,
): { readonly bench: Bench; readonly problems: readonly string[] } {
  const problems: string[] = [];
  const fields = splitFields(text, problems);
  const fresh = newBench(model);
  const version = fields.get("v");
  if (version !== String(benchVersion)) {
    problems.push(`version is ${quoted(version)}; allowed: ${benchVersion}.`);
    return { bench: fresh, problems };
  }
  if (fields.get("model") !== model.id) {
    problems.push(`model is ${quoted(fields.get("model"))}; allowed: "${model.id}".`);
    return { bench: fresh, problems };
  }
  const ids = model.features.map((feature) => feature.id);
  const bench: Bench = {
    model: model.id,
    reed: (fields.get("reed") ?? "").slice(0, 80),
    values: readValues(fields.get("values"), model, problems),
    locked: readNames(fields.get("locked"), ids, "locked", problems),
    finished: readFlag(fields.get("finished"), problems),
    unit: readNames(fields.get("unit"), unitNames, "unit", problems)[0] ?? "mm",
    target:
      readNames(
        fields.get("target"),
        targets.map(({ id }) => id),
        "target",
        problems,
      )[0] ?? "",
    layers: readLayers(fields.get("layers"), problems),
  };
  return { bench, problems };
}

function quoted(value: string | undefined): string {
  return value === undefined ? "missing" : JSON.stringify(value);
}

function splitFields(text: string, problems: string[]): Map<string, string> {
  const fields = new Map<string, string>();
  for (const part of text.replace(/^#/, "").split("&")) {
    const [key = "", ...rest] = part.split("=");
    try {
      fields.set(key, decodeURIComponent(rest.join("=")));
    } catch {
      problems.push(`${key} is "${rest.join("=")}"; allowed: text in URL encoding.`);
    }
  }
  return fields;
}

function readValues(cells: string | undefined, model: ReedModel, problems: string[]): Values {
  if (cells === undefined) return allRoundValues(model);
  const parts = cells.split(".");
  if (parts.length !== model.features.length) {
    problems.push(
      `values has ${parts.length} cells; allowed: ${model.features.length}, one a feature.`,
    );
    return allRoundValues(model);
  }
  const values: Record<FeatureId, number> = {};
  model.features.forEach(({ id }, i) => {
    const cell = parts[i]!;
    if (cell === "_") return;
    if (/^-?\d{1,7}$/.test(cell)) values[id] = Number(cell) / 1000;
    else
      problems.push(
        `values, ${id} is "${cell}"; allowed: whole thousandths, or _ where nothing was measured.`,
      );
  });
  return values;
}

function readNames<T extends string>(
  text: string | undefined,
  allowed: readonly T[],
  field: string,
  problems: string[],
): T[] {
  const names = (text ?? "").split(".").filter((name) => name !== "");
  return [...new Set(names)].filter((name): name is T => {
    const known = (allowed as readonly string[]).includes(name);
    if (!known) problems.push(`${field} names "${name}"; allowed: ${allowed.join(", ")}.`);
    return known;
  });
}

function readFlag(text: string | undefined, problems: string[]): boolean {
  if (text !== undefined && text !== "1" && text !== "0") {
    problems.push(`finished is "${text}"; allowed: 1 or 0.`);
  }
  return text === "1";
}

function readLayers(text: string | undefined, problems: string[]): readonly Layer[] {
  if (text === undefined) return ["certainty"];
  return text === "none" ? [] : readNames(text, layerNames, "layers", problems);
}
