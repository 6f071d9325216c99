import { html, nothing } from "lit";
import { LessonProblems } from "../app/lesson-problems.js";
import type { ReedModel } from "../engine/model.js";
import { lessonMap } from "../lesson/exercise-reed.js";
import { feedbackOn, type Grade } from "../lesson/feedback.js";
import { keptRun } from "../lesson/kept-run.js";
import { isExercise, type Lesson } from "../lesson/lesson.js";
import {
  exerciseStateOf,
  lessonState,
  reduceLesson,
  type LessonState,
} from "../lesson/lesson-state.js";
import { stepView } from "../lesson/lesson-view.js";
import { bassoonActions } from "../reed/bassoon.js";
import type { Catalogue } from "../reed/catalogue.js";
import { withLessons } from "../reed/lesson-catalogue.js";
import { define } from "../widgets/define.js";
import { LessonPlayer } from "../widgets/lesson-player.js";
import type { BroughtLesson } from "./bring-lesson.js";
import { warnOnce } from "./warn-once.js";

export { bringLesson } from "./bring-lesson.js";

define("lesson-player", LessonPlayer);
define("lesson-problems", LessonProblems);

/** What the inside of a lesson element shows. */
export interface LessonInside {
  readonly brought: BroughtLesson;
  /** Absent where there is no lesson. */
  readonly run: LessonState | undefined;
  readonly model: ReedModel;
  readonly text: Catalogue;
}

/** The lesson at one of its steps, what is wrong in its file, or why it is not there. */
export function lessonInside({ brought, run, model, text }: LessonInside) {
  const { lesson, file, problems, trouble } = brought;
  const whole = withLessons(text);
  if (trouble) return html`<p role="alert">${trouble}</p>`;
  return html`${
    problems.length > 0
      ? html`<lesson-problems .file=${file} .problems=${problems} .text=${whole}></lesson-problems>`
      : nothing
  }
  ${
    lesson && run
      ? html`<lesson-player
          part="lesson"
          .lesson=${lesson}
          .run=${run}
          .model=${model}
          .text=${whole}
        ></lesson-player>`
      : html`<p>${whole.lessons.file.noLesson}</p>`
  }`;
}

/** A run to begin with: what can be used of one that the page has kept, else the step that it names. */
export function firstRun(lesson: Lesson, kept: unknown, step: number): LessonState {
  return kept === undefined ? atStep(lesson, lessonState(lesson), step) : keptRun(lesson, kept);
}

/** The same run at another step, counted from 1; at the first one where there is none of that number. */
export function atStep(lesson: Lesson, run: LessonState, step: number): LessonState {
  const { length } = lesson.steps;
  if (step > length) warnOnce(`step: ${step} is not there; allowed: 1 to ${length}`);
  return reduceLesson(run, { type: "step", step: step > length ? 0 : step - 1 }, lesson);
}

/** How many exercises of a lesson are answered. */
export function counts({ steps }: Lesson, { exercises }: LessonState) {
  return {
    done: Object.values(exercises).filter(({ locked }) => locked).length,
    all: steps.flatMap(({ blocks }) => blocks.filter(isExercise)).length,
  };
}

/** Which exercise was worked on, and whether more was done than to move an answer about. */
export function workedOn(before: LessonState, after: LessonState) {
  const exercise = Object.keys(after.exercises).find(
    (id) => after.exercises[id] !== before.exercises[id],
  );
  if (exercise === undefined) return undefined;
  const [was, is] = [exerciseStateOf(before, exercise), exerciseStateOf(after, exercise)];
  const isMore = was.locked !== is.locked || was.hints !== is.hints || was.tries !== is.tries;
  return { exercise, isMore };
}

/** How good an answer was that has been handed in. */
export function gradeOf(
  exercise: string,
  {
    lesson,
    run,
    model,
    text,
  }: Omit<LessonInside, "brought" | "run"> & {
    readonly lesson: Lesson;
    readonly run: LessonState;
  },
): Grade | undefined {
  const telling = {
    map: lessonMap(lesson, model),
    actions: bassoonActions,
    text: withLessons(text),
    unit: "mm",
  } as const;
  for (const block of stepView(lesson, run, telling).blocks)
    if ("id" in block && block.id === exercise) return feedbackOn(block, telling)?.grade;
  return undefined;
}
