import * as v from "valibot";
import type { Actions, ReedModel } from "../engine/model.js";
import { deepFreeze } from "./deep-freeze.js";
import { ModelError } from "./model-error.js";
import { problemAt } from "./problem-at.js";
import { shapeProblems } from "./shape-problems.js";
import type { Symptoms } from "./symptoms.js";
import { checkSymptomsFit } from "./symptoms-fit.js";
import { symptomsSchema } from "./symptoms-schema.js";

/**
 * Symptoms from a file, checked against the model whose features cause them and the actions that help.
 *
 * Shape   parsed JSON, a model, actions → symptoms of their own, deeply frozen; the JSON stays as it is.
 * Throws  ModelError with every problem of the file, and nothing else.
 *
 * @example readSymptoms([], bassoonModel, bassoonActions) → throws ModelError with one problem
 */
export function readSymptoms(json: unknown, model: ReedModel, actions: Actions): Symptoms {
  const problems = shapeProblems(symptomsSchema, json, "file of symptoms");
  checkSymptomsFit(json, model, actions, (keys, found, allowed) =>
    problems.push(problemAt(json, "file of symptoms", keys, found, allowed)),
  );
  if (problems.length > 0) throw new ModelError("file of symptoms", problems);
  return deepFreeze(v.parse(symptomsSchema, json));
}
