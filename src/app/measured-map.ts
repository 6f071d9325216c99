import { tryCompile, type BlendMap } from "../engine/compile.js";
import type { Bench } from "../reed/bench.js";
import type { ReedModel, Values } from "../engine/model.js";

// A drag asks for the same few maps at every move (the reed's, the one before, the pinned one): the last ones are kept.
const kept = new Map<string, BlendMap | undefined>();
const mostKept = 8;
let keptModel: ReedModel | undefined;

/** The map for the features that were measured; undefined when they cannot tell the purposes apart. */
export function mapFor(model: ReedModel, values: Values): BlendMap | undefined {
  const measured = model.features.map(({ id }) => id).filter((id) => values[id] !== undefined);
  const key = measured.join(" ");
  if (keptModel !== model || (kept.size >= mostKept && !kept.has(key))) kept.clear();
  keptModel = model;
  if (!kept.has(key)) kept.set(key, tryCompile(model, { features: measured }));
  return kept.get(key);
}

/** Whether the reed has failed a look at its soundness that nobody overruled: it is at no place of the triangle. */
export function isUnsound({ unsound, overruled }: Pick<Bench, "unsound" | "overruled">): boolean {
  return unsound.length > 0 && !overruled;
}
