import type { Answer } from "../lesson/answer.js";
import type { LessonState } from "../lesson/lesson-state.js";

const upward = { bubbles: true, composed: true } as const;

/** A student has put down an answer, or another one. */
export class AnswerPickedEvent extends Event {
  readonly answer: Answer;
  constructor(answer: Answer) {
    super("answer-picked", upward);
    this.answer = answer;
  }
}

/** What a student asks of an exercise: to hand in, a hint, another try. */
export class ExerciseAskedEvent extends Event {
  readonly exercise: string;
  readonly what: "lock" | "hint" | "again";
  constructor(exercise: string, what: "lock" | "hint" | "again") {
    super("exercise-asked", upward);
    this.exercise = exercise;
    this.what = what;
  }
}

/** A student has worked on a lesson: the run as it is now, and what a screen reader should hear of it. */
export class LessonWorkedEvent extends Event {
  readonly run: LessonState;
  readonly says: string;
  /** The exercise that has just been handed in. */
  readonly handedIn: string | undefined;
  constructor(run: LessonState, says: string, handedIn: string | undefined) {
    super("lesson-worked", upward);
    this.run = run;
    this.says = says;
    this.handedIn = handedIn;
  }
}

/** Another step of a lesson is to be shown. */
export class StepAskedEvent extends Event {
  readonly step: number;
  readonly says: string;
  constructor(step: number, says: string) {
    super("step-asked", upward);
    this.step = step;
    this.says = says;
  }
}
