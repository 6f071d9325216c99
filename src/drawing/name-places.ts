import type { Point } from "../engine/frame.js";

/** A rectangle of the drawing, px. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** A mark that wants its name beside it. */
export interface NamedMark {
  readonly at: Point;
  /** From the middle of the mark to where its name may begin, px. */
  readonly clearance: number;
  /** Size of the name, px. */
  readonly width: number;
  readonly height: number;
}

/**
 * Where the names of marks stand: around their marks, below first, wherever they cover least of what is
 * there already; in order, so that a name also keeps clear of the names before it.
 *
 * Shape   marks, what must not be covered, the size of the drawing → the middle of each name, or undefined where a name
 *         is wider than the drawing.
 * Unit    px.
 *
 * @example placeNames([{ at: [50, 50], clearance: 10, width: 20, height: 10 }], [], { width: 100, height: 100 })
 *          → [[50, 65]]
 */
export function placeNames(
  marks: readonly NamedMark[],
  taken: readonly Box[],
  room: { readonly width: number; readonly height: number },
): (Point | undefined)[] {
  const full = [
    ...taken,
    ...marks.map(({ at, clearance }) => boxAround(at, 2 * clearance, 2 * clearance)),
  ];
  return marks.map((mark) => {
    if (mark.width > room.width) return undefined;
    const best = candidates(mark)
      .map(([x, y]) => inside([x, y], mark, room))
      .map((middle) => ({ middle, cost: coveredBy(boxOf(middle, mark), full) }))
      .reduce((least, one) => (one.cost < least.cost - 1e-9 ? one : least));
    full.push(boxOf(best.middle, mark));
    return best.middle;
  });
}

function candidates({ at: [x, y], clearance, width, height }: NamedMark): Point[] {
  const [aside, over] = [clearance + width / 2 + 2, clearance + height / 2];
  return [
    [x, y + over],
    [x, y - over],
    [x + aside, y],
    [x - aside, y],
    [x, y + over + height],
    [x, y - over - height],
    [x + aside, y - over],
    [x - aside, y - over],
    [x + aside, y + over],
    [x - aside, y + over],
    [x, y - over - 2 * height],
    [x + aside, y - over - 2 * height],
    [x - aside, y - over - 2 * height],
  ];
}

/** Moved back where it would stand out of the drawing. */
function inside(
  [x, y]: Point,
  { width, height }: NamedMark,
  room: { width: number; height: number },
): Point {
  const kept = (value: number, half: number, whole: number): number =>
    Math.min(whole - half, Math.max(half, value));
  return [kept(x, width / 2, room.width), kept(y, height / 2, room.height)];
}

function boxOf(middle: Point, { width, height }: NamedMark): Box {
  return boxAround(middle, width, height);
}

/** The box of a size around a place. */
export function boxAround([x, y]: Point, width: number, height: number): Box {
  return { left: x - width / 2, top: y - height / 2, right: x + width / 2, bottom: y + height / 2 };
}

/** Area of a box that others lie over, px². */
export function coveredBy(box: Box, others: readonly Box[]): number {
  return others.reduce((sum, other) => {
    const width = Math.min(box.right, other.right) - Math.max(box.left, other.left);
    const height = Math.min(box.bottom, other.bottom) - Math.max(box.top, other.top);
    return width > 0 && height > 0 ? sum + width * height : sum;
  }, 0);
}
