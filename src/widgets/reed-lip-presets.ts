import { LitElement, css, html } from "lit";
import {
  lipPresets,
  presetState,
  type LipPresetId,
  type LipState,
} from "../acoustics/lip-presets.js";
import { lipEnglish, type LipCatalogue } from "../reed/lip-catalogue.js";
import { LipPresetPickedEvent } from "./lip-events.js";
import { look } from "./look.js";

const ids = Object.keys(lipPresets) as LipPresetId[];

/**
 * Four ways of playing at a touch; the one that holds is pressed in.
 *
 * @fires lip-preset-picked - the way of playing that was asked for
 */
export class ReedLipPresets extends LitElement {
  static override styles = [
    look,
    css`
      :host {
        display: block;
      }
      [role="group"] {
        display: grid;
        gap: 0.4rem;
        grid-template-columns: repeat(2, minmax(0, 1fr));
      }
      h3 {
        margin-bottom: 0.3rem;
      }
      button[aria-pressed="true"] {
        border-color: var(--accent);
        box-shadow: inset 0 0 0 2px var(--accent);
        font-weight: 650;
      }
      @media (forced-colors: active) {
        button[aria-pressed="true"] {
          border-color: Highlight;
          outline: 2px solid Highlight;
          outline-offset: -4px;
        }
      }
      @media print {
        button:not([aria-pressed="true"]) {
          display: none;
        }
      }
    `,
  ];

  static override properties = { at: { attribute: false }, text: { attribute: false } };

  /** With the place of the lips. */
  declare at: Required<LipState>;
  declare text: LipCatalogue;

  constructor() {
    super();
    this.text = lipEnglish;
  }

  override render() {
    const { lip } = this.text;
    return html`<h3 id="title">${lip.controls.presets}</h3>
      <div role="group" aria-labelledby="title">
        ${ids.map(
          (id) =>
            html`<button
              aria-pressed=${this.#holds(id) ? "true" : "false"}
              @click=${() => this.#pick(id)}
            >
              ${lip.presets[id]}
            </button>`,
        )}
      </div>`;
  }

  #holds(id: LipPresetId): boolean {
    const { lip, blow, place } = presetState(id);
    return this.at.lip === lip && this.at.blow === blow && this.at.place === place;
  }

  #pick(id: LipPresetId): void {
    this.dispatchEvent(new LipPresetPickedEvent(id));
  }
}
