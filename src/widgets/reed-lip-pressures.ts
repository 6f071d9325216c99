import { LitElement, css, html, nothing, svg } from "lit";
import { closingLaw } from "../acoustics/closing-law.js";
import type { LipState } from "../acoustics/lip-presets.js";
import { pressureBar } from "../drawing/pressure-bar.js";
import { lipEnglish, type LipCatalogue } from "../reed/lip-catalogue.js";
import type { LipReed } from "../reed/lip-reed.js";
import { define } from "./define.js";
import { lipStyle } from "./lip-style.js";
import { look } from "./look.js";
import { OwnWidth } from "./own-width.js";
import { ReedLipPressure } from "./reed-lip-pressure.js";

define("reed-lip-pressure", ReedLipPressure);

const barHeight = 16;

/**
 * The two coupled controls, lips and breath, and what they come to together on the blades.
 *
 * @fires pressure-picked - from either control
 */
export class ReedLipPressures extends LitElement {
  static override styles = [
    look,
    lipStyle,
    css`
      .bar {
        display: block;
        margin-top: 0.2rem;
      }
      .bar:dir(rtl) {
        transform: scaleX(-1);
      }
      .frame {
        fill: var(--ground);
        stroke: var(--edge);
      }
      .lips {
        fill: var(--ink);
      }
      .breath {
        fill: var(--edge);
      }
      .closes {
        stroke: var(--ink);
        stroke-width: 3;
      }
      .snaps {
        stroke: var(--ink);
        stroke-width: 1.6;
        stroke-dasharray: 4 2.5;
      }
      p {
        margin: 0.15rem 0 0;
      }
      .key {
        display: inline-block;
        width: 0.7em;
        height: 0.7em;
        margin-inline-end: 0.3em;
        border: 1px solid var(--edge);
      }
      .key.lipsKey {
        background: var(--ink);
      }
      .key.breathKey {
        background: var(--edge);
      }
      .keys {
        display: inline-block;
        margin-inline-end: 0.8em;
        white-space: nowrap;
        unicode-bidi: isolate;
      }
      @media (forced-colors: active) {
        .frame {
          fill: Canvas;
          stroke: CanvasText;
        }
        .lips {
          fill: CanvasText;
        }
        .breath {
          fill: Highlight;
        }
        .closes,
        .snaps {
          stroke: CanvasText;
        }
        .key {
          forced-color-adjust: none;
        }
        .key.lipsKey {
          background: CanvasText;
        }
        .key.breathKey {
          background: Highlight;
        }
      }
    `,
  ];

  static override properties = {
    mine: { attribute: false },
    at: { attribute: false },
    text: { attribute: false },
    layoutWidth: { state: true },
  };

  declare mine: LipReed;
  declare at: LipState;
  declare text: LipCatalogue;
  declare layoutWidth: number;

  constructor() {
    super();
    this.text = lipEnglish;
    this.layoutWidth = 300;
    this.addController(new OwnWidth(this));
  }

  override render() {
    const { text, at, mine } = this;
    const { closed, flow } = mine.response;
    const effect = text.lip.panel.effect(closed, text.number(flow * 1e6, 0));
    const control = (which: "lip" | "blow") =>
      html`<reed-lip-pressure
        .which=${which}
        .pressure=${at[which]}
        .effect=${effect}
        .text=${text}
      ></reed-lip-pressure>`;
    return html`${control("lip")} ${control("blow")} ${this.#together()}`;
  }

  /** Where this reed snaps and where it closes, Pa. */
  #limits(): { readonly closes: number; readonly snaps: number | undefined } {
    const { recipe, assumptions, closingPressure } = this.mine.reed;
    const { fold, closure } = closingLaw(recipe.hinging, assumptions.elbow);
    const snaps = fold && fold.pressure * closingPressure;
    return { closes: closure * closingPressure, snaps };
  }

  #together() {
    const { at, text } = this;
    const words = text.lip.panel.together;
    const { closes, snaps } = this.#limits();
    const bar = pressureBar({ ...at, closes, snaps }, this.layoutWidth);
    const kilo = (pressure: number): string => text.number(pressure / 1000, 1);
    const said = [
      words.value(kilo(at.lip + at.blow)),
      ...this.#limitWords(kilo(closes), snaps, kilo),
    ];
    return html`<svg
        class="bar"
        width=${bar.width}
        height=${barHeight}
        viewBox="0 0 ${bar.width} ${barHeight}"
        aria-hidden="true"
      >
        <rect class="frame" x="0.5" y="3.5" width=${bar.width - 1} height="9"></rect>
        <rect class="lips" x="0" y="3" width=${bar.lips} height="10"></rect>
        <rect class="breath" x=${bar.lips} y="3" width=${bar.both - bar.lips} height="10"></rect>
        ${this.#line("snaps", bar.snaps)} ${this.#line("closes", bar.closes)}
      </svg>
      <p class="soft">
        <span class="keys"><span class="key lipsKey"></span>${words.lips}</span
        ><span class="keys"><span class="key breathKey"></span>${words.breath}</span>
        ${words.title}: ${said.join(" ")}
      </p>`;
  }

  #limitWords(
    closes: string,
    snaps: number | undefined,
    kilo: (pressure: number) => string,
  ): string[] {
    const words = this.text.lip.panel.together;
    if (snaps === undefined) return [words.closes(closes)];
    const at = kilo(snaps);
    return at === closes ? [words.snapsShut(at)] : [words.snaps(at), words.closes(closes)];
  }

  #line(kind: "snaps" | "closes", x: number | undefined) {
    if (x === undefined) return nothing;
    return svg`<path class=${kind} d="M${x},0V${barHeight}"></path>`;
  }
}
