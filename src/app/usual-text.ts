import type { Feature, Values } from "../engine/model.js";
import type { Catalogue } from "../reed/catalogue.js";
import type { MeasuringStep } from "../reed/measuring-steps.js";
import { readingText, readingWithUnit, unitSign } from "../reed/reading-text.js";
import type { LengthUnit } from "../reed/units.js";

/** What most reeds have, of the quantity that is typed at a step: of a thickness over the spine, the thickness. */
export function usualText(
  { asks, usual }: MeasuringStep,
  feature: Feature,
  values: Values,
  unit: LengthUnit,
  text: Catalogue,
): string {
  const words = text.measure.step;
  const over = asks === "thicknessOverSpine" ? (values["spine"] ?? 0) : 0;
  const [low, high] = usual.map((value) => readingText(feature, value + over, unit, text, true));
  // All that a picture can be is usual: there is nothing to tell.
  if (asks === "picture") return "";
  if (asks === "heightAndWidth") return words.usualRoundness(low!, high!);
  return words.usual(low!, high!, unitSign(feature, unit, text));
}

/** A length that stands for something else than its feature (the height of a wire), in the unit of the gauge. */
export function lengthText(
  feature: Feature,
  millimetres: number,
  unit: LengthUnit,
  text: Catalogue,
): string {
  return readingWithUnit({ ...feature, unit: "mm" }, millimetres, unit, text, true);
}
