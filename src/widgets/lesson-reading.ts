import { LitElement, css, html, nothing } from "lit";
import { live } from "lit/directives/live.js";
import type { Blend } from "../engine/blend.js";
import type { ExerciseView } from "../lesson/lesson-view.js";
import { lessonEnglish, withPoint, type LessonCatalogue } from "../reed/lesson-catalogue.js";
import { define } from "./define.js";
import { AnswerPickedEvent } from "./lesson-events.js";
import { lessonStyle } from "./lesson-style.js";
import { look } from "./look.js";
import { ReedTriangle } from "./reed-triangle.js";

define("triangle-plane", ReedTriangle);

const order = ["high", "low", "loud"] as const;

/**
 * Three shares to be read off the triangle, which shows them only when they have been read.
 *
 * @fires answer-picked - all three fields hold a share
 */
export class LessonReading extends LitElement {
  static override styles = [
    look,
    lessonStyle,
    css`
      .fields {
        display: flex;
        flex-wrap: wrap;
        gap: 0.5rem 1.2rem;
      }
      .fields label {
        display: grid;
        gap: 0.2rem;
      }
      input {
        width: 6rem;
        min-height: 2.5rem;
        padding: 0 0.5rem;
      }
    `,
  ];

  static override properties = { view: { attribute: false }, text: { attribute: false } };

  declare view: ExerciseView;
  declare text: LessonCatalogue;

  constructor() {
    super();
    this.text = lessonEnglish;
  }

  override render() {
    const { text, view } = this;
    const { answer, given, locked } = view;
    const isRead = view.mark?.kind === "read" && view.mark.right;
    const typed = answer?.kind === "read" ? answer.shares : undefined;
    return html`<div class="parts">
      <triangle-plane
        still
        .unread=${!isRead}
        .blend=${given.at}
        .layers=${isRead ? ["readingLines"] : []}
        .greatestHeight=${380}
        .text=${withPoint(text, text.lessons.toRead)}
      ></triangle-plane>
      ${given.at && !isRead ? this.#inWords(given.at) : nothing}
      <div class="fields" @change=${this.#onTyped}>
        ${order.map(
          (id, k) =>
            html`<label
              >${text.lessons.share(text.corners[id])}
              <input
                type="number"
                min="0"
                max="100"
                step="1"
                inputmode="decimal"
                ?disabled=${locked}
                .value=${live(typed ? String(Math.round(typed[k]! * 1000) / 10) : this.#kept[k]!)}
            /></label>`,
        )}
      </div>
    </div>`;
  }

  /** The same task for the ear: lines to be counted for two shares; the third is what is left. */
  #inWords(at: Blend) {
    const words = this.text.lessons.inWords;
    const [high, low] = order.map((id, k) => words.line(this.text.corners[id], at[k]!));
    return html`<details class="help">
      <summary>${words.title}</summary>
      <p>${words.lines} ${high} ${low}</p>
    </details>`;
  }

  /** The first share that was wrong when they were handed in. */
  #wrong = 0;

  override willUpdate(): void {
    const { mark } = this.view;
    if (mark?.kind === "read") this.#wrong = Math.max(0, mark.each.indexOf(false));
  }

  override focus(): void {
    this.renderRoot.querySelectorAll("input")[this.#wrong]?.focus();
  }

  /** What stands in the fields while they are not all filled. */
  #kept: string[] = ["", "", ""];

  #onTyped(): void {
    const fields = [...this.renderRoot.querySelectorAll("input")];
    this.#kept = fields.map(({ value }) => value);
    const shares = fields.map(({ valueAsNumber }) => valueAsNumber / 100);
    if (shares.every(Number.isFinite))
      this.dispatchEvent(
        new AnswerPickedEvent({ kind: "read", shares: shares as unknown as Blend }),
      );
  }
}
