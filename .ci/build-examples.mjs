// The page of examples: each snippet stands there twice, to be read and running. Scripts inside snippets go to a file,
// so that the page keeps to the strict policy.
import { readFileSync, readdirSync, writeFileSync } from "node:fs";
import { tightStyle } from "./tight-templates.mjs";

const escaped = (text) =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");

function readExample(path) {
  const [, about, code] = /^<!-- (.*?) -->\n(.*)$/s.exec(readFileSync(path, "utf8"));
  const scripts = [];
  const running = code.replace(/<script type="module">(.*?)<\/script>\n/gs, (_whole, script) => {
    scripts.push(`{${script}}`);
    return "";
  });
  return { about, code: code.trimEnd(), running, scripts };
}

export function buildExamples(root) {
  const folder = `${root}src/embed/examples/`;
  const examples = readdirSync(folder)
    .sort()
    .map((file) => readExample(folder + file));
  const sections = examples.map(
    ({ about, code, running }, index) =>
      `<section>\n<h2>${index + 1}. ${about}</h2>\n<pre tabindex="0"><code>${escaped(code)}</code></pre>\n<div class="running">\n${running}</div>\n</section>`,
  );
  const page = readFileSync(`${root}src/embed/examples.html`, "utf8").replace(
    "<!-- examples -->",
    () => sections.join("\n"),
  );
  writeFileSync(`${root}dist/examples.html`, page);
  writeFileSync(
    `${root}dist/assets/examples.js`,
    `${examples.flatMap(({ scripts }) => scripts).join("\n")}\n`,
  );
  const styles = ["src/app/page.css", "src/embed/examples.css"];
  writeFileSync(
    `${root}dist/assets/examples.css`,
    `${styles.map((file) => tightStyle(readFileSync(root + file, "utf8"))).join("")}\n`,
  );
}
