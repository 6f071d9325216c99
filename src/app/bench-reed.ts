import { allRoundValues } from "../reed/bench.js";
import { demoReeds } from "../reed/demo-reeds.js";
import type { BenchState } from "./bench-state.js";

/** Whether no reading differs from the all-round reed's or the demo reed's: nobody has entered anything. */
export function isUntouched({ model, present: { bench } }: BenchState): boolean {
  const shipped =
    demoReeds.find(({ reed }) => reed === bench.reed)?.readings ?? allRoundValues(model);
  return model.features.every(
    ({ id }) => bench.values[id] === undefined || bench.values[id] === shipped[id],
  );
}

/** Whether every reading is still as the reed of that name has it. */
export function isUnchanged(state: BenchState): boolean {
  return (
    isUntouched(state) && state.model.features.every(({ id }) => id in state.present.bench.values)
  );
}
