export type { Blend } from "../engine/blend.js";
export type {
  Action,
  Actions,
  Feature,
  FeatureId,
  Finishing,
  Freedom,
  Purpose,
  Ratio,
  ReedModel,
  Triple,
  Values,
} from "../engine/model.js";

export {
  blendsToPoints,
  blendToPoint,
  pointToBlend,
  type Frame,
  type Point,
} from "../engine/frame.js";
export { nearestBlend } from "../engine/nearest-blend.js";

export { compileModel, type BlendMap } from "../engine/compile.js";
export { place, placeMany, type Placed } from "../engine/place.js";
export { pulls, ratioPull, type Pull } from "../engine/pulls.js";
export {
  certaintyEllipse,
  type CertaintyEllipse,
  type CertaintyOptions,
} from "../engine/certainty.js";

export { finishingFreedom } from "../engine/freedom.js";
export { actionReach, featureReach, type Reach } from "../engine/reach.js";
export { solveFor, type Solution } from "../engine/solve.js";

export { ModelError } from "../reed/model-error.js";
export { readModel } from "../reed/read-model.js";
export { bassoonActions, bassoonModel } from "../reed/bassoon.js";
export { readActions } from "../reed/read-actions.js";
