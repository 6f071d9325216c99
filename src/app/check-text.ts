import type { ReedModel } from "../engine/model.js";
import type { Catalogue } from "../reed/catalogue.js";
import type { CrossCheck } from "../reed/cross-checks.js";
import { readingWithUnit } from "../reed/reading-text.js";
import type { LengthUnit } from "../reed/units.js";

/** What does not go together in a set of readings, as a sentence. */
export function checkText(
  { kind, features, spread = 0, largest = "one" }: CrossCheck,
  model: ReedModel,
  unit: LengthUnit,
  text: Catalogue,
): string {
  const words = text.measure.checks;
  const [first, second] = features.map((id) => model.features.find((one) => one.id === id)!);
  const apart = readingWithUnit(first!, spread, unit, text);
  const most = text.measure.places[largest];
  switch (kind) {
    case "centreThinnerThanSide":
      return words.centreThinnerThanSide(first!.label, second!.label);
    case "unevenQuarters":
      return words.unevenQuarters(first!.label, apart, most);
    case "bladesDiffer":
      return words.bladesDiffer(first!.label, apart, most);
    case "collarsDiffer":
      return words.collarsDiffer(apart);
    default:
      return words[kind];
  }
}
