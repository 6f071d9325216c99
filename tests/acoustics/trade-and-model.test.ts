import { describe, expect, test } from "vitest";
import { lipResponse } from "../../src/acoustics/lip-response.js";
import { dialValue } from "../../src/acoustics/lip-dials.js";
import {
  purposeCriteria,
  purposeStates,
  tradeAndModel,
  type LipPurpose,
  type TradeRow,
} from "../../src/acoustics/trade-and-model.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { tradeFeatures } from "../../src/reed/trade-features.js";
import { seeded } from "../engine/random-model.js";
import { tradeDirections } from "../tables/trade-directions.js";
import { allRoundLip, cornerLips, randomLipRecipe } from "./lip-recipes.js";

const features = tradeFeatures(bassoonModel);
const rows = tradeAndModel(allRoundLip, features);
const rowOf = (feature: string, purpose: LipPurpose): TradeRow =>
  rows.find((row) => row.feature === feature && row.purpose === purpose)!;

describe("what the trade says, read off the corner reeds", () => {
  // Common practice, no source.
  test.each(tradeDirections)(
    "$feature for $purpose: $direction",
    ({ feature, purpose, direction }) => {
      expect(features.find(({ id }) => id === feature)!.trade[purpose]).toBe(direction);
    },
  );

  test("is told of every feature and ratio, and is nothing where the corner lies at the all-round value", () => {
    expect(features.map(({ id }) => id)).toEqual([
      ...bassoonModel.features.map(({ id }) => id),
      ...bassoonModel.ratios.map(({ id }) => id),
    ]);
    const made = {
      ...bassoonModel,
      features: bassoonModel.features.map((one) =>
        one.id === "spine" ? { ...one, corners: { high: 0.6, low: 0.5, loud: 0.55 } } : one,
      ),
    };
    const spine = tradeFeatures(made).find(({ id }) => id === "spine")!;
    expect(spine.trade).toEqual({ high: "more", low: "less", loud: "nothing" });
    expect(spine.step["spine"]).toBeCloseTo(0.05, 12);
  });
});

test("a step of a ratio thickens one reading and thins the other by the same share", () => {
  const { step } = features.find(({ id }) => id === "spineToRails")!;
  expect(Object.keys(step)).toEqual(["spine", "rails"]);
  expect(step["spine"]! / allRoundLip.spine).toBeCloseTo(0.06, 12);
  expect(step["rails"]! / allRoundLip.rails).toBeCloseTo(-0.06, 12);
});

describe("the table", () => {
  test("has a row for every feature and purpose", () => {
    expect(rows).toHaveLength(features.length * 3);
    expect(new Set(rows.map(({ reason }) => reason)).size).toBe(rows.length);
  });

  test("says what the dials say, for any reed", () => {
    const random = seeded(8);
    for (let i = 0; i < 12; i += 1) {
      for (const row of tradeAndModel(randomLipRecipe(random), features)) {
        const effects = row.changes.map(({ effect }) => effect);
        const [serves, hinders] = [effects.includes("serves"), effects.includes("hinders")];
        const model = serves && hinders ? "both" : serves ? "more" : hinders ? "less" : "nothing";
        expect(row.model).toBe(model);
        for (const { wanted, change, effect } of row.changes) {
          expect(Number.isFinite(change)).toBe(true);
          if (effect === "none") expect(Math.abs(change)).toBeLessThan(0.01);
          else expect(effect === "serves").toBe(change > 0 === (wanted === "more"));
        }
        if (row.agree === "yes") expect(row.model).toBe(row.trade);
        if (row.agree === "no") expect([row.model, row.trade].toSorted()).toEqual(["less", "more"]);
        if (row.agree === "silent") expect([row.model, row.trade]).toContain("nothing");
        if (row.agree === "partly") expect(row.model).toBe("both");
      }
    }
  });

  test("changes are those of the whole response, half a step to either side", () => {
    const { changes } = rowOf("bladeLength", "high");
    const { step } = features.find(({ id }) => id === "bladeLength")!;
    const at = (share: number) =>
      lipResponse(
        { ...allRoundLip, bladeLength: allRoundLip.bladeLength + share * step["bladeLength"]! },
        purposeStates.high,
      );
    for (const { dial, change } of changes) {
      expect(dialValue(at(0.5), dial) / dialValue(at(-0.5), dial) - 1).toBeCloseTo(change, 12);
    }
  });

  test("judges by what is fixed: high by resonance and area, low by closing pressure and area, loud by air", () => {
    expect(purposeCriteria).toEqual({
      high: [
        { dial: "resonance", wanted: "more" },
        { dial: "vibratingArea", wanted: "less" },
      ],
      low: [
        { dial: "closingPressure", wanted: "less" },
        { dial: "vibratingArea", wanted: "more" },
      ],
      loud: [{ dial: "peakFlow", wanted: "more" }],
    });
  });

  test.each([
    ["openingHeight", "loud", "yes"],
    ["openingWidth", "loud", "yes"],
    ["throatWidth", "loud", "yes"],
    ["hinging", "loud", "yes"],
    ["bladeLength", "low", "yes"],
    ["firstWire", "low", "yes"],
    ["tipWidth", "high", "yes"],
    ["bladeLength", "high", "partly"],
    ["firstWire", "high", "partly"],
    ["backRise", "high", "no"],
    ["tipWidth", "loud", "no"],
    ["secondWire", "high", "silent"],
    ["tip", "low", "silent"],
  ] as const)("at the all-round reed: %s for %s, agree? %s", (feature, purpose, agree) => {
    expect(rowOf(feature, purpose).agree).toBe(agree);
  });

  test("is computed live: another reed has other rows", () => {
    const other = tradeAndModel(cornerLips.loud, features);
    expect(other.some((row, i) => row.agree !== rows[i]!.agree)).toBe(true);
  });
});
