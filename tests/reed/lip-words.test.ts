import { describe, expect, test } from "vitest";
import { assumptions } from "../../src/acoustics/assumptions.js";
import { lipDialIds } from "../../src/acoustics/lip-dials.js";
import { lipPresets } from "../../src/acoustics/lip-presets.js";
import { tradeAndModel, type TradeRow } from "../../src/acoustics/trade-and-model.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { lipWords } from "../../src/reed/lip-words.js";
import { tradeFeatures } from "../../src/reed/trade-features.js";
import { allRoundLip, cornerLips, randomLipRecipe } from "../acoustics/lip-recipes.js";
import { seeded } from "../engine/random-model.js";

const features = tradeFeatures(bassoonModel);
const random = seeded(44);
const reeds = [
  allRoundLip,
  ...Object.values(cornerLips),
  ...Array.from({ length: 10 }, () => randomLipRecipe(random)),
];
const rows: readonly TradeRow[] = reeds.flatMap((reed) => tradeAndModel(reed, features));

describe("why the trade and the model agree or do not", () => {
  test("is one sentence for every row, whichever way it goes", () => {
    for (const row of rows) {
      const why = lipWords.trade.whyOf(row);
      expect(why, row.reason).toMatch(/^[A-Z][^.!?]*\.$/);
      expect(why, row.reason).not.toMatch(/undefined|NaN|Infinity| {2}|does not read/);
      expect(why.length, why).toBeLessThan(320);
    }
    // Each way of agreeing and not agreeing was among them.
    expect(new Set(rows.map(({ agree }) => agree))).toEqual(
      new Set(["yes", "no", "partly", "silent"]),
    );
  });

  test("names every dial that moved, with its size, and none that did not", () => {
    for (const row of rows) {
      const why = lipWords.trade.whyOf(row);
      const said = (why.match(/\d+ %/g) ?? []).map((one) => Number.parseInt(one, 10));
      const moved = row.changes.filter(({ effect }) => effect !== "none");
      expect(said).toEqual(moved.map(({ change }) => Math.round(Math.abs(change) * 100)));
    }
  });

  test("says what the trade asks for", () => {
    for (const row of rows) {
      const asks =
        row.trade === "nothing" ? /asks for nothing/ : new RegExp(`asks for ${row.trade}`);
      expect(lipWords.trade.whyOf(row), row.reason).toMatch(asks);
    }
  });

  test("a feature of a teacher's own model is told as one that the model does not read", () => {
    const row = {
      ...rows[0]!,
      feature: "bore",
      changes: [],
      model: "nothing",
      agree: "silent",
    } as const;
    expect(lipWords.trade.whyOf(row)).toMatch(/^The model does not read this feature: /);
  });

  test("sentences with figures read well", () => {
    const [length] = tradeAndModel(allRoundLip, features).filter(
      ({ feature, purpose }) => feature === "bladeLength" && purpose === "low",
    );
    expect(lipWords.trade.whyOf(length!)).toBe(
      "A longer blade gives way more easily and swings more slowly (a 15 % lower closing pressure): " +
        "that serves soft and low playing, and the trade asks for more of it.",
    );
  });

  test("where the dials differ, the trade sides with the one that asks for what it asks for", () => {
    const whyOf = (feature: string): string =>
      lipWords.trade.whyOf(
        rows.find(
          (row) => row.feature === feature && row.purpose === "high" && row.model === "both",
        )!,
      );
    // A short blade rings higher; a narrow throat leaves less of the blade swinging.
    expect(whyOf("bladeLength")).toMatch(/asks for less of it, sides with the resonance\.$/);
    expect(whyOf("throatWidth")).toMatch(/asks for less of it, sides with the vibrating area\.$/);
  });

  test("the summary counts every row once", () => {
    const numbers = lipWords.trade.count(rows).match(/\d+/g)!.map(Number);
    expect(numbers.reduce((sum, value) => sum + value, 0)).toBe(rows.length);
  });
});

describe("every number of the panel has its words", () => {
  test("dials, presets, constants", () => {
    expect(Object.keys(lipWords.dials)).toEqual([...lipDialIds]);
    expect(Object.keys(lipWords.dialHints)).toEqual([...lipDialIds]);
    expect(Object.keys(lipWords.presets)).toEqual(Object.keys(lipPresets));
    expect(Object.keys(lipWords.assumptions.words).toSorted()).toEqual(
      Object.keys(assumptions).toSorted(),
    );
  });

  test("a constant's unit is that of its number, or its number is brought to it", () => {
    for (const [id, { unit, factor }] of Object.entries(lipWords.assumptions.words)) {
      const own = assumptions[id as keyof typeof assumptions].unit;
      if (own === "Pa") expect([unit, factor]).toEqual(["GPa", 1e-9]);
      else if (own === "share" || own === "ratio") expect([unit, factor]).toEqual(["", 1]);
      else expect([unit, factor]).toEqual([own, 1]);
    }
  });

  test("every constant says where it comes from", () => {
    const { basis } = lipWords.assumptions;
    expect(basis(assumptions.wall)).toBe("Assumption.");
    expect(basis(assumptions.youngsModulus)).toMatch(
      /published range: Weidenfeller et al. \(2018\)/,
    );
    expect(basis(assumptions.elbow)).toMatch(/the law after Gazengel et al. \(2025\)/);
    for (const { lip, blow, place } of Object.values(lipPresets)) {
      expect(basis(lip)).toBe("Assumption.");
      expect(basis(place)).toBe("Assumption.");
      expect(basis(blow)).toMatch(/Fuks & Sundberg/);
    }
  });

  test("a change against the all-round reed, in numbers and in words", () => {
    expect(lipWords.change(1.093)).toBe("+9 %");
    expect(lipWords.change(0.82)).toBe("−18 %");
    expect(lipWords.change(1)).toBe("0 %");
    expect(lipWords.change(undefined)).toBe("–");
    expect(lipWords.degree("resonance", 1.093)).toBe("clearly higher");
    expect(lipWords.degree("closingPressure", 0.56)).toBe("much lower");
    expect(lipWords.degree("opening", 1.01)).toBe("about the same");
    expect(lipWords.dial("vibratingArea", "134", 0.95)).toBe(
      "Vibrating area 134 mm², a little smaller than the all-round reed.",
    );
    expect(lipWords.dial("opening", "9.4", 1)).toBe(
      "Opening 9.4 mm², about the same as the all-round reed.",
    );
    expect(lipWords.dial("opening", "9.4", undefined)).toContain("is closed");
  });

  test("the panel says what it is: a simple model, an analogy, no sound", () => {
    expect(lipWords.simpleModel).toBe("A simple model, not a measurement of this reed.");
    expect(lipWords.hingingNote).toContain("craft observation with an elastic analogy");
    expect(lipWords.noSound).toContain("no sound");
  });
});
