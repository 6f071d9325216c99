// Defines every public element; the module that another page loads.
import { defineElement } from "./define-element.js";
import { LessonElement } from "./lesson-element.js";

export * from "./elements-with-a-reed.js";

defineElement("reed-lesson", LessonElement);

export { LessonElement };
export type { LessonDetail } from "./lesson-element.js";
