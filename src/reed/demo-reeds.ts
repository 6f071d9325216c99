import type { Values } from "../engine/model.js";
import demoReedsJson from "./data/demo-reeds.json";
import { deepFreeze } from "./deep-freeze.js";
import { demoReadings } from "./demo-readings.js";

/** An invented reed with its story. */
export interface DemoReed {
  /** Its name, a marsh bird. */
  readonly reed: string;
  /** Every feature of the bassoon model, in the model's units. */
  readonly readings: Values;
  readonly story: string;
  readonly heard: string;
  /** What a teacher would do, and what the case teaches. */
  readonly plan: string;
  readonly point: string;
  /** The four quarters that the mean of the wings hides, mm. */
  readonly wingsSingly?: readonly number[];
}

/** Six reeds to try things on, deeply frozen. Readings and stories are invented. */
export const demoReeds: readonly DemoReed[] = /* @__PURE__ */ deepFreeze(
  demoReedsJson.cases.map((one) => ({ ...one, readings: demoReadings[one.reed]! })),
);

/** Whether a name is that of a demo reed. */
export function isDemo(name: string): boolean {
  return demoReeds.some(({ reed }) => reed === name);
}
