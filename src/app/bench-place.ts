import { LitElement, css, html, nothing } from "lit";
import type { PictureWords } from "../drawing/png-text.js";
import type { Blend } from "../engine/blend.js";
import { ownTarget, type Bench } from "../reed/bench.js";
import { english, sentenceText, type Catalogue } from "../reed/catalogue.js";
import { isDemo } from "../reed/demo-reeds.js";
import { targetOf } from "../reed/targets.js";
import { define } from "../widgets/define.js";
import { look } from "../widgets/look.js";
import { ReedTriangle } from "../widgets/reed-triangle.js";
import type { DrawnAdvice } from "../widgets/triangle-advice.js";
import type { Handle } from "../widgets/triangle-drag.js";
import type { BenchView } from "./bench-view.js";

define("triangle-plane", ReedTriangle);

/** The place of the reed: the triangle with its layers, and the way to save it as a picture. */
export class BenchPlace extends LitElement {
  static override styles = [
    look,
    css`
      :host {
        display: block;
        min-width: 0;
      }
      .convention {
        margin: 0;
        color: var(--ink-soft);
        font-size: 0.75rem;
        text-align: center;
      }
      small {
        font-size: 0.7em;
        font-weight: 400;
      }
      .printOnly {
        display: none;
      }
      @media print {
        .printOnly {
          display: block;
          margin: 0 0 0.4rem;
          font-size: 1.5rem;
        }
      }
    `,
  ];

  static override properties = {
    bench: { attribute: false },
    view: { attribute: false },
    advice: { attribute: false },
    way: { attribute: false },
    moves: { type: String },
    greatestHeight: { attribute: false },
    narrow: { type: Boolean },
    still: { type: Boolean },
    embedded: { type: Boolean },
    text: { attribute: false },
  };

  declare bench: Bench;
  declare view: BenchView;
  /** Plan, leftover, quality. */
  declare advice: DrawnAdvice | undefined;
  /** Along which the point is seen going to its new place. */
  declare way: readonly Blend[];
  /** What clicks and keys move. */
  declare moves: Handle;
  declare greatestHeight: number;
  /** One column: room is scarce. */
  declare narrow: boolean;
  /** A picture only: nothing can be moved. */
  declare still: boolean;
  /** On somebody else's page, where the same may stand several times: no landmark. */
  declare embedded: boolean;
  declare text: Catalogue;

  constructor() {
    super();
    this.text = english;
    this.way = [];
    this.moves = "point";
    this.greatestHeight = 560;
    this.narrow = false;
    this.still = false;
    this.embedded = false;
  }

  override render() {
    const { text, bench, view } = this;
    const target = targetOf(bench, text.target.own);
    const { comparison } = view;
    const pinned = comparison?.blend && {
      blend: comparison.blend,
      label: comparison.pinned.reed || text.bar.allRound,
    };
    return html`<section
      role=${this.embedded ? "group" : nothing}
      aria-label=${text.triangle.title}
    >
      <h1 class="printOnly">
        ${view.name}${isDemo(bench.reed) ? html` <small>${text.bar.inventedMark}</small>` : nothing}
      </h1>
      <triangle-plane
        .blend=${view.placed?.raw}
        .base=${view.base}
        .ellipse=${view.drawnEllipse}
        .layers=${bench.layers}
        .chain=${view.chain}
        .reach=${view.reach}
        .target=${target && { ...target, own: target.id === ownTarget }}
        .pinned=${pinned}
        .advice=${this.advice}
        .way=${this.way}
        .moves=${this.moves}
        .greatestHeight=${this.greatestHeight}
        .still=${this.still}
        .text=${text}
      ></triangle-plane>
      ${
        this.narrow && !bench.layers.includes("readingLines")
          ? nothing
          : html`<p class="convention">${text.triangle.convention}</p>`
      }
    </section>`;
  }

  get #triangle(): ReedTriangle {
    return this.renderRoot.querySelector<ReedTriangle>("triangle-plane")!;
  }

  /** The triangle as it is drawn. */
  get picture(): SVGSVGElement {
    return this.#triangle.picture;
  }

  /** What a file of the triangle says of itself. */
  get pictureWords(): PictureWords {
    const description = `${this.#triangle.fileDescription} ${sentenceText(this.view.sentence)}`;
    return { title: this.view.name, description };
  }
}
