import type { Values } from "../engine/model.js";
import demoReadingsJson from "./data/demo-readings.json";
import { deepFreeze } from "./deep-freeze.js";

/** The readings of the demo reeds by their names, deeply frozen: every feature of the bassoon model. Invented. */
export const demoReadings: Readonly<Record<string, Values>> = /* @__PURE__ */ deepFreeze(
  demoReadingsJson.readings,
);
