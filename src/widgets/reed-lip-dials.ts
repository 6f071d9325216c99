import { LitElement, css, html, nothing, svg } from "lit";
import { dialValue, lipDials, type LipDial, type LipDialId } from "../acoustics/lip-dials.js";
import type { LipResponse } from "../acoustics/lip-response.js";
import { dialBar } from "../drawing/dial-bar.js";
import { lipEnglish, type LipCatalogue } from "../reed/lip-catalogue.js";
import type { LipReed } from "../reed/lip-reed.js";
import { lipStyle } from "./lip-style.js";
import { look } from "./look.js";

const barWidth = 104;

/** Six numbers of a reed under its lips and breath, each against the all-round reed: in figures, as a bar and in words. */
export class ReedLipDials extends LitElement {
  static override styles = [
    look,
    lipStyle,
    css`
      :host {
        container-type: inline-size;
      }
      ul {
        display: grid;
        gap: 0 1.5rem;
        grid-template-columns: minmax(0, 1fr);
        margin: 0.3rem 0 0;
        padding: 0;
        list-style: none;
      }
      li {
        padding: 0.45rem 0;
        border-top: 1px solid var(--rule);
      }
      .row {
        display: grid;
        gap: 0 0.7rem;
        grid-template-columns: minmax(0, 1fr) auto;
        align-items: baseline;
      }
      .label {
        font-weight: 600;
      }
      .value {
        white-space: nowrap;
      }
      .value b {
        font-size: 1.125rem;
      }
      .change {
        display: flex;
        flex-wrap: wrap;
        gap: 0 0.6rem;
        align-items: center;
      }
      .change svg {
        direction: ltr;
      }
      .percent {
        font-weight: 600;
      }
      .rail {
        stroke: var(--edge);
      }
      .middle {
        stroke: var(--ink);
        stroke-width: 1.4;
      }
      .length {
        fill: var(--ink);
      }
      .beyond {
        fill: none;
        stroke: var(--ink);
        stroke-width: 1.8;
      }
      .diamond {
        fill: var(--card);
        stroke: var(--ink);
        stroke-width: 1.6;
      }
      @container (min-width: 46rem) {
        ul {
          grid-template-columns: repeat(2, minmax(0, 1fr));
        }
      }
      @container (min-width: 70rem) {
        ul {
          grid-template-columns: repeat(3, minmax(0, 1fr));
        }
      }
      @media (forced-colors: active) {
        .rail,
        .middle,
        .beyond,
        .diamond {
          stroke: CanvasText;
        }
        .length {
          fill: CanvasText;
        }
        .diamond {
          fill: Canvas;
        }
      }
    `,
  ];

  static override properties = {
    mine: { attribute: false },
    allRound: { attribute: false },
    other: { attribute: false },
    text: { attribute: false },
  };

  declare mine: LipReed;
  /** The all-round reed under the same lips and breath. */
  declare allRound: LipResponse;
  declare other: LipReed | undefined;
  declare text: LipCatalogue;

  constructor() {
    super();
    this.text = lipEnglish;
  }

  override render() {
    const { panel } = this.text.lip;
    const dials = lipDials(this.mine.response, this.allRound);
    return html`<h3>${panel.dialsTitle}</h3>
      <p class="soft">
        ${panel.dialsNote} ${this.other ? `◇ ${panel.otherMark(this.other.name)}.` : nothing}
      </p>
      <ul>
        ${dials.map((dial) => this.#dial(dial))}
      </ul>`;
  }

  #dial({ id, value, ratio }: LipDial) {
    const { lip } = this.text;
    const { label, unit } = lip.dials[id];
    const shown = this.#shown(id, value);
    return html`<li data-dial=${id}>
      <span class="unseen">${lip.dial(id, shown, ratio)}</span>
      <div aria-hidden="true">
        <div class="row">
          <span class="label">${label}</span>
          <span class="value"><b>${shown}</b> ${unit}</span>
        </div>
        <div class="change">
          ${this.#bar(id, ratio)}<span class="percent">${lip.change(ratio)}</span
          ><span>${lip.degree(id, ratio)}</span>
        </div>
      </div>
      <div class="soft">${lip.dialHints[id]} ${this.#otherValue(id)}</div>
    </li>`;
  }

  #shown(id: LipDialId, value: number): string {
    const { factor, decimals } = this.text.lip.dials[id];
    return this.text.number(value * factor, decimals);
  }

  #otherValue(id: LipDialId): string {
    const { other, text } = this;
    if (!other) return "";
    const value = this.#shown(id, dialValue(other.response, id));
    return text.lip.panel.otherDial(other.name, `${value} ${text.lip.dials[id].unit}.`);
  }

  #bar(id: LipDialId, ratio: number | undefined) {
    const { left, right, middle, beyond } = dialBar(ratio, barWidth);
    const more = right > middle;
    return html`<svg width=${barWidth + 8} height="16" viewBox="-4 0 ${barWidth + 8} 16">
      <path class="rail" d="M0,8H${barWidth}"></path>
      <rect class="length" x=${left} y="5" width=${right - left} height="6"></rect>
      ${beyond ? svg`<path class="beyond" d=${more ? `M${barWidth - 2},2l5,6l-5,6` : "M2,2l-5,6l5,6"}></path>` : nothing}
      <path class="middle" d="M${middle},1V15"></path>
      ${this.#otherMark(id)}
    </svg>`;
  }

  /** The other reed against the all-round reed too. */
  #otherMark(id: LipDialId) {
    if (!this.other) return nothing;
    const beside = dialValue(this.allRound, id);
    if (!(beside > 0)) return nothing;
    const { left, right, middle } = dialBar(dialValue(this.other.response, id) / beside, barWidth);
    const x = right > middle ? right : left;
    return svg`<path class="diamond" d="M${x},3l5,5l-5,5l-5,-5Z"></path>`;
  }
}
