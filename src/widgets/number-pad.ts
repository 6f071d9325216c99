import { LitElement, css, html, nothing } from "lit";
import { english, type Catalogue } from "../reed/catalogue.js";
import { look } from "./look.js";

/** A key of the pad was pressed. */
export class PadKeyEvent extends Event {
  /** A digit, ".", "erase" or "enter". */
  readonly key: string;
  constructor(key: string) {
    super("pad-key", { bubbles: true, composed: true });
    this.key = key;
  }
}

const keys = ["1", "2", "3", "erase", "4", "5", "6", "enter", "7", "8", "9", ".", "0"] as const;

/**
 * Number keys large enough for a thumb, so that a phone's own keyboard need not cover the page.
 *
 * @fires pad-key - a digit, the point, "erase" or "enter"
 */
export class NumberPad extends LitElement {
  static override styles = [
    look,
    css`
      :host {
        display: grid;
        grid-template-columns: repeat(4, minmax(0, 1fr));
        gap: 0.4rem;
        direction: ltr; /* number keys stand the same way in every script */
      }
      button {
        min-width: 0;
        padding: 0;
        overflow-wrap: anywhere;
        min-height: 3.25rem;
        font-size: 1.375rem;
        touch-action: manipulation;
      }
      .enter {
        grid-row: span 3;
        border: 2px solid var(--accent);
        font-size: 1rem;
        font-weight: 650;
      }
      .zero {
        grid-column: span 2;
      }
    `,
  ];

  static override properties = { text: { attribute: false } };

  declare text: Catalogue;

  constructor() {
    super();
    this.text = english;
  }

  override render() {
    const words = this.text.measure.pad;
    const names: Readonly<Record<string, string>> = { erase: words.erase, ".": words.point };
    const signs: Readonly<Record<string, string>> = { erase: "⌫", enter: words.enter };
    return keys.map(
      (key) =>
        html`<button
          type="button"
          class=${key === "enter" ? "enter" : key === "0" ? "zero" : nothing}
          aria-label=${names[key] ?? nothing}
          @click=${() => this.dispatchEvent(new PadKeyEvent(key))}
        >
          ${signs[key] ?? key}
        </button>`,
    );
  }
}
