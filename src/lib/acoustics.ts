export { openingArea, cornerClosing } from "../acoustics/opening.js";
export { flow } from "../acoustics/flow.js";
export { openFraction } from "../acoustics/closing-law.js";
export {
  cantileverFrequencies,
  cantileverTipStiffness,
  type Cantilever,
} from "../acoustics/cantilever.js";
export { bladeThickness, type BladeRecipe } from "../acoustics/blade.js";
export type { LipRecipe } from "../acoustics/reed-mechanics.js";
export { lipResponse, type LipResponse } from "../acoustics/lip-response.js";
export type { LipState } from "../acoustics/lip-presets.js";
export {
  assumptions,
  type Assumption,
  type AssumptionId,
  type Assumptions,
} from "../acoustics/assumptions.js";
