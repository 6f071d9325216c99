import { LitElement, css, html, nothing } from "lit";
import { english, type Catalogue } from "../reed/catalogue.js";
import { shownValues } from "../reed/tried.js";
import { define } from "../widgets/define.js";
import { look } from "../widgets/look.js";
import { ReedComparison } from "../widgets/reed-comparison.js";
import { BenchActionEvent } from "./bench-action-event.js";
import { reedName } from "./bench-reed.js";
import type { Shown } from "./bench-words.js";

define("reed-comparison", ReedComparison);

/**
 * The reed on the bench against the pinned one, as a card.
 *
 * @fires bench-action - the two change places, or the comparison is over
 */
export class BenchComparison extends LitElement {
  static override styles = [
    look,
    css`
      :host {
        display: block;
        min-width: 0;
      }
      section {
        padding: 0.9rem 1rem 1rem;
        border: 1px solid var(--rule);
        border-radius: 10px;
        background: var(--card);
      }
      @media print {
        section {
          padding: 0.3rem;
          border: 0;
          break-inside: avoid;
        }
      }
    `,
  ];

  static override properties = { shown: { attribute: false }, text: { attribute: false } };

  declare shown: Shown;
  declare text: Catalogue;

  constructor() {
    super();
    this.text = english;
  }

  override render() {
    const { text } = this;
    const { state, view } = this.shown;
    const { comparison, placed } = view;
    if (!comparison) return nothing;
    const { bench } = state.present;
    const { pinned, blend, differences, onlyOne } = comparison;
    const name = (reed: string): string => reed || text.bar.allRound;
    return html`<section aria-label=${text.compare.pinned(name(pinned.reed))}>
      <reed-comparison
        .model=${state.model}
        .mine=${{ name: reedName({ model: state.model, bench }, text), values: shownValues(bench), blend: placed?.raw }}
        .pinned=${{ name: name(pinned.reed), values: pinned.values, blend }}
        .differences=${differences}
        .onlyOne=${onlyOne}
        .unit=${bench.unit}
        .text=${text}
        @swap-asked=${this.#swap}
        @unpin-asked=${this.#unpin}
      ></reed-comparison>
    </section>`;
  }

  override focus(): void {
    this.renderRoot.querySelector<ReedComparison>("reed-comparison")?.focus();
  }

  #swap(): void {
    this.dispatchEvent(new BenchActionEvent({ type: "reeds-swapped" }));
  }

  #unpin(): void {
    this.dispatchEvent(new BenchActionEvent({ type: "reed-unpinned" }));
  }
}
