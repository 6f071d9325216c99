/**
 * The soil texture triangle of the USDA: a well-known ternary diagram with published rules.
 *
 * Unit    percent by weight, in the order sand, silt, clay unless a name says otherwise; whole percents.
 * Source  Soil Science Division Staff (2017), Soil Survey Manual, USDA Handbook 18, chapter 3, pp. 122–124
 *         (the rules as quoted by two open implementations; the Manual itself was not at hand). What belongs
 *         to a border: Benham, Ahrens & Nettleton (2009), Clarification of Soil Texture Class Boundaries, NSSC.
 */

type Rule = (sand: number, silt: number, clay: number) => boolean;

/** Each class by its published inequalities. */
export const textureRules: Readonly<Record<string, Rule>> = {
  sand: (sand, silt, clay) => sand > 85 && silt + 1.5 * clay < 15,
  "loamy sand": (sand, silt, clay) =>
    sand >= 70 && sand <= 90 && silt + 1.5 * clay >= 15 && silt + 2 * clay < 30,
  "sandy loam": (sand, silt, clay) =>
    (clay >= 7 && clay < 20 && sand > 52 && silt + 2 * clay >= 30) ||
    (clay < 7 && silt < 50 && silt + 2 * clay >= 30),
  loam: (sand, silt, clay) => clay >= 7 && clay < 27 && silt >= 28 && silt < 50 && sand <= 52,
  "silt loam": (_sand, silt, clay) =>
    (silt >= 50 && clay >= 12 && clay < 27) || (silt >= 50 && silt < 80 && clay < 12),
  silt: (_sand, silt, clay) => silt >= 80 && clay < 12,
  "sandy clay loam": (sand, silt, clay) => clay >= 20 && clay < 35 && silt < 28 && sand > 45,
  "clay loam": (sand, _silt, clay) => clay >= 27 && clay < 40 && sand > 20 && sand <= 45,
  "silty clay loam": (sand, _silt, clay) => clay >= 27 && clay < 40 && sand <= 20,
  "sandy clay": (sand, _silt, clay) => clay >= 35 && sand > 45,
  "silty clay": (_sand, silt, clay) => clay >= 40 && silt >= 40,
  clay: (sand, silt, clay) => clay >= 40 && sand <= 45 && silt < 40,
};

/** Each class by the corners of its polygon, in the order clay, sand, silt. */
export const texturePolygons: Readonly<
  Record<string, readonly (readonly [clay: number, sand: number, silt: number])[]>
> = {
  sand: [
    [10, 90, 0],
    [0, 100, 0],
    [0, 85, 15],
  ],
  "loamy sand": [
    [15, 85, 0],
    [10, 90, 0],
    [0, 85, 15],
    [0, 70, 30],
  ],
  "sandy loam": [
    [20, 52, 28],
    [20, 80, 0],
    [15, 85, 0],
    [0, 70, 30],
    [0, 50, 50],
    [7, 43, 50],
    [7, 52, 41],
  ],
  loam: [
    [27, 23, 50],
    [27, 45, 28],
    [20, 52, 28],
    [7, 52, 41],
    [7, 43, 50],
  ],
  "silt loam": [
    [27, 0, 73],
    [27, 23, 50],
    [0, 50, 50],
    [0, 20, 80],
    [12, 8, 80],
    [12, 0, 88],
  ],
  silt: [
    [12, 0, 88],
    [12, 8, 80],
    [0, 20, 80],
    [0, 0, 100],
  ],
  "sandy clay loam": [
    [35, 45, 20],
    [35, 65, 0],
    [20, 80, 0],
    [20, 52, 28],
    [27, 45, 28],
  ],
  "clay loam": [
    [40, 20, 40],
    [40, 45, 15],
    [27, 45, 28],
    [27, 20, 53],
  ],
  "silty clay loam": [
    [40, 0, 60],
    [40, 20, 40],
    [27, 20, 53],
    [27, 0, 73],
  ],
  "sandy clay": [
    [55, 45, 0],
    [35, 65, 0],
    [35, 45, 20],
  ],
  "silty clay": [
    [60, 0, 40],
    [40, 20, 40],
    [40, 0, 60],
  ],
  clay: [
    [100, 0, 0],
    [55, 45, 0],
    [40, 45, 15],
    [40, 20, 40],
    [60, 0, 40],
  ],
};

/** Share of the triangle that each class takes, in percent: computed from the polygons, two printed decimals. */
export const textureAreas: Readonly<Record<string, number>> = {
  sand: 1.5,
  "loamy sand": 3,
  "sandy loam": 11.47,
  loam: 7.11,
  "silt loam": 16.35,
  silt: 3.36,
  "sandy clay loam": 7.76,
  "clay loam": 6.5,
  "silty clay loam": 5.2,
  "sandy clay": 4,
  "silty clay": 4,
  clay: 29.75,
};

/** Worked examples: sand, silt, clay, class. */
export const textureExamples: readonly (readonly [
  sand: number,
  silt: number,
  clay: number,
  name: string,
])[] = [
  [90, 5, 5, "sand"],
  [32, 8, 60, "clay"],
  [70, 15, 15, "sandy loam"],
  [70, 25, 5, "sandy loam"],
  [20, 55, 25, "silt loam"],
  [10, 85, 5, "silt"],
  [10, 65, 25, "silt loam"],
  [10, 45, 45, "silty clay"],
  [20, 15, 65, "clay"],
  [10, 15, 75, "clay"],
  [70, 17, 13, "sandy loam"],
  [10, 43, 47, "silty clay"],
  [75, 10, 15, "sandy loam"],
];
