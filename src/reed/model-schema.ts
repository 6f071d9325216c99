import * as v from "valibot";
import { aboveZero, freeText, id, label, number, wholeFrom, zeroOrMore } from "./file-fields.js";

const corners = v.pipe(
  v.strictObject({ high: number, low: number, loud: number }),
  v.description("an object with the numbers high, low and loud"),
);

const feature = v.pipe(
  v.strictObject({
    id,
    label,
    group: id,
    unit: v.pipe(v.picklist(["mm", "ratio", "0-1"]), v.description('"mm", "ratio" or "0-1"')),
    decimals: wholeFrom(0, 4),
    step: aboveZero,
    min: number,
    max: number,
    gaugeError: zeroOrMore,
    corners,
    weight: aboveZero,
    howToMeasure: freeText,
    finishing: v.pipe(
      v.picklist(["both", "down", "up", "fixed"]),
      v.description('"both", "down", "up" or "fixed"'),
    ),
  }),
  v.description("an object that describes one feature"),
);

const named = v.pipe(v.strictObject({ id, label }), v.description("an object with id and label"));

const ratio = v.pipe(
  v.strictObject({ id, label, of: id, to: id }),
  v.description("an object with id, label, of and to"),
);

function purpose<Id extends "high" | "low" | "loud">(purposeId: Id) {
  return v.pipe(
    v.strictObject({
      id: v.pipe(
        v.literal(purposeId),
        v.description(`"${purposeId}", for the order is high, low, loud`),
      ),
      label,
    }),
    v.description(`the purpose "${purposeId}" with its label`),
  );
}

/** What a model file looks like; `readModel` checks beyond it how the parts fit together. */
export const modelSchema = v.pipe(
  v.strictObject({
    $comment: v.exactOptional(freeText),
    id,
    label,
    purposes: v.pipe(
      v.strictTuple([purpose("high"), purpose("low"), purpose("loud")]),
      v.description("a list of the three purposes high, low, loud"),
    ),
    groups: v.pipe(v.array(named), v.minLength(1), v.description("a list of at least one group")),
    recipeScatter: zeroOrMore,
    commonGaugeError: v.pipe(
      v.strictObject({
        amount: zeroOrMore,
        features: v.pipe(v.array(id), v.description("a list of feature ids")),
      }),
      v.description("an object with amount and features"),
    ),
    features: v.pipe(
      v.array(feature),
      v.minLength(1),
      v.description("a list of at least one feature"),
    ),
    ratios: v.pipe(v.array(ratio), v.description("a list of ratios, which may be empty")),
  }),
  v.description("an object that describes a reed model"),
);
