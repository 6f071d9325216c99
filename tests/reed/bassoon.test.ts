import { toJsonSchema } from "@valibot/to-json-schema";
import { expect, test } from "vitest";
import { actionsSchema } from "../../src/reed/actions-schema.js";
import { bassoonActions, bassoonModel } from "../../src/reed/bassoon.js";
import actionsJson from "../../src/reed/data/bassoon-actions.json";
import modelJson from "../../src/reed/data/bassoon-model.json";
import { demoReeds } from "../../src/reed/demo-reeds.js";
import { modelSchema } from "../../src/reed/model-schema.js";
import { readActions } from "../../src/reed/read-actions.js";
import { readModel } from "../../src/reed/read-model.js";
import { targetRadius, targets } from "../../src/reed/targets.js";
import { isDeeplyFrozen } from "./broken-file.js";

test("the shipped model is what the reader makes of its file", () => {
  expect(readModel(modelJson)).toEqual(bassoonModel);
  expect(bassoonModel.features).toHaveLength(14);
});

test("the shipped actions are what the reader makes of their file", () => {
  expect(readActions(actionsJson, bassoonModel)).toEqual(bassoonActions);
  expect(bassoonActions.actions).toHaveLength(17);
});

test("shipped data are frozen all the way down", () => {
  for (const data of [bassoonModel, bassoonActions, demoReeds, targets])
    expect(isDeeplyFrozen(data)).toBe(true);
});

test("every demo reed has every feature, within its range", () => {
  const wrong = demoReeds.flatMap(({ reed, readings }) =>
    bassoonModel.features
      .filter(({ id, min, max }) => !((readings[id] ?? NaN) >= min && (readings[id] ?? NaN) <= max))
      .map(({ id }) => `${reed} ${id}`),
  );
  expect(wrong).toEqual([]);
  expect(demoReeds.map(({ reed }) => reed)).toEqual([
    "Bittern",
    "Heron",
    "Plover",
    "Snipe",
    "Curlew",
    "Teal",
  ]);
});

test("the wings of Teal come to the mean that its readings give", () => {
  const teal = demoReeds.find(({ reed }) => reed === "Teal");
  const wings = teal?.wingsSingly ?? [];
  expect(wings).toHaveLength(4);
  expect(wings.reduce((sum, wing) => sum + wing / 4, 0)).toBeCloseTo(
    teal?.readings["wings"] ?? NaN,
    10,
  );
});

test("shares of every target sum to 1, though the file rounds a third", () => {
  expect(targets).toHaveLength(8);
  for (const { blend } of targets)
    expect(Math.abs(blend[0] + blend[1] + blend[2] - 1)).toBeLessThan(1e-15);
  expect(targets[0]?.blend[0]).toBeCloseTo(1 / 3, 15);
  expect(targetRadius).toBe(0.08);
});

test("both schemas can be published as JSON Schema, closed to unknown keys", () => {
  for (const schema of [toJsonSchema(modelSchema), toJsonSchema(actionsSchema)]) {
    expect(schema).toMatchObject({ type: "object", additionalProperties: false });
    expect(schema.required).not.toContain("$comment");
  }
});
