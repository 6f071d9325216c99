import type { ReedModel } from "../engine/model.js";
import type { Catalogue } from "./catalogue.js";
import { readingWithUnit } from "./reading-text.js";
import type { AmountText } from "./stand-in-sentences.js";
import type { LengthUnit } from "./units.js";

/**
 * Sizes of changes in the unit of the user's gauge.
 *
 * @example amountText(bassoonModel, "mm", english)("bladeLength", 0.5) → "0.5 mm"
 */
export function amountText(model: ReedModel, unit: LengthUnit, text: Catalogue): AmountText {
  return (id, size) => {
    const feature = model.features.find((one) => one.id === id)!;
    return readingWithUnit(feature, size, unit, text);
  };
}
