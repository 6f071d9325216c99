import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readReadings } from "../../src/book/read-readings.js";
import type { Values } from "../../src/engine/model.js";
import { english } from "../../src/reed/catalogue.js";
import { featureNames } from "../../src/reed/feature-names.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { demoReeds } from "../../src/reed/demo-reeds.js";
import { fromMillimetres, type LengthUnit } from "../../src/reed/units.js";

const model = bassoonModel;

function read(text: string, unit: LengthUnit = "mm") {
  return readReadings(text, { model, unit });
}

function readingsOf(name: string): Values {
  return demoReeds.find(({ reed }) => reed === name)?.readings ?? {};
}

describe("good readings, in whatever form", () => {
  test.each([
    [
      "tabs as a spreadsheet copies them",
      "Blade length\t27.7\r\nHeart thickness\t0.45\r\n",
      { bladeLength: [27.7], heart: [0.45] },
    ],
    ["commas", "bladeLength,27.7\nheart,0.45", { bladeLength: [27.7], heart: [0.45] }],
    ["semicolons", "bladeLength;27.7\nheart;0.45", { bladeLength: [27.7], heart: [0.45] }],
    ["old line ends", "bladeLength,27.7\rheart,0.45\r", { bladeLength: [27.7], heart: [0.45] }],
    ["decimal comma with tabs", "Wing thickness\t0,24", { wings: [0.24] }],
    [
      "decimal comma with semicolons",
      "wings;0,24;mm\nhinging;0,5",
      { wings: [0.24], hinging: [0.5] },
    ],
    ["a header", "feature,value,unit\ntip,0.1,mm", { tip: [0.1] }],
    [
      "a header in another order and case",
      "Unit;VALUE;Feature\nmm;0.1;tip\n;0.7;first wire",
      { tip: [0.1], firstWire: [0.7] },
    ],
    [
      "a header with columns of notes",
      'date,feature,note,value\n3 May,tip,"soft, low",0.1',
      { tip: [0.1] },
    ],
    [
      "a note over two lines",
      'feature,value,note\ntip,0.1,"soft\nand low"\nheart,0.45,',
      { tip: [0.1], heart: [0.45] },
    ],
    ["a unit in the header", "Feature\tValue (mm)\nThroat width\t8.5", { throatWidth: [8.5] }],
    ["quoted cells", '"Blade length","27.7"\n"tip","0.1"', { bladeLength: [27.7], tip: [0.1] }],
    [
      "repeats",
      "wings,0.18\nwings,0.27\ntip,0.1\nwings,0.23\nwings,0.24",
      { wings: [0.18, 0.27, 0.23, 0.24], tip: [0.1] },
    ],
    [
      "blank lines, notes and a byte order mark",
      "\uFEFF\n# Bittern\n\ntip,0.1\n , \n  # soaked\nheart,0.45\n\n",
      { tip: [0.1], heart: [0.45] },
    ],
    ["a number without its zero", "firstWire,.7\ntip,.1", { firstWire: [0.7], tip: [0.1] }],
    ["a unit with the value", "tip,0.1 mm\nheart,0.45mm", { tip: [0.1], heart: [0.45] }],
    [
      "words for no unit",
      "firstWire,0.7,ratio\nsecondWire,0.9,-\nhinging,0.5,0–1",
      { firstWire: [0.7], secondWire: [0.9], hinging: [0.5] },
    ],
    ["the same unit twice", "tip,0.1 mm,millimetres", { tip: [0.1] }],
    ["a value outside the range", "tip,0.2\nbackRise,0.5", { tip: [0.2], backRise: [0.5] }],
    ["zero where it is possible", "backRise,0\nhinging,0", { backRise: [0], hinging: [0] }],
    [
      "JSON by feature",
      '{ "bladeLength": 27.7, "wings": [0.24, 0.23], "tip": "0,1 mm" }',
      { bladeLength: [27.7], wings: [0.24, 0.23], tip: [0.1] },
    ],
    [
      "JSON under readings",
      '{ "reed": "Bittern", "readings": { "First-wire roundness": 0.7 }, "unit": "mm" }',
      { firstWire: [0.7] },
    ],
    [
      "JSON as a list",
      ' [{ "feature": "tip", "value": 0.1, "unit": "mm" }, { "feature": "tip", "value": 0.11 }]',
      { tip: [0.1, 0.11] },
    ],
    [
      "JSON as a list under readings",
      '{ "readings": [{ "feature": "heart", "value": 0.45 }] }',
      { heart: [0.45] },
    ],
  ])("%s", (_, text, readings) => {
    expect(read(text)).toEqual({ readings, problems: [] });
  });

  test.each([
    ["bladeLength,1.1 in", "bladeLength", 27.94],
    ['bladeLength,1.1"', "bladeLength", 27.94],
    ["bladeLength,1.1,inches", "bladeLength", 27.94],
    ['bladeLength\t1.1\t"', "bladeLength", 27.94],
    ["heart\t17 thou", "heart", 0.4318],
    ["heart;17;1/1000 in", "heart", 0.4318],
    ["heart;17,5;mil", "heart", 0.4445],
    ["Feature,Value (thou)\nheart,17", "heart", 0.4318],
    ["Feature,Value (thou)\nheart,0.43 mm", "heart", 0.43],
    ['{ "unit": "thou", "heart": 17 }', "heart", 0.4318],
    [
      '{ "unit": "in", "readings": [{ "feature": "heart", "value": 17, "unit": "thou" }] }',
      "heart",
      0.4318,
    ],
  ])("%s is %s at %d mm", (text, feature, millimetres) => {
    const { readings, problems } = read(text);
    expect(problems).toEqual([]);
    expect(readings[feature]).toHaveLength(1);
    expect(readings[feature]?.[0]).toBeCloseTo(millimetres, 12);
  });

  test("inch marks alone in a column do not swallow the rows between them", () => {
    const { readings, problems } = read('bladeLength,1.1,"\nheart,0.017,"\ntip,0.004,"');
    expect(problems).toEqual([]);
    expect(Object.keys(readings)).toEqual(["bladeLength", "heart", "tip"]);
  });

  test("lengths without a unit are read in the unit of the import, ratios as they are", () => {
    const { readings, problems } = read("heart,17\nfirstWire,0.7", "thou");
    expect(problems).toEqual([]);
    expect(readings["heart"]?.[0]).toBeCloseTo(0.4318, 12);
    expect(readings["firstWire"]).toEqual([0.7]);
  });
});

describe("names of features", () => {
  const names = model.features.flatMap(({ id, label }) => [
    [id, id],
    [label, id],
    [label.toUpperCase(), id],
    [label.replaceAll(" ", "_").replaceAll("-", " "), id],
  ]);
  test.each([
    ...names,
    ["first wire", "firstWire"],
    ["Second-Wire", "secondWire"],
    ["throat", "throatWidth"],
    ["wing", "wings"],
    ["tip", "tip"],
    ["blade", "bladeLength"],
  ])("“%s” is %s", (name, id) => {
    const { min } = model.features.find((feature) => feature.id === id) ?? { min: NaN };
    expect(read(`${name}\t${min}`)).toEqual({ readings: { [id]: [min] }, problems: [] });
  });

  test("a name that two features share is none", () => {
    expect(read("opening,1.1").problems).toHaveLength(1);
    expect(read("opening,1.1").readings).toEqual({});
  });

  test.each([
    ["bladeLenght", "Blade length"],
    ["hart thickness", "Heart thickness"],
    ["wigns", "Wing thickness"],
    ["frist wire", "First-wire roundness"],
    ["Hingeing", "Hinging"],
    ["openning hight", "Opening height"],
  ])("“%s” is asked about: %s?", (name, label) => {
    const { problems } = read(`tip,0.1\n${name},1`);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatchObject({ row: 2, column: 1, value: name });
    expect(problems[0]?.message).toBe(
      `Row 2, column 1: “${name}” is no feature; did you mean “${label}”?`,
    );
    expect(problems[0]?.allowed).toContain(label);
  });

  test("a name that is like none is told what there is", () => {
    expect(read("zzzzqq,1").problems[0]?.message).toMatch(
      /^Row 1, column 1: “zzzzqq” is no feature; allowed is one of Blade length, /,
    );
  });
});

describe("bad cells", () => {
  test.each([
    ["no number", "tip,thin", 1, 2, "thin", "“thin” is no number"],
    ["NaN", "tip,NaN", 1, 2, "NaN", "“NaN” is no number"],
    ["infinite", "tip,1e999", 1, 2, "1e999", "“1e999” is no number"],
    ["two numbers", "tip;0,1,2", 1, 2, "0,1,2", "“,2” is no unit of length"],
    ["empty value", "tip,", 1, 2, "", "the value is missing"],
    ["empty feature", ",0.1", 1, 1, "", "the feature is missing"],
    ["negative", "tip,-0.1", 1, 2, "-0.1", "Tip thickness cannot be -0.1, below 0"],
    ["negative with a real minus", "tip,−0.1", 1, 2, "−0.1", "cannot be -0.1"],
    [
      "unknown unit with the value",
      "tip,0.01 cm",
      1,
      2,
      "0.01 cm",
      "“cm” is no unit of length; allowed is mm, in or thou.",
    ],
    ["unknown unit in its column", "tip,0.01,cm", 1, 3, "cm", "“cm” is no unit of length"],
    ["two units", "tip,4 thou,mm", 1, 3, "mm", "the value says thou, but the unit column mm"],
    [
      "a length unit on a ratio",
      "firstWire,0.7,mm",
      1,
      3,
      "mm",
      "First-wire roundness has no unit, but “mm” is given",
    ],
    [
      "a length unit on a judgement",
      "hinging,0.5 in",
      1,
      2,
      "0.5 in",
      "Hinging has no unit, but “in” is given",
    ],
    [
      "decimal comma between commas",
      "tip,0,1",
      1,
      3,
      "1",
      "a decimal comma needs a tab or semicolon between the columns",
    ],
    [
      "quoted decimal comma between commas",
      'tip,"0,1"',
      1,
      2,
      "0,1",
      "may be a decimal mark or part the thousands",
    ],
    ["a cell alone", "tip 0.1", 1, 1, "tip 0.1", "stands alone in its row"],
    ["a fourth column", "tip,0.1,mm,0.2", 1, 4, "0.2", "one column too many"],
    [
      "thousandths taken for mm",
      "heart,17",
      1,
      2,
      "17",
      "Heart thickness 17 mm is far outside 0.34 to 0.6 mm; is the unit right, for 17 thou would be 0.43 mm?",
    ],
    ["inches taken for mm", "bladeLength,1.09", 1, 2, "1.09", "for 1.09 in would be 27.7 mm?"],
    [
      "a thickness in inches taken for mm",
      "wings,0.0094",
      1,
      2,
      "0.0094",
      "for 0.0094 in would be 0.24 mm?",
    ],
    [
      "mm taken for inches",
      "bladeLength,27.7 in",
      1,
      2,
      "27.7 in",
      "Blade length 27.7 in (703.58 mm) is far outside 24.5 to 30.5 mm; is the unit right, for 27.7 mm would fit?",
    ],
    ["far outside in any unit", "bladeLength,99", 1, 2, "99", "is the unit right?"],
    [
      "height and width swapped",
      "firstWire,1.43",
      1,
      2,
      "1.43",
      "were height and width swapped (0.699)?",
    ],
    ["a judgement in per cent", "hinging,55", 1, 2, "55", "is it read rightly?"],
    ["JSON value null", '{ "wings": [0.24, null] }', 1, "wings", "", "the value is missing"],
    [
      "JSON value true",
      '{ "bladeLength": 27, "tip": true }',
      2,
      "tip",
      "true",
      "“true” is no number",
    ],
    [
      "JSON item no object",
      '[{ "feature": "tip", "value": 0.1 }, 7]',
      2,
      "feature",
      "7",
      "“7” is no reading",
    ],
    ["JSON item without value", '[{ "feature": "tip" }]', 1, "value", "", "the value is missing"],
    [
      "JSON typo",
      '[{ "feature": "typ", "value": 0.1 }]',
      1,
      "feature",
      "typ",
      "did you mean “Tip thickness”?",
    ],
    [
      "JSON unit unknown",
      '[{ "feature": "tip", "value": 0.1, "unit": "cm" }]',
      1,
      "unit",
      "cm",
      "“cm” is no unit of length",
    ],
    [
      "JSON unit of all unknown",
      '{ "unit": "cm", "tip": 0.1 }',
      1,
      "unit",
      "cm",
      "“cm” is no unit of length",
    ],
    ["no JSON", "{ tip: 0.1 }", 1, 1, "{ tip: 0.1 }", "is no valid JSON"],
    [
      "header without value",
      "feature,unit\n",
      1,
      1,
      "feature unit",
      "the header names no column “value”",
    ],
    [
      "header with an unknown unit",
      "feature,value (cm)\ntip,0.1",
      1,
      2,
      "value (cm)",
      "“cm” is no unit of length",
    ],
  ])("%s: %s", (_, text, row, column, value, message) => {
    const { problems } = read(text);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatchObject({ row, column, value });
    expect(problems[0]?.message).toContain(message);
    expect(problems[0]).not.toHaveProperty("file");
  });

  test("all are reported in the order of the text, and the good cells between them are kept", () => {
    const text =
      "# Heron\nFeature\tValue\tUnit\nTip thickness\t0.12\tmm\n\nHart thickness\tthick\nWing thickness\t0,21\nRail thickness\t-1\nHinging\t0.6\tmm\nTip thickness\t\n";
    const { readings, problems } = read(text);
    expect(readings).toEqual({ tip: [0.12], wings: [0.21] });
    expect(problems.map(({ row, column, value }) => [row, column, value])).toEqual([
      [5, 1, "Hart thickness"],
      [5, 2, "thick"],
      [7, 2, "-1"],
      [8, 3, "mm"],
      [9, 2, ""],
    ]);
  });

  test("a cell too many is reported in its place among the others", () => {
    const { readings, problems } = read("tip,thin\nheart,0.45,mm,0.46\nwings,wide\nrails alone");
    expect(readings).toEqual({ heart: [0.45] });
    expect(problems.map(({ row, column }) => [row, column])).toEqual([
      [1, 2],
      [2, 4],
      [3, 2],
      [4, 1],
    ]);
  });

  test("the file is named in every problem", () => {
    const { problems } = readReadings("tip,x\nhart,0.4", {
      model,
      unit: "mm",
      file: "heron.csv",
      format: "csv",
    });
    expect(problems.map(({ file }) => file)).toEqual(["heron.csv", "heron.csv"]);
    expect(problems[0]?.message).toMatch(/^heron\.csv, row 1, column 2: /);
  });

  test("a quote that never closes costs its own line only", () => {
    const { readings, problems } = read(
      'bladeLength,27.7\ntip,"0.1\nheart,0.45\nthroatWidth,8.5,"mm"',
    );
    expect(readings).toEqual({
      bladeLength: [27.7],
      tip: [0.1],
      heart: [0.45],
      throatWidth: [8.5],
    });
    expect(problems).toEqual([]);
  });

  test.each(["", "  \n\t\n", "\uFEFF", "# only a note", "{}", "[]", "feature,value,unit\n"])(
    "%j holds no reading, and says so once",
    (text) => {
      const { readings, problems } = read(text);
      expect(readings).toEqual({});
      expect(problems).toHaveLength(1);
      expect(problems[0]?.message).toBe(
        "Row 1, column 1: there is no reading in this text; allowed is rows with a feature and a value.",
      );
    },
  );
});

test.each(demoReeds.map(({ reed }) => reed))(
  "the readings of %s typed in inches come back in mm",
  (name) => {
    const truth = readingsOf(name);
    const lines = model.features.map(({ id, label, unit }) => {
      // Five digits of an inch: half of the last is 0.000127 mm.
      const value = unit === "mm" ? fromMillimetres(truth[id] ?? NaN, "in").toFixed(5) : truth[id];
      return `${label}\t${value}`;
    });
    const { readings, problems } = read(lines.join("\n"), "in");
    expect(problems).toEqual([]);
    expect(Object.keys(readings)).toEqual(model.features.map(({ id }) => id));
    for (const [id, [value]] of Object.entries(readings)) {
      expect(Math.abs((value ?? NaN) - (truth[id] ?? NaN)), id).toBeLessThan(0.0005);
    }
  },
);

test("a whole reed in inches that is taken for mm keeps no thickness and no width", () => {
  const truth = readingsOf("Bittern");
  const lengths = model.features.filter(({ unit, min }) => unit === "mm" && min > 0);
  const text = lengths
    .map(({ id }) => `${id},${fromMillimetres(truth[id] ?? NaN, "in").toFixed(4)}`)
    .join("\n");
  const { readings, problems } = read(text);
  expect(readings).toEqual({});
  expect(problems).toHaveLength(lengths.length);
});

describe("no text throws", () => {
  const piece = fc.oneof(
    fc.constantFrom(
      "tip",
      "Heart thickness",
      "wings",
      "feature",
      "value",
      "unit",
      "in",
      "mm",
      "0.1",
      "0,45",
      "17 thou",
    ),
    fc.constantFrom(
      ",",
      ";",
      "\t",
      "\n",
      "\r\n",
      '"',
      '""',
      "#",
      "{",
      "}",
      "[",
      "]",
      ":",
      "\uFEFF",
      "__proto__",
      "constructor",
      " ",
    ),
    fc.string({ unit: "binary", maxLength: 6 }),
  );
  test.each([undefined, "csv", "json", "paste"] as const)("as %s", (format) => {
    const text = fc.oneof(
      fc.array(piece, { maxLength: 60 }).map((pieces) => pieces.join("")),
      fc.json(),
    );
    fc.assert(
      fc.property(text, (typed) => {
        const { readings, problems } = readReadings(typed, {
          model,
          unit: "mm",
          ...(format ? { format } : {}),
        });
        const values = Object.values(readings).flat();
        expect(values.every(Number.isFinite)).toBe(true);
        expect(values.length + problems.length).toBeGreaterThan(0);
        for (const { row, message } of problems) {
          expect(row).toBeGreaterThanOrEqual(1);
          expect(message).toMatch(/[.?]$/);
        }
      }),
      { seed: 5, numRuns: 500 },
    );
  });

  test("nor does one that is very long or very deep", () => {
    const long = 2_000_000;
    for (const text of [
      `"${"a".repeat(long)}`,
      `tip,"${'""'.repeat(long)}"`,
      "[".repeat(20_000),
      `${"[".repeat(20_000)}${"]".repeat(20_000)}`,
      '{"tip":'.repeat(20_000) + "1" + "}".repeat(20_000),
      '",'.repeat(20_000),
    ]) {
      expect(read(text).problems.length).toBeGreaterThan(0);
    }
  });
});

test("a unit may stand in the name of the feature, as spreadsheets have it", () => {
  const text =
    "Blade length mm\t27.7\nTip width (in)\t0.6\nheart [thou]\t17.5\nHinging\t0.5\nThroat width in\t8.5 mm";
  const { readings, problems } = readReadings(text, { model: bassoonModel, unit: "mm" });
  expect(problems).toEqual([]);
  expect(readings["bladeLength"]).toEqual([27.7]);
  expect(readings["tipWidth"]![0]).toBeCloseTo(15.24, 10);
  expect(readings["heart"]![0]).toBeCloseTo(0.4445, 10);
  expect(readings["throatWidth"]).toEqual([8.5]);
});

describe("names that people use", () => {
  // Trade usage, common practice, no source.
  test.each([
    ["Hinge", "hinging"],
    ["Hinges", "hinging"],
    ["tip opening", "openingHeight"],
    ["2nd wire", "secondWire"],
    ["wire 1", "firstWire"],
    ["collar", "bladeLength"],
    ["Tip", "tip"],
  ])("“%s” is %s", (name, id) => {
    const { min, max } = bassoonModel.features.find((one) => one.id === id)!;
    expect(Object.keys(read(`${name}\t${(min + max) / 2}`).readings)).toEqual([id]);
  });

  test("every name that the app prints for a feature is read as that feature", () => {
    const { drawing } = english;
    const printed: (readonly [string, string])[] = [
      ...bassoonModel.features.map(({ id, label }) => [label, id] as const),
      ...Object.entries(drawing.parts).map(([id, name]) => [name, id] as const),
      [drawing.opening, "openingHeight"],
      [drawing.wire("first"), "firstWire"],
      [drawing.wire("second"), "secondWire"],
      ...Object.entries(featureNames.others).flatMap(([id, names]) =>
        names.map((name) => [name, id] as const),
      ),
    ];
    for (const [name, id] of printed) {
      const { min, max } = bassoonModel.features.find((one) => one.id === id)!;
      const { readings, problems } = read(`${name}\t${(min + max) / 2}`);
      expect({ name, to: Object.keys(readings), problems }).toEqual({
        name,
        to: [id],
        problems: [],
      });
    }
  });

  test("a name that may be one of two says which", () => {
    expect(read("opening,1.1").problems[0]?.message).toBe(
      "Row 1, column 1: “opening” may be one of several; allowed is Opening height or Opening width.",
    );
  });

  test("all names are recited once, not once a row", () => {
    const { problems } = read("zzzzqq,1\nxxxxqq,2\nyyyyqq,3");
    const told = problems.filter(({ message }) => message.includes("Blade length"));
    expect(told).toHaveLength(1);
    expect(problems[2]?.message).toBe(
      "Row 3, column 1: “yyyyqq” is no feature; allowed is a feature as named above.",
    );
  });
});

describe("what is told of a number", () => {
  test("is the number as it was typed, and how far beyond the range a reading is taken", () => {
    const { problems } = read("back rise;-0,10\nblade length;99,50");
    expect(problems[0]?.message).toContain(
      "Back rise cannot be -0,10, below 0; allowed is 0 to 0.34 mm, at the very most 0 to 0.68",
    );
    expect(problems[1]?.message).toContain("Blade length 99,50 mm is far outside 24.5 to 30.5 mm");
  });

  test("is never that it is infinite", () => {
    const { problems } = read("tip;1e308 in\nspine;1e400");
    expect(problems).toHaveLength(2);
    for (const { message } of problems) expect(message).not.toContain("Infinity");
  });

  test("a text longer than any table of a reed is refused at once", () => {
    const before = performance.now();
    const { readings, problems } = read("qqqq,1\n".repeat(200_000));
    expect(readings).toEqual({});
    expect(problems.map(({ message }) => message)).toEqual([
      "Row 1, column 1: there is more in this text than the readings of a reed; allowed is at most 200000 letters.",
    ]);
    expect(performance.now() - before).toBeLessThan(1000);
  });
});
