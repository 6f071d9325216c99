/** How much room the page has for the bench. */
export interface Room {
  /** One column, as app-style.ts lays it out: narrower than 62 times the text size. */
  readonly narrow: boolean;
  /** A phone: the header folds its lesser tools away. */
  readonly compact: boolean;
  /** How tall the triangle may be, px at the usual text size: in one column it stays in sight and must leave room. */
  readonly triangleHeight: number;
}

/** The room on a page, from its width in units of the text size. */
export function roomOf(page: HTMLElement): Room {
  const rem = parseFloat(getComputedStyle(page).fontSize) || 16;
  const width = page.clientWidth / rem;
  const triangleHeight = width >= 62 ? 560 : width < 34 ? 270 : 400;
  return { narrow: width < 62, compact: width < 34, triangleHeight };
}

/** Whether two rooms ask for the same page. */
export function sameRoom(a: Room, b: Room): boolean {
  return a.narrow === b.narrow && a.compact === b.compact && a.triangleHeight === b.triangleHeight;
}
