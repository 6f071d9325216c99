import { LitElement, css, html, nothing } from "lit";
import type { Actions } from "../engine/model.js";
import type { ExerciseView } from "../lesson/lesson-view.js";
import { lessonEnglish, type LessonCatalogue } from "../reed/lesson-catalogue.js";
import { AnswerPickedEvent } from "./lesson-events.js";
import { lessonStyle } from "./lesson-style.js";
import { look } from "./look.js";

/**
 * Moves to be put in a sensible order, with a button up and a button down at each.
 *
 * @fires answer-picked - another order
 */
export class LessonOrder extends LitElement {
  static override styles = [
    look,
    lessonStyle,
    css`
      ol {
        max-width: 32rem;
        margin: 0 0 0.6rem;
        padding-inline-start: 1.4rem;
      }
      li {
        padding-block: 0.25rem;
      }
      .move {
        display: flex;
        gap: 0.5rem;
        align-items: center;
      }
      .move span {
        flex: 1;
      }
      button {
        min-width: 2.5rem;
      }
    `,
  ];

  static override properties = {
    view: { attribute: false },
    actions: { attribute: false },
    text: { attribute: false },
  };

  declare view: ExerciseView;
  declare actions: Actions;
  declare text: LessonCatalogue;

  constructor() {
    super();
    this.text = lessonEnglish;
  }

  override render() {
    const { locked } = this.view;
    const now = this.#now();
    return html`<ol>
      ${now.map(
        (id, k) =>
          html`<li>
            <div class="move">
              <span>${this.#label(id)}</span>
              ${locked ? nothing : this.#buttons(id, k, now.length)}
            </div>
          </li>`,
      )}
    </ol>`;
  }

  /** On the first move that can be made. */
  override focus(): void {
    this.renderRoot.querySelector<HTMLElement>("button[aria-disabled=false]")?.focus();
  }

  #buttons(id: string, k: number, count: number) {
    const words = this.text.lessons;
    const label = this.#label(id);
    return html`<button
        aria-label=${words.upward(label)}
        aria-disabled=${k === 0}
        @click=${(event: Event) => this.#move(k, k - 1, event)}
      >
        ↑</button
      ><button
        aria-label=${words.downward(label)}
        aria-disabled=${k === count - 1}
        @click=${(event: Event) => this.#move(k, k + 1, event)}
      >
        ↓
      </button>`;
  }

  #now(): readonly string[] {
    const { answer, given } = this.view;
    return answer?.kind === "order" ? answer.actions : (given.actions ?? []);
  }

  #label(id: string): string {
    return this.actions.actions.find((one) => one.id === id)?.label ?? id;
  }

  /** The focus goes along with the move, so that the same key moves it on. */
  async #move(from: number, to: number, event: Event): Promise<void> {
    const now = this.#now();
    if (to < 0 || to >= now.length) return;
    const actions = now.with(from, now[to]!).with(to, now[from]!);
    const way = (event.currentTarget as Element).previousElementSibling?.matches("button") ? 1 : 0;
    this.dispatchEvent(new AnswerPickedEvent({ kind: "order", actions }));
    await new Promise(requestAnimationFrame);
    const buttons = this.renderRoot.querySelectorAll("li")[to]?.querySelectorAll("button");
    buttons?.[way]?.focus();
  }
}
