export * from "./engine-alone.js";
export { cohortSummary, type CohortSummary, type Matrix2 } from "../engine/cohort-summary.js";
export { blendToLogRatio, logRatioToBlend, type LogRatio } from "../engine/log-ratio.js";
export { ModelError } from "../reed/model-error.js";
export { readModel } from "../reed/read-model.js";
export { readActions } from "../reed/read-actions.js";
export { readQualities } from "../reed/read-qualities.js";
