import type { PropertyDeclarations, PropertyValues } from "lit";
import type { Arrival } from "../app/late-parts.js";
import type { ReedModel } from "../engine/model.js";
import type { Lesson } from "../lesson/lesson.js";
import type { LessonState } from "../lesson/lesson-state.js";
import { bassoonModel } from "../reed/bassoon.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import type { LessonWorkedEvent, StepAskedEvent } from "../widgets/lesson-events.js";
import type { BroughtLesson } from "./bring-lesson.js";
import { EmbeddedElement } from "./embedded-element.js";
import { lateStyle, lateWords } from "./late-words.js";
import type * as Inside from "./lesson-inside.js";
import { given, readModelOf } from "./read-attributes.js";
import { partEvents } from "./stop-inside.js";
import { warnOnce } from "./warn-once.js";

/** What every event of a lesson carries: plain data that can be stored and sent. */
export interface LessonDetail {
  /** As the page names it; empty for one that it gives as `source`. */
  readonly lesson: string;
  /** Counted from 1. */
  readonly step: number;
  /** The exercise that was worked on, by its name in `run`. */
  readonly exercise?: string;
  /** Of an answer that is handed in. */
  readonly grade?: "right" | "partly" | "wrong";
  /** Exercises that are answered, and how many there are. */
  readonly done: number;
  readonly all: number;
  /** How far the student is: to be kept by the page, and set again. */
  readonly run: LessonState;
}

/**
 * `<reed-lesson>`: a lesson, step by step. It stores nothing; a page that wants to keep a student's progress keeps `run`.
 *
 * @tagname reed-lesson
 * @csspart lesson - the lesson
 * @fires input - the student has answered, or changed an answer; in a drag after every move
 * @fires change - an answer was handed in, a hint or another try asked for, a step turned
 * @fires reed-lesson-worked - an answer was handed in, a hint or another try asked for
 * @fires reed-step-turned - another step is shown
 */
export class LessonElement extends EmbeddedElement {
  static override styles = [...EmbeddedElement.styles, lateStyle];

  static override properties: PropertyDeclarations = {
    lesson: { type: String },
    step: { type: String },
    model: { type: String },
    source: { attribute: false },
    run: { attribute: false },
    text: { attribute: false },
  };

  /** The id of a lesson, such as 06-shape, or the address of a lesson file (.md) on the page's own server. */
  declare lesson: string;
  /** Words of another language or school. */
  declare text: Catalogue;
  #source: unknown;
  #model: ReedModel = bassoonModel;
  #first = 1;
  #kept: unknown;
  #inside: typeof Inside | undefined;
  #arrival: Arrival = "coming";
  #asked: object | undefined;
  #brought: BroughtLesson | undefined;
  #run: LessonState | undefined;

  constructor() {
    super();
    this.lesson = "";
    this.text = english;
  }

  /** The step that is shown, counted from 1. */
  get step(): number {
    return this.#run ? this.#run.step + 1 : this.#first;
  }

  set step(step: number | string | null) {
    const number = Number(step ?? 1);
    const isStep = Number.isInteger(number) && number >= 1;
    if (!isStep) warnOnce(`step: “${step}” is no step; allowed: a whole number from 1 on`);
    this.#first = isStep ? number : 1;
    this.requestUpdate("step");
  }

  /** The model by its id, or a model of one's own as `readModel` returns it. */
  get model(): ReedModel {
    return this.#model;
  }

  set model(model: ReedModel | string | null | undefined) {
    this.#model = readModelOf(model);
    this.requestUpdate("model");
  }

  /** A lesson of the page's own: the text of a lesson file, or what `parseLesson` made of one. Read: the lesson shown. */
  get source(): Lesson | string | null {
    return this.#brought?.lesson ?? (this.#source as Lesson | string | undefined) ?? null;
  }

  set source(source: unknown) {
    this.#source = source ?? undefined;
    this.requestUpdate("source");
  }

  /** How far the student is, as plain data: answers and locks, no outcome. Set what was kept to go on from there. */
  get run(): LessonState | null {
    return this.#run ?? null;
  }

  set run(run: unknown) {
    const isRun = typeof run === "object" && run !== null;
    if (!isRun && run !== null && run !== undefined)
      warnOnce(`run: ${typeof run} is no run; allowed: what an event's detail.run was`);
    this.#kept = isRun ? run : undefined;
    this.requestUpdate("run");
  }

  override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    const isOther = this.#asked !== undefined && (changed.has("lesson") || changed.has("source"));
    // Answers belong to the lesson they were given in.
    if (isOther && !changed.has("run")) this.#kept = undefined;
    if (["lesson", "source", "model"].some((name) => changed.has(name)) || !this.#asked)
      void this.#bring();
    else if (changed.has("run")) this.#begin();
    else if (changed.has("step")) this.#go(this.#first);
  }

  /** Begins anew: the student's answers are gone. */
  reset(): void {
    this.#kept = undefined;
    this.#begin();
    this.requestUpdate();
  }

  async #bring(): Promise<void> {
    const asked = { lesson: given(this.lesson).trim(), source: this.#source, model: this.#model };
    this.#asked = asked;
    this.#arrival = "coming";
    this.#brought = this.#run = undefined;
    try {
      const inside = await import("./lesson-inside.js");
      const brought = await inside.bringLesson(asked);
      if (asked !== this.#asked) return;
      this.#inside = inside;
      this.#brought = brought;
      this.#arrival = "here";
      this.#begin();
    } catch (cause) {
      if (asked !== this.#asked) return;
      console.warn("Reedpoint: a part could not be loaded", cause);
      this.#arrival = "failed";
    }
    this.requestUpdate();
  }

  #begin(): void {
    const { lesson } = this.#brought ?? {};
    this.#run = lesson && this.#inside!.firstRun(lesson, this.#kept, this.#first);
  }

  #go(step: number): void {
    const { lesson } = this.#brought ?? {};
    if (lesson && this.#run) this.#run = this.#inside!.atStep(lesson, this.#run, step);
  }

  protected override get inner(): readonly string[] {
    return [...super.inner, ...partEvents, "lesson-worked", "step-asked"];
  }

  protected override takeInner(event: Event): void {
    if (event.type === "lesson-worked") this.#work(event as LessonWorkedEvent);
    if (event.type === "step-asked") this.#turn(event as StepAskedEvent);
  }

  #work({ run, says, handedIn }: LessonWorkedEvent): void {
    const inside = this.#inside!;
    const { lesson } = this.#brought!;
    const worked = inside.workedOn(this.#run!, run);
    this.#become(run, says);
    if (!lesson || !worked) return;
    const { model, text } = this;
    const grade =
      handedIn === undefined ? undefined : inside.gradeOf(handedIn, { lesson, run, model, text });
    const { exercise, isMore } = worked;
    const detail = { exercise, ...(grade ? { grade } : {}) };
    this.#tell("input", detail);
    if (!isMore) return;
    this.#tell("change", detail);
    this.#tell("reed-lesson-worked", detail);
  }

  #turn({ step, says }: StepAskedEvent): void {
    this.#go(step + 1);
    this.#become(this.#run!, says);
    for (const type of ["input", "change", "reed-step-turned"]) this.#tell(type, {});
    void this.#focusStep();
  }

  #become(run: LessonState, says: string): void {
    this.#run = run;
    if (says) this.announcer.now(says);
    this.requestUpdate();
  }

  #tell(type: string, more: Pick<LessonDetail, "exercise" | "grade">): void {
    const run = this.#run!;
    const { lesson, step } = this;
    const counts = this.#inside!.counts(this.#brought!.lesson!, run);
    const detail: LessonDetail = { lesson, step, ...more, ...counts, run };
    this.tellPage(type, detail);
  }

  /** What was pressed may be gone: the focus goes to the title of the step. */
  async #focusStep(): Promise<void> {
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLElement>("lesson-player")?.focus();
  }

  protected override parts() {
    const { model, text } = this;
    if (!this.#inside || !this.#brought) return lateWords(this.#arrival, text);
    return this.#inside.lessonInside({ brought: this.#brought, run: this.#run, model, text });
  }
}
