import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bassoonActions, bassoonModel } from "../../src/reed/bassoon.js";
import symptomsJson from "../../src/reed/data/symptoms.json";
import { demoReeds } from "../../src/reed/demo-reeds.js";
import { likelyCauses } from "../../src/reed/likely-causes.js";
import { ModelError } from "../../src/reed/model-error.js";
import { readSymptoms } from "../../src/reed/read-symptoms.js";
import { bassoonSymptoms, type Symptom } from "../../src/reed/symptoms.js";
import { allRoundReed } from "../engine/mixed-reeds.js";
import { type Break, copyOf, isDeeplyFrozen, remove, set } from "./broken-file.js";

function problemsOf(json: unknown) {
  try {
    readSymptoms(json, bassoonModel, bassoonActions);
  } catch (error) {
    if (error instanceof ModelError) return error.problems;
    throw error;
  }
  return [];
}

const symptomOf = (id: string): Symptom =>
  bassoonSymptoms.symptoms.find((symptom) => symptom.id === id)!;

test("the shipped symptoms are what the reader makes of their file, frozen", () => {
  expect(readSymptoms(symptomsJson, bassoonModel, bassoonActions)).toEqual(bassoonSymptoms);
  expect(bassoonSymptoms.symptoms).toHaveLength(18);
  expect(bassoonSymptoms.soundness).toHaveLength(6);
  expect(isDeeplyFrozen(bassoonSymptoms)).toBe(true);
});

// Common practice, no source.
describe("the table in itself", () => {
  test.each(bassoonSymptoms.symptoms)("$symptom: first what can be undone", ({ first, after }) => {
    const isReversible = (id: string): boolean =>
      bassoonActions.actions.find((action) => action.id === id)!.reversible;
    for (const { action } of first) expect(isReversible(action)).toBe(true);
    for (const { action } of after) expect(isReversible(action)).toBe(false);
  });

  // A crow of one thin pitch over a low opening: there the flatter wire, not the opening, is what helps.
  test.each(bassoonSymptoms.symptoms.filter(({ id }) => id !== "crowThin"))(
    "$symptom: the first help works against its causes, by-effects counted",
    ({ causes, first }) => {
      for (const { what, is } of causes) {
        const change = first.reduce((sum, { action, amount }) => {
          const { effects } = bassoonActions.actions.find((one) => one.id === action)!;
          return sum + amount * (effects[what] ?? 0);
        }, 0);
        expect(is === "more" ? change : -change, what).toBeLessThanOrEqual(1e-12);
      }
    },
  );

  test("only what is no place in the triangle has no first help", () => {
    const none = bassoonSymptoms.symptoms.filter(({ first }) => first.length === 0);
    expect(none.map(({ id }) => id)).toEqual(["chirps"]);
    expect(none[0]?.causes).toEqual([]);
  });
});

describe("likely causes on a reed", () => {
  test("Bittern's high notes sag, and it has every cause: its flat wires most", () => {
    const bittern = demoReeds.find(({ reed }) => reed === "Bittern")!.readings;
    const causes = likelyCauses(symptomOf("highSags"), bassoonModel, bittern);
    expect(causes.filter(({ holds }) => holds).map(({ what }) => what)).toEqual([
      "firstWire",
      "secondWire",
      "spine",
      "heart",
      "bladeLength",
      "tipWidth",
    ]);
  });

  test("the all-round reed has none of them, and nothing measured says nothing", () => {
    for (const symptom of bassoonSymptoms.symptoms) {
      const holds = (values: Readonly<Record<string, number>>) =>
        likelyCauses(symptom, bassoonModel, values).map((cause) => cause.holds);
      expect(holds(allRoundReed(bassoonModel))).toEqual(symptom.causes.map(() => false));
      expect(holds({})).toEqual(symptom.causes.map(() => undefined));
    }
  });

  test("a ratio is judged by its two thicknesses; measured first, then unknown, then what is not so", () => {
    const values = { heart: 0.46, wings: 0.26, openingHeight: 1.0 };
    const causes = likelyCauses(symptomOf("highLate"), bassoonModel, values);
    expect(causes.map(({ what, holds }) => [what, holds])).toEqual([
      ["wings", true],
      ["heartToWings", true],
      ["hinging", undefined],
      ["openingHeight", false],
    ]);
    // 0.26 against a mean of 0.2267, and corners from 0.19 to 0.25.
    expect(causes[0]?.by).toBeCloseTo((0.26 - 0.68 / 3) / 0.03, 10);
  });
});

const breaks: Break[] = [
  { what: "soundness missing", change: remove("soundness"), paths: ["soundness"] },
  {
    what: "a check without help",
    change: remove("soundness.0.firstHelp"),
    paths: ["soundness[0].firstHelp"],
  },
  { what: "a check twice", change: set("soundness.1.id", "soaked"), paths: ["soundness[1].id"] },
  { what: "no symptoms", change: set("symptoms", []), paths: ["symptoms"] },
  { what: "a symptom twice", change: set("symptoms.1.id", "highSags"), paths: ["symptoms[1].id"] },
  {
    what: "a blank symptom",
    change: set("symptoms.0.symptom", ""),
    paths: ["symptoms[0].symptom"],
  },
  {
    what: "an unknown feature",
    change: set("symptoms.0.causes.0.what", "bark"),
    paths: ["symptoms[0].causes[0].what"],
  },
  {
    what: "a cause that is neither more nor less",
    change: set("symptoms.0.causes.0.is", "long"),
    paths: ["symptoms[0].causes[0].is"],
  },
  {
    what: "an unknown action",
    change: set("symptoms.0.first.0.action", "boil"),
    paths: ["symptoms[0].first[0].action"],
  },
  {
    what: "a first help that cannot be undone",
    change: set("symptoms.0.first.0.action", "clipTip"),
    paths: ["symptoms[0].first[0].action"],
  },
  {
    what: "half a unit",
    change: set("symptoms.0.first.0.amount", 0.5),
    paths: ["symptoms[0].first[0].amount"],
  },
  {
    what: "more than is easy",
    change: set("symptoms.0.after.0.amount", 4),
    paths: ["symptoms[0].after[0].amount"],
  },
  {
    what: "up to more than is easy",
    change: set("symptoms.0.after.0.upTo", 4),
    paths: ["symptoms[0].after[0].upTo"],
  },
  {
    what: "up to no more",
    change: set("symptoms.0.after.0.upTo", 1),
    paths: ["symptoms[0].after[0].upTo"],
  },
  {
    what: "a note blank",
    change: set("symptoms.0.firstNote", ""),
    paths: ["symptoms[0].firstNote"],
  },
  { what: "unknown key", change: set("symptoms.0.cure", ""), paths: ["symptoms[0].cure"] },
];

test.each(breaks)("$what is reported with its path", ({ change, paths }) => {
  const found = problemsOf(copyOf(symptomsJson, change)).map(({ path }) => path);
  expect(found.toSorted()).toEqual([...paths].toSorted());
});

test("a problem names the symptom, what stands there and what may", () => {
  const [problem] = problemsOf(copyOf(symptomsJson, set("symptoms.0.after.0.amount", 9)));
  expect(problem?.message).toBe(
    'Symptom highSags: after[0].amount is 9, but must be at most "easy" of the action, which is 3.',
  );
});

test.each([null, 5, [], "symptoms"])("%s is one problem of the whole file", (json) => {
  expect(problemsOf(json)).toMatchObject([{ path: "", found: json }]);
});

test("any JSON is read or refused with a ModelError", () => {
  fc.assert(
    fc.property(
      fc.jsonValue({ maxDepth: 4 }),
      fc.constantFrom(...Object.keys(symptomsJson)),
      (value, key) => {
        for (const json of [value, { ...symptomsJson, [key]: value }]) {
          for (const problem of problemsOf(json)) expect(problem.message).toMatch(/\.$/);
        }
      },
    ),
    { seed: 6, numRuns: 200 },
  );
});
