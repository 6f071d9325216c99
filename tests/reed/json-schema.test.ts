import { toJsonSchema } from "@valibot/to-json-schema";
import { Ajv, type AnySchema } from "ajv";
import { expect, test } from "vitest";
import actionsJson from "../../src/reed/data/bassoon-actions.json";
import modelJson from "../../src/reed/data/bassoon-model.json";
import { actionsSchema } from "../../src/reed/actions-schema.js";
import qualitiesJson from "../../src/reed/data/bassoon-qualities.json";
import symptomsJson from "../../src/reed/data/symptoms.json";
import { modelSchema } from "../../src/reed/model-schema.js";
import { qualitiesSchema } from "../../src/reed/qualities-schema.js";
import { symptomsSchema } from "../../src/reed/symptoms-schema.js";

// The published schemas, read by a validator that others wrote.
const checkModel = new Ajv().compile(
  toJsonSchema(modelSchema, { errorMode: "ignore" }) as AnySchema,
);
const checkActions = new Ajv().compile(
  toJsonSchema(actionsSchema, { errorMode: "ignore" }) as AnySchema,
);
const checkQualities = new Ajv().compile(
  toJsonSchema(qualitiesSchema, { errorMode: "ignore" }) as AnySchema,
);
const checkSymptoms = new Ajv().compile(
  toJsonSchema(symptomsSchema, { errorMode: "ignore" }) as AnySchema,
);

test("the shipped files keep to their published schemas", () => {
  expect(checkModel(modelJson), JSON.stringify(checkModel.errors)).toBe(true);
  expect(checkActions(actionsJson), JSON.stringify(checkActions.errors)).toBe(true);
  expect(checkQualities(qualitiesJson), JSON.stringify(checkQualities.errors)).toBe(true);
  expect(checkSymptoms(symptomsJson), JSON.stringify(checkSymptoms.errors)).toBe(true);
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

test.each([
  ["six values", { values: [1, 2, 3, 4, 5, 6] }],
  ["a mark above 10", { values: [11, 2, 3, 4, 5, 6, 7] }],
  ["no sentence", { says: undefined }],
])("a quality with %s does not", (_name, change) => {
  const [first, ...rest] = qualitiesJson.qualities;
  const broken = { ...qualitiesJson, qualities: [{ ...first, ...change }, ...rest] };
  expect(checkQualities(broken)).toBe(false);
});

test("qualities with their places in another order do not", () => {
  const places = qualitiesJson.places.toReversed();
  expect(checkQualities({ ...qualitiesJson, places })).toBe(false);
});

test.each([
  ["no causes", { causes: undefined }],
  ["a help by half a unit", { first: [{ action: "roundFirstWire", amount: 0.5 }] }],
])("a symptom with %s does not", (_name, change) => {
  const [first, ...rest] = symptomsJson.symptoms;
  const broken = { ...symptomsJson, symptoms: [{ ...first, ...change }, ...rest] };
  expect(checkSymptoms(broken)).toBe(false);
});
