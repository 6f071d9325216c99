export { cornerClosing, openingArea } from "../acoustics/opening.js";
export { flow } from "../acoustics/flow.js";
export { openFraction } from "../acoustics/closing-law.js";
export {
  cantileverFrequencies,
  cantileverTipStiffness,
  type Cantilever,
} from "../acoustics/cantilever.js";
export { bladeThickness, type BladeRecipe } from "../acoustics/blade.js";

export { lipResponse, respond, withHinging, type LipResponse } from "../acoustics/lip-response.js";
export { reedMechanics, type LipRecipe, type ReedMechanics } from "../acoustics/reed-mechanics.js";
export { flowCurve, type FlowCurve, type FlowPoint } from "../acoustics/flow-curve.js";
export { openingCurve, type OpeningCurve, type OpeningPoint } from "../acoustics/opening-curve.js";

export {
  assumptions,
  type Assumption,
  type AssumptionId,
  type Assumptions,
} from "../acoustics/assumptions.js";
export {
  lipPresets,
  type LipPreset,
  type LipPresetId,
  type LipState,
} from "../acoustics/lip-presets.js";
