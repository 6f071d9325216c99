import { LitElement, css, html } from "lit";
import type { Sentence } from "../reed/catalogue.js";
import { look } from "./look.js";

/** The sentence below the triangle, in a book face; names of purposes in their colours. */
export class ReedSentence extends LitElement {
  static override styles = [
    look,
    css`
      :host {
        display: block;
      }
      p {
        max-width: 38em;
        margin: 0;
        font-family: var(--serif);
        font-size: 1.1875rem;
        line-height: 1.5;
        text-wrap: pretty;
      }
      b.high {
        color: var(--high-word);
      }
      b.low {
        color: var(--low-word);
      }
      b.loud {
        color: var(--loud-word);
      }
    `,
  ];

  static override properties = { sentence: { attribute: false } };

  declare sentence: Sentence;

  constructor() {
    super();
    this.sentence = [];
  }

  override render() {
    return html`<p>
      ${this.sentence.map((piece) => (typeof piece === "string" ? piece : html`<b class=${piece.purpose}>${piece.words}</b>`))}
    </p>`;
  }
}
