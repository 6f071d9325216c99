import { LitElement, css, html, nothing } from "lit";
import { live } from "lit/directives/live.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import { isDemo } from "../reed/demo-reeds.js";
import { look } from "../widgets/look.js";
import { BenchActionEvent } from "./bench-action-event.js";

/**
 * Before the sheet: the bench holds a shipped reed, so whose sheet is it to be?
 *
 * @fires bench-action - a new set of readings, or the sheet of the demo reed
 * @fires blank-asked - a blank sheet is to be printed
 */
export class MeasureStart extends LitElement {
  static override styles = [
    look,
    css`
      :host {
        display: block;
        max-width: 40rem;
      }
      h1 {
        margin: 0 0 0.4rem;
        font-family: var(--serif);
        font-size: 1.6rem;
      }
      form {
        margin-bottom: 0.8rem;
      }
      label {
        display: grid;
        gap: 0.25rem;
        max-width: 22rem;
        margin-bottom: 0.6rem;
      }
      input {
        min-width: 0;
        min-height: 2.75rem;
        padding: 0 0.6rem;
      }
      button {
        min-height: 2.75rem;
      }
      .main {
        border: 2px solid var(--accent);
        font-weight: 650;
      }
    `,
  ];

  static override properties = {
    reed: { type: String },
    text: { attribute: false },
    name: { state: true },
  };

  /** The reed on the bench. */
  declare reed: string;
  declare text: Catalogue;
  declare name: string;

  constructor() {
    super();
    this.text = english;
    this.reed = "";
    this.name = "";
  }

  override render() {
    const { text, reed } = this;
    const words = text.measure.start;
    return html`<h1>${text.measure.title}</h1>
      <p>${words.explain}</p>
      <form @submit=${this.#onStart}>
        <label
          >${words.name}
          <input
            type="text"
            maxlength="80"
            autocomplete="off"
            placeholder=${text.bar.ownReed}
            .value=${live(this.name)}
            @input=${this.#onName}
          />
        </label>
        <button class="main">${words.empty}</button>
      </form>
      ${isDemo(reed) ? html`<button @click=${this.#onAgain}>${words.again(reed)}</button>` : nothing}
      <button @click=${() => this.dispatchEvent(new Event("blank-asked"))}>
        ${text.measure.summary.printBlank}
      </button>`;
  }

  #onName(event: Event): void {
    this.name = (event.target as HTMLInputElement).value;
  }

  #onStart(event: Event): void {
    event.preventDefault();
    const reed = this.name.trim() || this.text.bar.ownReed;
    this.dispatchEvent(new BenchActionEvent({ type: "set-started", reed, wet: "" }));
  }

  #onAgain(): void {
    this.dispatchEvent(new BenchActionEvent({ type: "sheet-moved", step: 0 }));
  }
}
