import * as v from "valibot";
import { label, number } from "../reed/file-fields.js";

// As in the files of a model, descriptions complete the sentence "allowed is …".

/** A feature or another thing, by its id; which ids there are depends on the model. */
export const name = v.pipe(v.string(), v.regex(/\S/), v.description("a name"));

/** One of the demo reeds. */
export const reedName = v.pipe(v.string(), v.regex(/\S/), v.description("the name of a demo reed"));

/** Features by id. */
export const featureIds = v.pipe(
  v.array(name),
  v.minLength(1),
  v.description("a list of features, such as [bladeLength, tipWidth]"),
);

const value = v.pipe(
  v.union([number, label]),
  v.description("a number, or a number with its unit, such as 1.07 in"),
);

/** Features with their values; a length without a unit is in mm. */
export const featureValues = v.pipe(
  v.record(v.string(), value),
  v.minEntries(1),
  v.description("features with their values, such as { bladeLength: 26.2 }"),
);

/** Three per cents in the order high, low, loud. */
export const perCents = v.pipe(
  v.strictTuple([number, number, number]),
  v.description("three per cents in the order high, low, loud, such as [50, 28, 22]"),
);

/** What every exercise may carry. */
export const exerciseFields = {
  ask: label,
  why: v.exactOptional(label),
  hints: v.exactOptional(
    v.pipe(v.strictTuple([label, label, label]), v.description("a list of three hints")),
  ),
};

/** Another reed than the one the lesson starts with. */
export const reedFields = {
  reed: v.exactOptional(reedName),
  values: v.exactOptional(featureValues),
};

/** A tolerance in per cents of a share. */
export const within = v.pipe(
  v.number(),
  v.minValue(0.5),
  v.maxValue(30),
  v.description("a number of per cents from 0.5 to 30"),
);
