import { LitElement, html, svg } from "lit";
import { flowCurve, type FlowCurve } from "../acoustics/flow-curve.js";
import type { LipState } from "../acoustics/lip-presets.js";
import { openingArea } from "../acoustics/opening.js";
import type { ReedMechanics } from "../acoustics/reed-mechanics.js";
import { flowPlot, type FlowPlot } from "../drawing/flow-plot.js";
import type { Point } from "../engine/frame.js";
import { lipEnglish, type LipCatalogue } from "../reed/lip-catalogue.js";
import type { LipReed } from "../reed/lip-reed.js";
import { axesDrawing, legendItem, markNames, pointsOf, signs, type PlotMark } from "./lip-plot.js";
import { lipStyle } from "./lip-style.js";
import { look } from "./look.js";
import { OwnWidth, pageEm } from "./own-width.js";

/** Pa: the axis holds what can be blown, and the closure where it is not too far. */
const leastAxis = 12000;
const mostAxis = 20000;

/** The air over the blowing pressure: where it is now, where it is most, where it closes, what cannot be held. */
export class ReedLipFlow extends LitElement {
  static override styles = [look, lipStyle];

  static override properties = {
    mine: { attribute: false },
    other: { attribute: false },
    at: { attribute: false },
    text: { attribute: false },
    layoutWidth: { state: true },
  };

  declare mine: LipReed;
  /** Laid over as an outline. */
  declare other: LipReed | undefined;
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
    const { text, mine, other, at } = this;
    const { curve: words } = text.lip;
    const curve = flowCurve(mine.reed, at.lip);
    const whole = (value: number): string => text.number(value, 0);
    const em = 0.75 * pageEm();
    const width = Math.min(720, this.layoutWidth);
    const height = Math.round(Math.max(210, Math.min(340, 0.62 * width)) + em);
    const plot = flowPlot(
      curve,
      { blow: at.blow, flow: mine.response.flow },
      { width, height, em, ...this.#ends() },
      other && flowCurve(other.reed, at.lip),
    );
    return html`<h3>${words.title}</h3>
      <p class="soft">${words.flow}</p>
      <svg
        class="plot"
        width=${width}
        height=${height}
        viewBox="0 0 ${width} ${height}"
        role="img"
        aria-label=${this.#described(curve)}
      >
        ${axesDrawing(plot.axes, { x: whole, y: whole }, em)}
        <path class="other" d=${plot.other}></path>
        <path class="unheld" d=${plot.unheld}></path>
        <path class="jump" d=${plot.jump}></path>
        <path class="own" d=${plot.held + plot.regained}></path>
        ${this.#marks(plot)}
      </svg>
      <p class="soft counted">${words.blow}</p>
      ${this.#legend(curve)}
      <p class="soft">${this.#throat()}</p>`;
  }

  /** The ends of the axes do not depend on the lips, so that the curve does not stretch while they press. */
  #ends(): { readonly mostBlow: number; readonly mostFlow: number } {
    const reeds: readonly ReedMechanics[] = [this.mine, ...(this.other ? [this.other] : [])].map(
      ({ reed }) => reed,
    );
    const rest = reeds.map((reed) => flowCurve(reed, 0));
    const closure = Math.max(...rest.map((one) => one.closure));
    return {
      mostBlow: Math.min(mostAxis, Math.max(leastAxis, 1.05 * closure)),
      mostFlow: 1.08 * Math.max(...rest.map(({ peak }) => peak.flow)),
    };
  }

  #marks({ held, regained, operating, peak, closure, axes }: FlowPlot) {
    const words = this.text.lip.curve;
    const named = (at: Point | undefined, name: string): PlotMark[] =>
      at ? [{ at, words: name }] : [];
    const marks = [
      ...named(operating, words.now),
      ...named(peak, words.peak),
      ...named(closure, words.closure),
    ];
    const sign = (at: Point | undefined, drawn: unknown) =>
      at ? svg`<svg x=${at[0] - 12} y=${at[1] - 7} width="24" height="14">${drawn}</svg>` : "";
    return [
      sign(peak, signs.peak),
      sign(closure, signs.closure),
      sign(operating, signs.now),
      markNames(marks, pointsOf(held + regained), axes, pageEm()),
    ];
  }

  #legend({ peak, closure, jump, unheld }: FlowCurve) {
    const { curve, panel, second } = this.text.lip;
    const shut = this.#shut();
    return html`<ul class="legend">
      ${legendItem(signs.now, panel.flowNow(this.#air(this.mine.response.flow)))}
      ${legendItem(signs.peak, shut ? curve.shut : panel.flowPeak(this.#air(peak.flow), this.#kilo(peak.blow)))}
      ${legendItem(signs.closure, shut ? undefined : panel.flowClosure(this.#kilo(closure)))}
      ${legendItem(signs.unheld, unheld.length > 0 ? curve.unheld : undefined)}
      ${legendItem(signs.jump, jump && panel.flowSnap(this.#kilo(jump.from.blow)))}
      ${legendItem(signs.other, this.other && second.outline(this.other.name))}
    </ul>`;
  }

  #described({ peak, closure }: FlowCurve): string {
    const words = this.text.lip.curve;
    if (this.#shut()) return `${words.title}. ${words.shut}`;
    const said = words.describe(
      this.#air(this.mine.response.flow),
      this.#air(peak.flow),
      this.#kilo(peak.blow),
      this.#kilo(closure),
    );
    return `${words.title}. ${said}`;
  }

  /** Whether the lips alone close the reed. */
  #shut(): boolean {
    return this.mine.response.peakFlow === 0;
  }

  #throat(): string {
    const { recipe, throatArea } = this.mine.reed;
    const whole = openingArea({
      width: recipe.openingWidth / 1000,
      height: recipe.openingHeight / 1000,
    });
    const square = (area: number): string => this.text.number(area * 1e6, 1);
    return this.text.lip.panel.throat(square(whole), square(throatArea));
  }

  #air(flow: number): string {
    return this.text.number(flow * 1e6, 0);
  }

  #kilo(pressure: number): string {
    return this.text.number(pressure / 1000, 1);
  }
}
