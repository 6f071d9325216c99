import { readdirSync } from "node:fs";
import { compileFunction } from "node:vm";
import { describe, expect, test } from "vitest";
import { lipResponse } from "../../src/acoustics/lip-response.js";
import { reedMechanics } from "../../src/acoustics/reed-mechanics.js";
import { examplesOf } from "../engine/docstring-examples.js";
import { allRoundLip } from "./lip-recipes.js";

/** What an example may name besides the exports of the room. */
const context: Record<string, unknown> = {
  recipe: allRoundLip,
  allRound: allRoundLip,
  mechanics: reedMechanics(allRoundLip),
  response: lipResponse(allRoundLip, { lip: 1500, blow: 3000 }),
};

for (const file of readdirSync(new URL("../../src/acoustics/", import.meta.url))) {
  const exported = (await import(`../../src/acoustics/${file.slice(0, -3)}.ts`)) as object;
  Object.assign(context, exported);
}

function valueOf(code: string): unknown {
  const names = Object.keys(context);
  const body = compileFunction(`return (${code});`, names) as (...all: unknown[]) => unknown;
  return body(...names.map((name) => context[name]));
}

/** 0.1 + 0.2 is written 0.3 in an example: twelve digits are compared. */
function withoutRounding(value: unknown): unknown {
  const short = (_key: string, one: unknown): unknown =>
    typeof one === "number" ? Number(one.toPrecision(12)) + 0 : one;
  return JSON.parse(JSON.stringify(value, short)) as unknown;
}

/** What an example gives, and what it says that it gives. A predicate says that it is true. */
function sides(text: string): { found: unknown; said: unknown } {
  const [call = "", said] = text.split("→").map((part) => part.trim());
  return {
    found: withoutRounding(valueOf(call)),
    said: said === undefined ? true : withoutRounding(valueOf(said)),
  };
}

describe("the examples of the acoustics' docstrings are true", () => {
  const examples = examplesOf("acoustics");

  test("there are a dozen of them or more", () => {
    expect(examples.length).toBeGreaterThanOrEqual(12);
  });

  test.each(examples)("$file: $text", ({ text }) => {
    const { found, said } = sides(text);
    expect(found).toEqual(said);
  });

  test.each([
    "withAssumptions({ wall: 0.9 }).wall → 1",
    "openingArea({ width: 0, height: 0 }) > 0",
  ])("%s would be found wrong", (text) => {
    const { found, said } = sides(text);
    expect(found).not.toEqual(said);
  });
});
