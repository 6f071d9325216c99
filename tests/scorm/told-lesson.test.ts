import { describe, expect, test } from "vitest";
import { reduceLesson } from "../../src/lesson/lesson-state.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { ToldLesson } from "../../src/scorm/told-lesson.js";
import { answer, begin, dialects } from "./begun-lesson.js";
import { idsOf, longLesson, madeAnswers, madeLesson } from "./made-lesson.js";

describe.each(["1.2", "2004"] as const)("SCORM %s", (edition) => {
  test("the next sitting begins exactly where the last one ended", () => {
    const { told, sit } = begin(edition);
    for (const id of ["0.0", "0.1", "0.2"]) answer(told, id);
    told.turn(1);
    const hinted = reduceLesson(told.attempt.run, { type: "hint", exercise: "1.1" }, madeLesson);
    told.work(
      reduceLesson(
        hinted,
        { type: "answer", exercise: "1.2", answer: madeAnswers["1.2"]! },
        madeLesson,
      ),
      undefined,
    );
    told.leave();
    const next = sit();
    expect(next.attempt).toEqual(told.attempt);
    expect(next.attempt.run.step).toBe(1);
    expect(next.attempt.run.exercises["0.0"]!.locked).toBe(true);
  });

  test("what was completed is not taken back when the platform has lost the rest", () => {
    const { platform, told, sit } = begin(edition);
    for (const id of idsOf(madeLesson)) answer(told, id);
    told.leave();
    const dialect = dialects[edition];
    platform.values.set(dialect.packed, "");
    expect(sit().attempt.first).toEqual({});
    expect(platform.values.get(dialect.status)).toBe("completed");
  });

  test("a platform that does not begin is left alone", () => {
    const dialect = dialects[edition];
    const { platform, told } = begin(edition, { refused: new RegExp(`^${dialect.initialize}$`) });
    told.hide();
    told.leave();
    expect(platform.calls).toEqual([dialect.initialize]);
    expect(told.platform).toBe("closed");
  });

  test("a platform that keeps no list of answers and no scores is told the rest", () => {
    const { platform, told } = begin(edition, { refused: /interactions|score/ });
    for (const id of idsOf(madeLesson)) answer(told, id);
    expect(told.platform).toBe("open");
    expect(platform.values.get(dialects[edition].status)).toBe("completed");
  });

  test("what a platform refuses is said, and told again with the next answer", () => {
    const dialect = dialects[edition];
    const { platform, told } = begin(edition, { refused: /suspend_data/ });
    expect(told.platform).toBe("open");
    answer(told, "0.1");
    expect(told.platform).toBe("refusing");
    platform.since();
    answer(told, "0.2");
    const said = platform.since().join("\n");
    expect(said).toContain(`${dialect.set} ${dialect.packed} 1;0.1:1Lr:c1;0.2:`);
  });

  test("what a platform cannot give back at the start is not written over by an empty attempt", () => {
    const dialect = dialects[edition];
    const { platform, told } = begin(edition, { refused: new RegExp(`^${dialect.get}$`) });
    platform.values.set(dialect.packed, "of another sitting");
    told.hide();
    told.leave();
    expect(platform.values.get(dialect.packed)).toBe("of another sitting");
  });

  test("a lesson that was passed once stays passed, though less comes of it another time", () => {
    const dialect = dialects[edition];
    const { platform, sit } = begin(edition, { mastery: 90 });
    platform.values.set(dialect.status, edition === "1.2" ? "passed" : "completed");
    platform.values.set(dialect.success, "passed");
    const again = sit();
    for (const id of idsOf(madeLesson)) answer(again, id);
    expect(platform.values.get(dialect.success)).toBe("passed");
  });

  test("no more answers are listed than every platform keeps", () => {
    const { platform, told } = begin(edition);
    for (let n = 0; n < 249; n += 1) platform.values.set(`cmi.interactions.${n}.id`, "x");
    answer(told, "0.1");
    answer(told, "0.2");
    expect(platform.count).toBe("250");
  });

  test("a lesson too long for the platform is told in time, short enough", () => {
    const lesson = longLesson(60);
    const { platform, told } = begin(edition, { lesson });
    const recipe = Object.fromEntries(
      bassoonModel.features.map(({ id, max }) => [id, max - 1 / 3]),
    );
    for (const id of idsOf(lesson)) answer(told, id, { kind: "aim", values: recipe }, lesson);
    const dialect = dialects[edition];
    expect(platform.values.get(dialect.packed)!.length).toBeLessThanOrEqual(dialect.most);
    expect(platform.values.get(dialect.status)).toBe("completed");
    expect(
      platform.values.get("cmi.interactions.0.student_response")?.length ?? 0,
    ).toBeLessThanOrEqual(255);
  });

  test("without a platform everything works and nothing is called", () => {
    const told = new ToldLesson(
      madeLesson,
      {},
      { dialect: dialects[edition], model: bassoonModel },
    );
    for (const id of idsOf(madeLesson)) answer(told, id);
    told.hide();
    told.leave();
    expect(told.platform).toBe("absent");
    expect(Object.keys(told.attempt.first)).toHaveLength(6);
  });

  test("a platform that throws stops nothing", () => {
    const dialect = dialects[edition];
    const view = {
      [dialect.api]: {
        [dialect.initialize]: () => "true",
        [dialect.get]: () => {
          throw new Error("broken");
        },
      },
    };
    const told = new ToldLesson(madeLesson, view, { dialect, model: bassoonModel });
    answer(told, "0.1");
    told.leave();
    expect(told.attempt.first).toEqual({ "0.1": true });
  });
});
