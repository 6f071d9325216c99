import { LitElement, css, html, nothing } from "lit";
import { english, type Catalogue } from "../reed/catalogue.js";
import { look } from "../widgets/look.js";

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
        box-shadow: 0 4px 16px rgb(0 0 0 / 20%);
      }
    `,
  ];

  static override properties = { words: { type: String }, text: { attribute: false } };

  /** What it says; empty: nothing. */
  declare words: string;
  declare text: Catalogue;

  constructor() {
    super();
    this.words = "";
    this.text = english;
  }

  override render() {
    if (!this.words) return nothing;
    return html`<p class="notice" role="alert" @keydown=${this.#onKey}>
      <span>${this.words}</span>
      <button @click=${this.#close}>${this.text.bar.close}</button>
    </p>`;
  }

  #onKey(event: KeyboardEvent): void {
    if (event.key === "Escape") this.#close();
  }

  #close(): void {
    this.dispatchEvent(new Event("notice-closed"));
  }
}
