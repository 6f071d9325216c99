import type { Values } from "../engine/model.js";
import demoReadingsJson from "./data/demo-readings.json";
import { deepFreeze } from "./deep-freeze.js";

/** The readings of the demo reeds by their names, deeply frozen: every feature of the bassoon model. Invented. */
export const demoReadings: Readonly<Record<string, Values>> = /* @__PURE__ */ deepFreeze(
  demoReadingsJson.readings,
);

/**
 * The name of a demo reed as it is written, whatever the case it is asked for in.
 *
 * @example demoNamed(" heron") → "Heron"
 */
export function demoNamed(name: string): string | undefined {
  const wanted = name.trim().toLowerCase();
  return Object.keys(demoReadings).find((reed) => reed.toLowerCase() === wanted);
}
