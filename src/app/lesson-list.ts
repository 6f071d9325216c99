import { LitElement, html, nothing } from "lit";
import type { ReedModel } from "../engine/model.js";
import { isReviewDone, isReviewDue } from "../lesson/review.js";
import { noProgress, type Progress } from "../lesson/progress.js";
import { lessonEnglish, type LessonCatalogue } from "../reed/lesson-catalogue.js";
import { look } from "../widgets/look.js";
import { calendarDay } from "./calendar-day.js";
import { lessonListStyle } from "./lesson-list-style.js";
import { shippedLessons, type LessonHead } from "./shipped-lessons.js";
import { inSentence } from "../reed/in-sentence.js";

/** A lesson of the list is to be opened. */
export class LessonPickedEvent extends Event {
  readonly id: string;
  readonly title: string;
  constructor(id: string, title: string) {
    super("lesson-picked", { bubbles: true, composed: true });
    this.id = id;
    this.title = title;
  }
}

/**
 * All lessons with how long they take and how far one is, and the review when one is due.
 *
 * @fires lesson-picked - a lesson is to be opened
 * @fires review-asked - the review is to be begun, or gone on with
 */
export class LessonList extends LitElement {
  static override styles = [look, lessonListStyle];

  static override properties = {
    model: { attribute: false },
    progress: { attribute: false },
    text: { attribute: false },
  };

  declare model: ReedModel;
  declare progress: Progress;
  declare text: LessonCatalogue;

  constructor() {
    super();
    this.progress = noProgress;
    this.text = lessonEnglish;
  }

  override render() {
    const words = this.text.lessons;
    return html`<h2 class="title" tabindex="-1">${words.list}</h2>
      <p class="soft">${words.explain}</p>
      ${this.#review()}
      <ol class="lessons">
        ${shippedLessons.map((head, k) => html`<li>${this.#card(head, k + 1)}</li>`)}
      </ol>`;
  }

  #review() {
    const words = this.text.lessons.review;
    const { review } = this.progress;
    const isOpen = review && !isReviewDone(review);
    if (!isOpen && !isReviewDue(this.progress, calendarDay(new Date()))) return nothing;
    return html`<section class="due" aria-label=${words.title}>
      <p>${isOpen ? words.open : words.due}</p>
      <button @click=${() => this.dispatchEvent(new Event("review-asked", { bubbles: true }))}>
        ${isOpen ? words.goOn : words.begin}
      </button>
    </section>`;
  }

  #card(head: LessonHead & { readonly id: string }, number: number) {
    const words = this.text.lessons;
    const exercises = Object.values(this.progress.runs[head.id]?.exercises ?? {});
    const done = exercises.filter(({ locked }) => locked).length;
    return html`<button
      class="lesson"
      @click=${() => this.dispatchEvent(new LessonPickedEvent(head.id, head.title))}
    >
      <strong>${number}. ${head.title}</strong>
      <span>${head.goal}</span>
      ${head.features ? html`<span class="soft">${words.counts(this.#labels(head.features))}</span>` : nothing}
      <span class="soft"
        >${words.minutes(head.minutes)} ·
        ${done >= head.exercises ? words.finished : words.answered(done, head.exercises)}</span
      >
    </button>`;
  }

  #labels(features: readonly string[]): string[] {
    return features.map((id) =>
      inSentence(this.model.features.find((one) => one.id === id)!.label),
    );
  }

  override focus(): void {
    void this.updateComplete.then(() => this.renderRoot.querySelector<HTMLElement>("h2")?.focus());
  }
}
