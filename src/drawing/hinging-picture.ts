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

/** Height of the blade over the middle line, 0 at the corners: a parabola, cut off the flatter the stronger the hinges. */
function rise(u: number, hinging: number): number {
  const curve = 1 - u * u;
  // Hinges sit at a third and two thirds of the half width: the blade is a plank from each to the next.
  const knees = hinging >= 0.75 ? [0, 0.45, 0.8, 1] : [0, 0.6, 1];
  const a = Math.abs(u);
  const k = Math.max(
    1,
    knees.findIndex((knee) => a <= knee),
  );
  const [from, to] = [knees[k - 1]!, knees[k]!];
  const at = (x: number): number => (x < 0.01 ? 0.78 : 0.92 * (1 - x * x));
  const plank = at(from) + ((a - from) / (to - from)) * (at(to) - at(from));
  const share = Math.min(1, hinging * 1.4);
  return 0.5 * ((1 - share) * curve + share * plank);
}
