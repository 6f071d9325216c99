// Defines the public elements that show a reed.
import { BenchElement } from "./bench-element.js";
import { defineElement } from "./define-element.js";
import { LampElement } from "./lamp-element.js";
import { LipElement } from "./lip-element.js";
import { PlanElement } from "./plan-element.js";
import { StandInsElement } from "./stand-ins-element.js";
import { TriangleElement } from "./triangle-element.js";

defineElement("reed-bench", BenchElement);
defineElement("reed-triangle", TriangleElement);
defineElement("reed-lamp", LampElement);
defineElement("reed-lip", LipElement);
defineElement("reed-stand-ins", StandInsElement);
defineElement("reed-plan", PlanElement);

export { BenchElement, LampElement, LipElement, PlanElement, StandInsElement, TriangleElement };
export type { ReedDetail } from "./embedded-reed.js";
