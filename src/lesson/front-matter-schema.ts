import * as v from "valibot";
import { label, wholeFrom } from "../reed/file-fields.js";
import { featureIds, featureValues, reedName } from "./lesson-fields.js";

/** What stands between the two lines of hyphens at the top of a lesson file. */
export const frontMatterSchema = v.pipe(
  v.strictObject({
    title: label,
    minutes: wholeFrom(1, 60),
    goal: v.exactOptional(label),
    features: v.exactOptional(featureIds),
    reed: v.exactOptional(reedName),
    start: v.exactOptional(featureValues),
  }),
  v.description("the lesson's title, its minutes and what else it starts with, a line each"),
);
