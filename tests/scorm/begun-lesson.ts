import { bassoonModel } from "../../src/reed/bassoon.js";
import { scorm12 } from "../../src/scorm/scorm-12.js";
import { scorm2004 } from "../../src/scorm/scorm-2004.js";
import { ToldLesson } from "../../src/scorm/told-lesson.js";
import { FakePlatform } from "./fake-platform.js";
import { answeredRun, madeAnswers, madeLesson } from "./made-lesson.js";

export const dialects = { "1.2": scorm12, "2004": scorm2004 };

/** A lesson begun on a platform that notes every call; every look at the clock takes it 1.5 s on. */
export function begin(
  edition: keyof typeof dialects,
  {
    refused,
    mastery,
    lesson = madeLesson,
  }: { refused?: RegExp; mastery?: number; lesson?: typeof madeLesson } = {},
) {
  const dialect = dialects[edition];
  const platform = new FakePlatform(dialect, refused ? { refused } : {});
  const view = { parent: { [dialect.api]: platform.api } };
  let clock = 1_000_000;
  const sit = () =>
    new ToldLesson(lesson, view, {
      dialect,
      model: bassoonModel,
      now: () => (clock += 1500),
      ...(mastery === undefined ? {} : { mastery }),
    });
  return { platform, sit, told: sit() };
}

/** An answer is put down and handed in. */
export function answer(
  told: ToldLesson,
  exercise: string,
  given = madeAnswers[exercise]!,
  lesson = madeLesson,
) {
  told.work(answeredRun(told.attempt.run, exercise, given, lesson), exercise);
}
