import type { Actions } from "../engine/model.js";
import actionsJson from "./data/bassoon-actions.json";
import { deepFreeze } from "./deep-freeze.js";

// Taken as it is, like the model in bassoon.ts.

/**
 * What hands do to a bassoon reed, deeply frozen.
 *
 * Source  common practice, no source, but for the senses of the wires; see `$comment` of its file.
 */
export const bassoonActions: Actions = /* @__PURE__ */ deepFreeze(
  actionsJson as unknown as Actions,
);
