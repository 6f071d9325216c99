/** How much room the page has for the bench. */
export interface Room {
  /** One column, as grid-style.ts lays it out: narrower than 62 times the text size. */
  readonly narrow: boolean;
  /** A phone: the header folds its lesser tools away. */
  readonly compact: boolean;
  /** How tall the triangle may be, px at the usual text size of 16 px. */
  readonly triangleHeight: number;
  /** Whether the triangle may stay in sight while the rest scrolls: only where it leaves room for the rest. */
  readonly sticks: boolean;
}

/** Room for something to be worked on beside a triangle that stays, in units of the text size. */
const leftOver = 17;

/** The room on a page, from its size in units of the text size. */
export function roomOf(page: HTMLElement, height = window.innerHeight): Room {
  const rem = parseFloat(getComputedStyle(page).fontSize) || 16;
  const width = page.clientWidth / rem;
  const triangleHeight = width >= 62 ? 560 : width < 34 ? 270 : 400;
  const sticks = height / rem - triangleHeight / 16 >= leftOver;
  return { narrow: width < 62, compact: width < 34, triangleHeight, sticks };
}

/** The room of a sheet of paper: everything is shown, nothing is folded away. */
export const paper: Room = { narrow: false, compact: false, triangleHeight: 312, sticks: false };

/** Whether two rooms ask for the same page. */
export function isSameRoom(a: Room, b: Room): boolean {
  return (
    a.narrow === b.narrow &&
    a.compact === b.compact &&
    a.triangleHeight === b.triangleHeight &&
    a.sticks === b.sticks
  );
}
