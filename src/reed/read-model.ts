import * as v from "valibot";
import { compileModel } from "../engine/compile.js";
import type { ReedModel } from "../engine/model.js";
import { deepFreeze } from "./deep-freeze.js";
import { checkModelFit } from "./model-fit.js";
import { ModelError, type Problem } from "./model-error.js";
import { modelSchema } from "./model-schema.js";
import { problemAt } from "./problem-at.js";
import { shapeProblems } from "./shape-problems.js";

/**
 * A reed model from a file, checked.
 *
 * Shape   parsed JSON → a model of its own, deeply frozen; the JSON stays as it is.
 * Domain  anything at all; `$comment` at the top is kept, any other unknown key is a problem.
 * Throws  ModelError with every problem of the file, and nothing else.
 *
 * @example readModel({ id: 5 }) → throws ModelError, problems[0].path "label"
 */
export function readModel(json: unknown): ReedModel {
  const problems = shapeProblems(modelSchema, json, "model");
  checkModelFit(json, (keys, found, allowed) =>
    problems.push(problemAt(json, "model", keys, found, allowed)),
  );
  // Whether the purposes can be told apart shows only when the features themselves are sound.
  const featuresAreSound = !problems.some(({ path }) => path === "" || path.startsWith("features"));
  const unseparable = featuresAreSound ? separationProblem(json as ReedModel) : undefined;
  if (unseparable) problems.push(unseparable);
  if (problems.length > 0) throw new ModelError("model", problems);
  return deepFreeze(v.parse(modelSchema, json));
}

/** The features may each be sound and yet all point the same way; only the compiled map shows it. */
function separationProblem(model: ReedModel): Problem | undefined {
  try {
    compileModel(model);
    return undefined;
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    const found = model.features.map(({ id }) => id);
    const allowed = "features that together tell the three purposes apart";
    const message = `The ${error.message.replace(/^compileModel: /, "")}.`;
    return { path: "features", found, allowed, message };
  }
}
