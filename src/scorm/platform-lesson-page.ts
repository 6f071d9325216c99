// The script of a package's page: puts the lesson that the page carries on the screen.
import { define } from "../widgets/define.js";
import { lessonDataId, type PackagedLesson } from "./packaged-lesson.js";
import { PlatformLesson } from "./platform-lesson.js";

define("platform-lesson", PlatformLesson);

const element = document.createElement("platform-lesson") as PlatformLesson;
const data = document.querySelector(`#${lessonDataId}`)!.textContent;
element.packaged = JSON.parse(data) as PackagedLesson;
document.body.append(element);
