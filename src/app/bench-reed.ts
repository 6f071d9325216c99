import type { ReedModel } from "../engine/model.js";
import type { Bench } from "../reed/bench.js";
import type { Catalogue } from "../reed/catalogue.js";
import { isDemo } from "../reed/demo-reeds.js";
import { givenValues } from "../reed/tried.js";

/** A reed as a bench holds it. */
interface BenchReed {
  readonly model: ReedModel;
  readonly bench: Bench;
}

/** Whether the reed is one that the product brings along: nobody has read or done anything to it. */
export function isGiven({ model, bench }: BenchReed): boolean {
  return givenValues(model, bench) !== undefined;
}

/** What a reed is called, on screen, on paper and in pictures: where something is tried on it, that is said. */
export function reedName(one: BenchReed, text: Catalogue): string {
  const { reed, tried, done = [] } = one.bench;
  const isShippedName = reed === "" || isDemo(reed);
  // A step that was done has made another reed of the one that the product brings along.
  const name = done.length > 0 && isShippedName ? text.bar.worked(reed || text.bar.allRound) : reed;
  return tried ? text.tried.name(name || text.bar.allRound) : name || text.bar.allRound;
}
