import { readdirSync } from "node:fs";
import { compileFunction } from "node:vm";
import { describe, expect, test } from "vitest";
import {
  bassoonActions,
  bassoonModel,
  bassoonQualities,
  compileModel,
} from "../../src/lib/engine.js";
import { examplesIn, examplesOf } from "./docstring-examples.js";
import { allRoundReed } from "./mixed-reeds.js";

/** What an example may name besides the exports of the room. */
const context: Record<string, unknown> = {
  bassoonModel,
  bassoonActions,
  bassoonQualities,
  map: compileModel(bassoonModel),
  allRound: allRoundReed(bassoonModel),
  values: allRoundReed(bassoonModel),
};

for (const file of readdirSync(new URL("../../src/engine/", import.meta.url))) {
  const exported = (await import(`../../src/engine/${file.slice(0, -3)}.ts`)) as object;
  Object.assign(context, exported);
}

/** Words and signs of an example that are no code. */
function asCode(text: string): string {
  return text
    .replace(/\.\.\.\s*everything locked/g, "...everythingLocked")
    .replace(/^Float64Array (\[.*\])$/, "new Float64Array($1)")
    .replaceAll("⅓", "1 / 3");
}

context["everythingLocked"] = Object.fromEntries(
  bassoonModel.features.map(({ id }) => [id, { locked: true }]),
);

function valueOf(code: string): unknown {
  const names = Object.keys(context);
  const body = compileFunction(`return (${asCode(code)});`, names) as (
    ...all: unknown[]
  ) => unknown;
  return body(...names.map((name) => context[name]));
}

/** Numbers that an example rounds with "about" are compared to ten digits. */
function rounded(value: unknown): unknown {
  const list = value as ArrayLike<number>;
  return Array.from(list, (one) => Math.round(one * 1e10) / 1e10);
}

/** What an example gives, and what it says that it gives. A predicate says that it is true. */
function sides(text: string): { found: unknown; said: unknown } {
  const [call = "", said] = text
    .replace(/\s\/\/.*$/, "")
    .split("→")
    .map((part) => part.trim());
  const found = valueOf(call);
  if (said === undefined) return { found, said: true };
  if (said.startsWith("about "))
    return { found: rounded(found), said: rounded(valueOf(said.slice(6))) };
  return { found: withoutRounding(found), said: withoutRounding(valueOf(said)) };
}

/** 0.1 + 0.2 is written 0.3 in an example: fifteen digits are compared. */
function withoutRounding(value: unknown): unknown {
  const round = (one: unknown): unknown =>
    typeof one === "number" ? Number(one.toPrecision(15)) + 0 : one;
  const short = (_key: string, one: unknown): unknown =>
    one instanceof Float64Array ? { numbers: Array.from(one, round) } : round(one);
  return JSON.parse(JSON.stringify(value, short)) as unknown;
}

describe("the examples of the engine's docstrings are true", () => {
  const examples = examplesOf("engine");

  test("there are a dozen of them or more", () => {
    expect(examples.length).toBeGreaterThanOrEqual(12);
  });

  test.each(examples)("$file: $text", ({ text }) => {
    const { found, said } = sides(text);
    expect(found).toEqual(said);
  });

  test.each([
    "centreBlend[0] > 1 / 2",
    "chiSquareQuantile2(0.5) → 1.4",
    "nearestBlend([1, 0, 0]) → about [1, 0, 0.001]",
    "finishingFreedom(bassoonModel, { spine: 0.56 }) → { spine: { min: 0.56 } }",
  ])("%s would be found wrong", (text) => {
    const { found, said } = sides(text);
    expect(found).not.toEqual(said);
  });

  test("an example over two lines is read whole, and no further", () => {
    const code = "/**\n * What.\n *\n * @example a(1)\n *          → 2\n * @example b() → 3\n */";
    expect(examplesIn(code, "x.ts").map(({ text }) => text)).toEqual(["a(1) → 2", "b() → 3"]);
  });
});
