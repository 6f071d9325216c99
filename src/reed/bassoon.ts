import type { Actions, ReedModel } from "../engine/model.js";
import actionsJson from "./data/bassoon-actions.json";
import modelJson from "./data/bassoon-model.json";
import { deepFreeze } from "./deep-freeze.js";

// Taken as they are, so that an element that only draws does not carry the file reader;
// a test reads the same files with the reader and compares.

/**
 * The model for bassoon reeds of the German system, deeply frozen.
 *
 * Unit    mm; roundness as a ratio; hinging from 0 to 1.
 * Source  common practice, no source; see `$comment`.
 */
export const bassoonModel: ReedModel = deepFreeze(modelJson as unknown as ReedModel);

/**
 * What hands do to a bassoon reed, deeply frozen.
 *
 * Source  common practice, no source, but for the senses of the wires; see `$comment`.
 */
export const bassoonActions: Actions = deepFreeze(actionsJson as unknown as Actions);
