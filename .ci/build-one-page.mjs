// The whole product in one file: opens from a disk, and asks nobody for anything.
import { lessonFiles } from "./lesson-files.mjs";
import { readFileSync, writeFileSync } from "node:fs";
import { build } from "vite";
import { nothingLate, tightStyle, tightTemplates, withoutRemarks } from "./tight-templates.mjs";

/** The policy that the file carries: whatever it holds, nothing can be fetched. */
const policy =
  "default-src 'none'; script-src 'unsafe-inline'; style-src 'unsafe-inline'; img-src data: blob:; base-uri 'none'; form-action 'none'";

async function appAsScript(root) {
  const [{ output }] = await build({
    root,
    configFile: false,
    logLevel: "warn",
    plugins: [lessonFiles(), tightTemplates(), withoutRemarks(), nothingLate()],
    build: {
      write: false,
      target: "es2022",
      lib: {
        entry: "src/app/reedpoint-app.ts",
        formats: ["iife"],
        name: "Reedpoint",
        fileName: () => "app.js",
      },
      rolldownOptions: { output: { minify: true, codeSplitting: false } },
    },
  });
  return output[0].code;
}

/** A script that stands inside a page must not say what would end it there. */
function insidePage(code) {
  return code.replaceAll("</script", "<\\/script").replaceAll("<!--", "<\\!--");
}

export async function buildOnePage(root) {
  const code = insidePage(await appAsScript(root));
  const style = tightStyle(readFileSync(`${root}src/app/page.css`, "utf8"));
  const page = readFileSync(`${root}index.html`, "utf8")
    .replace(/<title>.*<\/title>/, "<title>Reedpoint in one file</title>")
    .replace(
      / *<link rel="stylesheet"[^>]*>\n/,
      () =>
        `    <meta http-equiv="Content-Security-Policy" content="${policy}" />\n    <meta name="reedpoint-state" content="" />\n    <style>${style}</style>\n`,
    )
    .replace(/ *<script type="module"[^>]*><\/script>\n/, "")
    .replace(/ *<\/body>/, () => `    <script>${code}</script>\n  </body>`);
  writeFileSync(`${root}dist/reedpoint.html`, page);
}
