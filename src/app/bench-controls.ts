import { LitElement, css, html, nothing } from "lit";
import type { PictureWords } from "../drawing/png-text.js";
import { ownTarget } from "../reed/bench.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import { targetOf } from "../reed/targets.js";
import { define } from "../widgets/define.js";
import { look } from "../widgets/look.js";
import { ReedShares } from "../widgets/reed-shares.js";
import type { Handle } from "../widgets/triangle-drag.js";
import { BenchActionEvent } from "./bench-action-event.js";
import { OwnTarget } from "./own-target.js";
import { BenchOptions } from "./bench-options.js";
import type { Shown } from "./bench-words.js";
import { DrawnTable } from "./drawn-table.js";
import { targetLine } from "./target-line.js";
import { PictureButtons } from "./picture-buttons.js";

define("own-target", OwnTarget);
define("reed-shares", ReedShares);
define("bench-options", BenchOptions);
define("drawn-table", DrawnTable);
define("picture-buttons", PictureButtons);

/**
 * What is set under the triangle: the point and one's own target as sliders, the layers, the target; then everything
 * drawn as tables and as a file.
 *
 * @fires bench-action - what the options and the target's sliders ask for
 */
export class BenchControls extends LitElement {
  static override styles = [
    look,
    css`
      :host {
        display: grid;
        isolation: isolate; /* painted by itself: a drag elsewhere leaves it as it is */
        grid-template-columns: minmax(0, 1fr);
        gap: 0.75rem;
      }
      .answer {
        max-width: 38em;
        margin: 0;
      }
      details summary {
        min-height: 1.75rem;
        color: var(--ink-soft);
        cursor: pointer;
      }
      details p {
        margin: 0.2rem 0;
      }
      .honest {
        max-width: 44rem;
        margin: 0;
        color: var(--ink-soft);
        font-size: 0.8125rem;
      }
      @media print {
        reed-shares,
        drawn-table,
        picture-buttons,
        .toPlan,
        details,
        own-target {
          display: none;
        }
      }
    `,
  ];

  static override properties = {
    drawn: { attribute: false },
    worded: { attribute: false },
    moves: { type: String },
    picture: { attribute: false },
    pictureWords: { attribute: false },
    text: { attribute: false },
  };

  /** What sliders follow, and what words say: under a fast gesture each at its own pace. */
  declare drawn: Shown;
  declare worded: Shown;
  /** What clicks and keys move on the triangle. */
  declare moves: Handle;
  /** The triangle as it is drawn, and what a file of it says of itself. */
  declare picture: () => SVGSVGElement;
  declare pictureWords: () => PictureWords;
  declare text: Catalogue;

  constructor() {
    super();
    this.text = english;
    this.moves = "point";
  }

  override render() {
    const { text, worded, drawn } = this;
    return html`
      <reed-shares .blend=${drawn.view.placed?.raw} .text=${text}></reed-shares>
      <bench-options
        .bench=${drawn.state.present.bench}
        .moves=${this.moves}
        .text=${text}
      ></bench-options>
      ${this.#target()} ${this.#ownTarget()}
      <details>
        <summary>${text.triangle.help}</summary>
        <p>${text.triangle.instructions}</p>
        <p>${text.triangle.convention}</p>
      </details>
      <drawn-table .state=${worded.state} .view=${worded.view} .text=${text}></drawn-table>
      <picture-buttons
        .what=${text.picture.triangle}
        file="reed-triangle"
        .source=${this.picture}
        .words=${this.pictureWords}
        .text=${text}
      ></picture-buttons>
      <p class="honest">${text.certainty.modelNote}</p>
    `;
  }

  /** The answer to the part that was picked, beside where it was picked. */
  #target() {
    const { text, worded } = this;
    const { placed, doubt = 0 } = worded.view;
    const target = targetOf(worded.state.present.bench, text.target.own);
    if (!target || !placed) return nothing;
    const line = targetLine(target, { raw: placed.raw, doubt }, text);
    return html`<p class="answer">${line} ${target.why}</p>
      <div>
        <button class="toPlan" @click=${this.#toPlan}>${text.planPage.plan.open}</button>
      </div>`;
  }

  #toPlan(): void {
    this.dispatchEvent(new BenchActionEvent({ type: "page-set", page: "plan" }));
  }

  #ownTarget() {
    const { target, aim } = this.drawn.state.present.bench;
    if (target !== ownTarget) return nothing;
    return html`<own-target .aim=${aim} .text=${this.text}></own-target>`;
  }
}
