import { featureNames } from "./feature-names.js";

/** What is wrong with a cell: why in a clause, what may stand there, and a question where a slip is likely. */
export interface Fault {
  readonly why: string;
  readonly allowed: string;
  readonly ask?: string;
}

/** Where in a text a cell stands; the file only if it has a name. */
interface CellPlace {
  readonly file: string | undefined;
  readonly row: number;
  readonly column: number | string;
}

/** What a value is held against: lengths in mm, ratios and judgements bare. */
interface NamedRange {
  readonly label: string;
  readonly min: number;
  readonly max: number;
  readonly unit: string;
}

const lengthUnits = "mm, in or thou";
const readingColumns = "the columns feature, value and, if need be, unit";
const jsonReadings =
  'an object such as { "bladeLength": 27.7, "wings": [0.24, 0.23] }, or a list of { feature, value, unit }';
const numberAllowed = "a number, with or without a unit behind it";

const longestQuoted = 40;

/** A cell as a sentence can carry it. */
function quoted(text: string): string {
  return `“${text.length > longestQuoted ? `${text.slice(0, longestQuoted - 1)}…` : text}”`;
}

/** A range with how far beyond it a reading is still taken. */
interface OutermostRange extends NamedRange {
  readonly least: number;
  readonly most: number;
}

function outermostWords(range: OutermostRange): string {
  const [least, most] = [Math.max(0, range.least), range.most].map((one) => Number(one.toFixed(2)));
  return `${rangeWords(range)}, at the very most ${least} to ${most}`;
}

function oneOf(labels: readonly string[]): string {
  return labels.length === 0 ? "a feature as named above" : `one of ${labels.join(", ")}`;
}

function rangeWords({ min, max, unit }: NamedRange): string {
  return `${min} to ${max}${unit === "mm" ? " mm" : ""}`;
}

/** What is said of a table of readings: English. */
export const readingWords = {
  featureNames,

  faults: {
    message: ({ file, row, column }: CellPlace, { why, allowed, ask }: Fault): string => {
      const place =
        file === undefined
          ? `Row ${row}, column ${column}`
          : `${file}, row ${row}, column ${column}`;
      return `${place}: ${why}; ${ask === undefined ? `allowed is ${allowed}.` : `${ask}?`}`;
    },
    tooLong: (most: number): Fault => ({
      why: "there is more in this text than the readings of a reed",
      allowed: `at most ${most} letters`,
    }),
    noReading: {
      why: "there is no reading in this text",
      allowed: "rows with a feature and a value",
    },

    badJson: (text: string): Fault => ({
      why: `${quoted(text)} is no valid JSON`,
      allowed: jsonReadings,
    }),
    emptyJson: (text: string): Fault => ({
      why: `${quoted(text)} holds no readings`,
      allowed: jsonReadings,
    }),
    badJsonItem: (text: string): Fault => ({
      why: `${quoted(text)} is no reading`,
      allowed: jsonReadings,
    }),

    missingColumn: (column: "feature" | "value"): Fault => ({
      why: `the header names no column “${column}”`,
      allowed: readingColumns,
    }),
    loneCell: (text: string): Fault => ({
      why: `${quoted(text)} stands alone in its row`,
      allowed: `${readingColumns}, parted by tab, semicolon or comma`,
    }),
    extraCell: (text: string): Fault => ({
      why: `${quoted(text)} is one column too many`,
      allowed: readingColumns,
    }),

    /** Without labels they have been recited before. */
    missingFeature: (labels: readonly string[]): Fault => ({
      why: "the feature is missing",
      allowed: oneOf(labels),
    }),
    unclearFeature: (name: string, labels: readonly string[]): Fault => ({
      why: `${quoted(name)} may be one of several`,
      allowed: new Intl.ListFormat("en-GB", { type: "disjunction" }).format(labels),
    }),
    unknownFeature: (name: string, labels: readonly string[], nearest?: string): Fault => ({
      why: `${quoted(name)} is no feature`,
      allowed: oneOf(labels),
      ...(nearest === undefined ? {} : { ask: `did you mean “${nearest}”` }),
    }),

    missingValue: { why: "the value is missing", allowed: numberAllowed },
    badNumber: (text: string): Fault => ({
      why: `${quoted(text)} is no number`,
      allowed: numberAllowed,
    }),
    unclearComma: (text: string): Fault => ({
      why: `the comma in ${quoted(text)} may be a decimal mark or part the thousands`,
      allowed: "a decimal point, or a decimal comma with a tab or semicolon between the columns",
    }),

    unknownUnit: (text: string): Fault => ({
      why: `${quoted(text)} is no unit of length`,
      allowed: lengthUnits,
    }),
    digitsForUnit: (text: string): Fault => ({
      why: `${quoted(text)} is no unit of length (a decimal comma needs a tab or semicolon between the columns)`,
      allowed: lengthUnits,
    }),
    strayUnit: (label: string, text: string): Fault => ({
      why: `${label} has no unit, but ${quoted(text)} is given`,
      allowed: "no unit",
    }),
    twoUnits: (units: readonly string[]): Fault => ({
      why: `the value says ${units.join(", but the unit column ")}`,
      allowed: "one unit",
    }),

    belowZero: (range: OutermostRange, typed: string): Fault => ({
      why: `${range.label} cannot be ${typed}, below 0`,
      allowed: outermostWords(range),
    }),
    farOutside: (range: OutermostRange, shown: string, ask: string): Fault => ({
      why: `${range.label} ${shown} is far outside ${rangeWords(range)}`,
      allowed: outermostWords(range),
      ask,
    }),
    ask: {
      swapped: (upsideDown: string): string => `were height and width swapped (${upsideDown})`,
      misread: "is it read rightly",
      unit: "is the unit right",
      millimetres: (value: number): string => `is the unit right, for ${value} mm would fit`,
      otherUnit: (value: number, unit: string, millimetres: string): string =>
        `is the unit right, for ${value} ${unit} would be ${millimetres} mm`,
    },
  },
};
