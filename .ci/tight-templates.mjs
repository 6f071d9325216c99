// Templates are strings to the minifier: their indentation, and comments in styles, would be shipped as they are.

/** Tightens a style. Spaces inside values and selectors stay: some of them mean something. */
export function tightStyle(style) {
  return style
    .replace(/\/\*.*?\*\//gs, "")
    .replace(/\s+/g, " ")
    .replace(/ ?([{};,]) ?/g, "$1")
    .replace(/: /g, ":")
    .replace(/;}/g, "}")
    .replace(/(?<![\w.])0\./g, ".")
    .trim();
}

/** A vite plugin for the rooms that hold templates. Lines stay lines, so that source maps still point at them. */
export function tightTemplates() {
  return {
    name: "tight-templates",
    enforce: "pre",
    apply: "build",
    transform(code, id) {
      if (!/\/src\/(widgets\/|app\/|embed\/|scorm\/platform-lesson)[^?]*\.ts$/.test(id))
        return undefined;
      const styled = code.replace(
        /\bcss`([^`$]*)`/g,
        (_whole, style) => `css\`${tightStyle(style)}\``,
      );
      return { code: styled.replace(/\n[ \t]+/g, "\n"), map: null };
    },
  };
}

/** A vite plugin for data files: what is a remark to who reads the file is not shipped to who sees an element. */
export function withoutRemarks() {
  return {
    name: "without-remarks",
    enforce: "pre",
    apply: "build",
    transform(code, id) {
      if (!/\/src\/reed\/data\/[^?]*\.json$/.test(id)) return undefined;
      const { $comment: _remark, ...data } = JSON.parse(code);
      return { code: JSON.stringify(data), map: null };
    },
  };
}

/**
 * A vite plugin for builds of one file: what would be fetched later is there from the beginning. Left to the bundler,
 * every module would be wrapped to be run late.
 */
export function nothingLate() {
  return {
    name: "nothing-late",
    enforce: "pre",
    transform(code, id) {
      if (!/\/src\/[^?]*\.ts$/.test(id)) return undefined;
      const early = [];
      const changed = code.replace(/\bimport\(("[^"]+")\)/g, (_whole, from) => {
        early.push(`import * as late${early.length} from ${from};`);
        return `Promise.resolve(late${early.length - 1})`;
      });
      return early.length === 0 ? undefined : { code: early.join("") + changed, map: null };
    },
  };
}

/** Groups of the catalogue that no element shows: the guided sheet, and the dialog that makes snippets. */
const words = ["measure: measureWords,", "embed: embedWords,"];

/** A vite plugin for elements: they do not carry the words of pages that only the app has. */
export function withoutAppWords() {
  return {
    name: "without-app-words",
    enforce: "pre",
    transform(code, id) {
      if (!id.endsWith("/src/reed/catalogue.ts")) return undefined;
      return { code: words.reduce(withoutGroup, code), map: null };
    },
  };
}

function withoutGroup(code, group) {
  if (!code.includes(group)) throw new Error(`without-app-words: no "${group}" in the catalogue`);
  return code.replace(group, "");
}

/** A vite plugin for the triangle alone: it tells nobody how a feature is measured. */
export function withoutHowTo() {
  return {
    name: "without-how-to",
    enforce: "pre",
    transform(code, id) {
      if (!id.endsWith("/data/bassoon-model.json")) return undefined;
      const model = JSON.parse(code);
      const features = model.features.map((feature) => ({ ...feature, howToMeasure: "" }));
      return { code: JSON.stringify({ ...model, features }), map: null };
    },
  };
}
