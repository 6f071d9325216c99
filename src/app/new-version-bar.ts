import { LitElement, css, html, nothing, type PropertyValues } from "lit";
import { newVersionWords as words } from "../reed/new-version-words.js";
import { look } from "../widgets/look.js";

/**
 * Says that a new version is ready. While a lesson runs it waits, and says so.
 *
 * @fires version-taken - the user wants it now
 */
export class NewVersionBar extends LitElement {
  static override styles = [
    look,
    css`
      .bar {
        position: fixed;
        inset: auto 0 1rem;
        z-index: 2;
        display: flex;
        flex-wrap: wrap;
        gap: 0.5rem 0.75rem;
        align-items: center;
        width: fit-content;
        max-width: min(44rem, calc(100% - 1.5rem));
        margin: 0 auto;
        padding: 0.5rem 0.75rem;
        border: 1px solid var(--accent);
        border-radius: 8px;
        background: var(--card);
        box-shadow: 0 4px 16px rgb(0 0 0 / 20%);
      }
      span {
        flex: 1 1 15rem;
      }
      @media print {
        .bar {
          display: none;
        }
      }
    `,
  ];

  static override properties = { waits: { type: Boolean }, closed: { state: true } };

  /** Whether it must wait. */
  declare waits: boolean;
  declare closed: boolean;

  constructor() {
    super();
    this.waits = false;
    this.closed = false;
  }

  /** What was put off in a lesson is said again after it. */
  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.get("waits")) this.closed = false;
  }

  override render() {
    return html`<div role="status">${this.closed ? nothing : this.#bar()}</div>`;
  }

  #bar() {
    const take = () => this.dispatchEvent(new Event("version-taken"));
    return html`<div class="bar">
      <span>${this.waits ? words.waits : words.ready}</span>
      ${this.waits ? nothing : html`<button @click=${take}>${words.take}</button>`}
      <button @click=${() => (this.closed = true)}>${words.later}</button>
    </div>`;
  }
}
