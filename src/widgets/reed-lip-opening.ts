import { LitElement, css, html, nothing, svg } from "lit";
import { closingLaw } from "../acoustics/closing-law.js";
import { closingView, type ClosingView } from "../drawing/closing-view.js";
import { round } from "../drawing/triangle-layout.js";
import type { ReedModel } from "../engine/model.js";
import { lipEnglish, type LipCatalogue } from "../reed/lip-catalogue.js";
import type { LipReed } from "../reed/lip-reed.js";
import { readingWithUnit } from "../reed/reading-text.js";
import type { LengthUnit } from "../reed/units.js";
import { legendItem } from "./lip-plot.js";
import { lipStyle } from "./lip-style.js";
import { look } from "./look.js";
import { OwnWidth } from "./own-width.js";

/** mm: the widest and the tallest opening that has to find room. */
const widest = 14.5;
const tallest = 2.4;

/** The tip opening from the front, closing from its corners; another reed's opening lies over it as an outline. */
export class ReedLipOpening extends LitElement {
  static override styles = [
    look,
    lipStyle,
    css`
      .plot {
        margin-inline: auto;
      }
      .rest {
        fill: none;
        stroke: var(--edge);
        stroke-width: 1.2;
        stroke-dasharray: 3 3;
      }
      .hole {
        fill: var(--reed-hole, #2a2019);
        stroke: #b06a20;
        stroke-width: 3;
        stroke-linejoin: round;
      }
      .met {
        fill: none;
        stroke: #b06a20;
        stroke-width: 6;
      }
      .casing {
        fill: none;
        stroke: var(--card);
        stroke-width: 3.6;
      }
      .outline {
        fill: none;
        stroke: var(--ink);
        stroke-width: 1.4;
      }
      @media (forced-colors: active) {
        .rest,
        .met,
        .hole,
        .outline {
          stroke: CanvasText;
        }
        .hole {
          fill: Canvas;
        }
        .casing {
          stroke: Canvas;
        }
      }
    `,
  ];

  static override properties = {
    model: { attribute: false },
    mine: { attribute: false },
    other: { attribute: false },
    unit: { type: String },
    text: { attribute: false },
    layoutWidth: { state: true },
  };

  declare model: ReedModel;
  declare mine: LipReed;
  /** Laid over as an outline. */
  declare other: LipReed | undefined;
  declare unit: LengthUnit;
  declare text: LipCatalogue;
  declare layoutWidth: number;

  constructor() {
    super();
    this.text = lipEnglish;
    this.unit = "mm";
    this.layoutWidth = 300;
    this.addController(new OwnWidth(this));
  }

  override render() {
    const { mine, other } = this;
    const { opening, panel, second } = this.text.lip;
    const scale = Math.min(30, (this.layoutWidth - 16) / widest);
    const [width, height] = [round(scale * widest + 16), round(scale * tallest + 16)];
    const view = this.#view(mine, scale);
    const outline = other && this.#view(other, scale);
    const { width: openWidth, height: openHeight } = mine.response.opening;
    const size = panel.openingSize(
      this.#length("openingWidth", openWidth),
      this.#length("openingHeight", openHeight),
    );
    const closed = opening.closed(mine.response.closed);
    return html`<h3>${opening.title}</h3>
      <svg
        class="plot"
        width=${width}
        height=${height}
        viewBox="${-width / 2} ${-height / 2} ${width} ${height}"
        role="img"
        aria-label=${panel.openingPicture(closed, size)}
      >
        <path class="rest" d=${view.rest}></path>
        <path class="hole" d=${view.open}></path>
        <path class="met" d=${view.met}></path>
        ${outline ? this.#outline(outline) : nothing}
      </svg>
      <p>${closed} ${this.#snapped() ? panel.snapped : opening.corners} ${size}</p>
      <ul class="legend">
        ${legendItem(svg`<path class="hole" d="M3,7A14,14 0 0 1 21,7A14,14 0 0 1 3,7Z"></path>`, panel.openingLegend.open)}
        ${legendItem(svg`<path class="met" d="M2,7H22"></path>`, panel.openingLegend.met)}
        ${legendItem(svg`<path class="rest" d="M2,7H22"></path>`, panel.openingLegend.rest)}
        ${legendItem(svg`<path class="outline" d="M2,7H22"></path>`, other && second.outline(other.name))}
      </ul>`;
  }

  /** Whether the blades lie beyond their fold: there every number has jumped. */
  #snapped(): boolean {
    const { reed, response } = this.mine;
    const { fold } = closingLaw(reed.recipe.hinging, reed.assumptions.elbow);
    return fold !== undefined && 1 - response.closed < fold.from;
  }

  #view({ reed, response }: LipReed, scale: number): ClosingView {
    return closingView(reed.recipe, response.closed, scale);
  }

  /** Light under the line, so that it is seen over the hole too. */
  #outline({ open, met }: ClosingView) {
    const path = open || met;
    return svg`<path class="casing" d=${path}></path><path class="outline" d=${path}></path>`;
  }

  /** m → the user's unit. */
  #length(id: string, metres: number): string {
    const feature = this.model.features.find((one) => one.id === id)!;
    return readingWithUnit(feature, metres * 1000, this.unit, this.text);
  }
}
