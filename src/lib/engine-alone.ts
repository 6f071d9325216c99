// The engine with the product's own data: all about one reed, without readers of files and sums over a class. The data
// come first: so the file packs best.
export { bassoonActions, bassoonModel } from "../reed/bassoon.js";
export { bassoonQualities } from "../reed/bassoon-qualities.js";

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
export { restOfSitting } from "../engine/sitting-rules.js";
export { solveFor, type Solution } from "../engine/solve.js";

export {
  qualitiesAt,
  qualityAt,
  qualityPlaces,
  triangleShapes,
  type Qualities,
  type Quality,
  type QualityPlace,
  type SevenValues,
} from "../engine/qualities.js";

export {
  standIns,
  type FeatureChange,
  type StandIn,
  type StandInPair,
  type StandInRequest,
  type StandIns,
} from "../engine/stand-ins.js";
export { handStandIns, type HandStandIn } from "../engine/hand-stand-ins.js";

export {
  planAdjustments,
  type Adjustments,
  type Plan,
  type PlanKind,
  type PlanOptions,
  type PlanStep,
} from "../engine/plan-adjustments.js";
export { type Obstacle } from "../engine/plan-obstacle.js";
export { planNotes, readingsAfter, type PlanNotes, type StepNotes } from "../engine/plan-notes.js";
