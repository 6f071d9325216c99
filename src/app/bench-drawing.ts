import { LitElement, css, html, nothing } from "lit";
import type { PictureWords } from "../drawing/png-text.js";
import type { FeatureId, ReedModel } from "../engine/model.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import type { Bench } from "../reed/bench.js";
import { shownValues } from "../reed/tried.js";
import { define } from "../widgets/define.js";
import { look } from "../widgets/look.js";
import { ReedDrawing } from "../widgets/reed-drawing.js";
import { BenchActionEvent } from "./bench-action-event.js";
import { reedName } from "./bench-reed.js";
import { PictureButtons } from "./picture-buttons.js";

define("reed-drawing", ReedDrawing);
define("picture-buttons", PictureButtons);

/**
 * The reed held to a lamp, and the pinned one beside it to the same scale.
 *
 * @fires bench-action - the reed is pinned
 */
export class BenchDrawing extends LitElement {
  static override styles = [
    look,
    css`
      :host {
        display: block;
        min-width: 0;
      }
      figure {
        margin: 0.4rem 0 0;
      }
      figure + figure {
        margin-top: 0.9rem;
        padding-top: 0.6rem;
        border-top: 1px solid var(--rule);
      }
      figcaption {
        font-weight: 600;
        overflow-wrap: anywhere;
      }
      .foot {
        display: flex;
        flex-wrap: wrap;
        gap: 0.5rem 1rem;
        align-items: center;
        justify-content: space-between;
        margin-top: 0.6rem;
      }
      @media print {
        .foot {
          display: none;
        }
      }
    `,
  ];

  static override properties = {
    model: { attribute: false },
    bench: { attribute: false },
    lying: { type: Boolean },
    pointed: { type: String },
    text: { attribute: false },
  };

  declare model: ReedModel;
  declare bench: Bench;
  /** On its side, as a strip. */
  declare lying: boolean;
  declare pointed: FeatureId | undefined;
  declare text: Catalogue;

  constructor() {
    super();
    this.text = english;
    this.lying = false;
  }

  override render() {
    const { text, bench } = this;
    const { pinned } = bench;
    // Two reeds lie one above the other, tips in one line: so lengths and widths compare at a glance.
    return html`<h2>${text.drawing.title}</h2>
      <figure>
        ${pinned ? html`<figcaption>${reedName(this, text)}</figcaption>` : nothing}
        ${this.#drawing(shownValues(bench), pinned !== undefined || this.lying, "mine")}
      </figure>
      ${
        pinned
          ? html`<figure>
              <figcaption>${text.table.pinned(pinned.reed || text.bar.allRound)}</figcaption>
              ${this.#drawing(pinned.values, true, "pinned")}
            </figure>`
          : nothing
      }
      <div class="foot">
        ${pinned ? nothing : html`<button @click=${this.#pin}>${text.compare.pin}</button>`}
        <picture-buttons
          .what=${text.picture.drawing}
          file="reed-drawing"
          .source=${this.#picture}
          .words=${this.#pictureWords}
          .text=${text}
        ></picture-buttons>
      </div>`;
  }

  #drawing(values: Bench["values"], lying: boolean, which: "mine" | "pinned") {
    return html`<reed-drawing
      class=${which}
      .model=${this.model}
      .values=${values}
      .unit=${this.bench.unit}
      .lying=${lying}
      .brief=${which === "pinned"}
      .pointed=${this.pointed}
      .text=${this.text}
    ></reed-drawing>`;
  }

  readonly #picture = (): SVGSVGElement => this.#mine.picture;
  readonly #pictureWords = (): PictureWords => ({
    title: reedName(this, this.text),
    description: this.#mine.description,
  });

  get #mine(): ReedDrawing {
    return this.renderRoot.querySelector<ReedDrawing>(".mine")!;
  }

  /** On the button that pins: where who has just unpinned a reed goes on. */
  override focus(): void {
    this.renderRoot.querySelector<HTMLElement>(".foot button")?.focus();
  }

  #pin(): void {
    this.dispatchEvent(new BenchActionEvent({ type: "reed-pinned" }));
  }
}
