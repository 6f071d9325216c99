import { allRoundValues } from "../reed/bench.js";
import { demoReeds } from "../reed/demo-reeds.js";
import type { BenchState } from "./bench-state.js";

/**
 * Whether nobody has entered anything: the all-round reed or a demo reed with no reading changed.
 * A reed of one's own is one's own even where a reading happens to be the all-round value.
 */
export function isUntouched({ model, present: { bench } }: BenchState): boolean {
  const shipped =
    bench.reed === ""
      ? allRoundValues(model)
      : demoReeds.find(({ reed }) => reed === bench.reed)?.readings;
  if (!shipped) return false;
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
