import { LitElement, css, html, nothing } from "lit";
import { english, type Catalogue } from "../reed/catalogue.js";
import { look } from "../widgets/look.js";

/** What more there is to tell is counted. */
const mostDetails = 50;

/**
 * A notice at the bottom of the window, until it is closed.
 *
 * @fires notice-closed - it has been read
 */
export class NoticeBar extends LitElement {
  static override styles = [
    look,
    css`
      .notice {
        position: fixed;
        inset: auto 0 1rem;
        z-index: 3;
        display: flex;
        gap: 0.75rem;
        align-items: center;
        justify-content: space-between;
        width: fit-content;
        max-width: min(44rem, calc(100% - 1.5rem));
        margin: 0 auto;
        padding: 0.5rem 0.75rem;
        border: 1px solid var(--accent);
        border-radius: 8px;
        background: var(--card);
        overflow-wrap: anywhere;
        box-shadow: 0 4px 16px rgb(0 0 0 / 20%);
      }
      .said {
        min-width: 0;
      }
      .said p {
        margin: 0;
      }
      /* However much there is to tell, it scrolls, and Close stays in sight. */
      ul {
        max-height: 30vh;
        margin: 0.3rem 0 0;
        padding-inline-start: 1.2rem;
        overflow-y: auto;
      }
      .close {
        flex: none;
        align-self: start;
      }
    `,
  ];

  static override properties = {
    words: { type: String },
    details: { attribute: false },
    text: { attribute: false },
  };

  /** What it says; empty: nothing. */
  declare words: string;
  /** What it says one by one. */
  declare details: readonly string[];
  declare text: Catalogue;

  constructor() {
    super();
    this.words = "";
    this.details = [];
    this.text = english;
  }

  override render() {
    if (!this.words) return nothing;
    const more = this.details.length - mostDetails;
    return html`<div class="notice" role="alert" @keydown=${this.#onKey}>
      <div class="said">
        <p>${this.words}</p>
        ${
          this.details.length > 0
            ? html`<ul tabindex="0" aria-label=${this.words}>
                ${this.details.slice(0, mostDetails).map((detail) => html`<li>${detail}</li>`)}
                ${more > 0 ? html`<li>${this.text.readings.moreProblems(more)}</li>` : nothing}
              </ul>`
            : nothing
        }
      </div>
      <button class="close" @click=${this.#close}>${this.text.bar.close}</button>
    </div>`;
  }

  #onKey(event: KeyboardEvent): void {
    if (event.key === "Escape") this.#close();
  }

  #close(): void {
    this.dispatchEvent(new Event("notice-closed"));
  }
}
