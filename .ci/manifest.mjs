// The manifest of the public elements and their types, both read from the sources; a test holds them against the real thing.
import { mkdirSync, writeFileSync } from "node:fs";
import { cli } from "@custom-elements-manifest/analyzer/cli.js";

/** What an element has for its own parts and for the browser, and no page should use. */
const inward = new Set([
  "said",
  "shared",
  "picked",
  "pointed",
  "moves",
  "formResetCallback",
  "formDisabledCallback",
  "formAssociated",
]);

const isPublic = ({ name, privacy }) =>
  privacy !== "private" && privacy !== "protected" && !name.startsWith("#") && !inward.has(name);

function publicDeclaration({
  members = [],
  attributes = [],
  events = [],
  superclass: _class,
  mixins: _mixins,
  ...rest
}) {
  return {
    ...rest,
    superclass: { name: "HTMLElement" },
    members: members.filter(isPublic),
    attributes: attributes.filter(isPublic),
    // Events whose name is a variable in the source are told by name in the comment.
    events: events.filter(({ name }) => name !== "type"),
  };
}

export async function readManifest(root) {
  const argv = ["analyze", "--litelement", "--quiet", "--globs", "src/embed/*.ts"];
  const manifest = await cli({ argv, cwd: root, noWrite: true });
  const modules = manifest.modules.flatMap((module) => {
    const declarations = (module.declarations ?? []).filter(({ tagName }) => tagName);
    if (declarations.length === 0) return [];
    const names = declarations.map(({ tagName, name }) => ({
      kind: "custom-element-definition",
      name: tagName,
      declaration: { name, module: "reed-elements.js" },
    }));
    return [
      {
        ...module,
        path: "reed-elements.js",
        declarations: declarations.map(publicDeclaration),
        exports: names,
      },
    ];
  });
  return { schemaVersion: manifest.schemaVersion, readme: "", modules };
}

const typesOfOthers = {
  reed: "string",
  model: "ReedModel",
  values: "Values",
  text: "unknown",
  step: "number",
  run: "LessonState | null",
  source: "Lesson | string | null",
};

/** What an event carries that is not about a reed. */
const detailOf = (event) => (/lesson|step-turned/.test(event) ? "LessonDetail" : "ReedDetail");

function typeOf({ name, type }) {
  return typesOfOthers[name] ?? type?.text ?? "unknown";
}

function interfaceOf({ name, description = "", members }) {
  const lines = members
    .filter((one) => !one.static)
    .map((one) => {
      const about = one.description ? `  /** ${one.description.replaceAll("\n", " ")} */\n` : "";
      if (one.kind === "method") return `${about}  ${one.name}(): void;`;
      const type = typeOf(one);
      // What is set may be looser than what is read.
      if (one.name === "model")
        return `${about}  get model(): ReedModel;\n  set model(model: ReedModel | string | null);`;
      return `${about}  ${one.readonly ? "readonly " : ""}${one.name}: ${type};`;
    });
  return `/** ${description.trim().replaceAll("\n", " ")} */\nexport interface ${name} extends HTMLElement {\n${lines.join("\n")}\n}\nexport const ${name}: { new (): ${name}; readonly version: string };\n`;
}

function typesOf({ modules }) {
  const all = modules.flatMap(({ declarations }) => declarations);
  const tags = all.map(({ tagName, name }) => `    "${tagName}": ${name};`).join("\n");
  const events = [...new Set(all.flatMap((one) => one.events.map(({ name }) => name)))].filter(
    (name) => name.startsWith("reed-"),
  );
  return `import type { Blend, ReedModel, Values } from "../lib/engine.js";
import type { Lesson, LessonState } from "../lib/lesson.js";

/** What every event of an element with a reed carries as its \`detail\`. */
export interface ReedDetail {
  readonly reed: string;
  readonly values: Values;
  /** High, low, loud; null while the readings cannot place the reed. */
  readonly blend: Blend | null;
  readonly target: string;
  readonly layers: readonly string[];
  readonly locked: readonly string[];
}

/** What every event of a lesson carries as its \`detail\`. */
export interface LessonDetail {
  readonly lesson: string;
  /** Counted from 1. */
  readonly step: number;
  /** The exercise that was worked on, by its name in \`run\`. */
  readonly exercise?: string;
  readonly grade?: "right" | "partly" | "wrong";
  readonly done: number;
  readonly all: number;
  readonly run: LessonState;
}

${all.map(interfaceOf).join("\n")}
declare global {
  interface HTMLElementTagNameMap {
${tags}
  }
  interface HTMLElementEventMap {
${events.map((name) => `    "${name}": CustomEvent<${detailOf(name)}>;`).join("\n")}
  }
}
`;
}

export async function writeManifest(root) {
  const manifest = await readManifest(root);
  mkdirSync(`${root}dist/elements`, { recursive: true });
  writeFileSync(
    `${root}dist/elements/custom-elements.json`,
    `${JSON.stringify(manifest, null, 2)}\n`,
  );
  writeFileSync(`${root}dist/elements/reed-elements.d.ts`, typesOf(manifest));
  const triangle = 'export { TriangleElement, type ReedDetail } from "./reed-elements.js";\n';
  writeFileSync(`${root}dist/elements/reed-triangle.d.ts`, triangle);
}
