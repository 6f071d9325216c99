import { LitElement, css, html, nothing } from "lit";
import { isWhole } from "../lesson/lesson-state.js";
import { feedbackOn, type Telling } from "../lesson/feedback.js";
import { hintText } from "../lesson/hint-text.js";
import type { ExerciseView } from "../lesson/lesson-view.js";
import { lessonEnglish, type LessonCatalogue } from "../reed/lesson-catalogue.js";
import { define } from "./define.js";
import { LessonChoice } from "./lesson-choice.js";
import { ExerciseAskedEvent } from "./lesson-events.js";
import { LessonFeedback } from "./lesson-feedback.js";
import { LessonOrder } from "./lesson-order.js";
import { LessonPredict } from "./lesson-predict.js";
import { LessonReading } from "./lesson-reading.js";
import { LessonRecipe } from "./lesson-recipe.js";
import { lessonStyle } from "./lesson-style.js";
import { look } from "./look.js";

define("lesson-predict", LessonPredict);
define("lesson-choice", LessonChoice);
define("lesson-order", LessonOrder);
define("lesson-reading", LessonReading);
define("lesson-recipe", LessonRecipe);
define("lesson-feedback", LessonFeedback);

/**
 * A question with its answer, hints, the button that hands it in, and what is told of it then.
 *
 * @fires answer-picked - another answer
 * @fires exercise-asked - to be handed in, a hint, another try
 */
export class LessonExercise extends LitElement {
  static override styles = [
    look,
    lessonStyle,
    css`
      .card {
        padding: 0.9rem 1rem 1rem;
        border: 1px solid var(--rule);
        border-radius: 10px;
        background: var(--card);
      }
      .ask {
        margin-bottom: 0.5rem;
        color: var(--ink);
        font-family: var(--serif);
        font-size: 1.125rem;
        letter-spacing: 0;
      }
      .buttons {
        display: flex;
        flex-wrap: wrap;
        gap: 0.6rem;
        align-items: center;
        margin-top: 0.6rem;
      }
      .buttons button {
        min-height: 2.75rem;
      }
      .problem {
        margin: 0.5rem 0 0;
        color: var(--loud-word);
      }
      .hints {
        margin: 0.6rem 0 0;
        padding-inline-start: 1.3rem;
      }
    `,
  ];

  static override properties = {
    view: { attribute: false },
    telling: { attribute: false },
    text: { attribute: false },
    problem: { state: true },
  };

  declare view: ExerciseView;
  declare telling: Telling;
  declare text: LessonCatalogue;
  /** What is still lacking before it can be handed in. */
  declare problem: string;

  constructor() {
    super();
    this.text = lessonEnglish;
    this.problem = "";
  }

  override render() {
    const { view, text } = this;
    const feedback = feedbackOn(view, this.telling);
    return html`<section class="card" role="group" aria-label=${view.ask}>
      <h3 class="ask">${view.ask}</h3>
      <div @answer-picked=${this.#clearProblem}>${this.#body()}</div>
      ${this.#hints()}
      ${
        feedback
          ? html`<lesson-feedback
              .feedback=${feedback}
              .why=${view.why ?? ""}
              .text=${text}
            ></lesson-feedback>`
          : nothing
      }
      ${this.#buttons(feedback?.grade === "right")}
    </section>`;
  }

  #body() {
    const { view, text } = this;
    const { map, actions, unit } = this.telling;
    switch (view.kind) {
      case "predict":
        return html`<lesson-predict
          .view=${view}
          .map=${map}
          .unit=${unit}
          .text=${text}
        ></lesson-predict>`;
      case "choose":
        return html`<lesson-choice class="answer" .view=${view} .text=${text}></lesson-choice>`;
      case "order":
        return html`<lesson-order
          class="answer"
          .view=${view}
          .actions=${actions}
          .text=${text}
        ></lesson-order>`;
      case "read":
        return html`<lesson-reading class="answer" .view=${view} .text=${text}></lesson-reading>`;
      default:
        return html`<lesson-recipe
          class="answer"
          .view=${view}
          .map=${map}
          .unit=${unit}
          .text=${text}
        ></lesson-recipe>`;
    }
  }

  #hints() {
    const { hints } = this.view;
    if (hints.length === 0) return nothing;
    return html`<ol class="hints" aria-label=${this.text.lessons.hints}>
      ${hints.map((hint) => html`<li>${hintText(hint, this.view, this.telling)}</li>`)}
    </ol>`;
  }

  #buttons(isRight: boolean) {
    const { view } = this;
    const words = this.text.lessons;
    const { kind, locked, hints } = view;
    if (locked)
      return kind === "predict"
        ? html`<p class="soft">${words.locked}</p>`
        : isRight
          ? nothing
          : html`<div class="buttons">
              <button @click=${() => this.#ask("again")}>${words.again}</button>
            </div>`;
    return html`<div class="buttons">
        <button class="main" @click=${this.#lock}>
          ${kind === "predict" ? words.lock : words.check}
        </button>
        ${
          hints.length < 3
            ? html`<button class="hint" @click=${() => this.#ask("hint")}>
                ${words.hint(hints.length)}
              </button>`
            : nothing
        }
        ${kind === "predict" ? html`<span class="soft">${words.lockHint}</span>` : nothing}
      </div>
      ${this.problem ? html`<p class="problem" role="alert">${this.problem}</p>` : nothing}`;
  }

  #clearProblem(): void {
    this.problem = "";
  }

  #lock(): void {
    const { answer } = this.view;
    if (!isWhole(answer)) this.problem = this.#lacking();
    else void this.#ask("lock");
  }

  #lacking(): string {
    const { lacks } = this.text.lessons;
    const { kind, answer } = this.view;
    if (kind === "predict") return answer ? lacks.sure : lacks.guess;
    if (kind === "read") return lacks.shares;
    return kind === "choose" ? lacks.answer : lacks.moved;
  }

  /** What was pressed is gone or another thing now: the focus goes to what is told, to the button that hands in, or to the first thing to be corrected. */
  async #ask(what: "lock" | "hint" | "again"): Promise<void> {
    this.problem = "";
    this.dispatchEvent(new ExerciseAskedEvent(this.view.id, what));
    await new Promise(requestAnimationFrame);
    await this.updateComplete;
    // After the last hint its button is gone.
    if (what === "hint" && this.view.hints.length < 3) return;
    const next = { lock: "lesson-feedback", hint: ".main", again: ".answer" }[what];
    // A guess that is locked is seen on its way: what is told of it stands below.
    const isWatched = what === "lock" && this.view.kind === "predict";
    this.renderRoot.querySelector<HTMLElement>(next)?.focus({ preventScroll: isWatched });
    if (isWatched) this.scrollIntoView({ block: "start" });
  }
}
