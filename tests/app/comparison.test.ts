import { expect, test } from "vitest";
import { compareReeds } from "../../src/app/comparison.js";
import { compileModel } from "../../src/engine/compile.js";
import { place } from "../../src/engine/place.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { demoReeds } from "../../src/reed/demo-reeds.js";

const readings = (name: string) => demoReeds.find(({ reed }) => reed === name)!.readings;
const [heron, bittern] = [readings("Heron"), readings("Bittern")];
const map = compileModel(bassoonModel);

test("what differs most between two reeds comes first, and all of it adds up to the way between them", () => {
  const { differences, blend, onlyOne } = compareReeds(bassoonModel, heron, {
    reed: "Bittern",
    values: bittern,
  });
  expect(blend).toEqual(place(map, bittern).raw);
  expect(onlyOne).toEqual([]);
  const sizes = differences.map(({ move }) => Math.hypot(...move));
  expect(sizes).toEqual(sizes.toSorted((a, b) => b - a));
  const gap = place(map, heron).raw[0] - place(map, bittern).raw[0];
  expect(differences.reduce((sum, { move }) => sum + move[0], 0)).toBeCloseTo(gap, 10);
  for (const { feature, change } of differences)
    expect(change).toBeCloseTo(heron[feature]! - bittern[feature]!, 10);
});

test("a reed against itself differs in nothing", () => {
  const same = compareReeds(bassoonModel, heron, { reed: "Heron", values: { ...heron } });
  expect(same.differences).toEqual([]);
});

test("features read on one reed only are named, and the others compared among themselves", () => {
  const { spine: _spine, hinging: _hinging, ...rest } = bittern;
  const { differences, onlyOne } = compareReeds(bassoonModel, heron, { reed: "", values: rest });
  expect(onlyOne).toEqual(["spine", "hinging"]);
  expect(differences.map(({ feature }) => feature)).not.toContain("spine");
  const few = compareReeds(bassoonModel, heron, { reed: "", values: { tip: 0.1 } });
  expect([few.blend, few.differences]).toEqual([undefined, []]);
});
