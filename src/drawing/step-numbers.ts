import type { Point } from "../engine/frame.js";
import { boxAround, coveredBy, type Box } from "./name-places.js";

/** An arrow as the two places that it joins, px. */
export type Ends = readonly [from: Point, to: Point];

/** Where the number of an arrow stands. */
export interface StepNumber {
  readonly at: Point;
  /** A line to the middle of its arrow, where it cannot stand close beside it. */
  readonly leader?: Ends;
}

/** What numbers keep to. */
export interface NumberRoom {
  /** From the middle of an arrow to its number, and the side of the square that a number needs, px. */
  readonly distance: number;
  /** Size of the drawing, px. */
  readonly width: number;
  readonly height: number;
  /** What should not be covered. */
  readonly taken: readonly Box[];
}

/** Places that are tried, in distances from the middle: close beside it first. */
const rings = [1, 1.4, 1.9, 2.5, 3.2, 4, 5, 6.5, 8];
const directions = 24;
/** A number farther off than this, in the same, is led to its arrow. */
const close = 1.2;
/** What is worse than standing one distance farther off: on a shaft or a leader, on something that is taken. */
const cost = { shaft: 3.5, leader: 3, taken: 5, turned: 0.4 };

/**
 * Where the numbers of arrows laid head to tail stand: beside the middle of each, on the side away from the others; where
 * that is not free, farther off with a line that leads to the arrow. Every arrow gets one, inside the drawing, and
 * none stands on another.
 *
 * Unit    px.
 *
 * @example stepNumbers([[[0, 50], [100, 50]]], { distance: 10, width: 100, height: 100, taken: [] })
 *          → [{ at: [50, 40] }]
 */
export function stepNumbers(arrows: readonly Ends[], room: NumberRoom): StepNumber[] {
  const placed: StepNumber[] = [];
  arrows.forEach((_, i) => placed.push(bestPlace(arrows, i, placed, room)));
  return placed;
}

function bestPlace(
  arrows: readonly Ends[],
  index: number,
  placed: readonly StepNumber[],
  room: NumberRoom,
): StepNumber {
  const { distance, taken } = room;
  const middle = middleOf(arrows[index]!);
  const away = awayFromOthers(arrows, index);
  const others = placed.map(({ at }) => boxAround(at, distance, distance));
  let best: { readonly one: StepNumber; readonly cost: number } | undefined;
  for (const { at, turned } of candidates(middle, away, room)) {
    const box = boxAround(at, distance, distance);
    if (coveredBy(box, others) > 0) continue;
    const far = Math.hypot(at[0] - middle[0], at[1] - middle[1]) / distance;
    const one: StepNumber =
      far > close ? { at, leader: [edgeToward(at, middle, distance), middle] } : { at };
    const crossed = [...arrows, ...placed.flatMap(({ leader }) => (leader ? [leader] : []))];
    const all =
      far +
      cost.turned * turned +
      cost.taken * (coveredBy(box, taken) / distance ** 2) +
      cost.shaft * crossed.filter((line) => distanceTo(line, at) < 0.65 * distance).length +
      cost.leader *
        (one.leader
          ? placed.filter((p) => distanceTo(one.leader!, p.at) < 0.65 * distance).length
          : 0);
    if (!best || all < best.cost - 1e-9) best = { one, cost: all };
  }
  return best?.one ?? { at: middle };
}

/** Places around the middle of an arrow that lie in the drawing, and how far each is turned away from the best side, 0…1. */
function candidates(middle: Point, away: Point, { distance, width, height }: NumberRoom) {
  const half = distance / 2;
  const inside = (value: number, whole: number): boolean => value >= half && value <= whole - half;
  // An arrow of a reed outside the triangle may lie out of the drawing: its number then keeps to the border.
  const from: Point = [kept(middle[0], half, width), kept(middle[1], half, height)];
  return rings.flatMap((ring) =>
    Array.from({ length: directions }, (_, k) => {
      const angle = (2 * Math.PI * k) / directions;
      const [c, s] = [Math.cos(angle), Math.sin(angle)];
      const at: Point = [
        from[0] + ring * distance * (c * away[0] - s * away[1]),
        from[1] + ring * distance * (s * away[0] + c * away[1]),
      ];
      // Square to the arrow on either side is better than along it.
      return { at, turned: k === 0 ? 0 : 0.3 + 0.7 * Math.abs(s) };
    }).filter(({ at }) => inside(at[0], width) && inside(at[1], height)),
  );
}

/** Square to the arrow, away from the middles of the others. */
function awayFromOthers(arrows: readonly Ends[], index: number): Point {
  const [from, to] = arrows[index]!;
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.hypot(dx, dy);
  const normal: Point = length > 0 ? [dy / length, -dx / length] : [0, -1];
  const middle = middleOf(arrows[index]!);
  const toward = arrows
    .filter((_, i) => i !== index)
    .map(middleOf)
    .reduce((sum, [x, y]) => sum + normal[0] * (x - middle[0]) + normal[1] * (y - middle[1]), 0);
  return toward > 0 ? [-normal[0], -normal[1]] : normal;
}

function middleOf([from, to]: Ends): Point {
  return [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
}

/** Where a line from a number to a place begins: beside the digit. */
function edgeToward(at: Point, to: Point, distance: number): Point {
  const length = Math.hypot(to[0] - at[0], to[1] - at[1]);
  const part = (0.6 * distance) / length;
  return [at[0] + part * (to[0] - at[0]), at[1] + part * (to[1] - at[1])];
}

function distanceTo([[ax, ay], [bx, by]]: Ends, [x, y]: Point): number {
  const square = (bx - ax) ** 2 + (by - ay) ** 2;
  const along = square > 0 ? ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / square : 0;
  const t = kept(along, 0, 1);
  return Math.hypot(x - ax - t * (bx - ax), y - ay - t * (by - ay));
}

function kept(value: number, margin: number, whole: number): number {
  return Math.min(whole - margin, Math.max(margin, value));
}
