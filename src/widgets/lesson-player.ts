import { LitElement, html, nothing, type PropertyValues } from "lit";
import type { ReedModel } from "../engine/model.js";
import type { Answer } from "../lesson/answer.js";
import { lessonMap } from "../lesson/exercise-reed.js";
import type { Telling } from "../lesson/feedback.js";
import { hintText } from "../lesson/hint-text.js";
import type { Lesson } from "../lesson/lesson.js";
import { reduceLesson, type LessonAction, type LessonState } from "../lesson/lesson-state.js";
import { stepView, type ExerciseView, type StepView } from "../lesson/lesson-view.js";
import { bassoonActions } from "../reed/bassoon.js";
import { lessonEnglish, type LessonCatalogue } from "../reed/lesson-catalogue.js";
import type { LengthUnit } from "../reed/units.js";
import { define } from "./define.js";
import {
  LessonWorkedEvent,
  StepAskedEvent,
  type AnswerPickedEvent,
  type ExerciseAskedEvent,
} from "./lesson-events.js";
import { lessonPlayerStyle } from "./lesson-player-style.js";
import { LessonStep } from "./lesson-step.js";
import { look } from "./look.js";
import { inSentence } from "../reed/in-sentence.js";

define("lesson-step", LessonStep);

/**
 * A lesson at one of its steps. It keeps nothing: what the student does goes out, and comes back as another run.
 *
 * @fires lesson-worked - an exercise is answered, handed in, a hint asked for
 * @fires step-asked - another step is to be shown
 * @slot end - what can be done after the last step
 */
export class LessonPlayer extends LitElement {
  static override styles = [look, lessonPlayerStyle];

  static override properties = {
    lesson: { attribute: false },
    run: { attribute: false },
    model: { attribute: false },
    unit: { type: String },
    brief: { type: Boolean },
    listed: { type: Boolean },
    text: { attribute: false },
  };

  declare lesson: Lesson;
  /** How far the student is, at the step to be shown. */
  declare run: LessonState;
  declare model: ReedModel;
  declare unit: LengthUnit;
  /** Without title, steps and ways: its owner has its own. */
  declare brief: boolean;
  /** Options stand in the order of the file, as a class sees them; else in one that each attempt mixes anew. */
  declare listed: boolean;
  declare text: LessonCatalogue;

  #telling!: Telling;

  constructor() {
    super();
    this.unit = "mm";
    this.brief = false;
    this.listed = false;
    this.text = lessonEnglish;
  }

  override willUpdate(changed: PropertyValues<this>): void {
    const asked = [changed.has("lesson"), changed.has("model"), changed.has("unit")];
    if (!asked.includes(true) && !changed.has("text")) return;
    const { lesson, model, text, unit } = this;
    this.#telling = { map: lessonMap(lesson, model), actions: bassoonActions, text, unit };
  }

  override render() {
    const { lesson, text } = this;
    return html`${this.brief ? nothing : this.#title()}
      ${lesson.features ? html`<p class="soft">${this.#focusText(lesson)}</p>` : nothing}
      ${this.brief ? nothing : this.#steps()}
      <lesson-step
        .view=${this.#view()}
        .lesson=${lesson}
        .telling=${this.#telling}
        .text=${text}
        @answer-picked=${this.#onAnswer}
        @exercise-asked=${this.#onAsked}
      ></lesson-step>
      ${this.brief ? nothing : this.#ways()}`;
  }

  #view(run = this.run): StepView {
    return stepView(this.lesson, run, this.#telling, { mixed: !this.listed });
  }

  #title() {
    const { title, minutes, goal } = this.lesson;
    return html`<h2 class="title">${title}</h2>
      <p class="soft">${this.text.lessons.minutes(minutes)}. ${goal}</p>`;
  }

  #focusText({ features = [] }: Lesson): string {
    const label = (id: string) =>
      inSentence(this.model.features.find((one) => one.id === id)!.label);
    return this.text.lessons.focus(features.map(label));
  }

  #steps() {
    const words = this.text.lessons;
    const { steps } = this.lesson;
    return html`<div class="steps" role="group" aria-label=${words.steps}>
      ${steps.map(
        ({ title }, step) =>
          html`<button
            class="step"
            aria-current=${step === this.run.step ? "step" : nothing}
            aria-label=${words.step(step + 1, steps.length)}
            title=${title}
            @click=${() => this.#turn(step)}
          >
            ${step + 1}
          </button>`,
      )}
    </div>`;
  }

  #ways() {
    const words = this.text.lessons;
    const { step } = this.run;
    const isLast = step === this.lesson.steps.length - 1;
    return html`<div class="ways">
      ${step > 0 ? html`<button @click=${() => this.#turn(step - 1)}>${words.previous}</button>` : nothing}
      ${
        isLast
          ? html`<span>${words.end}</span><slot name="end"></slot>`
          : html`<button class="next" @click=${() => this.#turn(step + 1)}>${words.next}</button>`
      }
    </div>`;
  }

  #turn(step: number): void {
    const { steps } = this.lesson;
    const says = `${this.text.lessons.step(step + 1, steps.length)}: ${steps[step]!.title}`;
    this.dispatchEvent(new StepAskedEvent(step, says));
  }

  /** On the title of the step that is shown. */
  override focus(): void {
    void this.#focusStep();
  }

  async #focusStep(): Promise<void> {
    await this.updateComplete;
    const step = this.renderRoot.querySelector<LessonStep>("lesson-step");
    await step?.updateComplete;
    step?.focus();
  }

  /** Which block of the step lies at a place of the window, and where in it, as fractions of its box. */
  blockAt(x: number, y: number): { block: number; x: number; y: number } | undefined {
    const step = this.renderRoot.querySelector<LessonStep>("lesson-step");
    const { length } = this.#view().blocks;
    for (let block = 0; block < length; block += 1) {
      const box = step?.block(block)?.getBoundingClientRect();
      if (box && x >= box.left && x <= box.right && y >= box.top && y <= box.bottom)
        return { block, x: (x - box.left) / box.width, y: (y - box.top) / box.height };
    }
    return undefined;
  }

  /** The open exercise is the last one of the view. */
  #openExercise(): ExerciseView | undefined {
    const all = this.#view().blocks;
    return all.findLast((block): block is ExerciseView => "id" in block && !block.locked);
  }

  #onAnswer(event: AnswerPickedEvent & { readonly answer: Answer }): void {
    event.stopPropagation();
    const exercise = this.#openExercise()?.id;
    if (exercise !== undefined) this.#act({ type: "answer", exercise, answer: event.answer });
  }

  #onAsked(event: ExerciseAskedEvent): void {
    event.stopPropagation();
    const { exercise, what } = event;
    this.#act({ type: what, exercise });
  }

  #act(action: Exclude<LessonAction, { readonly type: "step" }>): void {
    const run = reduceLesson(this.run, action, this.lesson);
    const says = action.type === "hint" ? this.#hint(run, action.exercise) : "";
    const handedIn = action.type === "lock" && run !== this.run ? action.exercise : undefined;
    this.dispatchEvent(new LessonWorkedEvent(run, says, handedIn));
  }

  /** What a screen reader hears: the last hint. What is told of an answer gets the focus, and is read there. */
  #hint(run: LessonState, exercise: string): string {
    const view = this.#view(run).blocks.find(
      (block): block is ExerciseView => "id" in block && block.id === exercise,
    );
    const hint = view?.hints.at(-1);
    return view && hint ? hintText(hint, view, this.#telling) : "";
  }
}
