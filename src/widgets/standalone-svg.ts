import type { PictureWords } from "../drawing/png-text.js";

/** What a style sheet gives to a drawing, and what it is where nothing is said. */
const drawn: Readonly<Record<string, string>> = {
  fill: "rgb(0, 0, 0)",
  "fill-opacity": "1",
  stroke: "none",
  "stroke-width": "1px",
  "stroke-dasharray": "none",
  "stroke-linejoin": "miter",
  "stroke-linecap": "butt",
  "stroke-opacity": "1",
  "paint-order": "normal",
  "stop-color": "rgb(0, 0, 0)",
  "stop-opacity": "1",
  "font-family": "",
  "font-size": "",
  "font-weight": "400",
  "font-style": "normal",
};
/** Only words need a font, only stops a stop colour. */
const onlyFor: Readonly<Record<string, string>> = { font: "text", stop: "stop" };
/** For pointers and readers of the page, not for a picture. */
const left = ["class", "style", "part", "role", "data-feature", "data-id", "tabindex"];

/**
 * A drawing of the page as a file that stands alone: styles of the page written into it, title and description
 * inside (SVG 2, section 5.8), on a ground of its own.
 */
export function standaloneSvg(source: SVGSVGElement, words: PictureWords, ground: string): string {
  const copy = source.cloneNode(true) as SVGSVGElement;
  writeStyles(source, copy);
  for (const unseen of copy.querySelectorAll(".grasp, [data-unseen]")) unseen.remove();
  tidy(copy);
  const { title, description } = words;
  copy.prepend(
    labelled("title", "title", title),
    labelled("desc", "description", description),
    groundOf(copy, ground),
  );
  copy.removeAttribute("aria-label");
  copy.setAttribute("role", "img");
  copy.setAttribute("aria-labelledby", "title description");
  return `<?xml version="1.0" encoding="UTF-8"?>\n${new XMLSerializer().serializeToString(copy)}\n`;
}

function writeStyles(source: Element, copy: Element): void {
  const style = getComputedStyle(source);
  if (style.display === "none") copy.setAttribute("data-unseen", "");
  for (const [name, usual] of Object.entries(drawn)) {
    const only = onlyFor[name.split("-")[0]!];
    const value = style.getPropertyValue(name);
    if ((only && only !== source.localName) || value === "" || value === usual) continue;
    copy.setAttribute(name, value);
  }
  const children = [...copy.children];
  [...source.children].forEach((child, i) => writeStyles(child, children[i]!));
}

/** Takes out what only the page needs: names for styles, marks for pointers, comments of the renderer. */
function tidy(copy: SVGSVGElement): void {
  for (const element of [copy, ...copy.querySelectorAll("*")])
    for (const name of left) element.removeAttribute(name);
  const walker = document.createTreeWalker(copy, NodeFilter.SHOW_COMMENT);
  const comments: Node[] = [];
  while (walker.nextNode()) comments.push(walker.currentNode);
  for (const comment of comments) (comment as Comment).remove();
}

function labelled(name: "title" | "desc", id: string, words: string): SVGElement {
  const element = document.createElementNS("http://www.w3.org/2000/svg", name);
  element.id = id;
  element.textContent = words;
  return element;
}

function groundOf(svg: SVGSVGElement, fill: string): SVGElement {
  const rect = document.createElementNS("http://www.w3.org/2000/svg", "rect");
  const [, , width, height] = svg.getAttribute("viewBox")!.split(" ");
  rect.setAttribute("width", width!);
  rect.setAttribute("height", height!);
  rect.setAttribute("fill", fill);
  return rect;
}
