import * as v from "valibot";
import { qualityPlaces, type QualityPlace } from "../engine/qualities.js";
import { freeText, id, label } from "./file-fields.js";

const mark = v.pipe(
  v.number(),
  v.minValue(0),
  v.maxValue(10),
  v.description("a number from 0 (poor) to 10 (excellent)"),
);

function place<Name extends QualityPlace>(name: Name) {
  return v.pipe(
    v.literal(name),
    v.description(`"${name}", for the order is ${qualityPlaces.join(", ")}`),
  );
}

const quality = v.pipe(
  v.strictObject({
    id,
    label,
    says: label,
    values: v.pipe(
      v.strictTuple([mark, mark, mark, mark, mark, mark, mark]),
      v.description("a list of seven numbers, one a place"),
    ),
  }),
  v.description("an object that describes one quality"),
);

/** What a file of qualities looks like; `readQualities` checks beyond it that no id comes twice. */
export const qualitiesSchema = v.pipe(
  v.strictObject({
    $comment: v.exactOptional(freeText),
    places: v.pipe(
      v.strictTuple([
        place("high"),
        place("low"),
        place("loud"),
        place("high-low"),
        place("low-loud"),
        place("loud-high"),
        place("centre"),
      ]),
      v.description(`a list of the seven places ${qualityPlaces.join(", ")}`),
    ),
    qualities: v.pipe(
      v.array(quality),
      v.minLength(1),
      v.description("a list of at least one quality"),
    ),
  }),
  v.description("an object that describes qualities"),
);
