import * as v from "valibot";
import type { Actions, ReedModel } from "../engine/model.js";
import { checkActionsFit } from "./actions-fit.js";
import { actionsSchema } from "./actions-schema.js";
import { deepFreeze } from "./deep-freeze.js";
import { ModelError } from "./model-error.js";
import { problemAt } from "./problem-at.js";
import { shapeProblems } from "./shape-problems.js";

/**
 * Actions from a file, checked against the model they move.
 *
 * Shape   parsed JSON and a model → actions of their own, deeply frozen; effects keep their order,
 *         for the first is what the hand is after.
 * Throws  ModelError with every problem of the file, and nothing else.
 *
 * @example readActions([], bassoonModel) → throws ModelError with one problem
 */
export function readActions(json: unknown, model: ReedModel): Actions {
  const problems = shapeProblems(actionsSchema, json, "action file");
  checkActionsFit(json, model, (keys, found, allowed) =>
    problems.push(problemAt(json, "action file", keys, found, allowed)),
  );
  if (problems.length > 0) throw new ModelError("action file", problems);
  return deepFreeze(v.parse(actionsSchema, json));
}
