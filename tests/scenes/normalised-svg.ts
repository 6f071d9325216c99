/**
 * An element's drawing as text that a person can compare: no comments, one tag a line, numbers to one decimal,
 * ids renumbered in the order they appear.
 */
export function normalisedSvg(root: ParentNode): string {
  const drawing = root.querySelector("svg");
  if (!drawing) throw new Error("normalisedSvg: the element has no svg");
  const ids = new Map<string, string>();
  return drawing.outerHTML
    .replace(/<!--.*?-->/gs, "")
    .replace(/\s+/g, " ")
    .replace(/-?\d+\.\d+/g, (number) => String(Math.round(Number(number) * 10) / 10))
    .replace(/(id="|url\(#)([\w-]+)/g, (_, before: string, id: string) => {
      if (!ids.has(id)) ids.set(id, `id-${ids.size + 1}`);
      return before + ids.get(id)!;
    })
    .replace(/> </g, "><")
    .replace(/></g, ">\n<")
    .concat("\n");
}
