import { wholeThousandths } from "../app/moment.js";
import type { Blend } from "../engine/blend.js";
import { compileModel } from "../engine/compile.js";
import type { FeatureId, ReedModel, Values } from "../engine/model.js";
import { bassoonModel } from "../reed/bassoon.js";
import { demoNamed, demoReadings } from "../reed/demo-readings.js";
import { layerNames, type Layer } from "../reed/layer-names.js";
import { targetPlaces } from "../reed/target-places.js";
import { toThousandths } from "../reed/units.js";
import { isPossible } from "../reed/value-cells.js";
import { warnOnce } from "./warn-once.js";

/** What a page says as text; what it has not said, or has taken back, is as it was before it said anything. */
export function given(value: unknown, otherwise = ""): string {
  if (value === null || value === undefined) return otherwise;
  // oxlint-disable-next-line typescript/no-base-to-string -- a page may set anything, and then sees what it has set
  return String(value);
}

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
export function readReed(name: unknown): string | undefined {
  const wanted = given(name).trim();
  if (wanted === "") return undefined;
  const found = demoNamed(wanted);
  const all = Object.keys(demoReadings).join(", ");
  if (!found) warnOnce(`reed: “${wanted}” is not known; allowed: ${all}, or nothing`);
  return found;
}

/** Layers by name; "none" or nothing: the triangle alone. */
export function readLayers(layers: unknown): readonly Layer[] {
  const text = given(layers, "certainty");
  return text.trim() === "none" ? [] : known(text, "layers", layerNames);
}

/** Features by id. */
export function readFeatures(
  text: unknown,
  attribute: "features" | "locked",
  model: ReedModel,
): readonly FeatureId[] {
  const ids = model.features.map(({ id }) => id);
  return known(given(text), attribute, ids);
}

/** A kind of part by its id, or three shares in per cent: a target of one's own. */
export function readTarget(text: unknown): { readonly target: string; readonly aim?: Blend } {
  const wanted = given(text).trim();
  if (wanted === "" || targetPlaces.some(({ id }) => id === wanted)) return { target: wanted };
  const shares = names(wanted).map(Number);
  const sum = shares.reduce((all, one) => all + one, 0);
  if (shares.length === 3 && sum > 0 && sum < Infinity && shares.every((one) => one >= 0)) {
    const [high, low, loud] = shares.map((one) => one / sum);
    return { target: "own", aim: wholeThousandths([high!, low!, loud!]) };
  }
  const ids = targetPlaces.map(({ id }) => id).join(", ");
  warnOnce(`target: “${wanted}” is not known; allowed: ${ids}, or three shares such as 20 50 30`);
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
    else if (typeof value !== "number" || !isPossible(feature, value))
      warnOnce(
        `values: ${id} is ${JSON.stringify(value)}; allowed: a number, as a rule ${feature.min} to ${feature.max}`,
      );
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
export function readModelOf(model: ReedModel | string | null | undefined): ReedModel {
  if (!model || model === bassoonModel.id) return bassoonModel;
  try {
    if (typeof model === "string") throw new TypeError(`“${model}” is not known`);
    compileModel(model);
    return model;
  } catch (cause) {
    warnOnce(`model: ${(cause as Error).message}; the model ${bassoonModel.id} is taken`);
    return bassoonModel;
  }
}
