import { LitElement, css, html, nothing, svg } from "lit";
import { closingLaw } from "../acoustics/closing-law.js";
import { openingCurve } from "../acoustics/opening-curve.js";
import type { ReedMechanics } from "../acoustics/reed-mechanics.js";
import { heldOpenings, type HeldOpenings } from "../drawing/held-openings.js";
import { openingPlot } from "../drawing/opening-plot.js";
import type { PlotAxes } from "../drawing/plot-axes.js";
import { round } from "../drawing/triangle-layout.js";
import { lipEnglish, type LipCatalogue } from "../reed/lip-catalogue.js";
import { axesDrawing } from "./lip-plot.js";
import { lipStyle } from "./lip-style.js";
import { look } from "./look.js";
import { OwnWidth, pageEm } from "./own-width.js";

/** Which openings of a reed the lips can hold: the opening over what presses, and the part that is jumped over. */
export class ReedLipHeld extends LitElement {
  static override styles = [
    look,
    lipStyle,
    css`
      h4 {
        margin: 0;
        font-size: 0.9375rem;
      }
      h4::first-letter {
        text-transform: uppercase;
      }
      .can {
        fill: none;
        stroke: var(--accent);
        stroke-width: 7;
      }
      .cannot {
        fill: var(--ink);
        fill-opacity: 0.1;
        stroke: var(--edge);
        stroke-dasharray: 3 3;
      }
      @media (forced-colors: active) {
        .can {
          stroke: Highlight;
        }
        .cannot {
          fill: none;
          stroke: CanvasText;
        }
      }
    `,
  ];

  static override properties = {
    reed: { attribute: false },
    hinges: { type: String },
    pressed: { type: Number },
    most: { type: Number },
    text: { attribute: false },
    layoutWidth: { state: true },
  };

  declare reed: ReedMechanics;
  /** Which hinges it has, in words. */
  declare hinges: string;
  /** By lips and breath together, Pa. */
  declare pressed: number;
  /** End of the axis, Pa. */
  declare most: number;
  declare text: LipCatalogue;
  declare layoutWidth: number;

  constructor() {
    super();
    this.text = lipEnglish;
    this.hinges = "";
    this.pressed = 0;
    this.most = 12000;
    this.layoutWidth = 300;
    this.addController(new OwnWidth(this));
  }

  override render() {
    const { text, reed, hinges } = this;
    const words = text.lip.panel.hinges;
    const { recipe, assumptions, closingPressure } = reed;
    const law = closingLaw(recipe.hinging, assumptions.elbow);
    const em = 0.75 * pageEm();
    const width = Math.min(640, this.layoutWidth);
    const height = Math.round(0.46 * width + 4 * em);
    const { axes, held, jump, now } = openingPlot(
      openingCurve(reed, 0),
      { lip: this.pressed, open: law.openAt(this.pressed / closingPressure) },
      { width, height, em, mostLip: this.most },
    );
    const holds = law.fold ? words.part(law.usable) : words.all;
    const numbers = {
      x: (kilo: number): string => text.number(kilo, 0),
      y: (share: number): string => text.number(share * 100, 0),
    };
    const closure = text.number((law.closure * closingPressure) / 1000, 1);
    return html`<h4>${hinges}</h4>
      <p class="soft">${words.share}</p>
      <svg
        class="plot"
        width=${width}
        height=${height}
        viewBox="0 0 ${width} ${height}"
        role="img"
        aria-label=${words.picture(hinges, holds, closure)}
      >
        ${axesDrawing(axes, numbers, em)} ${this.#openings(heldOpenings(law, axes), axes)}
        <path class="jump" d=${jump}></path>
        <path class="own" d=${held}></path>
        <circle class="now" cx=${now[0]} cy=${now[1]} r="6"></circle>
      </svg>
      <p class="soft counted">${words.together}</p>
      <p>${holds}</p>`;
  }

  #openings({ held, unheld }: HeldOpenings, { origin: [left], far: [right] }: PlotAxes) {
    const words = this.text.lip.panel.hinges;
    const rem = pageEm();
    return svg`${
      unheld
        ? svg`<rect class="cannot" x=${left} y=${unheld[0]} width=${round(right - left)} height=${round(unheld[1] - unheld[0])}></rect>
          <text class="name" x=${round(left + 0.8 * pageEm())} y=${round((unheld[0] + unheld[1]) / 2 + 0.3 * rem)} text-anchor="start">${words.unheld}</text>`
        : nothing
    }
    ${held.map(([top, bottom]) => svg`<path class="can" d="M${left},${top}V${bottom}"></path>`)}`;
  }
}
