import { describe, expect, test } from "vitest";
import { gaugeErrors } from "../../src/app/gauge-errors.js";
import { lessonsBeside, momentBeside } from "../../src/app/moment-beside.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { decodeBench } from "../../src/reed/bench.js";
import entries from "../fixtures/history-entries.json" with { type: "json" };

const entryOf = (name: string) => entries.find((one) => one.name === name)!;

/** What a reload brings back of a history entry as an earlier version wrote it. */
function restored(name: string) {
  const { state } = entryOf(name);
  const { bench, problems } = decodeBench(state.code, bassoonModel);
  return { ...momentBeside(state.beside, bench), bench, problems };
}

describe("a history entry of an earlier version", () => {
  test.each(entries)(
    "“$name” brings every reading back, with its value unchanged",
    ({ name, state }) => {
      const { readings, problems } = restored(name);
      const values = Object.fromEntries(
        Object.entries(readings).map(([id, all]) => [id, all.map(({ value }) => value)]),
      );
      expect({ values, problems }).toEqual({ values: state.beside.readings, problems: [] });
    },
  );

  test("gives its readings the places of the sheet, and the sheet back as it was", () => {
    const { readings, sheet } = restored("measured");
    expect(readings["heart"]).toEqual([
      { place: "frontBlade", value: 0.45 },
      { place: "backBlade", value: 0.44 },
    ]);
    expect(readings["wings"]?.map(({ place }) => place)).toEqual([
      "frontLeft",
      "frontRight",
      "backLeft",
      "backRight",
    ]);
    expect(sheet).toEqual(entryOf("measured").state.beside.sheet);
    expect(Object.keys(gaugeErrors(bassoonModel, readings))).toEqual(["throatWidth"]);
  });

  test("that was left between two quarters goes on with the next", () => {
    const { readings } = restored("three-wings");
    expect(readings["wings"]?.map(({ place }) => place)).toEqual([
      "frontLeft",
      "frontRight",
      "backLeft",
    ]);
  });

  test("brings answers in lessons back", () => {
    const { beside } = entryOf("lesson-six").state;
    expect(lessonsBeside(beside).progress?.runs).toEqual(beside.progress?.runs);
  });
});
