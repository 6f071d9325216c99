import { LitElement, css, html, nothing } from "lit";
import { pageNames, type PageName } from "../reed/bench.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import { look } from "../widgets/look.js";
import { BenchActionEvent } from "./bench-action-event.js";

/**
 * The pages of the app: the same reed, looked at in another way.
 *
 * @fires bench-action - another page
 */
export class PageTabs extends LitElement {
  static override styles = [
    look,
    css`
      :host {
        display: block;
        border-bottom: 1px solid var(--rule);
      }
      nav {
        display: flex;
        flex-wrap: wrap;
        gap: 0 1.25rem;
        max-width: 104rem;
        margin: 0 auto;
        padding: 0 clamp(0.75rem, 2.5vw, 2rem);
      }
      button {
        min-height: 2.5rem;
        padding: 0 0.1rem 3px;
        border: 0;
        border-radius: 0;
        background: none;
        color: var(--ink-soft);
      }
      button[aria-current] {
        padding-block-end: 0;
        border-block-end: 3px solid var(--accent);
        color: var(--ink);
        font-weight: 600;
      }
    `,
  ];

  static override properties = { page: { type: String }, text: { attribute: false } };

  declare page: PageName;
  declare text: Catalogue;

  constructor() {
    super();
    this.page = "bench";
    this.text = english;
  }

  override render() {
    return html`<nav aria-label=${this.text.pages.title}>
      ${pageNames.map(
        (page) =>
          html`<button
            aria-current=${page === this.page ? "page" : nothing}
            @click=${() => this.dispatchEvent(new BenchActionEvent({ type: "page-set", page }))}
          >
            ${this.text.pages[page]}
          </button>`,
      )}
    </nav>`;
  }
}
