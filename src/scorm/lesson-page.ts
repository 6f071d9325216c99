import { dataText, lessonDataId, type PackagedLesson } from "./packaged-lesson.js";
import { xmlText } from "./xml-text.js";

/** The files that the pages of a package share. */
export const scriptFile = "lesson.js";
export const styleFile = "lesson.css";

/** The page of a package that plays one lesson. It asks for its script and its style, and for nothing else. */
export function lessonPage(packaged: PackagedLesson, needsScript: string): string {
  return `<!doctype html>
<html lang="en">
  <head>
    <meta charset="utf-8" />
    <meta name="viewport" content="width=device-width, initial-scale=1" />
    <title>${xmlText(packaged.lesson.title)}</title>
    <link rel="icon" href="data:," />
    <link rel="stylesheet" href="${styleFile}" />
  </head>
  <body>
    <noscript>${xmlText(needsScript)}</noscript>
    <script type="application/json" id="${lessonDataId}">${dataText(packaged)}</script>
    <script src="${scriptFile}"></script>
  </body>
</html>
`;
}
