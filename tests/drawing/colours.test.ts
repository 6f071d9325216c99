import { readFileSync } from "node:fs";
import { join } from "node:path";
import { converter, differenceCiede2000, formatHex, interpolate, wcagContrast } from "culori";
import { describe, expect, test } from "vitest";
import { blendColour, themes, type CornerColours } from "../../src/drawing/colours.js";
import type { Blend } from "../../src/engine/blend.js";
import { seeded } from "../engine/random-model.js";

const toRgb = converter("rgb");
const toLinear = converter("lrgb");
const toOklab = converter("oklab");
const difference = differenceCiede2000();

describe("the colour of a blend", () => {
  const bytes = (hex: string): number[] =>
    [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));
  const gap = (a: string, b: string): number =>
    Math.max(...bytes(a).map((byte, i) => Math.abs(byte - bytes(b)[i]!)));

  test.each(Object.entries(themes))(
    "%s: is the mean of the corners in OKLab",
    (_name, { corners }) => {
      for (let seed = 1; seed <= 100; seed += 1) {
        const random = seeded(seed);
        const parts = [random(), random(), random()];
        const sum = parts[0]! + parts[1]! + parts[2]!;
        const blend = parts.map((part) => part / sum) as unknown as Blend;
        const labs = corners.map((colour) => toOklab(colour)!);
        const mean = (key: "l" | "a" | "b"): number =>
          labs.reduce((total, lab, k) => total + blend[k]! * lab[key], 0);
        const expected = formatHex({ mode: "oklab", l: mean("l"), a: mean("a"), b: mean("b") });
        // Both round to whole bytes, and the matrices of the two differ in the eighth digit.
        expect(gap(blendColour(blend, corners), expected), `seed ${seed}`).toBeLessThanOrEqual(1);
      }
    },
  );

  test.each(Object.entries(themes))(
    "%s: is the corner's own colour in a corner",
    (_name, { corners }) => {
      expect(blendColour([1, 0, 0], corners)).toBe(corners[0]);
      expect(blendColour([0, 1, 0], corners)).toBe(corners[1]);
      expect(blendColour([0, 0, 1], corners)).toBe(corners[2]);
    },
  );

  test("half-way between two corners is what an independent interpolation gives", () => {
    const [high, low] = themes.paper.corners;
    const expected = formatHex(interpolate([high, low], "oklab")(0.5));
    expect(gap(blendColour([0.5, 0.5, 0], themes.paper.corners), expected)).toBeLessThanOrEqual(1);
  });

  test("a colour that cannot be read is refused by name", () => {
    const corners = ["#1b487c", "mud", "#8a0509"] as unknown as CornerColours;
    expect(() => blendColour([1, 0, 0], corners)).toThrow(/blendColour: colour is "mud"/);
  });
});

type Matrix = readonly (readonly [number, number, number])[];

/** Severity 1.0: G. M. Machado, M. M. Oliveira, L. A. F. Fernandes (2009), IEEE TVCG 15(6), 1291–1298, table 1. */
const deficiencies: Readonly<Record<string, Matrix>> = {
  protanopia: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deuteranopia: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritanopia: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

/** The matrices are used on linear and on encoded RGB in practice: both are tried. */
const views: readonly ((colour: string) => string)[] = [
  (colour) => colour,
  ...Object.values(deficiencies).flatMap((matrix) => [
    (colour: string) => seenThrough(matrix, colour, "lrgb"),
    (colour: string) => seenThrough(matrix, colour, "rgb"),
  ]),
];

function seenThrough(matrix: Matrix, colour: string, mode: "rgb" | "lrgb"): string {
  const { r, g, b } = mode === "rgb" ? toRgb(colour)! : toLinear(colour)!;
  const [red, green, blue] = matrix.map(([x, y, z]) =>
    Math.min(1, Math.max(0, x * r + y * g + z * b)),
  );
  return formatHex({ mode, r: red!, g: green!, b: blue! });
}

/** The least CIEDE2000 difference between any two of the colours, in the view where it is worst. */
function leastDifference(colours: readonly string[]): number {
  const pairs = colours.flatMap((a, i) => colours.slice(i + 1).map((b) => [a, b] as const));
  const seen = views.flatMap((view) => pairs.map(([a, b]) => difference(view(a), view(b))));
  return Math.min(...seen);
}

const half = 0.5;
const third = 1 / 3;
const places: readonly Blend[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
  [half, half, 0],
  [half, 0, half],
  [0, half, half],
  [third, third, third],
];
const coloursAt = (corners: CornerColours): string[] =>
  places.map((blend) => blendColour(blend, corners));

describe.each(Object.entries(themes))(
  "with normal and deficient sight, on %s",
  (_name, { corners }) => {
    test("the three corner colours differ by 10 or more", () => {
      expect(leastDifference(corners)).toBeGreaterThanOrEqual(10);
    });

    test("corners, middles of the sides and the centre differ by 8 or more", () => {
      expect(leastDifference(coloursAt(corners))).toBeGreaterThanOrEqual(8);
    });
  },
);

test("a triple of dark orange, blue and violet would not do: the measure tells good from bad", () => {
  const corners: CornerColours = ["#9a3b00", "#004f8a", "#6b2d75"];
  expect(
    Math.min(leastDifference(corners) - 10, leastDifference(coloursAt(corners)) - 8),
  ).toBeLessThan(0);
});

/**
 * CIEDE2000 of three pairs, four decimals: G. Sharma, W. Wu, E. N. Dalal (2005), Color Res. Appl. 30, 21–30,
 * table 1, pairs 1, 4 and 25 (from memory).
 */
test.each([
  [[50, 2.6772, -79.7751], [50, 0, -82.7485], 2.0425],
  [[50, -1.3802, -84.2814], [50, 0, -82.7485], 1],
  [[60.2574, -34.0099, 36.2677], [60.4626, -34.1751, 39.4387], 1.2644],
] as const)("the colour difference of %j and %j is %d", (first, second, expected) => {
  const lab = ([l, a, b]: readonly [number, number, number]) => ({
    mode: "lab65" as const,
    l,
    a,
    b,
  });
  expect(Math.abs(difference(lab(first), lab(second)) - expected)).toBeLessThanOrEqual(
    0.00005 + 1e-9,
  );
});

/** WCAG 2.2, relative luminance and contrast ratio. */
function contrast(a: string, b: string): number {
  const luminance = (colour: string): number => {
    const { r, g, b: blue } = toRgb(colour)!;
    const [red, green, last] = [r, g, blue].map((c) =>
      c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4,
    );
    return 0.2126 * red! + 0.7152 * green! + 0.0722 * last!;
  };
  const [light, dark] = [luminance(a), luminance(b)].toSorted((x, y) => y - x);
  return (light! + 0.05) / (dark! + 0.05);
}

describe("contrast", () => {
  // Two decimals are stated.
  test.each([
    ["#949494", "#ffffff", 3.03],
    ["#e5e5e5", "#6221ea", 5.7],
    ["#aaaaaa", "#ffffff", 2.32],
    ["#000000", "#ffffff", 21],
  ])("of %s and %s is %d", (a, b, expected) => {
    expect(Math.abs(contrast(a, b) - expected)).toBeLessThanOrEqual(0.005 + 1e-9);
    expect(wcagContrast(a, b)).toBeCloseTo(contrast(a, b), 2);
  });

  const css = readFileSync(join(import.meta.dirname, "../../src/app/page.css"), "utf8");
  // A block without colours of its own only changes which colour is used for what.
  const blocks = [...css.matchAll(/:root[^{]*\{([^}]*)\}/g)]
    .map(([, block = ""]) =>
      Object.fromEntries(
        [...block.matchAll(/--reed-([\w-]+):\s*(#[0-9a-f]{6})/g)].map(([, name, colour]) => [
          name,
          colour,
        ]),
      ),
    )
    .filter((block) => Object.keys(block).length > 0) as Record<string, string>[];
  const looks = [
    ["paper", blocks[0]!, themes.paper],
    ["night", blocks[1]!, themes.night],
    ["night by the device", blocks[2]!, themes.night],
  ] as const;
  const textColours = ["ink", "ink-soft", "accent", "high-word", "low-word", "loud-word"];

  const everyLook = [
    ...looks.map(([name, look]) => [name, look] as const),
    ["print", blocks[3]!] as const,
  ];

  test("the page has three looks and one for print, and night by choice is night by the device", () => {
    expect(blocks).toHaveLength(4);
    expect(blocks[2]).toEqual(blocks[1]);
  });

  test.each(looks)("%s: the page has the colours of the drawing", (_name, look, theme) => {
    expect([look["high"], look["low"], look["loud"]]).toEqual([...theme.corners]);
    expect([look["ground"], look["ink"]]).toEqual([theme.ground, theme.ink]);
  });

  test.each(everyLook)("%s: text stands out by 4.5 or more from ground and card", (_name, look) => {
    for (const text of textColours) {
      for (const under of ["ground", "card"]) {
        expect(contrast(look[text]!, look[under]!), `${text} on ${under}`).toBeGreaterThanOrEqual(
          4.5,
        );
      }
    }
  });

  test.each(everyLook)("%s: edges and corner colours stand out by 3 or more", (_name, look) => {
    for (const shape of ["edge", "high", "low", "loud"]) {
      for (const under of ["ground", "card"]) {
        expect(contrast(look[shape]!, look[under]!), `${shape} on ${under}`).toBeGreaterThanOrEqual(
          3,
        );
      }
    }
  });

  test("paper's green on its ground is 3.01: it must not become lighter", () => {
    expect(
      Math.abs(contrast(themes.paper.corners[1], themes.paper.ground) - 3.01),
    ).toBeLessThanOrEqual(0.005);
  });
});
