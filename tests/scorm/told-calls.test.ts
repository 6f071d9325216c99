import { describe, expect, test } from "vitest";
import { reduceLesson } from "../../src/lesson/lesson-state.js";
import { answer, begin } from "./begun-lesson.js";
import { idsOf, madeLesson } from "./made-lesson.js";

describe("SCORM 1.2: what is called", () => {
  test("at the start: what was kept is read, the lesson is incomplete, and that is kept", () => {
    const { platform, told } = begin("1.2");
    expect(platform.since()).toEqual([
      "LMSInitialize",
      "LMSGetValue cmi.core.lesson_status",
      "LMSGetValue cmi.suspend_data",
      "LMSGetValue cmi.core.lesson_location",
      "LMSSetValue cmi.core.lesson_status incomplete",
      "LMSSetValue cmi.core.exit suspend",
      "LMSCommit",
    ]);
    expect(told.platform).toBe("open");
  });

  test("for an answer: it is listed after those that are there, and everything is kept", () => {
    const { platform, told } = begin("1.2");
    platform.values.set("cmi.interactions.0.id", "earlier");
    platform.since();
    answer(told, "0.1");
    expect(platform.since()).toEqual([
      "LMSGetValue cmi.interactions._count",
      "LMSSetValue cmi.interactions.1.id step-1-choose-2",
      "LMSSetValue cmi.interactions.1.type choice",
      "LMSSetValue cmi.interactions.1.student_response b",
      "LMSSetValue cmi.interactions.1.result correct",
      "LMSSetValue cmi.core.lesson_location 1",
      "LMSSetValue cmi.suspend_data 1;0.1:1Lr:c1",
      "LMSCommit",
    ]);
    expect(platform.values.get("cmi.interactions.1.time")).toMatch(/^\d\d:\d\d:\d\d$/);
    expect(platform.values.get("cmi.interactions.1.latency")).toMatch(/^0000:00:0\d\.\d\d$/);
    expect(platform.values.get("cmi.core.session_time")).toMatch(/^0000:00:[01]\d\.\d\d$/);
  });

  test("every kind of answer has its type and response", () => {
    const { platform, told } = begin("1.2");
    for (const id of idsOf(madeLesson)) answer(told, id);
    const said = [0, 1, 2, 3, 4, 5].map((n) =>
      ["id", "type", "student_response", "result"]
        .map((part) => platform.values.get(`cmi.interactions.${n}.${part}`))
        .join(" "),
    );
    expect(said).toEqual([
      "step-1-predict-1 performance high=30,low=33,loud=37,sure=2 wrong",
      "step-1-choose-2 choice b correct",
      "step-1-read-3 performance high=10,low=-5,loud=95 wrong",
      "step-2-order-2 sequencing b,a correct",
      "step-2-aim-3 performance bladeLength=26.25,tip=0,hinging=0 wrong",
      "step-2-stand-in-4 performance moved=nothing wrong",
    ]);
  });

  test("for a step and for work in between nothing is committed; when hidden it is", () => {
    const { platform, told } = begin("1.2");
    platform.since();
    told.turn(1);
    expect(platform.since()).toEqual([
      "LMSSetValue cmi.core.lesson_location 2",
      "LMSSetValue cmi.suspend_data 1",
    ]);
    told.work(
      reduceLesson(
        told.attempt.run,
        { type: "answer", exercise: "0.1", answer: { kind: "choose", option: 0 } },
        madeLesson,
      ),
      undefined,
    );
    expect(platform.since()).toEqual([]);
    told.hide();
    expect(platform.since()).toEqual(["LMSSetValue cmi.suspend_data 1;0.1:0:c0", "LMSCommit"]);
  });

  test("at the end once, and nothing after it", () => {
    const { platform, told } = begin("1.2");
    platform.since();
    told.leave();
    expect(platform.since()).toEqual(["LMSFinish"]);
    told.hide();
    told.leave();
    told.turn(1);
    answer(told, "0.1");
    expect(platform.calls).toEqual([]);
    expect(told.platform).toBe("over");
    expect(told.attempt.first).toEqual({ "0.1": true });
  });

  test("when everything is answered: completed, and the score", () => {
    const { platform, told } = begin("1.2");
    const ids = idsOf(madeLesson);
    for (const id of ids.slice(0, -1)) answer(told, id);
    expect(platform.values.get("cmi.core.lesson_status")).toBe("incomplete");
    expect([...platform.values.keys()].join(" ")).not.toContain("score");
    platform.since();
    answer(told, ids.at(-1)!);
    expect(platform.since()).toEqual(
      expect.arrayContaining([
        "LMSSetValue cmi.core.lesson_status completed",
        "LMSSetValue cmi.core.score.min 0",
        "LMSSetValue cmi.core.score.max 100",
        "LMSSetValue cmi.core.score.raw 33",
      ]),
    );
  });

  test.each([
    [33, "passed"],
    [34, "failed"],
    [0, "passed"],
  ])("with a pass mark of %d: %s", (mastery, status) => {
    const { platform, told } = begin("1.2", { mastery });
    for (const id of idsOf(madeLesson)) answer(told, id);
    expect(platform.values.get("cmi.core.lesson_status")).toBe(status);
  });
});

describe("SCORM 2004: what is called", () => {
  test("answers, score and status in its own words", () => {
    const { platform, told } = begin("2004", { mastery: 50 });
    for (const id of idsOf(madeLesson)) answer(told, id);
    const value = (element: string) => platform.values.get(element);
    expect(value("cmi.interactions.0.learner_response")).toBe(
      "high[.]30[,]low[.]33[,]loud[.]37[,]sure[.]2",
    );
    expect(value("cmi.interactions.3.learner_response")).toBe("b[,]a");
    expect(value("cmi.interactions.2.result")).toBe("incorrect");
    expect(value("cmi.interactions.0.timestamp")).toMatch(
      /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d\dZ$/,
    );
    expect(value("cmi.interactions.0.latency")).toMatch(/^PT[\d.]+S$/);
    expect(value("cmi.interactions.1.description")).toBe("Which?");
    expect(value("cmi.score.scaled")).toBe("0.33");
    expect(value("cmi.completion_status")).toBe("completed");
    expect(value("cmi.success_status")).toBe("failed");
  });

  test.each([
    ["{lang=de} a  b\n c", "(lang=de) a b c"],
    ["x".repeat(250), "x".repeat(250)],
    ["x".repeat(251), `${"x".repeat(249)}…`],
    [`${"x".repeat(248)}\u{1F426}y`, `${"x".repeat(248)}…`],
  ])("a question is told in at most 250 characters", (ask, description) => {
    const steps = madeLesson.steps.map((step) => ({
      ...step,
      blocks: step.blocks.map((block) => ("ask" in block ? { ...block, ask } : block)),
    }));
    const lesson = { ...madeLesson, steps };
    const { platform, told } = begin("2004", { lesson });
    answer(told, "0.1");
    expect(platform.values.get("cmi.interactions.0.description")).toBe(description);
  });

  test("without a pass mark nobody is said to have passed", () => {
    const { platform, told } = begin("2004");
    for (const id of idsOf(madeLesson)) answer(told, id);
    expect(platform.values.get("cmi.success_status")).toBe("unknown");
  });
});
