import { LitElement, html, type PropertyValues } from "lit";
import type { ReedModel } from "../engine/model.js";
import { keptRun } from "../lesson/kept-run.js";
import type { Lesson } from "../lesson/lesson.js";
import { reduceLesson, type LessonState } from "../lesson/lesson-state.js";
import type { OpenLesson } from "../reed/bench.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import { withLessons, type LessonCatalogue } from "../reed/lesson-catalogue.js";
import type { LengthUnit } from "../reed/units.js";
import { define } from "../widgets/define.js";
import type { LessonWorkedEvent, StepAskedEvent } from "../widgets/lesson-events.js";
import { LessonPlayer } from "../widgets/lesson-player.js";
import { look } from "../widgets/look.js";
import { BenchActionEvent } from "./bench-action-event.js";
import type { BenchAction } from "./bench-state.js";
import { lessonsPageStyle } from "./lessons-page-style.js";
import { loadLesson, shippedLessons, type LessonHead } from "./shipped-lessons.js";

define("lesson-player", LessonPlayer);

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
  declare lesson: { readonly id: string; readonly lesson: Lesson } | undefined;
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

  #player({ id, lesson }: { readonly id: string; readonly lesson: Lesson }) {
    const words = this.#words.lessons;
    const goBack = () => this.#go(undefined, words.list);
    return html`<button class="back" @click=${goBack}>${words.back}</button>
      <lesson-player
        .lesson=${lesson}
        .run=${this.#run(lesson)}
        .model=${this.model}
        .unit=${this.unit}
        .text=${this.#words}
        @lesson-worked=${({ run, says }: LessonWorkedEvent) =>
          this.#send({ type: "lesson-worked", id, run, says })}
        @step-asked=${({ step, says }: StepAskedEvent) => this.#go({ id, step }, says)}
      >
        <button slot="end" @click=${goBack}>${words.back}</button>
      </lesson-player>`;
  }

  #run(lesson: Lesson): LessonState {
    const { id, step } = this.open!;
    return reduceLesson(keptRun(lesson, this.runs?.[id]), { type: "step", step }, lesson);
  }

  async #load(id: string): Promise<void> {
    this.trouble = "";
    try {
      const lesson = await loadLesson(id);
      if (lesson) this.lesson = { id, lesson };
      else this.trouble = this.#words.lessons.unknown(id);
    } catch {
      this.trouble = this.#words.lessons.failed;
    }
    if (this.lesson?.id === id) await this.#focusStep();
  }

  #go(lesson: OpenLesson | undefined, says: string): void {
    const opened = lesson ? { lesson } : {};
    this.#send({ type: "lesson-opened", ...opened, says });
    window.scrollTo(0, 0);
  }

  #send(action: BenchAction): void {
    this.dispatchEvent(new BenchActionEvent(action));
  }

  async #focusStep(): Promise<void> {
    await this.updateComplete;
    this.renderRoot.querySelector<LessonPlayer>("lesson-player")?.focus();
  }
}
