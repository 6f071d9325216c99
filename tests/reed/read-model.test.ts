import fc from "fast-check";
import { expect, test } from "vitest";
import modelJson from "../../src/reed/data/bassoon-model.json";
import { ModelError } from "../../src/reed/model-error.js";
import { readModel } from "../../src/reed/read-model.js";
import { type Break, copyOf, isDeeplyFrozen, remove, set } from "./broken-file.js";

function problemsOf(json: unknown) {
  try {
    readModel(json);
  } catch (error) {
    if (error instanceof ModelError) return error.problems;
    throw error;
  }
  return [];
}

const shape: Break[] = [
  { what: "id missing", change: remove("id"), paths: ["id"] },
  { what: "id a number", change: set("id", 5), paths: ["id"] },
  { what: "label blank", change: set("label", "  "), paths: ["label"] },
  { what: "comment no text", change: set("$comment", 1), paths: ["$comment"] },
  { what: "unknown key at the top", change: set("colour", "red"), paths: ["colour"] },
  { what: "unknown key with a space", change: set("my key", 1), paths: ['["my key"]'] },
  { what: "purposes missing", change: remove("purposes"), paths: ["purposes"] },
  {
    what: "purposes in another order",
    change: (json) => json["purposes"].reverse(),
    paths: ["purposes[0].id", "purposes[2].id"],
  },
  { what: "a purpose too few", change: (json) => json["purposes"].pop(), paths: ["purposes[2]"] },
  {
    what: "two purposes too many",
    change: (json) => json["purposes"].push({ id: "dark" }, 4),
    paths: ["purposes[3]", "purposes[4]"],
  },
  {
    what: "a purpose without label",
    change: remove("purposes.1.label"),
    paths: ["purposes[1].label"],
  },
  { what: "no groups", change: (json) => (json["groups"] = []), also: true, paths: ["groups"] },
  { what: "scatter negative", change: set("recipeScatter", -0.1), paths: ["recipeScatter"] },
  {
    what: "gauge amount infinite",
    change: set("commonGaugeError.amount", Infinity),
    paths: ["commonGaugeError.amount"],
  },
  {
    what: "shared gauge error a list",
    change: set("commonGaugeError", [0.01]),
    paths: ["commonGaugeError"],
  },
  {
    what: "shared gauge error null",
    change: set("commonGaugeError", null),
    paths: ["commonGaugeError"],
  },
  { what: "features an object", change: set("features", {}), paths: ["features"] },
  { what: "a feature null", change: set("features.13", null), paths: ["features[13]"] },
  {
    what: "feature label missing",
    change: remove("features.0.label"),
    paths: ["features[0].label"],
  },
  {
    what: "feature id with a space",
    change: set("features.13.id", "opening width"),
    paths: ["features[13].id"],
  },
  {
    what: "feature id of every object",
    change: set("features.13.id", "toString"),
    paths: ["features[13].id"],
  },
  { what: "unit unknown", change: set("features.0.unit", "cm"), paths: ["features[0].unit"] },
  {
    what: "decimals a fraction",
    change: set("features.0.decimals", 1.5),
    paths: ["features[0].decimals"],
  },
  { what: "decimals five", change: set("features.0.decimals", 5), paths: ["features[0].decimals"] },
  {
    what: "decimals negative",
    change: set("features.0.decimals", -1),
    paths: ["features[0].decimals"],
  },
  { what: "step zero", change: set("features.2.step", 0), paths: ["features[2].step"] },
  {
    what: "gauge error negative",
    change: set("features.2.gaugeError", -0.01),
    paths: ["features[2].gaugeError"],
  },
  { what: "weight zero", change: set("features.2.weight", 0), paths: ["features[2].weight"] },
  { what: "weight negative", change: set("features.2.weight", -1), paths: ["features[2].weight"] },
  { what: "weight NaN", change: set("features.2.weight", NaN), paths: ["features[2].weight"] },
  {
    what: "weight beyond all measure",
    change: set("features.2.weight", 1e300),
    paths: ["features[2].weight"],
  },
  { what: "min a text", change: set("features.2.min", "7.4"), paths: ["features[2].min"] },
  {
    what: "max minus infinity",
    change: set("features.2.max", -Infinity),
    paths: ["features[2].max"],
  },
  {
    what: "finishing unknown",
    change: set("features.2.finishing", "sideways"),
    paths: ["features[2].finishing"],
  },
  {
    what: "a corner missing",
    change: remove("features.3.corners.high"),
    paths: ["features[3].corners.high"],
  },
  { what: "corners missing", change: remove("features.3.corners"), paths: ["features[3].corners"] },
  {
    what: "corners a list",
    change: set("features.3.corners", [0.8, 0.6, 0.7]),
    paths: ["features[3].corners"],
  },
  {
    what: "a fourth corner",
    change: set("features.3.corners.dark", 1),
    paths: ["features[3].corners.dark"],
  },
  {
    what: "several unknown keys in one place",
    change: (json) => Object.assign(json["features"][4], { wieght: 1, colour: 2, constructor: 3 }),
    paths: ["features[4].colour", "features[4].constructor", "features[4].wieght"],
  },
  { what: "ratio without to", change: remove("ratios.0.to"), paths: ["ratios[0].to"] },
  {
    what: "how to measure missing",
    change: remove("features.0.howToMeasure"),
    paths: ["features[0].howToMeasure"],
  },
];

const fit: Break[] = [
  { what: "min equal to max", change: set("features.11.min", 1), paths: ["features[11].min"] },
  { what: "min above max", change: set("features.5.min", 0.7), paths: ["features[5].min"] },
  {
    what: "a corner above the range",
    change: set("features.3.corners.high", 0.95),
    paths: ["features[3].corners.high"],
  },
  {
    what: "a corner below the range",
    change: set("features.3.corners.low", 0.5),
    paths: ["features[3].corners.low"],
  },
  {
    what: "two corners outside",
    change: (json) => Object.assign(json["features"][0].corners, { high: 20, loud: 40 }),
    paths: ["features[0].corners.high", "features[0].corners.loud"],
  },
  {
    what: "a corner above max, min missing",
    change: (json) => {
      remove("features.0.min")(json);
      set("features.0.corners.low", 31)(json);
    },
    paths: ["features[0].corners.low", "features[0].min"],
  },
  {
    what: "three equal corners",
    change: set("features.3.corners", { high: 0.7, low: 0.7, loud: 0.7 }),
    paths: ["features[3].corners"],
  },
  {
    what: "three corners equal but for rounding",
    change: set("features.11.corners", { high: 0.1 + 0.2, low: 0.3, loud: 0.3 }),
    paths: ["features[11].corners"],
  },
  {
    what: "a feature twice",
    change: set("features.1.id", "bladeLength"),
    paths: ["features[1].id"],
  },
  {
    what: "a group twice",
    change: set("groups.3.id", "shape"),
    also: true,
    paths: ["groups[3].id"],
  },
  { what: "a ratio twice", change: set("ratios.1.id", "heartToWings"), paths: ["ratios[1].id"] },
  {
    what: "a group unknown",
    change: set("features.6.group", "scraping"),
    paths: ["features[6].group"],
  },
  { what: "a ratio of the unknown", change: set("ratios.0.of", "hart"), paths: ["ratios[0].of"] },
  { what: "a ratio to the unknown", change: set("ratios.0.to", "wing"), paths: ["ratios[0].to"] },
  { what: "a ratio to itself", change: set("ratios.0.to", "heart"), paths: ["ratios[0].to"] },
  {
    what: "an unknown feature on the dial",
    change: set("commonGaugeError.features.2", "back"),
    paths: ["commonGaugeError.features[2]"],
  },
  {
    what: "a feature on the dial twice",
    change: set("commonGaugeError.features.2", "heart"),
    paths: ["commonGaugeError.features[2]"],
  },
];

test.each([...shape, ...fit])("$what is reported with its path", ({ change, paths, also }) => {
  const found = problemsOf(copyOf(modelJson, change)).map(({ path }) => path);
  if (also) expect(found).toEqual(expect.arrayContaining([...paths]));
  else expect(found.toSorted()).toEqual([...paths].toSorted());
});

test("every problem is reported at once, shape and fit together", () => {
  const breaks = [
    set("label", 7),
    set("features.0.weight", 0),
    remove("features.1.corners.low"),
    set("features.2.min", 9.9),
    set("features.3.corners.high", 0.95),
    set("features.5.id", "tip"),
    set("features.6.group", "nowhere"),
    set("ratios.1.to", "nothing"),
    set("extra", true),
  ];
  const json = copyOf(modelJson, (file) => breaks.forEach((change) => change(file)));
  const paths = problemsOf(json).map(({ path }) => path);
  // The id given up by the heart is missed by the ratio and the dial gauge as well.
  const expected = [
    "commonGaugeError.features[0]",
    "extra",
    "features[1].corners.low",
    "features[2].min",
    "features[3].corners.high",
    "features[6].group",
    "features[0].weight",
    "features[9].id",
    "label",
    "ratios[0].of",
    "ratios[1].to",
  ];
  expect(paths.toSorted()).toEqual(expected.toSorted());
});

test("a problem names the feature, what stands there and what may", () => {
  const [problem, ...others] = problemsOf(copyOf(modelJson, set("features.3.corners.high", 0.95)));
  expect(others).toEqual([]);
  expect(problem).toEqual({
    path: "features[3].corners.high",
    found: 0.95,
    allowed: "within the range of the feature, 0.58 to 0.9",
    message:
      "Feature firstWire: corners.high is 0.95, but must be within the range of the feature, 0.58 to 0.9.",
  });
});

test("a missing value is found as undefined and said to be missing", () => {
  const [problem] = problemsOf(copyOf(modelJson, remove("features.3.weight")));
  expect(problem).toHaveProperty("found", undefined);
  expect(problem?.message).toBe(
    "Feature firstWire: weight is missing, but must be a number above 0, at most 1e9.",
  );
});

test("the error lists every sentence", () => {
  const json = copyOf(modelJson, (file) =>
    [set("id", 1), set("label", 2)].forEach((change) => change(file)),
  );
  expect(() => readModel(json)).toThrow(
    /^The model has 2 problems:\n- id is 1, .*\n- label is 2, .*\.$/,
  );
});

test.each([null, undefined, 5, "model", true, [], [modelJson], () => 1])(
  "%s is one problem of the whole file",
  (json) => {
    const problems = problemsOf(json);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatchObject({
      path: "",
      found: json,
      allowed: "an object that describes a reed model",
    });
  },
);

test("features that cannot separate the purposes are a problem of the features", () => {
  const json = copyOf(modelJson, (file) => {
    file["features"] = file["features"].filter(
      ({ group }: { group: string }) => group === "opening",
    );
    file["ratios"] = [];
    file["commonGaugeError"].features = [];
  });
  const problems = problemsOf(json);
  expect(problems).toHaveLength(1);
  expect(problems[0]).toMatchObject({ path: "features", found: ["openingHeight", "openingWidth"] });
  expect(problems[0]?.message).toMatch(
    /openingHeight, openingWidth cannot separate the three purposes.*condition number/,
  );
});

test("a model is a frozen copy, and the file stays as it was", () => {
  const json = copyOf(modelJson, () => undefined);
  const before = JSON.stringify(json);
  const model = readModel(json);
  expect(JSON.stringify(json)).toBe(before);
  expect(Object.isFrozen(json)).toBe(false);
  expect(isDeeplyFrozen(model)).toBe(true);
  expect(model).toEqual(json);
});

test("any JSON is read or refused with a ModelError", () => {
  fc.assert(
    fc.property(
      fc.jsonValue({ maxDepth: 4 }),
      fc.constantFrom(...Object.keys(modelJson)),
      (value, key) => {
        for (const json of [value, { ...modelJson, [key]: value }]) {
          for (const problem of problemsOf(json)) expect(problem.message).toMatch(/\.$/);
        }
      },
    ),
    { seed: 2, numRuns: 300 },
  );
});
