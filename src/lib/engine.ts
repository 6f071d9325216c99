export * from "./engine-alone.js";
export { ModelError } from "../reed/model-error.js";
export { readModel } from "../reed/read-model.js";
export { readActions } from "../reed/read-actions.js";
export { readQualities } from "../reed/read-qualities.js";
