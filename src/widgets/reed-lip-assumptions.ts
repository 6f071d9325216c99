import { LitElement, css, html } from "lit";
import { assumed, type AssumptionId, type Assumptions } from "../acoustics/assumptions.js";
import { lipPresets, type LipPresetId } from "../acoustics/lip-presets.js";
import { lipEnglish, type LipCatalogue } from "../reed/lip-catalogue.js";
import { define } from "./define.js";
import { AssumptionsResetEvent } from "./lip-events.js";
import { lipStyle } from "./lip-style.js";
import { look } from "./look.js";
import { ReedLipAssumption } from "./reed-lip-assumption.js";

define("reed-lip-assumption", ReedLipAssumption);

const ids = Object.keys(assumed) as AssumptionId[];
const presetIds = Object.keys(lipPresets) as LipPresetId[];

/**
 * Every constant of the model with its plausible range and where it comes from, and the numbers of the presets.
 *
 * @fires assumption-picked - from any constant
 * @fires assumptions-reset - all go back to their first values
 */
export class ReedLipAssumptions extends LitElement {
  static override styles = [
    look,
    lipStyle,
    css`
      :host {
        container-type: inline-size;
      }
      summary {
        min-height: 1.9rem;
        cursor: pointer;
      }
      summary h3 {
        display: inline;
      }
      .all {
        display: grid;
        gap: 0 1.8rem;
        grid-template-columns: minmax(0, 1fr);
        margin: 0.4rem 0 1rem;
      }
      @container (min-width: 46rem) {
        .all {
          grid-template-columns: repeat(2, minmax(0, 1fr));
        }
      }
      @container (min-width: 84rem) {
        .all {
          grid-template-columns: repeat(3, minmax(0, 1fr));
        }
      }
      table {
        width: 100%;
        max-width: 44rem;
        border-collapse: collapse;
      }
      th,
      td {
        padding-block: 0.25rem;
        padding-inline: 0 0.6rem;
        border-bottom: 1px solid var(--rule);
        font-weight: inherit;
        text-align: start;
        vertical-align: baseline;
        overflow-wrap: anywhere;
      }
      td {
        text-align: end;
      }
      thead th {
        color: var(--ink-soft);
        font-size: 0.8125rem;
      }
      thead th + th {
        text-align: end;
      }
      @media print {
        button {
          display: none;
        }
      }
    `,
  ];

  static override properties = { given: { attribute: false }, text: { attribute: false } };

  declare given: Assumptions;
  declare text: LipCatalogue;

  constructor() {
    super();
    this.text = lipEnglish;
    this.given = assumed;
  }

  override render() {
    const { text, given } = this;
    const { assumptions: words, panel } = text.lip;
    const changed = ids.filter((id) => given[id] !== assumed[id]).length;
    return html`<details>
      <summary>
        <h3>${words.title}</h3>
        <span class="soft">${panel.assumptions.changed(changed)}</span>
      </summary>
      <p>${words.intro}</p>
      <button ?disabled=${changed === 0} @click=${this.#reset}>${words.reset}</button>
      <div class="all">
        ${ids.map(
          (id) =>
            html`<reed-lip-assumption
              data-constant=${id}
              .name=${id}
              .value=${given[id]}
              .text=${text}
            ></reed-lip-assumption>`,
        )}
      </div>
      ${this.#presets()}
    </details>`;
  }

  #presets() {
    const { presets, panel, assumptions: words } = this.text.lip;
    const { presets: title, lip, blow, place, lipAndPlace, breath } = panel.assumptions;
    const { middle } = lipPresets;
    return html`<table>
        <thead>
          <tr>
            <th scope="col">${title}</th>
            <th scope="col">${lip}</th>
            <th scope="col">${blow}</th>
            <th scope="col">${place}</th>
          </tr>
        </thead>
        <tbody>
          ${presetIds.map((id) => {
            const one = lipPresets[id];
            return html`<tr>
              <th scope="row">${presets[id]}</th>
              <td>${this.text.number(one.lip.value / 1000, 1)}</td>
              <td>${this.text.number(one.blow.value / 1000, 1)}</td>
              <td>${this.text.number(one.place.value, 0)}</td>
            </tr>`;
          })}
        </tbody>
      </table>
      <p class="soft">
        ${lipAndPlace}: ${words.basis(middle.lip)} ${breath}: ${words.basis(middle.blow)}
        ${words.presetsNote}
      </p>`;
  }

  #reset(): void {
    this.dispatchEvent(new AssumptionsResetEvent());
  }
}
