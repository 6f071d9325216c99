import type { FeatureId, Values } from "../engine/model.js";
import { placesOf, type Place } from "./places.js";
import { meanReading, type Reading, type Readings } from "./readings.js";
import { unevenness } from "./uneven.js";

/** Something about a set of readings that is asked about; nothing is forbidden. */
export interface CrossCheck {
  readonly kind:
    | "gapWiderThanTip"
    | "centreThinnerThanSide"
    | "thinsBackwards"
    | "unevenQuarters"
    | "bladesDiffer"
    | "collarsDiffer"
    | "firstRounderThanSecond";
  /** The features to look at again. */
  readonly features: readonly FeatureId[];
  /** How far they differ, mm, and where the largest reading was taken; for the checks of evenness. */
  readonly spread?: number;
  readonly largest?: Place;
}

/** The gap is narrower than the tip by at least so much, mm. Common practice, no source. */
const gapMargin = 0.8;

/**
 * What does not go together in a set of readings.
 *
 * Shape   values (mm, ratios) and the single readings of each feature → questions, those about slips before those
 *         about the reed; what is not measured is not asked about.
 * Source  common practice, no source.
 *
 * @example crossChecks({ heart: 0.2, wings: 0.25 }, {})[0].kind → "centreThinnerThanSide"
 */
export function crossChecks(values: Values, readings: Readings): CrossCheck[] {
  return [...slips(values), ...unevenPlaces(readings)];
}

function slips(values: Values): CrossCheck[] {
  const both = (a: FeatureId, b: FeatureId, bad: (x: number, y: number) => boolean): boolean => {
    const [x, y] = [values[a], values[b]];
    return x !== undefined && y !== undefined && bad(x, y);
  };
  const found: CrossCheck[] = [];
  const add = (kind: CrossCheck["kind"], ...features: FeatureId[]): void =>
    void found.push({ kind, features });
  if (both("openingWidth", "tipWidth", (gap, tip) => gap > tip - gapMargin))
    add("gapWiderThanTip", "openingWidth", "tipWidth");
  if (both("heart", "wings", (heart, wings) => heart <= wings))
    add("centreThinnerThanSide", "heart", "wings");
  if (both("spine", "rails", (spine, rails) => spine <= rails))
    add("centreThinnerThanSide", "spine", "rails");
  if (both("tip", "wings", (tip, wings) => tip >= wings))
    add("centreThinnerThanSide", "tip", "wings");
  if (both("spine", "heart", (spine, heart) => spine < heart))
    add("thinsBackwards", "heart", "spine");
  if (both("firstWire", "secondWire", (first, second) => first > second))
    add("firstRounderThanSecond", "firstWire", "secondWire");
  return found;
}

function unevenPlaces(readings: Readings): CrossCheck[] {
  return Object.entries(readings).flatMap(([id, all]): CrossCheck[] => {
    const uneven = unevenness(id, all);
    if (!uneven) return [];
    const collars = id === "bladeLength";
    const quarters = placesOf(id).length > 2;
    const kind = quarters ? "unevenQuarters" : collars ? "collarsDiffer" : "bladesDiffer";
    const { spread, largest } = uneven;
    return [{ kind, features: [id], spread, ...(largest ? { largest } : {}) }];
  });
}

/**
 * What does not go together once a feature has these readings: only what concerns that feature.
 *
 * Shape   the feature, all values so far, its readings → questions.
 * Unit    the feature's own.
 *
 * @example stepWarnings("wings", { heart: 0.2 }, inOrder("wings", [0.25]))[0].kind → "centreThinnerThanSide"
 */
export function stepWarnings(
  feature: FeatureId,
  values: Values,
  readings: readonly Reading[],
): CrossCheck[] {
  if (readings.length === 0) return [];
  const mean = meanReading(feature, readings);
  return crossChecks({ ...values, [feature]: mean }, { [feature]: readings }).filter(
    ({ features }) => features.includes(feature),
  );
}
