import { LitElement, html, nothing, type PropertyValues } from "lit";
import type { ReedModel } from "../engine/model.js";
import type { Answer } from "../lesson/answer.js";
import { lessonMap } from "../lesson/exercise-reed.js";
import { feedbackOn, type Telling } from "../lesson/feedback.js";
import { keptRun } from "../lesson/kept-run.js";
import type { Lesson } from "../lesson/lesson.js";
import { reduceLesson, type LessonAction, type LessonState } from "../lesson/lesson-state.js";
import { stepView, type ExerciseView } from "../lesson/lesson-view.js";
import { hintText } from "../lesson/hint-text.js";
import { bassoonActions } from "../reed/bassoon.js";
import type { OpenLesson } from "../reed/bench.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import { withLessons, type LessonCatalogue } from "../reed/lesson-catalogue.js";
import type { LengthUnit } from "../reed/units.js";
import { define } from "../widgets/define.js";
import type { AnswerPickedEvent, ExerciseAskedEvent } from "../widgets/lesson-events.js";
import { LessonStep } from "../widgets/lesson-step.js";
import { look } from "../widgets/look.js";
import { BenchActionEvent } from "./bench-action-event.js";
import { lessonsPageStyle } from "./lessons-page-style.js";
import { loadLesson, shippedLessons, type LessonHead } from "./shipped-lessons.js";

define("lesson-step", LessonStep);

/**
 * The lessons: their list, or the one that is open.
 *
 * @fires bench-action - a lesson or a step is opened, an exercise is worked on
 */
export class LessonsPage extends LitElement {
  static override styles = [look, lessonsPageStyle];

  static override properties = {
    model: { attribute: false },
    open: { attribute: false },
    runs: { attribute: false },
    unit: { type: String },
    text: { attribute: false },
    lesson: { state: true },
    trouble: { state: true },
  };

  declare model: ReedModel;
  /** The lesson that is open, and its step. */
  declare open: OpenLesson | undefined;
  /** How far each is, by its id. */
  declare runs: Readonly<Record<string, LessonState>> | undefined;
  declare unit: LengthUnit;
  declare text: Catalogue;
  declare lesson:
    | { readonly id: string; readonly lesson: Lesson; readonly telling: Telling }
    | undefined;
  /** Why the lesson that was asked for is not here. */
  declare trouble: string;

  constructor() {
    super();
    this.unit = "mm";
    this.text = english;
    this.trouble = "";
  }

  get #words(): LessonCatalogue {
    return withLessons(this.text);
  }

  override willUpdate(changed: PropertyValues<this>): void {
    if (this.open && this.open.id !== this.lesson?.id && changed.has("open"))
      void this.#load(this.open.id);
    if (changed.has("unit") && this.lesson)
      this.lesson = { ...this.lesson, telling: this.#telling(this.lesson.lesson) };
  }

  override updated(changed: PropertyValues<this>): void {
    const before = changed.get("open");
    const turned =
      changed.has("open") && before?.id === this.open?.id && before?.step !== this.open?.step;
    if (turned) void this.#focusStep();
  }

  override render() {
    if (!this.open) return this.#list();
    if (this.lesson?.id === this.open.id) return this.#player(this.lesson);
    if (this.trouble)
      return html`<p role="alert">${this.trouble}</p>
        ${this.#list()}`;
    return html`<p class="soft">${this.#words.lessons.loading}</p>`;
  }

  #list() {
    const words = this.#words.lessons;
    return html`<h2 class="title" tabindex="-1">${words.list}</h2>
      <p class="soft">${words.explain}</p>
      <ol class="lessons">
        ${shippedLessons.map((head) => html`<li>${this.#card(head)}</li>`)}
      </ol>`;
  }

  #card(head: LessonHead & { readonly id: string }) {
    const words = this.#words.lessons;
    const exercises = Object.values(this.runs?.[head.id]?.exercises ?? {});
    const done = exercises.filter(({ locked }) => locked).length;
    return html`<button
      class="lesson"
      @click=${() => this.#go({ id: head.id, step: 0 }, head.title)}
    >
      <strong>${head.title}</strong>
      <span>${head.goal}</span>
      <span class="soft"
        >${words.minutes(head.minutes)} ·
        ${done >= head.exercises ? words.finished : words.answered(done, head.exercises)}</span
      >
    </button>`;
  }

  #player({ lesson, telling }: { readonly lesson: Lesson; readonly telling: Telling }) {
    const words = this.#words.lessons;
    const run = this.#run(lesson);
    return html`<div class="top">
        <button @click=${() => this.#go(undefined, words.list)}>${words.back}</button>
        <h2 class="title">${lesson.title}</h2>
        <p class="soft">${words.minutes(lesson.minutes)}. ${lesson.goal}</p>
        ${lesson.features ? html`<p class="soft">${this.#focusText(lesson)}</p>` : nothing}
      </div>
      ${this.#steps(lesson, run)}
      <lesson-step
        .lesson=${lesson}
        .run=${run}
        .telling=${telling}
        .text=${this.#words}
        @answer-picked=${this.#onAnswer}
        @exercise-asked=${this.#onAsked}
      ></lesson-step>
      ${this.#ways(lesson, run)}`;
  }

  #focusText({ features = [] }: Lesson): string {
    const label = (id: string) =>
      this.model.features.find((one) => one.id === id)!.label.toLowerCase();
    return this.#words.lessons.focus(features.map(label));
  }

  #steps({ steps }: Lesson, run: LessonState) {
    const words = this.#words.lessons;
    return html`<nav aria-label=${words.steps}>
      ${steps.map(
        ({ title }, step) =>
          html`<button
            class="step"
            aria-current=${step === run.step ? "step" : nothing}
            aria-label="${words.step(step + 1, steps.length)}: ${title}"
            title=${title}
            @click=${() => this.#turn(step)}
          >
            ${step + 1}
          </button>`,
      )}
    </nav>`;
  }

  #ways({ steps }: Lesson, { step }: LessonState) {
    const words = this.#words.lessons;
    const isLast = step === steps.length - 1;
    return html`<div class="ways">
      ${step > 0 ? html`<button @click=${() => this.#turn(step - 1)}>${words.previous}</button>` : nothing}
      ${
        isLast
          ? html`<span>${words.end}</span>
              <button @click=${() => this.#go(undefined, words.list)}>${words.back}</button>`
          : html`<button class="next" @click=${() => this.#turn(step + 1)}>${words.next}</button>`
      }
    </div>`;
  }

  #run(lesson: Lesson): LessonState {
    const { id, step } = this.open!;
    return reduceLesson(keptRun(lesson, this.runs?.[id]), { type: "step", step }, lesson);
  }

  async #load(id: string): Promise<void> {
    this.trouble = "";
    try {
      const lesson = await loadLesson(id);
      if (lesson) this.lesson = { id, lesson, telling: this.#telling(lesson) };
      else this.trouble = this.#words.lessons.unknown(id);
    } catch {
      this.trouble = this.#words.lessons.failed;
    }
    if (this.lesson?.id === id) await this.#focusStep();
  }

  #telling(lesson: Lesson): Telling {
    const { model, unit } = this;
    const text = this.#words;
    return { map: lessonMap(lesson, model), actions: bassoonActions, text, unit };
  }

  #go(lesson: OpenLesson | undefined, says: string): void {
    const opened = lesson ? { lesson } : {};
    this.dispatchEvent(new BenchActionEvent({ type: "lesson-opened", ...opened, says }));
    window.scrollTo(0, 0);
  }

  #turn(step: number): void {
    const { steps } = this.lesson!.lesson;
    const says = `${this.#words.lessons.step(step + 1, steps.length)}: ${steps[step]!.title}`;
    this.#go({ id: this.open!.id, step }, says);
  }

  async #focusStep(): Promise<void> {
    await this.updateComplete;
    const step = this.renderRoot.querySelector<LessonStep>("lesson-step");
    await step?.updateComplete;
    step?.focus();
  }

  /** The open exercise is the last one of the view. */
  #openExercise(run: LessonState): ExerciseView | undefined {
    const { lesson, telling } = this.lesson!;
    const all = stepView(lesson, run, telling).blocks;
    return all.findLast((block): block is ExerciseView => "id" in block && !block.locked);
  }

  #onAnswer({ answer }: AnswerPickedEvent & { readonly answer: Answer }): void {
    const run = this.#run(this.lesson!.lesson);
    const exercise = this.#openExercise(run)?.id;
    if (exercise !== undefined) this.#act({ type: "answer", exercise, answer }, "");
  }

  #onAsked({ exercise, what }: ExerciseAskedEvent): void {
    this.#act({ type: what, exercise }, exercise);
  }

  #act(action: LessonAction, exercise: string): void {
    const { id, lesson } = this.lesson!;
    const run = reduceLesson(this.#run(lesson), action, lesson);
    const says = exercise ? this.#says(run, exercise) : "";
    this.dispatchEvent(new BenchActionEvent({ type: "lesson-worked", id, run, says }));
  }

  /** What a screen reader hears: the last hint, or what is told of the answer. */
  #says(run: LessonState, exercise: string): string {
    const { lesson, telling } = this.lesson!;
    const view = stepView(lesson, run, telling).blocks.find(
      (block): block is ExerciseView => "id" in block && block.id === exercise,
    );
    if (!view) return "";
    const feedback = feedbackOn(view, telling);
    if (feedback) return [feedback.verdict, ...feedback.says].join(" ");
    const hint = view.hints.at(-1);
    return hint ? hintText(hint, view, telling) : "";
  }
}
