import { LitElement, css, html, nothing } from "lit";
import type { Feedback } from "../lesson/feedback.js";
import { lessonEnglish, type LessonCatalogue } from "../reed/lesson-catalogue.js";
import { lessonStyle } from "./lesson-style.js";
import { look } from "./look.js";

const order = ["high", "low", "loud"] as const;

/** What a student is told of an answer: how good it was, why, and the pulls that made the move. */
export class LessonFeedback extends LitElement {
  static override styles = [
    look,
    lessonStyle,
    css`
      .told {
        margin: 0.4rem 0 0.8rem;
        padding: 0.6rem 0.9rem;
        border-inline-start: 4px solid var(--edge);
        background: var(--card);
      }
      .right {
        border-color: var(--low-word);
      }
      .partly {
        border-color: var(--accent);
      }
      .wrong {
        border-color: var(--loud-word);
      }
      .told:focus {
        outline: none;
      }
      .verdict {
        font-weight: 650;
      }
      table {
        width: 100%;
        max-width: 38rem;
        border-collapse: collapse;
        font-size: 0.875rem;
      }
      caption {
        padding-bottom: 0.2rem;
        color: var(--ink-soft);
        text-align: start;
      }
      th,
      td {
        padding: 0.2rem 0.4rem 0.2rem 0;
        border-bottom: 1px solid var(--rule);
        text-align: end;
        font-weight: 400;
      }
      th:first-child {
        text-align: start;
      }
      thead th,
      tfoot th,
      tfoot td {
        font-weight: 650;
      }
      @container (max-width: 20rem) {
        table {
          font-size: 0.75rem;
        }
        th,
        td {
          padding-inline-end: 0.2rem;
        }
        .told {
          padding-inline: 0.6rem 0;
        }
      }
    `,
  ];

  static override properties = {
    feedback: { attribute: false },
    why: { type: String },
    text: { attribute: false },
  };

  declare feedback: Feedback;
  /** What the author adds. */
  declare why: string;
  declare text: LessonCatalogue;

  constructor() {
    super();
    this.why = "";
    this.text = lessonEnglish;
  }

  override render() {
    const { grade, verdict, says, pulls } = this.feedback;
    return html`<div
      class="told ${grade}"
      tabindex="-1"
      role="group"
      aria-labelledby="verdict"
      aria-describedby="says"
    >
      <p id="verdict" class="verdict">${verdict}</p>
      <div id="says">
        ${says.map((one) => html`<p>${one}</p>`)} ${this.why ? html`<p>${this.why}</p>` : nothing}
      </div>
      ${pulls ? this.#pulls(pulls) : nothing}
    </div>`;
  }

  #pulls({ rows, sum }: NonNullable<Feedback["pulls"]>) {
    const words = this.text.lessons;
    return html`<table>
        <caption>
          ${words.pulls}
        </caption>
        <thead>
          <tr>
            <th scope="col">${words.feature}</th>
            ${order.map((id) => html`<th scope="col">${this.text.corners[id]}</th>`)}
          </tr>
        </thead>
        <tbody>
          ${rows.map(
            ({ label, change, points }) =>
              html`<tr>
                <th scope="row">${label} ${change}</th>
                ${points.map((cell) => html`<td>${cell}</td>`)}
              </tr>`,
          )}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">${words.together}</th>
            ${sum.map((cell) => html`<td>${cell}</td>`)}
          </tr>
        </tfoot>
      </table>
      <p class="soft">${words.feedback.pointsNote}</p>`;
  }

  /** On what is told, so that it is read next. */
  override focus(options?: FocusOptions): void {
    this.renderRoot.querySelector<HTMLElement>(".told")?.focus(options);
  }
}
