import type { ReedModel } from "../engine/model.js";
import { allRoundValues, type Bench } from "../reed/bench.js";
import type { Catalogue } from "../reed/catalogue.js";
import { demoReeds } from "../reed/demo-reeds.js";

/** A reed as a bench holds it. */
interface BenchReed {
  readonly model: ReedModel;
  readonly bench: Bench;
}

function shippedValues({ model, bench: { reed } }: BenchReed): Bench["values"] | undefined {
  return reed === "" ? allRoundValues(model) : demoReeds.find((one) => one.reed === reed)?.readings;
}

/**
 * Whether nobody has entered anything: the all-round reed or a demo reed with no reading changed.
 * A reed of one's own is one's own even where a reading happens to be the all-round value.
 */
export function isUntouched(one: BenchReed): boolean {
  const { model, bench } = one;
  const shipped = shippedValues(one);
  if (!shipped) return false;
  return model.features.every(
    ({ id }) => bench.values[id] === undefined || bench.values[id] === shipped[id],
  );
}

/** Whether every reading is still as the reed of that name has it. */
export function isUnchanged(one: BenchReed): boolean {
  return isUntouched(one) && one.model.features.every(({ id }) => id in one.bench.values);
}

/** What a reed is called, on screen, on paper and in pictures: a shipped one that was changed says so. */
export function reedName(one: BenchReed, text: Catalogue): string {
  const name = one.bench.reed || text.bar.allRound;
  return shippedValues(one) && !isUnchanged(one) ? text.bar.changed(name) : name;
}
