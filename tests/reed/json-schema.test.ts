import { toJsonSchema } from "@valibot/to-json-schema";
import { Ajv, type AnySchema } from "ajv";
import { expect, test } from "vitest";
import actionsJson from "../../src/reed/data/bassoon-actions.json";
import modelJson from "../../src/reed/data/bassoon-model.json";
import { actionsSchema } from "../../src/reed/actions-schema.js";
import { modelSchema } from "../../src/reed/model-schema.js";

// The published schemas, read by a validator that others wrote.
const checkModel = new Ajv().compile(
  toJsonSchema(modelSchema, { errorMode: "ignore" }) as AnySchema,
);
const checkActions = new Ajv().compile(
  toJsonSchema(actionsSchema, { errorMode: "ignore" }) as AnySchema,
);

test("the shipped files keep to their published schemas", () => {
  expect(checkModel(modelJson), JSON.stringify(checkModel.errors)).toBe(true);
  expect(checkActions(actionsJson), JSON.stringify(checkActions.errors)).toBe(true);
});

test.each([
  ["an unknown key", { ...modelJson, extra: 1 }],
  ["no features", { ...modelJson, features: undefined }],
  [
    "a weight of 0",
    {
      ...modelJson,
      features: [{ ...modelJson.features[0], weight: 0 }, ...modelJson.features.slice(1)],
    },
  ],
  ["four purposes", { ...modelJson, purposes: [...modelJson.purposes, modelJson.purposes[0]] }],
  ["a number as text", { ...modelJson, recipeScatter: "0.5" }],
])("a model with %s does not", (_name, broken) => {
  expect(checkModel(broken)).toBe(false);
});

test.each([
  ["no effects", { effects: undefined }],
  ["a cost as text", { cost: "1" }],
])("an action with %s does not", (_name, change) => {
  const [first, ...rest] = actionsJson.actions;
  expect(checkActions({ ...actionsJson, actions: [{ ...first, ...change }, ...rest] })).toBe(false);
});
