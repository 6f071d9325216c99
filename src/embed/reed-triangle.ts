// The triangle alone, for a page that needs nothing else.
import { defineElement } from "./define-element.js";
import { TriangleElement } from "./triangle-element.js";

defineElement("reed-triangle", TriangleElement);

export { TriangleElement };
