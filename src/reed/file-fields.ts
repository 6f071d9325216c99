import * as v from "valibot";

// Descriptions double as the "allowed" of a problem and as the description in the published JSON Schema,
// so each completes the sentence "must be …".

/** Far above any reading in any unit, and small enough that no square of it overflows. */
const largest = 1e9;

/** Names that every object answers to already; as an id they would be found where nothing was entered. */
const taken =
  "constructor|hasOwnProperty|isPrototypeOf|propertyIsEnumerable|prototype|toLocaleString|toString|valueOf";

const idPattern = new RegExp(`^(?!(?:${taken})$)[A-Za-z][A-Za-z0-9_-]*$`);

/** A name for the machine. */
export const id = v.pipe(
  v.string(),
  v.regex(idPattern),
  v.description("an id: a letter, then letters, digits, - or _, and no name that every object has"),
);

/** A text that a person reads. */
export const label = v.pipe(v.string(), v.regex(/\S/), v.description("a text that is not blank"));

/** A text that may be empty. */
export const freeText = v.pipe(v.string(), v.description("a text"));

/** Any number. */
export const number = v.pipe(
  v.number(),
  v.minValue(-largest),
  v.maxValue(largest),
  v.description("a number between −1e9 and 1e9"),
);

/** A number that is not negative. */
export const zeroOrMore = v.pipe(
  v.number(),
  v.minValue(0),
  v.maxValue(largest),
  v.description("a number from 0 to 1e9"),
);

/** A number above 0. */
export const aboveZero = v.pipe(
  v.number(),
  v.gtValue(0),
  v.maxValue(largest),
  v.description("a number above 0, at most 1e9"),
);

/** A change that changes something. */
export const notZero = v.pipe(
  v.number(),
  v.minValue(-largest),
  v.maxValue(largest),
  v.notValue(0),
  v.description("a number between −1e9 and 1e9 other than 0"),
);

/** A count that is at least `least`. */
export function wholeFrom(least: number, most: number) {
  return v.pipe(
    v.number(),
    v.integer(),
    v.minValue(least),
    v.maxValue(most),
    v.description(`a whole number from ${least} to ${most}`),
  );
}
