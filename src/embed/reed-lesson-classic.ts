// The lesson as a classic script of its own: it carries all lessons and the readers of lesson files, because a page
// from a disk can fetch neither.
import { defineElement } from "./define-element.js";
import { LessonElement } from "./lesson-element.js";

defineElement("reed-lesson", LessonElement);
