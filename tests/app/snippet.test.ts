import { expect, test } from "vitest";
import { snippet, type Embedding } from "../../src/app/snippet.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { newBench, type Bench } from "../../src/reed/bench.js";
import { demoReadings } from "../../src/reed/demo-readings.js";

const how: Embedding = {
  show: "triangle",
  as: "element",
  theme: "",
  locked: false,
  folder: "https://school.example/reedpoint/",
  says: "A reed.",
};
const bench = newBench(bassoonModel);
const lines = (change: Partial<Bench> = {}, other: Partial<Embedding> = {}): string =>
  snippet({ ...bench, ...change }, bassoonModel, { ...how, ...other });

test("an element says no more than it must", () => {
  expect(lines()).toBe(
    '<script type="module" src="https://school.example/reedpoint/elements/reed-elements.js"></script>\n<reed-triangle>A reed.</reed-triangle>\n',
  );
  const bittern = { reed: "Bittern", values: demoReadings["Bittern"]!, target: "softLow" };
  expect(lines(bittern, { theme: "night", locked: true })).toContain(
    '<reed-triangle reed="Bittern" target="softLow" theme="night" locked>',
  );
});

test("readings that the name does not say are said, and one's own target in per cent", () => {
  const changed = { ...demoReadings["Bittern"]!, tip: 0.123 };
  const told = lines({
    reed: "Bittern",
    values: changed,
    target: "own",
    aim: [0.25, 0.505, 0.245],
  });
  expect(told).toContain("&quot;tip&quot;:0.123");
  expect(told).toContain('target="25 50.5 24.5"');
});

test("a name cannot break out of its place", () => {
  const name = '"><script>alert(1)</script>&amp;';
  for (const as of ["element", "frame"] as const) {
    const told = lines({ reed: name }, { as, says: name });
    expect(told.match(/<script/g)).toHaveLength(1);
    expect(told).not.toContain('""');
  }
});

test("a frame is in a sandbox and has the whole bench in its address", () => {
  const told = lines({ reed: "Heron" }, { as: "frame", show: "lip", theme: "auto" });
  expect(told).toContain('sandbox="allow-scripts"');
  expect(told).toContain(
    "https://school.example/reedpoint/frame.html?show=lip&amp;theme=auto#v=1&amp;model=bassoon&amp;reed=Heron",
  );
  expect(told).toContain("https://school.example/reedpoint/elements/reed-frame.js");
});

test("a lesson is said by its id and step, and carries nothing of the bench", () => {
  const open = { reed: "Heron", locked: ["tip"], lesson: { id: "06-shape", step: 2 } };
  expect(lines(open, { show: "lesson", theme: "night", locked: true })).toContain(
    '<reed-lesson lesson="06-shape" step="3" theme="night">A reed.</reed-lesson>',
  );
  expect(lines({ ...open, lesson: { id: "01-parts", step: 0 } }, { show: "lesson" })).toContain(
    '<reed-lesson lesson="01-parts">',
  );
  const frame = lines(open, { show: "lesson", as: "frame", locked: true });
  expect(frame).toContain('src="https://school.example/reedpoint/lesson-frame.html#v=1&amp;model=');
  expect(frame).toContain('page=lessons&amp;lesson=06-shape.3"');
  expect(frame).not.toContain("Heron");
});
