import { round } from "./triangle-layout.js";

/**
 * Half of the tip opening as it closes under a finger, drawn end-on: a blade without hinges closes as one curve, one with
 * hinges gives at certain places and lies flat between them.
 *
 * Shape   hinging 0…1 (0, ¼, ½, ¾, 1 are the five pictures), width and height in px → the upper and the lower blade as paths
 *         around the middle.
 */
export function hingingPicture(
  hinging: number,
  width: number,
  height: number,
): { readonly upper: string; readonly lower: string } {
  const half = width / 2;
  const places = Array.from({ length: 41 }, (_, i) => i / 20 - 1);
  const line = (sign: 1 | -1): string =>
    places
      .map(
        (u, i) =>
          `${i === 0 ? "M" : "L"}${round(u * half)},${round(sign * rise(u, hinging) * height)}`,
      )
      .join("");
  return { upper: line(-1), lower: line(1) };
}

/** A corner of a hinged blade: how far from the middle, in half widths, and how high over the middle line. */
type Knee = readonly [at: number, height: number];

const oneHinge: readonly Knee[] = [
  [0, 0.78],
  [0.6, 0.59],
  [1, 0],
];
const twoHinges: readonly Knee[] = [
  [0, 0.76],
  [0.42, 0.74],
  [0.78, 0.26],
  [1, 0],
];

/** Height of the blade over the middle line, 0 at the corners: a parabola that gives way to flat planks between hinges. */
function rise(u: number, hinging: number): number {
  const curve = 1 - u * u;
  // Of two pictures with as many hinges, the stronger one bends more sharply.
  const [knees, share] = hinging >= 0.75 ? [twoHinges, 2 * hinging - 1] : [oneHinge, 1.4 * hinging];
  return 0.5 * ((1 - share) * curve + share * plank(Math.abs(u), knees));
}

function plank(u: number, knees: readonly Knee[]): number {
  const next = Math.max(
    1,
    knees.findIndex(([at]) => u <= at),
  );
  const [[from, low], [to, high]] = [knees[next - 1]!, knees[next]!];
  return low + ((u - from) / (to - from)) * (high - low);
}
