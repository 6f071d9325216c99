import type { Qualities } from "../engine/qualities.js";
import qualitiesJson from "./data/bassoon-qualities.json";
import { deepFreeze } from "./deep-freeze.js";

/**
 * What bassoon reeds sound and feel like over the triangle, deeply frozen.
 *
 * Unit    0 poor … 10 excellent.
 * Source  common practice, no source; a teacher may change every value.
 */
export const bassoonQualities: Qualities = /* @__PURE__ */ deepFreeze(
  qualitiesJson as unknown as Qualities,
);
