import { LitElement, css, html, nothing } from "lit";
import { english, type Catalogue } from "../reed/catalogue.js";
import { shownValues } from "../reed/tried.js";
import { look } from "../widgets/look.js";
import type { BenchState } from "./bench-state.js";
import type { BenchView } from "./bench-view.js";
import { bladeRows, endRows, triangleRows, type DrawnRow } from "./drawn-rows.js";

/** Everything that the bench draws, as tables; made only while they are open. */
export class DrawnTable extends LitElement {
  static override styles = [
    look,
    css`
      :host {
        display: block;
        min-width: 0;
      }
      summary {
        min-height: 1.75rem;
        color: var(--ink-soft);
        cursor: pointer;
      }
      .scroll {
        overflow-x: auto;
      }
      table {
        width: 100%;
        margin-bottom: 1rem;
        border-collapse: collapse;
        font-size: 0.875rem;
      }
      caption {
        padding: 0.2rem 0;
        font-weight: 600;
        text-align: start;
      }
      th,
      td {
        padding: 0.2rem 0 0.2rem 0.6rem;
        border-bottom: 1px solid var(--rule);
        font-weight: inherit;
        text-align: end;
      }
      th:first-child {
        padding-inline: 0;
        text-align: start;
      }
      thead th {
        color: var(--ink-soft);
      }
    `,
  ];

  static override properties = {
    state: { attribute: false },
    view: { attribute: false },
    text: { attribute: false },
    open: { state: true },
  };

  declare state: BenchState;
  declare view: BenchView;
  declare text: Catalogue;
  declare open: boolean;

  constructor() {
    super();
    this.text = english;
    this.open = false;
  }

  override render() {
    return html`<details @toggle=${this.#onToggle}>
      <summary>${this.text.table.title}</summary>
      ${this.open ? this.#tables() : nothing}
    </details>`;
  }

  #onToggle(event: Event): void {
    this.open = (event.target as HTMLDetailsElement).open;
  }

  #tables() {
    const { state, view, text } = this;
    const { bench } = state.present;
    const { unit } = bench;
    const values = shownValues(bench);
    const words = text.table;
    const { high, low, loud } = text.corners;
    const blade = [words.behindTip, words.spine, words.halfway, words.edge];
    return [
      table(words.triangle, [words.thing, high, low, loud], triangleRows(state, view, text)),
      table(words.blade, blade, bladeRows(state.model, values, unit, text)),
      table(
        words.ends,
        [words.thing, words.width, words.height],
        endRows(state.model, values, unit, text),
      ),
    ];
  }
}

function table(caption: string, columns: readonly string[], rows: readonly DrawnRow[]) {
  return html`<div class="scroll" tabindex="0" role="region" aria-label=${caption}>
    <table>
      <caption>
        ${caption}
      </caption>
      <thead>
        <tr>
          ${columns.map((column) => html`<th scope="col">${column}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${rows.map(
          ({ name, cells }) =>
            html`<tr>
              <th scope="row">${name}</th>
              ${cells.map((cell) => html`<td>${cell}</td>`)}
            </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}
