import { lessonMap } from "../lesson/exercise-reed.js";
import type { Lesson } from "../lesson/lesson.js";
import { exerciseStateOf, reduceLesson, type LessonState } from "../lesson/lesson-state.js";
import type { ReedModel } from "../engine/model.js";
import { bassoonActions } from "../reed/bassoon.js";
import { handedIn, newAttempt, type Attempt, standingOf, withRun } from "./attempt.js";
import type { Dialect, Report } from "./dialect.js";
import type { Surroundings } from "./find-platform.js";
import { interactionId, responseOf } from "./marked-answer.js";
import { packAttempt } from "./pack-attempt.js";
import { Platform, type PlatformState } from "./platform.js";
import { unpackAttempt } from "./unpack-attempt.js";

/** What a lesson is told by, and what it is held to. */
export interface Telling {
  readonly dialect: Dialect;
  readonly model: ReedModel;
  /** Whole per cents from which on the lesson is passed; without it, it is completed. */
  readonly mastery?: number;
  /** Milliseconds. */
  readonly now?: () => number;
}

/** A lesson that a learning platform is told of, if there is one: from its start to its end. */
export class ToldLesson {
  readonly #lesson: Lesson;
  readonly #telling: Telling;
  readonly #platform: Platform;
  readonly #now: () => number;
  #attempt: Attempt;
  /** Whether the student has done something in this sitting. */
  #isTouched = false;
  /** Since when the open exercise could be answered. */
  #since: number;

  constructor(lesson: Lesson, view: Surroundings, telling: Telling) {
    this.#lesson = lesson;
    this.#telling = telling;
    this.#now = telling.now ?? Date.now;
    this.#platform = new Platform(telling.dialect, this.#now);
    const kept = this.#platform.start(view);
    this.#attempt = kept ? unpackAttempt(lesson, kept) : newAttempt(lesson);
    this.#since = this.#now();
    this.#platform.keep(this.#report());
  }

  get attempt(): Attempt {
    return this.#attempt;
  }

  /** Whether there is a platform, and whether it has taken what it was told. */
  get platform(): PlatformState | "refusing" {
    const { state, isKept } = this.#platform;
    return state === "open" && !isKept ? "refusing" : state;
  }

  /** The student has worked on an exercise; `exercise` is the one that was handed in just now. */
  work(run: LessonState, exercise: string | undefined): void {
    this.#isTouched = true;
    if (exercise === undefined) this.#attempt = withRun(this.#attempt, run);
    else this.#handIn(run, exercise);
  }

  turn(step: number): void {
    this.#isTouched = true;
    const { run } = this.#attempt;
    this.#attempt = withRun(this.#attempt, reduceLesson(run, { type: "step", step }, this.#lesson));
    this.#since = this.#now();
    this.#platform.note(this.#report());
  }

  /** The page is not seen any more; it may never be again. */
  hide(): void {
    this.#platform.keep(this.#report());
  }

  leave(): void {
    this.#platform.finish(this.#report());
  }

  #handIn(run: LessonState, exercise: string): void {
    const { model } = this.#telling;
    const map = lessonMap(this.#lesson, model);
    const marker = { lesson: this.#lesson, map, actions: bassoonActions };
    const found = handedIn(run, exercise, marker);
    if (!found) throw new TypeError(`ToldLesson: nothing is handed in to exercise ${exercise}`);
    const { block, mark } = found;
    const { answer } = exerciseStateOf(run, exercise);
    this.#attempt = withRun(this.#attempt, run, { exercise, right: mark.right });
    this.#platform.answered({
      id: interactionId(exercise, block),
      ask: block.ask,
      response: responseOf(block, answer!, this.#lesson, map),
      right: mark.right,
      seconds: (this.#now() - this.#since) / 1000,
      at: new Date(this.#now()),
    });
    this.#since = this.#now();
    this.#platform.keep(this.#report());
  }

  #report(): Report {
    const { run } = this.#attempt;
    const packed = packAttempt(this.#attempt, this.#telling.dialect.most);
    const { complete, score } = standingOf(this.#lesson, this.#attempt);
    return {
      status: complete ? this.#end(score) : "incomplete",
      ...(score === undefined ? {} : { score }),
      ...(this.#isTouched ? { attempt: { place: String(run.step + 1), packed } } : {}),
    };
  }

  #end(score: number | undefined): Report["status"] {
    const { mastery } = this.#telling;
    if (mastery === undefined || score === undefined) return "completed";
    return score >= mastery ? "passed" : "failed";
  }
}
