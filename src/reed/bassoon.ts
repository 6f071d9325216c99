import type { ReedModel } from "../engine/model.js";
import modelJson from "./data/bassoon-model.json";
import { deepFreeze } from "./deep-freeze.js";

export { bassoonActions } from "./bassoon-actions.js";

// Taken as they are, so that an element that only draws does not carry the file reader;
// a test reads the same files with the reader and compares.

/**
 * The model for bassoon reeds of the German system, deeply frozen.
 *
 * Unit    mm; roundness as a ratio; hinging from 0 to 1.
 * Source  common practice, no source; see `$comment` of its file.
 */
export const bassoonModel: ReedModel = /* @__PURE__ */ deepFreeze(
  modelJson as unknown as ReedModel,
);
