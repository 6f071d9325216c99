import type { Blend } from "../engine/blend.js";
import { compileModel } from "../engine/compile.js";
import type { FeatureId, ReedModel, Values } from "../engine/model.js";
import { bassoonModel } from "../reed/bassoon.js";
import { demoReadings } from "../reed/demo-readings.js";
import { layerNames, type Layer } from "../reed/layer-names.js";
import { targetPlaces } from "../reed/target-places.js";
import { toThousandths } from "../reed/units.js";
import { warnOnce } from "./warn-once.js";

/** Names in an attribute, with blanks or commas between them. */
function names(text: string): string[] {
  return text.split(/[\s,]+/).filter((name) => name !== "");
}

function known<T extends string>(
  text: string,
  attribute: string,
  allowed: readonly T[],
): readonly T[] {
  return [...new Set(names(text))].filter((name): name is T => {
    const is = (allowed as readonly string[]).includes(name);
    if (!is) warnOnce(`${attribute}: “${name}” is not known; allowed: ${allowed.join(", ")}`);
    return is;
  });
}

/** The name of a demo reed as it is written; undefined for the all-round reed, and for a name nobody knows. */
export function readReed(name: string): string | undefined {
  const wanted = name.trim().toLowerCase();
  if (wanted === "") return undefined;
  const all = Object.keys(demoReadings);
  const found = all.find((reed) => reed.toLowerCase() === wanted);
  if (!found) warnOnce(`reed: “${name}” is not known; allowed: ${all.join(", ")}, or nothing`);
  return found;
}

/** Layers by name; "none" or nothing: the triangle alone. */
export function readLayers(text: string): readonly Layer[] {
  return text.trim() === "none" ? [] : known(text, "layers", layerNames);
}

/** Features by id. */
export function readFeatures(
  text: string,
  attribute: "features" | "locked",
  model: ReedModel,
): readonly FeatureId[] {
  const ids = model.features.map(({ id }) => id);
  return known(text, attribute, ids);
}

/** A kind of part by its id, or three shares in per cent: a target of one's own. */
export function readTarget(text: string): { readonly target: string; readonly aim?: Blend } {
  const wanted = text.trim();
  if (wanted === "" || targetPlaces.some(({ id }) => id === wanted)) return { target: wanted };
  const shares = names(wanted).map(Number);
  const sum = shares.reduce((all, one) => all + one, 0);
  if (shares.length === 3 && sum > 0 && shares.every((one) => one >= 0 && Number.isFinite(one))) {
    const [high, low] = shares.map((one) => Math.round((1000 * one) / sum));
    return { target: "own", aim: [high! / 1000, low! / 1000, (1000 - high! - low!) / 1000] };
  }
  const ids = targetPlaces.map(({ id }) => id).join(", ");
  warnOnce(`target: “${text}” is not known; allowed: ${ids}, or three shares such as 20 50 30`);
  return { target: "" };
}

/** Readings by feature, in the model's units and whole thousandths; what is no reading is left out and told. */
export function readValues(data: unknown, model: ReedModel): Values | undefined {
  if (typeof data !== "object" || data === null || Array.isArray(data)) {
    warnOnce('values: not an object of readings such as {"bladeLength": 27.7, "tip": 0.6}');
    return undefined;
  }
  const read: Record<FeatureId, number> = {};
  for (const [id, value] of Object.entries(data)) {
    const feature = model.features.find((one) => one.id === id);
    if (!feature) warnOnce(`values: “${id}” is no feature of the model ${model.id}`);
    else if (typeof value !== "number" || !(Math.abs(value) < 1e4))
      warnOnce(`values: ${id} is ${JSON.stringify(value)}; allowed: a number`);
    else read[id] = toThousandths(value);
  }
  return read;
}

/** The text of an attribute as JSON; undefined, and told, where it is none. */
export function readJson(text: string, attribute: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    warnOnce(`${attribute}: “${text.slice(0, 40)}” is not JSON`);
    return undefined;
  }
}

/** The model that a page names or gives. A model that cannot be compiled is refused; the bassoon model stays. */
export function readModelOf(model: ReedModel | string | null): ReedModel {
  if (model === null || model === "" || model === bassoonModel.id) return bassoonModel;
  try {
    if (typeof model === "string") throw new TypeError(`“${model}” is not known`);
    compileModel(model);
    return model;
  } catch (cause) {
    warnOnce(`model: ${(cause as Error).message}; the model ${bassoonModel.id} is taken`);
    return bassoonModel;
  }
}
