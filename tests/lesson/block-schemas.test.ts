import { toJsonSchema } from "@valibot/to-json-schema";
import { Ajv, type AnySchema } from "ajv";
import { expect, test } from "vitest";
import { blockSchemas, type BlockName } from "../../src/lesson/block-schemas.js";
import { frontMatterSchema } from "../../src/lesson/front-matter-schema.js";

// The published schemas, read by a validator that others wrote.
const published = (schema: Parameters<typeof toJsonSchema>[0]) =>
  new Ajv({ allowUnionTypes: true }).compile(
    toJsonSchema(schema, { errorMode: "ignore" }) as AnySchema,
  );

const good: Readonly<Record<BlockName, object>> = {
  show: { reed: "Heron", beside: { values: { tip: 0.1 } }, layers: ["pulls"], cautions: ["knife"] },
  predict: { ask: "Where?", change: { bladeLength: "1.07 in", tip: 0.1 }, hints: ["a", "b", "c"] },
  aim: { ask: "Go.", target: [50, 30, 20], locked: ["tip"], mostFeatures: 2, within: 5 },
  choose: {
    ask: "Which?",
    options: [
      { text: "a", why: "b", right: true },
      { text: "c", why: "d" },
    ],
  },
  order: { ask: "Order.", actions: ["clipTip", "thinTip"] },
  read: { ask: "Read.", at: [50, 30, 20] },
  "stand-in": { ask: "Make up.", missing: { tipWidth: 14 } },
  claim: { says: "A.", means: ["a", "b"] },
};

test.each(Object.entries(good))(
  "%s keeps to its published schema, and not with a stray key",
  (name, fields) => {
    const check = published(blockSchemas[name as BlockName]);
    expect(check(fields), JSON.stringify(check.errors)).toBe(true);
    expect(check({ ...fields, stray: 1 })).toBe(false);
    expect(check({})).toBe(name === "show");
  },
);

test("front matter does, too", () => {
  const check = published(frontMatterSchema);
  expect(check({ title: "A", minutes: 8, features: ["tip"], start: { tip: 0.1 } })).toBe(true);
  expect(check({ title: "A", minutes: 0 })).toBe(false);
});
