import { reduce, startState } from "../../src/app/bench-state.js";
import { viewBench } from "../../src/app/bench-view.js";
import { describe, expect, test } from "vitest";
import { compileModel } from "../../src/engine/compile.js";
import type { Values } from "../../src/engine/model.js";
import { place } from "../../src/engine/place.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { english, sentenceText, type Sentence } from "../../src/reed/catalogue.js";
import { demoReeds } from "../../src/reed/demo-reeds.js";
import { describeReed } from "../../src/reed/sentence.js";
import { allRoundReed, mixedReed, randomShares } from "../engine/mixed-reeds.js";
import { randomValues, seeded } from "../engine/random-model.js";

const allRound = allRoundReed(bassoonModel);
const mixed = (high: number, low: number, loud: number): Values =>
  mixedReed(bassoonModel, [high, low, loud]);

function pieces(values: Values): Sentence {
  const features = bassoonModel.features.map(({ id }) => id).filter((id) => id in values);
  try {
    const map = compileModel(bassoonModel, { features });
    const described = { model: bassoonModel, values, place: { map, placed: place(map, values) } };
    return describeReed(described, english);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return describeReed({ model: bassoonModel, values }, english);
  }
}
const say = (values: Values): string => sentenceText(pieces(values));
const without = (values: Values, ...left: string[]): Values =>
  Object.fromEntries(Object.entries(values).filter(([id]) => !left.includes(id)));

describe("the demo reeds", () => {
  test.each([
    [
      "Bittern",
      "This reed leans clearly toward soft and low playing: a flat first wire, a thin spine and a thin heart pull it there most.",
    ],
    [
      "Heron",
      "This reed leans clearly toward the high register: a narrow tip, a short blade and a parallel profile pull it there most.",
    ],
    [
      "Plover",
      "This reed leans slightly toward full volume: a wide throat, thick rails and a flat second wire pull it there most. Its narrow tip and thin wings pull back. But its extremes cancel each other: most reeds at this place have a milder recipe.",
    ],
    [
      "Snipe",
      "This reed leans strongly toward soft and low playing and away from full volume: a thin heart, a low opening and a thin spine pull it there most.",
    ],
    [
      "Curlew",
      "This reed leans strongly toward full volume: a tall opening, thick rails and weak hinging pull it there most.",
    ],
    [
      "Teal",
      "This is an all-round reed: it lies in the middle of the three purposes, and no feature pulls it far.",
    ],
  ])("%s", (name, expected) => {
    const demo = demoReeds.find(({ reed }) => reed === name);
    expect(say(demo?.readings ?? {})).toBe(expected);
  });
});

describe("places of the triangle", () => {
  test.each<[string, Values, string]>([
    [
      "the middle",
      allRound,
      "This is an all-round reed: it lies in the middle of the three purposes, and no feature pulls it far.",
    ],
    [
      "the high corner",
      mixed(1, 0, 0),
      "This is nearly the corner reed for the high register: a narrow tip and a short blade pull it there most.",
    ],
    [
      "the low corner",
      mixed(0, 1, 0),
      "This is nearly the corner reed for soft and low playing: a thin spine, a thin heart and a flat first wire pull it there most.",
    ],
    [
      "the loud corner",
      mixed(0, 0, 1),
      "This is nearly the corner reed for full volume: a tall opening, thick rails and a wide throat pull it there most.",
    ],
    [
      "beyond a corner",
      mixed(1.3, -0.15, -0.15),
      "This reed goes further toward the high register than the corner reed: a narrow tip and a short blade pull it out there most.",
    ],
    [
      "slightly",
      mixed(0.43, 0.3, 0.27),
      "This reed leans slightly toward the high register: a narrow tip, a narrow throat and thin wings pull it there most.",
    ],
    [
      "clearly",
      mixed(0.2, 0.55, 0.25),
      "This reed leans clearly toward soft and low playing: a thin spine, a thin heart and a flat first wire pull it there most.",
    ],
    [
      "strongly",
      mixed(0.1, 0.15, 0.75),
      "This reed leans strongly toward full volume: a tall opening, thick rails and a wide throat pull it there most.",
    ],
    [
      "a tie",
      mixed(0.5, 0.48, 0.02),
      "This reed lies between the high register and soft and low playing, away from full volume: a low opening, thin rails and a narrow throat pull it there most.",
    ],
    [
      "another tie",
      mixed(0.1, 0.46, 0.44),
      "This reed lies between soft and low playing and full volume, away from the high register: a wide tip and a long blade pull it there most.",
    ],
  ])("%s", (_name, values, expected) => {
    expect(say(values)).toBe(expected);
  });

  test.each([
    [mixed(0.6, 0.6, -0.2), "full volume"],
    [mixed(-0.3, 0.65, 0.65), "the high register"],
    [mixed(0.7, -0.4, 0.7), "soft and low playing"],
  ])("beyond the side opposite %#", (values, purpose) => {
    const start = `This reed lies outside the triangle: it has less of ${purpose} than any mix of the corner reeds`;
    expect(say(values).slice(0, start.length)).toBe(start);
  });
});

describe("single features and extremes", () => {
  test.each<[string, Values, string]>([
    [
      "a plural",
      { ...allRound, wings: 0.19 },
      "This reed leans slightly toward the high register: thin wings pull it there most.",
    ],
    [
      "an uncountable",
      { ...allRound, hinging: 0 },
      "This reed leans slightly toward full volume: weak hinging pulls it there most.",
    ],
    [
      "a singular",
      { ...allRound, openingHeight: 1.7 },
      "This reed leans clearly toward full volume: a tall opening pulls it there most.",
    ],
    [
      "extremes that cancel",
      { ...allRound, spine: 0.66, rails: 0.5, heart: 0.38, hinging: 0.2, tip: 0.08 },
      "This reed leans clearly toward full volume: thick rails and weak hinging pull it there most. Its thin tip and thin heart pull back. But its extremes cancel each other: most reeds at this place have a milder recipe.",
    ],
  ])("%s", (_name, values, expected) => {
    expect(say(values)).toBe(expected);
  });

  test("a reed whose extremes cancel in the middle is told apart from the all-round reed", () => {
    // Opposite pulls of tip width and blade length; first wire and spine bring the point back to the middle.
    const values = { ...allRound, bladeLength: 25.4, tipWidth: 16.2, spine: 0.6, firstWire: 0.67 };
    const map = compileModel(bassoonModel);
    const { raw, mismatch } = place(map, values);
    expect(Math.hypot(...raw.map((share) => share - 1 / 3))).toBeLessThan(0.06);
    expect(mismatch).toBeGreaterThan(0.5);
    expect(say(values)).toMatch(
      /^This is an all-round reed: it lies in the middle of the three purposes, where its [a-z, ]+ and [a-z ]+ balance each other\. But its extremes cancel each other: /,
    );
  });

  test("one feature far out does not cancel anything", () => {
    expect(say({ ...allRound, rails: 0.28 })).not.toContain("cancel");
  });
});

describe("what is not measured", () => {
  test.each<[string, Values, string]>([
    [
      "nothing",
      {},
      "Nothing is measured yet. Throat width, tip width and spine thickness together place a reed best.",
    ],
    [
      "three readings",
      { throatWidth: 8.1, tipWidth: 14, spine: 0.6 },
      "This is nearly the corner reed for the high register: a narrow tip, a narrow throat and a thick spine pull it there most. Not measured: blade length, first-wire roundness, second-wire roundness and 8 more, so the place is less sure.",
    ],
    [
      "all but two",
      without(allRound, "spine", "hinging"),
      "This is an all-round reed: it lies in the middle of the three purposes, and no feature pulls it far. Not measured: spine thickness and hinging, so the place is less sure.",
    ],
    [
      "all but one",
      without(mixed(0.6, 0.2, 0.2), "spine"),
      "This reed leans clearly toward the high register: a narrow tip, a short blade and thin wings pull it there most. Not measured: spine thickness, so the place is less sure.",
    ],
  ])("%s", (_name, values, expected) => {
    expect(say(values)).toBe(expected);
  });

  test.each([
    ["Opening height and opening width", { openingHeight: 1.2, openingWidth: 12 }],
    ["Spine thickness", { spine: 0.56 }],
  ])("%s alone", (names, values) => {
    const text = say(values);
    const start = `${names} alone cannot tell the three purposes apart. `;
    expect(text.slice(0, start.length)).toBe(start);
    // Throat width would be one more reading, and with the opening it does not place the reed.
    expect(text).not.toMatch(/one more reading/i);
  });

  test("throat width, tip width and spine place a reed, whatever else was measured", () => {
    const best = ["throatWidth", "tipWidth", "spine"];
    const others = bassoonModel.features.map(({ id }) => id).filter((id) => !best.includes(id));
    for (let choice = 0; choice < 2 ** others.length; choice += 1) {
      const features = [...best, ...others.filter((_, j) => (choice >> j) % 2 === 1)];
      expect(compileModel(bassoonModel, { features }).features).toHaveLength(features.length);
    }
  });
});

test("a purpose is a piece of its own, so that it can be drawn in its colour", () => {
  expect(pieces(mixed(0.5, 0.48, 0.02)).filter((piece) => typeof piece !== "string")).toEqual([
    { purpose: "high", words: "the high register" },
    { purpose: "low", words: "soft and low playing" },
    { purpose: "loud", words: "full volume" },
  ]);
});

test("what is left out of a try was measured, and is told so", () => {
  const state = startState(bassoonModel);
  const left = reduce(state, { type: "value-set", feature: "spine", value: undefined });
  const said = sentenceText(viewBench(left, english).sentence);
  expect(said).toContain("Left out: spine thickness, so the place is less sure.");
  expect(said).not.toContain("Not measured");
});

test("whatever the reed, it is whole sentences without a hole, a double blank or a number gone wrong", () => {
  for (let seed = 1; seed <= 400; seed += 1) {
    const random = seeded(seed);
    const whole =
      seed % 2 === 0
        ? randomValues(random, bassoonModel)
        : mixedReed(bassoonModel, randomShares(random, -0.3, 0.9));
    const left = bassoonModel.features
      .map(({ id }) => id)
      .filter(() => seed % 3 === 0 && random() < 0.4);
    const text = say(without(whole, ...left));
    expect(text, `seed ${seed}`).toMatch(/^[A-Z][^.]*\.( [A-Z][^.]*\.)*$/);
    expect(text, `seed ${seed}`).not.toMatch(/ {2}|undefined|NaN|null| [,.:]|\ba [aeiou]/);
  }
});

test("a feature of a teacher's own model is told by its label", () => {
  const features = bassoonModel.features.map((one) =>
    one.id === "openingHeight" ? { ...one, id: "bore", label: "Bore" } : one,
  );
  const model = { ...bassoonModel, features };
  const values = { ...allRoundReed(model), bore: 1.7 };
  const map = compileModel(model);
  const described = { model, values, place: { map, placed: place(map, values) } };
  expect(sentenceText(describeReed(described, english))).toBe(
    "This reed leans clearly toward full volume: more bore pulls it there most.",
  );
});
