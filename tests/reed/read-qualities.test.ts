import fc from "fast-check";
import { expect, test } from "vitest";
import { bassoonQualities, readQualities } from "../../src/lib/engine.js";
import qualitiesJson from "../../src/reed/data/bassoon-qualities.json";
import { ModelError } from "../../src/reed/model-error.js";
import { type Break, copyOf, isDeeplyFrozen, remove, set } from "./broken-file.js";

function problemsOf(json: unknown) {
  try {
    readQualities(json);
  } catch (error) {
    if (error instanceof ModelError) return error.problems;
    throw error;
  }
  return [];
}

test("the shipped qualities are what the reader makes of their file, frozen", () => {
  expect(readQualities(qualitiesJson)).toEqual(bassoonQualities);
  expect(bassoonQualities.qualities).toHaveLength(8);
  expect(isDeeplyFrozen(bassoonQualities)).toBe(true);
  expect(isDeeplyFrozen(readQualities(qualitiesJson))).toBe(true);
  expect(Object.isFrozen(qualitiesJson.qualities)).toBe(true); // the shipped constant is the file itself
});

test("a teacher may change every value", () => {
  const mine = copyOf(qualitiesJson, set("qualities.0.values", [10, 0, 1, 2, 3, 4, 5.5]));
  expect(readQualities(mine).qualities[0]?.values).toEqual([10, 0, 1, 2, 3, 4, 5.5]);
});

const breaks: Break[] = [
  { what: "places missing", change: remove("places"), paths: ["places"] },
  {
    what: "places in another order",
    change: set("places.0", "low"),
    paths: ["places[0]"],
  },
  { what: "an eighth place", change: set("places.7", "tip"), paths: ["places[7]"] },
  { what: "no qualities", change: set("qualities", []), paths: ["qualities"] },
  { what: "unknown key", change: set("qualities.0.colour", 1), paths: ["qualities[0].colour"] },
  { what: "a blank label", change: set("qualities.1.label", " "), paths: ["qualities[1].label"] },
  { what: "no sentence", change: remove("qualities.1.says"), paths: ["qualities[1].says"] },
  {
    what: "an id twice",
    change: set("qualities.1.id", "highEntries"),
    paths: ["qualities[1].id"],
  },
  {
    what: "a mark above 10",
    change: set("qualities.2.values.3", 10.5),
    paths: ["qualities[2].values[3]"],
  },
  {
    what: "a mark below 0",
    change: set("qualities.2.values.3", -1),
    paths: ["qualities[2].values[3]"],
  },
  {
    what: "a mark as text",
    change: set("qualities.2.values.6", "8"),
    paths: ["qualities[2].values[6]"],
  },
  {
    what: "an eighth value",
    change: set("qualities.2.values.7", 1),
    paths: ["qualities[2].values[7]"],
  },
];

test.each(breaks)("$what is reported with its path", ({ change, paths }) => {
  const found = problemsOf(copyOf(qualitiesJson, change)).map(({ path }) => path);
  expect(found.toSorted()).toEqual([...paths].toSorted());
});

test("a missing value is reported too", () => {
  const six = copyOf(qualitiesJson, set("qualities.0.values", [1, 2, 3, 4, 5, 6]));
  expect(problemsOf(six).map(({ path }) => path)).toEqual(["qualities[0].values[6]"]);
});

test("a problem names the quality, what stands there and what may", () => {
  const [problem] = problemsOf(copyOf(qualitiesJson, set("qualities.0.values.1", 12)));
  expect(problem?.message).toBe(
    "Quality highEntries: values[1] is 12, but must be a number from 0 (poor) to 10 (excellent).",
  );
});

test.each([null, 5, [], "qualities"])("%s is one problem of the whole file", (json) => {
  expect(problemsOf(json)).toMatchObject([{ path: "", found: json }]);
});

test("any JSON is read or refused with a ModelError", () => {
  fc.assert(
    fc.property(
      fc.jsonValue({ maxDepth: 4 }),
      fc.constantFrom(...Object.keys(qualitiesJson)),
      (value, key) => {
        for (const json of [value, { ...qualitiesJson, [key]: value }]) {
          for (const problem of problemsOf(json)) expect(problem.message).toMatch(/\.$/);
        }
      },
    ),
    { seed: 5, numRuns: 200 },
  );
});
