import { LitElement, css, html, nothing, type PropertyValues } from "lit";
import type { ReedModel } from "../engine/model.js";
import { keptRun } from "../lesson/kept-run.js";
import type { Lesson } from "../lesson/lesson.js";
import type { Review } from "../lesson/progress.js";
import { isReviewDone, reviewGap, reviewLesson } from "../lesson/review.js";
import { lessonEnglish, type LessonCatalogue } from "../reed/lesson-catalogue.js";
import type { LengthUnit } from "../reed/units.js";
import { define } from "../widgets/define.js";
import { StepAskedEvent, type LessonWorkedEvent } from "../widgets/lesson-events.js";
import { LessonPlayer } from "../widgets/lesson-player.js";
import { lessonPlayerStyle } from "../widgets/lesson-player-style.js";
import { look } from "../widgets/look.js";
import { loadLesson } from "./shipped-lessons.js";

define("lesson-player", LessonPlayer);

/** A review has been worked on. */
export class ReviewWorkedEvent extends Event {
  readonly review: Review;
  readonly says: string;
  constructor(review: Review, says: string) {
    super("review-worked", { bubbles: true, composed: true });
    this.review = review;
    this.says = says;
  }
}

/**
 * Three questions from different lessons, one at a time.
 *
 * @fires review-worked - an answer was put down or handed in
 * @fires step-asked - another question is to be shown
 * @slot end - what can be done after the last question
 */
export class LessonReview extends LitElement {
  static override styles = [
    look,
    lessonPlayerStyle,
    css`
      .from {
        margin: 0;
      }
    `,
  ];

  static override properties = {
    review: { attribute: false },
    at: { type: Number },
    model: { attribute: false },
    unit: { type: String },
    text: { attribute: false },
    lessons: { state: true },
    failed: { state: true },
  };

  declare review: Review;
  /** Which question is shown, from 0. */
  declare at: number;
  declare model: ReedModel;
  declare unit: LengthUnit;
  declare text: LessonCatalogue;
  /** The lessons of its questions, in their order; undefined until they are here. */
  declare lessons: readonly (Lesson | undefined)[] | undefined;
  declare failed: boolean;

  constructor() {
    super();
    this.at = 0;
    this.unit = "mm";
    this.text = lessonEnglish;
    this.failed = false;
  }

  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has("review") && changed.get("review")?.items !== this.review.items)
      void this.#load(this.review);
  }

  async #load({ items }: Review): Promise<void> {
    this.failed = false;
    try {
      const found = await Promise.all(items.map(({ lesson }) => loadLesson(lesson)));
      if (this.review.items !== items) return;
      this.lessons = found.map((lesson, index) => lesson && reviewLesson(lesson, items[index]!));
    } catch (cause) {
      console.warn("Reedpoint: the review could not be loaded", cause);
      this.failed = true;
    }
    await this.updateComplete;
    this.focus();
  }

  override render() {
    const words = this.text.lessons;
    if (this.failed)
      return html`<p role="alert">${words.review.failed}</p>
        <button @click=${() => this.#load(this.review)}>${words.again}</button>`;
    if (!this.lessons) return html`<p class="soft">${words.loading}</p>`;
    return html`<h2 class="title" tabindex="-1">${words.review.title}</h2>
      ${this.#questions()} ${this.#question()} ${this.#ways()}`;
  }

  #question() {
    const words = this.text.lessons.review;
    const lesson = this.lessons![this.#at];
    if (!lesson) return html`<p>${words.gone}</p>`;
    return html`<p class="soft from">${words.from(lesson.title)}</p>
      <lesson-player
        brief
        .lesson=${lesson}
        .run=${keptRun(lesson, this.review.runs[this.#at])}
        .model=${this.model}
        .unit=${this.unit}
        .text=${this.text}
        @lesson-worked=${this.#onWorked}
      ></lesson-player>`;
  }

  get #at(): number {
    return Math.min(this.at, this.review.items.length - 1);
  }

  #questions() {
    const words = this.text.lessons.review;
    const { items } = this.review;
    return html`<div class="steps" role="group" aria-label=${words.questions}>
      ${items.map(
        (_, index) =>
          html`<button
            class="step"
            aria-current=${index === this.#at ? "step" : nothing}
            aria-label=${words.question(index + 1, items.length)}
            @click=${() => this.#turn(index)}
          >
            ${index + 1}
          </button>`,
      )}
    </div>`;
  }

  #ways() {
    const words = this.text.lessons.review;
    const at = this.#at;
    const isLast = at === this.review.items.length - 1;
    return html`<div class="ways">
      ${at > 0 ? html`<button @click=${() => this.#turn(at - 1)}>${words.previous}</button>` : nothing}
      ${isLast ? nothing : html`<button class="next" @click=${() => this.#turn(at + 1)}>${words.next}</button>`}
      ${isReviewDone(this.review) ? html`<span>${words.done(reviewGap)}</span>` : nothing}
      ${isLast ? html`<slot name="end"></slot>` : nothing}
    </div>`;
  }

  #turn(step: number): void {
    const { items } = this.review;
    const says = this.text.lessons.review.question(step + 1, items.length);
    this.dispatchEvent(new StepAskedEvent(step, says));
  }

  #onWorked(event: LessonWorkedEvent): void {
    event.stopPropagation();
    const runs = this.review.runs.with(this.#at, event.run);
    this.dispatchEvent(new ReviewWorkedEvent({ ...this.review, runs }, event.says));
  }

  override focus(): void {
    this.renderRoot.querySelector<HTMLElement>("h2")?.focus();
  }
}
