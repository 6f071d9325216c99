import type { Feature, ReedModel } from "../engine/model.js";
import type { ReadingWords } from "../reed/reading-catalogue.js";
import type { Fault } from "../reed/reading-words.js";
import { editDistance } from "../reed/edit-distance.js";

/** Words at the end of a label that people leave out. */
const dropped = /(?:thickness|roundness|width|length|height)$/;

/** Longer than this no misspelt name is; comparing letters would only cost time. */
const longestTypo = 60;

/** Finds the feature that a person means by a name, or says what is wrong with the name. */
export type FeatureFinder = (
  name: string,
) => { readonly feature: Feature } | { readonly fault: Fault };

/**
 * Finder of features by id, by label, by the label without its last word (thickness, roundness, width, length,
 * height) where only one feature can be meant, and by other usual names. Case, spaces and hyphens do not matter. A name
 * that may be one of several is said to be; all names are recited once.
 *
 * Shape   a model, words for what is wrong → a function from a name to a feature, or to what is wrong with the nearest right word.
 *
 * @example featureFinder(bassoonModel, readingWords)("first wire") → the feature firstWire
 */
export function featureFinder(
  model: ReedModel,
  { faults: words, featureNames }: Pick<ReadingWords, "faults" | "featureNames">,
): FeatureFinder {
  const known = new Map<string, Feature>();
  addNames(known, model.features, ({ id }) => id);
  addNames(known, model.features, ({ label }) => label);
  addNames(known, model.features, ({ label }) => plain(label).replace(dropped, ""));
  for (const [id, names] of Object.entries(featureNames.others))
    for (const name of names) addNames(known, featuresOf(model, [id]), () => name);
  const labels = model.features.map(({ label }) => label);
  let areRecited = false;
  return (name) => {
    const word = plain(name);
    const feature = known.get(word);
    if (feature) return { feature };
    const several = Object.hasOwn(featureNames.several, word) ? featureNames.several[word]! : [];
    const meant = featuresOf(model, several).map(({ label }) => label);
    if (meant.length > 0) return { fault: words.unclearFeature(name.trim(), meant) };
    const nearest = nearestFeature(word, known);
    const told = areRecited ? [] : labels;
    areRecited ||= nearest === undefined;
    if (word === "") return { fault: words.missingFeature(told) };
    return { fault: words.unknownFeature(name.trim(), told, nearest?.label) };
  };
}

function featuresOf({ features }: ReedModel, ids: readonly string[]): readonly Feature[] {
  return features.filter(({ id }) => ids.includes(id));
}

/** A name stripped to its letters and digits. */
export function plain(name: string): string {
  return name
    .normalize("NFKC")
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]/gu, "");
}

/** Adds names that nothing has yet; one that two features would share goes to neither. */
function addNames(
  known: Map<string, Feature>,
  features: readonly Feature[],
  nameOf: (feature: Feature) => string,
): void {
  const named = features.map((feature) => ({ feature, name: plain(nameOf(feature)) }));
  for (const { feature, name } of named) {
    const isShared = named.some((other) => other.name === name && other.feature !== feature);
    if (name !== "" && !isShared && !known.has(name)) known.set(name, feature);
  }
}

/** The feature whose name is the fewest letters away, if less than half of the word is wrong. */
function nearestFeature(word: string, known: ReadonlyMap<string, Feature>): Feature | undefined {
  if (word.length > longestTypo) return undefined;
  const distances = [...known].map(([name, feature]) => ({
    feature,
    distance: editDistance(word, name),
  }));
  const nearest = distances.toSorted((a, b) => a.distance - b.distance)[0];
  return nearest && nearest.distance <= word.length / 2 ? nearest.feature : undefined;
}
