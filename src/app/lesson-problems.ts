import { LitElement, css, html } from "lit";
import type { LessonProblem } from "../lesson/lesson-problem.js";
import { lessonEnglish, type LessonCatalogue } from "../reed/lesson-catalogue.js";
import { look } from "../widgets/look.js";

/** Everything that is wrong in a lesson file, in the order of the file. */
export class LessonProblems extends LitElement {
  static override styles = [
    look,
    css`
      :host {
        display: block;
        margin-bottom: 1rem;
        padding: 0.6rem 1rem;
        border: 1px solid var(--edge);
        border-radius: 10px;
        background: var(--card);
      }
      h2 {
        font-size: 1.0625rem;
        margin: 0;
      }
      h2:focus {
        outline: none;
      }
      ol {
        max-height: 16rem;
        margin: 0.4rem 0 0;
        padding-inline-start: 1.4rem;
        overflow: auto;
      }
      li {
        max-width: 60em;
        overflow-wrap: anywhere;
      }
      li + li {
        margin-top: 0.3rem;
      }
    `,
  ];

  static override properties = {
    file: { type: String },
    problems: { attribute: false },
    text: { attribute: false },
  };

  /** Its name. */
  declare file: string;
  declare problems: readonly LessonProblem[];
  declare text: LessonCatalogue;

  constructor() {
    super();
    this.file = "";
    this.problems = [];
    this.text = lessonEnglish;
  }

  override render() {
    const words = this.text.lessons.file;
    const { length } = this.problems;
    if (length === 0) return html`<h2 tabindex="-1">${words.noProblem(this.file)}</h2>`;
    return html`<h2 tabindex="-1">${words.problems(this.file, length)}</h2>
      <ol tabindex="0" aria-label=${words.problems(this.file, length)}>
        ${this.problems.map(({ message }) => html`<li>${message}</li>`)}
      </ol>`;
  }

  override focus(): void {
    this.renderRoot.querySelector<HTMLElement>("h2")?.focus();
  }
}
