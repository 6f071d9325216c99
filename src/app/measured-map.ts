import { compileModel, type BlendMap } from "../engine/compile.js";
import type { FeatureId, ReedModel, Values } from "../engine/model.js";

// A drag asks for the same map at every move: the last one is kept.
let last:
  | { readonly model: ReedModel; readonly key: string; readonly map: BlendMap | undefined }
  | undefined;

/** The map for the features that were measured; undefined when they cannot tell the purposes apart. */
export function mapFor(model: ReedModel, values: Values): BlendMap | undefined {
  const measured = model.features.map(({ id }) => id).filter((id) => values[id] !== undefined);
  const key = measured.join(" ");
  if (last?.model !== model || last.key !== key)
    last = { model, key, map: compileOrNot(model, measured) };
  return last.map;
}

function compileOrNot(model: ReedModel, features: readonly FeatureId[]): BlendMap | undefined {
  try {
    return compileModel(model, { features });
  } catch (error) {
    if (error instanceof RangeError) return undefined; // too few features to tell the purposes apart
    throw error;
  }
}
