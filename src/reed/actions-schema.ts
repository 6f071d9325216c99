import * as v from "valibot";
import { aboveZero, freeText, id, label, notZero, wholeFrom } from "./file-fields.js";

const mostUnits = 1000;

const action = v.pipe(
  v.strictObject({
    id,
    label,
    how: freeText,
    unit: label,
    easy: wholeFrom(0, mostUnits),
    max: wholeFrom(1, mostUnits),
    cost: aboveZero,
    costBeyond: aboveZero,
    reversible: v.pipe(v.boolean(), v.description("true or false")),
    order: wholeFrom(0, mostUnits),
    effects: v.pipe(
      v.record(v.string(), notZero),
      v.minEntries(1),
      v.description("an object with at least one feature and what one unit changes of it"),
    ),
    caution: id,
    pitch: freeText,
  }),
  v.description("an object that describes one action"),
);

const lines = v.pipe(v.array(label), v.description("a list of texts, which may be empty"));

/** What an action file looks like; `readActions` checks beyond it how it fits the model. */
export const actionsSchema = v.pipe(
  v.strictObject({
    $comment: v.exactOptional(freeText),
    actions: v.pipe(
      v.array(action),
      v.minLength(1),
      v.description("a list of at least one action"),
    ),
    cautions: v.pipe(v.record(id, label), v.description("an object with a text for each caution")),
    rules: lines,
    housekeeping: lines,
  }),
  v.description("an object that describes actions"),
);
