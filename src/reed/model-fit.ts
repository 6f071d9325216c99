import { duplicateIds, duplicates, idsIn } from "./duplicate-problems.js";
import type { AddProblem, Keys } from "./problem-at.js";
import { field, listField, numberField } from "./unknown-field.js";

const purposes = ["high", "low", "loud"] as const;

/** Corner values closer than this, relative to the largest, are equal but for rounding. */
const sameWithin = 1e-9;

/**
 * Reports what does not fit together in a model file, whatever else is wrong in it.
 *
 * Shape   the file as parsed JSON, a function that takes each problem. Never throws.
 */
export function checkModelFit(json: unknown, add: AddProblem): void {
  for (const list of ["groups", "features", "ratios"]) duplicateIds(json, list, add);
  listField(json, "features").forEach((feature, index) => {
    checkRange(feature, ["features", index], add);
    checkCorners(feature, ["features", index], add);
  });
  if (Array.isArray(field(json, "groups"))) checkGroups(json, add);
  if (Array.isArray(field(json, "features"))) checkFeatureNames(json, add);
}

function checkRange(feature: unknown, keys: Keys, add: AddProblem): void {
  const min = numberField(feature, "min");
  const max = numberField(feature, "max");
  if (min !== undefined && max !== undefined && min >= max)
    add([...keys, "min"], min, `below max, which is ${max}`);
}

function checkCorners(feature: unknown, keys: Keys, add: AddProblem): void {
  const corners = field(feature, "corners");
  const min = numberField(feature, "min") ?? -Infinity;
  const max = numberField(feature, "max") ?? Infinity;
  const values = purposes.map((purpose) => numberField(corners, purpose));
  if (min < max) {
    values.forEach((value, index) => {
      if (value === undefined || (value >= min && value <= max)) return;
      add([...keys, "corners", purposes[index] ?? ""], value, rangeText(min, max));
    });
  }
  if (values.every((value) => value !== undefined) && areEqual(values)) {
    add(
      [...keys, "corners"],
      corners,
      "three values that are not all equal, for such a feature tells the purposes apart in nothing",
    );
  }
}

function rangeText(min: number, max: number): string {
  if (max === Infinity) return `within the range of the feature, from ${min} up`;
  if (min === -Infinity) return `within the range of the feature, up to ${max}`;
  return `within the range of the feature, ${min} to ${max}`;
}

function areEqual(values: readonly number[]): boolean {
  return (
    Math.max(...values) - Math.min(...values) <= sameWithin * Math.max(...values.map(Math.abs))
  );
}

function checkGroups(json: unknown, add: AddProblem): void {
  const groups = idsIn(json, "groups");
  listField(json, "features").forEach((feature, index) => {
    checkKnown(field(feature, "group"), groups, ["features", index, "group"], "groups", add);
  });
}

function checkFeatureNames(json: unknown, add: AddProblem): void {
  const features = idsIn(json, "features");
  listField(json, "ratios").forEach((ratio, index) => {
    const [of, to] = [field(ratio, "of"), field(ratio, "to")];
    checkKnown(of, features, ["ratios", index, "of"], "features", add);
    checkKnown(to, features, ["ratios", index, "to"], "features", add);
    if (typeof of === "string" && of === to)
      add(["ratios", index, "to"], to, `another feature than "of"`);
  });
  const place = (index: number): Keys => ["commonGaugeError", "features", index];
  const shared = listField(field(json, "commonGaugeError"), "features");
  shared.forEach((name, index) => checkKnown(name, features, place(index), "features", add));
  duplicates(shared, place, add);
}

function checkKnown(
  name: unknown,
  known: ReadonlySet<string>,
  keys: Keys,
  list: string,
  add: AddProblem,
): void {
  if (typeof name !== "string" || known.has(name)) return;
  add(keys, name, `one of the ${list}: ${[...known].join(", ")}`);
}
