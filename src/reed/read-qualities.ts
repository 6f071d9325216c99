import * as v from "valibot";
import type { Qualities } from "../engine/qualities.js";
import { deepFreeze } from "./deep-freeze.js";
import { duplicateIds } from "./duplicate-problems.js";
import { ModelError } from "./model-error.js";
import { problemAt } from "./problem-at.js";
import { qualitiesSchema } from "./qualities-schema.js";
import { shapeProblems } from "./shape-problems.js";

/**
 * What reeds sound and feel like, from a file.
 *
 * Shape   parsed JSON → qualities of their own, deeply frozen; the JSON stays as it is.
 * Unit    0 poor … 10 excellent, at the seven places of `qualityPlaces`.
 * Throws  ModelError with every problem of the file, and nothing else.
 *
 * @example readQualities([]) → throws ModelError with one problem
 */
export function readQualities(json: unknown): Qualities {
  const problems = shapeProblems(qualitiesSchema, json, "file of qualities");
  duplicateIds(json, "qualities", (keys, found, allowed) =>
    problems.push(problemAt(json, "file of qualities", keys, found, allowed)),
  );
  if (problems.length > 0) throw new ModelError("file of qualities", problems);
  return deepFreeze(v.parse(qualitiesSchema, json));
}
