import type { ReedModel, Values } from "../engine/model.js";
import { allRoundValue } from "./reading-text.js";
import { toThousandths } from "./units.js";

/** Every feature at the mean of its three corner values, in whole thousandths. */
export function allRoundValues(model: ReedModel): Values {
  return Object.fromEntries(
    model.features.map((feature) => [feature.id, toThousandths(allRoundValue(feature))]),
  );
}
