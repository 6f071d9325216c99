import type { Feature, FeatureId, ReedModel, Values } from "../engine/model.js";
import type { Catalogue } from "./catalogue.js";
import type { Tried } from "./tried.js";

/** Where problems go, and the words for them. */
export interface Telling {
  readonly words: Catalogue["linkProblems"];
  readonly problems: string[];
}

/** Values in whole thousandths, in the model's order, `_` where nothing was measured. */
export function encodeValues(values: Values, model: ReedModel): string {
  return model.features
    .map(({ id }) => (values[id] === undefined ? "_" : String(Math.round(values[id] * 1000))))
    .join(".");
}

/** What is tried, in the model's order: `_` as the reed has it, `x` left out. */
export function encodeTried(tried: Tried, model: ReedModel): string {
  const cell = (value: number | null | undefined): string => {
    if (value === undefined) return "_";
    return value === null ? "x" : String(Math.round(value * 1000));
  };
  return model.features.map(({ id }) => cell(tried[id])).join(".");
}

/** The inverse of `encodeTried`; nothing is tried when there are not as many cells as features. */
export function decodeTried(
  cells: string,
  field: string,
  model: ReedModel,
  telling: Telling,
): Tried {
  const parts = cells.split(".");
  const values = parts.map((cell) => (cell === "x" ? "_" : cell)).join(".");
  const numbers = decodeValues(values, field, model, telling);
  if (!numbers) return {};
  const left = model.features.filter((_, i) => parts[i] === "x").map(({ id }) => [id, null]);
  return { ...numbers, ...(Object.fromEntries(left) as Tried) };
}

/** The inverse of `encodeValues`; undefined when there are not as many cells as features: then nobody knows which is which. */
export function decodeValues(
  cells: string,
  field: string,
  model: ReedModel,
  { words, problems }: Telling,
): Values | undefined {
  const parts = cells.split(".");
  if (parts.length !== model.features.length) {
    problems.push(words.cellCount(field, parts.length, model.features.length));
    return undefined;
  }
  const values: Record<FeatureId, number> = {};
  model.features.forEach((feature, i) => {
    const cell = parts[i]!;
    if (cell === "_") return;
    const value = /^-?\d{1,7}$/.test(cell) ? Number(cell) / 1000 : undefined;
    if (value === undefined) problems.push(words.value(field, feature.id, cell));
    else if (isPossible(feature, value)) values[feature.id] = value;
    else problems.push(words.impossible(field, feature.id, value, feature.min, feature.max));
  });
  return values;
}

/** A link may hold what was kept on purpose, but no blade of nothing and none as long as an arm. */
export function isPossible({ min, max }: Feature, value: number): boolean {
  return value <= 10 * max && (min > 0 ? value > 0 : value >= Math.min(0, min) - max);
}
