import { LitElement, css, html, nothing } from "lit";
import { english, type Catalogue } from "../reed/catalogue.js";
import { demoReeds } from "../reed/demo-reeds.js";
import { define } from "../widgets/define.js";
import { look } from "../widgets/look.js";
import { ReedCertainty } from "../widgets/reed-certainty.js";
import { ReedSentence } from "../widgets/reed-sentence.js";
import { isUnchanged } from "./bench-reed.js";
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
      .story {
        max-width: 38em;
        margin: 0;
        color: var(--ink-soft);
      }
      @media print {
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

  override render() {
    const { text } = this;
    const { state, view } = this.shown;
    const { bench } = state.present;
    const story = isUnchanged({ model: state.model, bench })
      ? demoReeds.find((one) => one.reed === bench.reed)
      : undefined;
    return html`
      <p class="stopped" ?hidden=${!view.placed}>${stoppedLine(state.model, bench, view, text)}</p>
      <reed-sentence .sentence=${view.sentence}></reed-sentence>
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
