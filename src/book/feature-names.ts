import type { Feature, ReedModel } from "../engine/model.js";
import type { Catalogue, Fault } from "../reed/catalogue.js";
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
 * Finder of features by id, by label, or by the label without its last word (thickness, roundness, width,
 * length, height) where only one feature can be meant. Case, spaces and hyphens do not matter.
 *
 * Shape   a model, words for what is wrong → a function from a name to a feature, or to what is wrong with the nearest right word.
 *
 * @example featureFinder(bassoonModel, english.faults)("first wire") → the feature firstWire
 */
export function featureFinder(model: ReedModel, words: Catalogue["faults"]): FeatureFinder {
  const known = new Map<string, Feature>();
  addNames(known, model.features, ({ id }) => id);
  addNames(known, model.features, ({ label }) => label);
  addNames(known, model.features, ({ label }) => plain(label).replace(dropped, ""));
  const labels = model.features.map(({ label }) => label);
  return (name) => {
    const word = plain(name);
    const feature = known.get(word);
    if (feature) return { feature };
    if (word === "") return { fault: words.missingFeature(labels) };
    const nearest = nearestFeature(word, known);
    return { fault: words.unknownFeature(name.trim(), labels, nearest?.label) };
  };
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
