import { ownTarget, type Bench } from "../reed/bench.js";
import type { Handle } from "../widgets/triangle-drag.js";

/** What clicks and keys move on the triangle: one's own target only while it is there to be moved. */
export function movesOf({ target }: Pick<Bench, "target">, picked: Handle): Handle {
  return target === ownTarget ? picked : "point";
}
