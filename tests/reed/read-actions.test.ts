import fc from "fast-check";
import { expect, test } from "vitest";
import { bassoonModel } from "../../src/reed/bassoon.js";
import actionsJson from "../../src/reed/data/bassoon-actions.json";
import { ModelError } from "../../src/reed/model-error.js";
import { readActions } from "../../src/reed/read-actions.js";
import { type Break, copyOf, isDeeplyFrozen, remove, set } from "./broken-file.js";

function problemsOf(json: unknown) {
  try {
    readActions(json, bassoonModel);
  } catch (error) {
    if (error instanceof ModelError) return error.problems;
    throw error;
  }
  return [];
}

const breaks: Break[] = [
  { what: "actions missing", change: remove("actions"), paths: ["actions"] },
  { what: "no actions", change: set("actions", []), paths: ["actions"] },
  { what: "an action a text", change: set("actions.0", "squeeze"), paths: ["actions[0]"] },
  { what: "unknown key", change: set("actions.0.colour", 1), paths: ["actions[0].colour"] },
  { what: "label blank", change: set("actions.0.label", ""), paths: ["actions[0].label"] },
  {
    what: "an action twice",
    change: set("actions.1.id", "roundFirstWire"),
    paths: ["actions[1].id"],
  },
  { what: "easy a fraction", change: set("actions.0.easy", 1.5), paths: ["actions[0].easy"] },
  { what: "easy negative", change: set("actions.0.easy", -1), paths: ["actions[0].easy"] },
  { what: "easy above max", change: set("actions.0.easy", 9), paths: ["actions[0].easy"] },
  {
    what: "max zero",
    change: set("actions.0.max", 0),
    also: true,
    paths: ["actions[0].max", "actions[0].easy"],
  },
  { what: "max infinite", change: set("actions.0.max", Infinity), paths: ["actions[0].max"] },
  { what: "cost zero", change: set("actions.0.cost", 0), paths: ["actions[0].cost"] },
  { what: "cost negative", change: set("actions.0.cost", -1), paths: ["actions[0].cost"] },
  {
    what: "cheaper beyond easy",
    change: set("actions.0.costBeyond", 0.5),
    paths: ["actions[0].costBeyond"],
  },
  {
    what: "cost beyond missing",
    change: remove("actions.0.costBeyond"),
    paths: ["actions[0].costBeyond"],
  },
  {
    what: "reversible a text",
    change: set("actions.0.reversible", "yes"),
    paths: ["actions[0].reversible"],
  },
  { what: "order a fraction", change: set("actions.0.order", 1.5), paths: ["actions[0].order"] },
  { what: "no effects", change: set("actions.0.effects", {}), paths: ["actions[0].effects"] },
  {
    what: "effects an empty list",
    change: set("actions.0.effects", []),
    paths: ["actions[0].effects"],
  },
  {
    what: "effects a list of texts",
    change: set("actions.0.effects", ["up"]),
    paths: ["actions[0].effects"],
  },
  {
    what: "effects a list",
    change: set("actions.0.effects", [0.01]),
    paths: ["actions[0].effects"],
  },
  {
    what: "an effect of zero",
    change: set("actions.0.effects.firstWire", 0),
    paths: ["actions[0].effects.firstWire"],
  },
  {
    what: "an effect a text",
    change: set("actions.0.effects.firstWire", "up"),
    paths: ["actions[0].effects.firstWire"],
  },
  {
    what: "an effect on the unknown",
    change: set("actions.0.effects.hart", 1),
    paths: ["actions[0].effects.hart"],
  },
  {
    what: "an effect named as every object's constructor",
    change: set("actions.0.effects.constructor", 1),
    paths: ["actions[0].effects.constructor"],
  },
  {
    what: "a caution unknown",
    change: set("actions.0.caution", "tongs"),
    paths: ["actions[0].caution"],
  },
  {
    what: "a caution of every object",
    change: set("actions.0.caution", "valueOf"),
    also: true,
    paths: ["actions[0].caution"],
  },
  { what: "a caution blank", change: set("cautions.knife", ""), paths: ["cautions.knife"] },
  { what: "cautions missing", change: remove("cautions"), paths: ["cautions"] },
  { what: "a rule a number", change: set("rules.2", 2), paths: ["rules[2]"] },
  { what: "housekeeping missing", change: remove("housekeeping"), paths: ["housekeeping"] },
];

test.each(breaks)("$what is reported with its path", ({ change, paths, also }) => {
  const found = problemsOf(copyOf(actionsJson, change)).map(({ path }) => path);
  if (also) expect(found).toEqual(expect.arrayContaining([...paths]));
  else expect(found.toSorted()).toEqual([...paths].toSorted());
});

test("every problem is reported at once", () => {
  const together = breaks.filter(({ what }) =>
    ["cost zero", "easy negative", "a rule a number", "an effect on the unknown"].includes(what),
  );
  const json = copyOf(actionsJson, (file) => together.forEach(({ change }) => change(file)));
  const paths = problemsOf(json).map(({ path }) => path);
  expect(paths.toSorted()).toEqual(together.flatMap((one) => one.paths).toSorted());
  expect(together).toHaveLength(4);
});

test("a problem names the action, what stands there and what may", () => {
  const [problem] = problemsOf(copyOf(actionsJson, set("actions.0.easy", 9)));
  expect(problem?.message).toBe(
    'Action roundFirstWire: easy is 9, but must be at most "max", which is 8.',
  );
});

test("effects keep the order of the file, whatever it is", () => {
  const reversed = copyOf(actionsJson, (file) => {
    file["actions"][0].effects = { openingWidth: -0.03, openingHeight: 0.03, firstWire: 0.01 };
  });
  const [first] = readActions(reversed, bassoonModel).actions;
  expect(Object.keys(first?.effects ?? {})).toEqual(["openingWidth", "openingHeight", "firstWire"]);
});

test("actions are a frozen copy, and the file stays as it was", () => {
  const json = copyOf(actionsJson, () => undefined);
  const actions = readActions(json, bassoonModel);
  expect(actions).toEqual(json);
  expect(isDeeplyFrozen(actions)).toBe(true);
  expect(Object.isFrozen(json)).toBe(false);
});

test.each([null, 5, [], "actions"])("%s is one problem of the whole file", (json) => {
  expect(problemsOf(json)).toMatchObject([{ path: "", found: json }]);
});

test("any JSON is read or refused with a ModelError", () => {
  fc.assert(
    fc.property(
      fc.jsonValue({ maxDepth: 4 }),
      fc.constantFrom(...Object.keys(actionsJson)),
      (value, key) => {
        for (const json of [value, { ...actionsJson, [key]: value }]) {
          for (const problem of problemsOf(json)) expect(problem.message).toMatch(/\.$/);
        }
      },
    ),
    { seed: 3, numRuns: 300 },
  );
});
