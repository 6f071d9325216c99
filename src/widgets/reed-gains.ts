import { LitElement, html, svg } from "lit";
import type { Quality } from "../engine/qualities.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import type { Gain } from "../reed/gains.js";
import { QualityPickedEvent } from "./advice-events.js";
import { look } from "./look.js";
import { reedGainsStyle } from "./reed-gains-style.js";

/** A place of the triangle with what a reed there gains and pays. */
export interface GainsPlace {
  readonly name: string;
  readonly gains: readonly Gain[];
}

/** Points on the scale of judgements that fill half a bar. */
const halfBar = 5;

/**
 * Gains and costs against the all-round reed: a row a quality, a column a place, in words and small bars.
 *
 * @fires quality-picked - a quality is to lie over the triangle, or none
 */
export class ReedGains extends LitElement {
  static override styles = [look, reedGainsStyle];

  static override properties = {
    qualities: { attribute: false },
    places: { attribute: false },
    picked: { type: String },
    text: { attribute: false },
  };

  declare qualities: readonly Quality[];
  /** Each with one entry a quality, in their order. */
  declare places: readonly GainsPlace[];
  /** The quality that lies over the triangle. */
  declare picked: string | undefined;
  declare text: Catalogue;

  constructor() {
    super();
    this.qualities = [];
    this.places = [];
    this.text = english;
  }

  override render() {
    const words = this.text.planPage.gains;
    // On a phone the rows are cards: the roles keep them a table for who hears them.
    return html`<table role="table" class=${this.places.length > 3 ? "many" : ""}>
      <thead role="rowgroup">
        <tr role="row">
          <th role="columnheader" scope="col">${words.quality}</th>
          ${this.places.map(({ name }) => html`<th role="columnheader" scope="col">${name}</th>`)}
        </tr>
      </thead>
      <tbody role="rowgroup">
        ${this.qualities.map(
          ({ id, label }, index) =>
            html`<tr role="row">
              <th role="rowheader" scope="row">${this.#name(id, label)}</th>
              ${this.places.map(({ name, gains }) => this.#cell(name, gains[index]!))}
            </tr>`,
        )}
      </tbody>
    </table>`;
  }

  #name(id: string, label: string) {
    const isPicked = id === this.picked;
    return html`<button
      class="name"
      aria-pressed=${isPicked}
      title=${this.text.planPage.gains.show(label)}
      @click=${() => this.dispatchEvent(new QualityPickedEvent(isPicked ? undefined : id))}
    >
      ${label}
    </button>`;
  }

  #cell(place: string, { difference }: Gain) {
    const length = (Math.min(halfBar, Math.abs(difference)) / halfBar) * 48;
    const better = difference > 0;
    return html`<td role="cell">
      <span class="label" aria-hidden="true">${place}</span>
      <svg viewBox="0 0 100 14" preserveAspectRatio="none" aria-hidden="true">
        <line class="rail" x1="2" y1="7" x2="98" y2="7"></line>
        ${svg`<rect class="bar ${better ? "better" : ""}" x=${better ? 50 : 50 - length} y="3" width=${length} height="8"></rect>`}
        <line class="middle" x1="50" y1="0" x2="50" y2="14"></line>
      </svg>
      <span class="words">${this.text.advice.qualities.degree(difference)}</span>
    </td>`;
  }
}
