// Templates are strings to the minifier: their indentation, and comments in styles, would be shipped as they are.

/** Tightens the style of one css`…`. Spaces inside values and selectors stay: some of them mean something. */
function tightStyle(style) {
  return style
    .replace(/\/\*.*?\*\//gs, "")
    .replace(/\s+/g, " ")
    .replace(/ ?([{};,]) ?/g, "$1")
    .replace(/: /g, ":")
    .replace(/;}/g, "}");
}

/** A vite plugin for the rooms that hold templates. Lines stay lines, so that source maps still point at them. */
export function tightTemplates() {
  return {
    name: "tight-templates",
    enforce: "pre",
    apply: "build",
    transform(code, id) {
      if (!/\/src\/(widgets|app|embed)\/[^?]*\.ts$/.test(id)) return undefined;
      const styled = code.replace(
        /\bcss`([^`$]*)`/g,
        (_whole, style) => `css\`${tightStyle(style)}\``,
      );
      return { code: styled.replace(/\n[ \t]+/g, "\n"), map: null };
    },
  };
}
