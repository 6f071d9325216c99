import { expect, test } from "vitest";
import { bladeThickness, type BladeRecipe } from "../../src/acoustics/blade.js";
import { reduce, startState, type BenchAction } from "../../src/app/bench-state.js";
import { viewBench } from "../../src/app/bench-view.js";
import { bladeRows, endRows, triangleRows } from "../../src/app/drawn-rows.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { english } from "../../src/reed/catalogue.js";
import { demoReeds } from "../../src/reed/demo-reeds.js";

const heron = demoReeds.find(({ reed }) => reed === "Heron")!.readings;
const run = (...actions: readonly BenchAction[]) =>
  actions.reduce((state, action) => reduce(state, action), startState(bassoonModel));
const rowsOf = (...actions: readonly BenchAction[]) => {
  const state = run(...actions);
  return triangleRows(state, viewBench(state, english), english);
};
const load: BenchAction = { type: "reed-loaded", reed: "Heron", values: heron };
const layer = (name: "pulls" | "reach" | "coverage95" | "gaugeAlone"): BenchAction => ({
  type: "layer-set",
  layer: name,
  on: true,
});

test("the table of the triangle has a line for everything that is drawn on it, and for nothing else", () => {
  const names = (...actions: readonly BenchAction[]) => rowsOf(...actions).map(({ name }) => name);
  expect(names()).toEqual([
    "All-round reed (centre)",
    "The reed's point",
    "Certainty, 1 standard deviation (ellipse drawn for 68%, gauge and recipe)",
  ]);
  const full = names(
    { type: "reed-pinned" },
    load,
    { type: "target-set", target: "softLow" },
    layer("pulls"),
    layer("reach"),
    layer("coverage95"),
    layer("gaugeAlone"),
  );
  expect(full).toContain("Pinned: All-round reed");
  expect(full).toContain(
    "Zone for a soft low second part, centre of a circle of radius 0.08 in shares",
  );
  expect(full).toContain("Certainty, 1 standard deviation (ellipse drawn for 95%, gauge alone)");
  expect(full).toContain("Pull of shape, in percentage points");
  expect(full.slice(-2)).toEqual([
    "Reach with easy amounts, from … to",
    "Reach with all that is possible, from … to",
  ]);
});

test("pulls are told with their sign and lead from the centre to the point, by rounding", () => {
  const rows = rowsOf(load, layer("pulls"));
  const point = rows.find(({ name }) => name === "The reed's point")!.cells;
  const whole = (cell: string): number => Number(cell.replace("%", "").replace("−", "-"));
  const pulled = rows.filter(({ name }) => name.startsWith("Pull of"));
  const high = pulled.reduce((sum, { cells }) => sum + whole(cells[0]!), 100 / 3);
  // Four pulls and the point are rounded to whole per cents.
  expect(Math.abs(high - whole(point[0]!))).toBeLessThan(2.6);
  expect(pulled.some(({ cells }) => cells.some((cell) => cell.startsWith("+")))).toBe(true);
});

test("the blade's table has the thickness that the lamp view draws, in the person's unit", () => {
  const rows = bladeRows(bassoonModel, heron, "mm", english);
  const recipe = heron as unknown as BladeRecipe;
  expect(rows[0]!.name).toBe("1.00 mm");
  for (const { name, cells } of rows) {
    const x = Number.parseFloat(name) / 1000;
    const expected = [0, 0.5, 0.9].map((u) => bladeThickness(recipe, x, u) * 1000);
    cells.forEach((cell, i) => expect(Number.parseFloat(cell)).toBeCloseTo(expected[i]!, 2));
  }
  expect(bladeRows(bassoonModel, heron, "thou", english)[0]!.name).toMatch(/^39(\.\d)? thou$/);
});

test("the openings have the width and height of the recipe; a tube is as tall as its roundness says", () => {
  const [opening, first] = endRows(bassoonModel, heron, "mm", english);
  expect(opening!.cells).toEqual(["11.60 mm", "1.20 mm"]);
  expect(Number.parseFloat(first!.cells[1]!)).toBeCloseTo(
    heron["throatWidth"]! * heron["firstWire"]!,
    2,
  );
});

test("the reach is told as it is drawn, inside the triangle, and full amounts reach at least as far", () => {
  const spans = rowsOf(load, layer("reach"))
    .filter(({ name }) => name.startsWith("Reach"))
    .map(({ cells }) =>
      cells.map((cell) => cell.split(" – ").map((end) => Number.parseInt(end, 10))),
    );
  const [easy, full] = spans;
  easy!.forEach(([least, most], k) => {
    expect(full![k]![0]).toBeLessThanOrEqual(least!);
    expect(full![k]![1]).toBeGreaterThanOrEqual(most!);
    expect(least).toBeGreaterThanOrEqual(0);
    expect(most).toBeLessThanOrEqual(100);
  });
});

test("a reed outside is told twice: where its point is drawn, and where it lies itself", () => {
  const rows = rowsOf(
    load,
    { type: "value-set", feature: "wings", value: 0.02 },
    { type: "value-set", feature: "tipWidth", value: 12 },
  );
  const [point, itself] = rows.filter(({ name }) => /point|itself/.test(name));
  expect(itself!.name).toContain("outside");
  expect(point!.cells).not.toEqual(itself!.cells);
});
