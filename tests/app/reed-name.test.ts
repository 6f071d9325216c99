import { expect, test } from "vitest";
import { reduce, startState, type BenchAction } from "../../src/app/bench-state.js";
import { viewBench } from "../../src/app/bench-view.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { english } from "../../src/reed/catalogue.js";
import { demoReeds } from "../../src/reed/demo-reeds.js";

const { reed, readings: values } = demoReeds.find((one) => one.reed === "Heron")!;
const load: BenchAction = { type: "reed-loaded", reed, values };
const longer: BenchAction = { type: "value-set", feature: "bladeLength", value: 29.5 };
const unread: BenchAction = { type: "value-set", feature: "bladeLength", value: undefined };

const done: BenchAction = {
  type: "step-done",
  step: { action: "clipTip", amount: 1 },
  readings: {},
};

// The heading of a print and the title of a picture are this name.
test.each<[string, readonly BenchAction[]]>([
  ["All-round reed", []],
  ["All-round reed, tried", [longer]],
  ["Heron", [load]],
  ["Heron, tried", [load, longer]],
  ["Heron, tried", [load, unread]],
  ["Heron", [load, longer, { type: "undo" }]],
  ["Heron", [load, longer, { type: "as-measured" }]],
  ["Heron, after steps", [load, done]],
  ["My reed", [{ type: "set-started", reed: "My reed", wet: "" }, longer]],
])("a reed is called “%s” after %j", (name, actions) => {
  expect(viewBench(actions.reduce(reduce, startState(bassoonModel)), english).name).toBe(name);
});
