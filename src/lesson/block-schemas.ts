import * as v from "valibot";
import { label, wholeFrom } from "../reed/file-fields.js";
import {
  exerciseFields,
  featureIds,
  featureValues,
  name,
  perCents,
  reedFields,
  within,
} from "./lesson-fields.js";

const flag = v.pipe(v.boolean(), v.description("true or false"));
const names = v.pipe(v.array(name), v.minLength(1), v.description("a list of names"));
const free = { locked: v.exactOptional(featureIds), finished: v.exactOptional(flag) };

/** `show`: a reed, layers, a place of the drawing, the lip panel, cautions. */
export const showSchema = v.pipe(
  v.strictObject({
    ...reedFields,
    beside: v.exactOptional(
      v.pipe(v.strictObject(reedFields), v.description("another reed: reed, values or both")),
    ),
    caption: v.exactOptional(label),
    layers: v.exactOptional(names),
    place: v.exactOptional(name),
    target: v.exactOptional(name),
    lips: v.exactOptional(name),
    cautions: v.exactOptional(names),
  }),
  v.description("what is to be seen: reed, values, beside, layers, place, target, lips, cautions"),
);

/** `predict`: where the point goes when values change. */
export const predictSchema = v.pipe(
  v.strictObject({ ...exerciseFields, ...reedFields, change: featureValues }),
  v.description("a question in ask and new values in change"),
);

/** `aim`: bring the point to a target. */
export const aimSchema = v.pipe(
  v.strictObject({
    ...exerciseFields,
    ...reedFields,
    ...free,
    target: v.pipe(
      v.union([name, perCents]),
      v.description("a kind of part, or three per cents in the order high, low, loud"),
    ),
    within: v.exactOptional(within),
    mostFeatures: v.exactOptional(wholeFrom(1, 4)),
  }),
  v.description("a question in ask and a target"),
);

const option = v.pipe(
  v.strictObject({
    text: label,
    why: label,
    right: v.exactOptional(flag),
    claim: v.exactOptional(label),
  }),
  v.description("an option with text and why, right: true for a right one"),
);

/** `choose`: one of several statements. */
export const chooseSchema = v.pipe(
  v.strictObject({
    ...exerciseFields,
    options: v.pipe(
      v.array(option),
      v.minLength(2),
      v.maxLength(6),
      v.description("a list of two to six options"),
    ),
    shown: v.exactOptional(
      v.pipe(
        v.array(wholeFrom(1, 6)),
        v.description("the numbers of the options in the order in which a class sees them"),
      ),
    ),
  }),
  v.description("a question in ask and two to six options"),
);

/** `order`: moves in a sensible order. */
export const orderSchema = v.pipe(
  v.strictObject({
    ...exerciseFields,
    actions: v.pipe(
      v.array(name),
      v.minLength(2),
      v.maxLength(4),
      v.description("a list of two to four actions"),
    ),
  }),
  v.description("a question in ask and two to four actions"),
);

/** `read`: three shares off the triangle. */
export const readSchema = v.pipe(
  v.strictObject({
    ...exerciseFields,
    ...reedFields,
    at: v.exactOptional(perCents),
    within: v.exactOptional(within),
  }),
  v.description("a question in ask and a place in at, or a reed"),
);

/** `stand-in`: make up for what is missing. */
export const standInSchema = v.pipe(
  v.strictObject({
    ...exerciseFields,
    ...reedFields,
    ...free,
    missing: featureValues,
    within: v.exactOptional(within),
  }),
  v.description("a question in ask and the feature that is missing, with the value it has instead"),
);

/** `claim`: a sentence with a meaning that the model decides. */
export const claimSchema = v.pipe(
  v.strictObject({
    says: label,
    means: v.pipe(
      v.union([label, v.pipe(v.array(label), v.minLength(1))]),
      v.description("a claim, or a list of claims"),
    ),
  }),
  v.description("a sentence in says and its meaning in means"),
);

/** Every block by the name behind its three backticks. */
export const blockSchemas = {
  show: showSchema,
  predict: predictSchema,
  aim: aimSchema,
  choose: chooseSchema,
  order: orderSchema,
  read: readSchema,
  "stand-in": standInSchema,
  claim: claimSchema,
} as const;

/** The names of the blocks, in the order in which they are told. */
export const blockNames = Object.keys(blockSchemas) as readonly BlockName[];

/** The name of a block. */
export type BlockName = keyof typeof blockSchemas;
