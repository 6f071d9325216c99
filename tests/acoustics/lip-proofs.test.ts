import { expect, test } from "vitest";
import { assumed } from "../../src/acoustics/assumptions.js";
import { bladeCrossSection } from "../../src/acoustics/blade.js";
import { lipProofs } from "../../src/acoustics/lip-proofs.js";
import { presetState } from "../../src/acoustics/lip-presets.js";
import { lipResponse } from "../../src/acoustics/lip-response.js";
import { reedMechanics } from "../../src/acoustics/reed-mechanics.js";
import { seeded } from "../engine/random-model.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { jumpBetween } from "./jump-between.js";
import { allRoundLip, cornerLips, randomLipRecipe } from "./lip-recipes.js";

test("every answer holds on every reed: it is what the panel says in words", () => {
  const random = seeded(6);
  const recipes = [
    allRoundLip,
    ...Object.values(cornerLips),
    ...Array.from({ length: 150 }, () => randomLipRecipe(random)),
  ];
  recipes.forEach((recipe, i) => {
    const proofs = lipProofs(reedMechanics(recipe));
    expect(proofs.areaHigh, `reed ${i}`).toBeLessThan(proofs.areaLow);
    expect(proofs.tallerAir, `reed ${i}`).toBeGreaterThan(1);
    expect(proofs.widerAir, `reed ${i}`).toBeGreaterThan(1);
    expect(proofs.bothAir, `reed ${i}`).toBeGreaterThan(
      Math.max(proofs.tallerAir, proofs.widerAir),
    );
    expect(proofs.rounderClosing, `reed ${i}`).toBeGreaterThan(1);
    expect(proofs.rounderResonance, `reed ${i}`).toBeGreaterThan(1);
    expect(proofs.archAtCollar, `reed ${i}`).toBeGreaterThan(1);
  });
});

test("the numbers are those of the changed recipes", () => {
  const proofs = lipProofs(reedMechanics(allRoundLip));
  const rest = { lip: 0, blow: 0 };
  const plain = lipResponse(allRoundLip, rest);
  const { throatWidth, openingHeight, firstWire } = allRoundLip;
  const both = {
    ...allRoundLip,
    throatWidth: throatWidth * 1.1,
    openingHeight: openingHeight * 1.1,
  };
  expect(proofs.bothAir).toBeCloseTo(lipResponse(both, rest).peakFlow / plain.peakFlow, 12);
  const round = lipResponse({ ...allRoundLip, firstWire: firstWire + 0.04 }, rest);
  expect(proofs.rounderClosing).toBeCloseTo(round.closingPressure / plain.closingPressure, 12);
  expect(proofs.areaLow).toBe(lipResponse(allRoundLip, presetState("softLow")).vibratingArea);
});

test("the arch at the collar is that of a shallow parabola: 1 + (16/15)(c/t)² for an even blade", () => {
  const { mean, meanCube } = bladeCrossSection(
    allRoundLip,
    assumed,
  )(allRoundLip.bladeLength / 1000);
  const c = (allRoundLip.throatWidth * allRoundLip.firstWire) / 2000;
  // An uneven blade's mean of t³ is above t̄³: the even law then gives more than the blade has, by that factor.
  const even = 1 + (16 / 15) * (c / mean) ** 2 * (mean ** 3 / meanCube);
  expect(lipProofs(reedMechanics(allRoundLip)).archAtCollar).toBeCloseTo(even, 9);
});

test.each(bassoonModel.features)(
  "as $id moves, no number of an answer jumps",
  ({ id, min, max }) => {
    const known = new Map<number, ReturnType<typeof lipProofs>>();
    const at = (t: number) => {
      const found =
        known.get(t) ?? lipProofs(reedMechanics({ ...allRoundLip, [id]: min + t * (max - min) }));
      known.set(t, found);
      return found;
    };
    // The two areas may jump at the fold, as the dial of the vibrating area does.
    const names = [
      "tallerAir",
      "widerAir",
      "bothAir",
      "rounderClosing",
      "rounderResonance",
      "archAtCollar",
    ] as const;
    for (const name of names) {
      expect(jumpBetween((t) => at(t)[name], 20).size, name).toBeLessThan(1e-4);
    }
  },
);
