import { LitElement, css, html, svg } from "lit";
import { closingLaw } from "../acoustics/closing-law.js";
import type { LipState } from "../acoustics/lip-presets.js";
import { withHinging } from "../acoustics/lip-response.js";
import { lipEnglish, type LipCatalogue } from "../reed/lip-catalogue.js";
import type { LipReed } from "../reed/lip-reed.js";
import { define } from "./define.js";
import { legendItem, signs } from "./lip-plot.js";
import { lipStyle } from "./lip-style.js";
import { look } from "./look.js";
import { ReedLipHeld } from "./reed-lip-held.js";

define("reed-lip-held", ReedLipHeld);

/** Pa: both axes end alike, at what closes the reed or at what can be pressed. */
const leastAxis = 8000;

/** What hinges buy: the same reed without hinges and with full ones, side by side. */
export class ReedLipHinges extends LitElement {
  static override styles = [
    look,
    lipStyle,
    css`
      :host {
        container-type: inline-size;
      }
      .two {
        display: grid;
        gap: 0.6rem 1.5rem;
        grid-template-columns: minmax(0, 1fr);
      }
      .can {
        fill: none;
        stroke: var(--accent);
        stroke-width: 7;
      }
      @media (forced-colors: active) {
        .can {
          stroke: Highlight;
        }
      }
      @container (min-width: 36rem) {
        .two {
          grid-template-columns: repeat(2, minmax(0, 1fr));
        }
      }
    `,
  ];

  static override properties = {
    mine: { attribute: false },
    at: { attribute: false },
    text: { attribute: false },
  };

  declare mine: LipReed;
  declare at: LipState;
  declare text: LipCatalogue;

  constructor() {
    super();
    this.text = lipEnglish;
  }

  override render() {
    const { text, mine } = this;
    const { hinges, panel, hingingNote, curve } = text.lip;
    const { elbow } = mine.reed.assumptions;
    const usable = (hinging: number): number => closingLaw(hinging, elbow).usable;
    return html`<h3>${hinges.title}</h3>
      <p>${hinges.answer(usable(0), mine.response.usable, usable(1))} ${hinges.jumps}</p>
      <div class="two">${this.#held(0, hinges.without)} ${this.#held(1, hinges.with)}</div>
      <ul class="legend">
        ${legendItem(svg`<path class="can" d="M2,7H22"></path>`, panel.hinges.held)}
        ${legendItem(signs.now, curve.now)} ${legendItem(signs.jump, curve.jump)}
      </ul>
      <p class="soft">${hingingNote}</p>`;
  }

  #held(hinging: number, words: string) {
    const { reed } = this.mine;
    const { closingPressure, assumptions } = reed;
    const closes = closingLaw(1, assumptions.elbow).closure * closingPressure;
    return html`<reed-lip-held
      .reed=${withHinging(reed, hinging)}
      .hinges=${words}
      .pressed=${this.at.lip + this.at.blow}
      .most=${Math.max(leastAxis, closes)}
      .text=${this.text}
    ></reed-lip-held>`;
  }
}
