import type { Answer } from "../lesson/answer.js";

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
