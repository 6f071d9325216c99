/** Whether the page is one column, as app-style.ts lays it out: narrower than 62 times the text size. */
export function isNarrow(): boolean {
  return widthInRem() < 62;
}

/** How tall the triangle may be, px at the usual text size: in one column it stays in sight and must leave room. */
export function triangleHeight(): number {
  const width = widthInRem();
  if (width >= 62) return 560;
  return width < 34 ? 270 : 400;
}

function widthInRem(): number {
  const rem = parseFloat(getComputedStyle(document.documentElement).fontSize) || 16;
  return document.documentElement.clientWidth / rem;
}
