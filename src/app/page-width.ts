/** Whether the page is one column, as app-style.ts lays it out: narrower than 62 times the text size. */
export function isNarrow(): boolean {
  const rem = parseFloat(getComputedStyle(document.documentElement).fontSize) || 16;
  return document.documentElement.clientWidth < 62 * rem;
}
