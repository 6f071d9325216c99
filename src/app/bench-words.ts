import { LitElement, css, html, nothing } from "lit";
import { english, type Catalogue } from "../reed/catalogue.js";
import { demoReeds } from "../reed/demo-reeds.js";
import { nearestBlend } from "../engine/nearest-blend.js";
import { sharesText } from "../reed/whole-shares.js";
import { define } from "../widgets/define.js";
import { look } from "../widgets/look.js";
import { ReedCertainty } from "../widgets/reed-certainty.js";
import { ReedSentence } from "../widgets/reed-sentence.js";
import { BenchActionEvent } from "./bench-action-event.js";
import type { BenchState } from "./bench-state.js";
import type { BenchView } from "./bench-view.js";
import { stoppedLine } from "./stopped-line.js";

define("reed-sentence", ReedSentence);
define("reed-certainty", ReedCertainty);

/** A state of the bench and what is seen of it. */
export interface Shown {
  readonly state: BenchState;
  readonly view: BenchView;
}

/** What is said of the reed under the triangle: what stopped the point, the sentence, how sure. */
export class BenchWords extends LitElement {
  static override styles = [
    look,
    css`
      :host {
        display: grid;
        isolation: isolate; /* painted by itself: a drag elsewhere leaves it as it is */
        grid-template-columns: minmax(0, 1fr);
        gap: 0.75rem;
      }
      .stopped {
        margin: 0;
        color: var(--loud-word);
        font-weight: 600;
      }
      .base {
        display: flex;
        flex-wrap: wrap;
        gap: 0.3rem 0.75rem;
        align-items: center;
        margin: 0;
      }
      .story {
        max-width: 38em;
        margin: 0;
        color: var(--ink-soft);
      }
      @media print {
        .base button {
          display: none;
        }
        :host {
          gap: 0.4rem;
        }
      }
    `,
  ];

  static override properties = {
    shown: { attribute: false },
    text: { attribute: false },
  };

  declare shown: Shown;
  declare text: Catalogue;

  constructor() {
    super();
    this.text = english;
  }

  readonly #asMeasured = (): void => {
    this.dispatchEvent(new BenchActionEvent({ type: "as-measured" }));
  };

  override render() {
    const { text } = this;
    const { state, view } = this.shown;
    const { bench } = state.present;
    const story = !bench.tried ? demoReeds.find((one) => one.reed === bench.reed) : undefined;
    return html`
      <p class="stopped" ?hidden=${!view.placed}>${stoppedLine(state.model, bench, view, text)}</p>
      <reed-sentence .sentence=${view.sentence}></reed-sentence>
      ${
        bench.tried
          ? html`<p class="base">
              ${view.base ? html`<span>${text.tried.shares(sharesText(nearestBlend(view.base), text), view.isGiven)}</span>` : nothing}
              <button @click=${this.#asMeasured}>${text.tried.asMeasured(view.isGiven)}</button>
            </p>`
          : nothing
      }
      ${story ? html`<p class="story">${text.bar.invented} ${story.story}</p>` : nothing}
      <reed-certainty
        .blend=${view.placed?.raw}
        .ellipse=${view.ellipse}
        .gaugeEllipse=${view.gaugeEllipse}
        .text=${text}
      ></reed-certainty>
    `;
  }
}
