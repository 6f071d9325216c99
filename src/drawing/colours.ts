import { color as parseColour } from "d3";
import type { Blend } from "../engine/blend.js";

/** The three corner colours, in the order high, low, loud. */
export type CornerColours = readonly [high: string, low: string, loud: string];

/** Grounds and corner colours of both themes; proven apart for normal and colour-deficient vision in colours.test.ts. */
export const themes = {
  paper: { ground: "#faf7f1", ink: "#221d18", corners: ["#1b487c", "#609d69", "#8a0509"] },
  night: { ground: "#191613", ink: "#f1eadf", corners: ["#608de0", "#bfe79e", "#da5a4b"] },
} as const satisfies Record<string, { ground: string; ink: string; corners: CornerColours }>;

type Oklab = readonly [lightness: number, a: number, b: number];

/**
 * The colour of a blend: the mean of the three corner colours in OKLab, weighted by the shares.
 * A balanced reed is near grey.
 *
 * Source  B. Ottosson (2020), A perceptual color space for image processing (OKLab matrices).
 * @example blendColour([1, 0, 0], themes.paper.corners) → "#1b487c"
 */
export function blendColour(blend: Blend, corners: CornerColours): string {
  const mixed: [number, number, number] = [0, 0, 0];
  corners.forEach((colour, k) => {
    const lab = toOklab(colour);
    for (const i of [0, 1, 2] as const) mixed[i] += blend[k]! * lab[i];
  });
  return fromOklab(mixed);
}

function toOklab(colour: string): Oklab {
  const rgb = parseColour(colour)?.rgb();
  if (!rgb) throw new RangeError(`blendColour: colour is "${colour}"; allowed: a CSS colour`);
  const [r, g, b] = [linear(rgb.r / 255), linear(rgb.g / 255), linear(rgb.b / 255)] as const;
  const l = Math.cbrt(0.4122214708 * r + 0.5363325363 * g + 0.0514459929 * b);
  const m = Math.cbrt(0.2119034982 * r + 0.6806995451 * g + 0.1073969566 * b);
  const s = Math.cbrt(0.0883024619 * r + 0.2817188376 * g + 0.6299787005 * b);
  return [
    0.2104542553 * l + 0.793617785 * m - 0.0040720468 * s,
    1.9779984951 * l - 2.428592205 * m + 0.4505937099 * s,
    0.0259040371 * l + 0.7827717662 * m - 0.808675766 * s,
  ];
}

function fromOklab([lightness, a, b]: Oklab): string {
  const l = (lightness + 0.3963377774 * a + 0.2158037573 * b) ** 3;
  const m = (lightness - 0.1055613458 * a - 0.0638541728 * b) ** 3;
  const s = (lightness - 0.0894841775 * a - 1.291485548 * b) ** 3;
  const channels = [
    4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s,
    -1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s,
    -0.0041960863 * l - 0.7034186147 * m + 1.707614701 * s,
  ];
  return `#${channels.map((value) => hexPair(encoded(value))).join("")}`;
}

function linear(value: number): number {
  return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
}

function encoded(value: number): number {
  return value <= 0.0031308 ? 12.92 * value : 1.055 * value ** (1 / 2.4) - 0.055;
}

function hexPair(value: number): string {
  const byte = Math.round(255 * Math.min(1, Math.max(0, value)));
  return byte.toString(16).padStart(2, "0");
}
