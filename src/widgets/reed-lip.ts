import { LitElement, html, nothing } from "lit";
import { withAssumptions, type Assumptions } from "../acoustics/assumptions.js";
import type { LipState } from "../acoustics/lip-presets.js";
import { respond } from "../acoustics/lip-response.js";
import type { ReedMechanics } from "../acoustics/reed-mechanics.js";
import type { LipPurpose } from "../acoustics/trade-and-model.js";
import type { ReedModel, Values } from "../engine/model.js";
import { allRoundValues } from "../reed/bench.js";
import { inSentence } from "../reed/in-sentence.js";
import { lipEnglish, type LipCatalogue } from "../reed/lip-catalogue.js";
import { filledIn, lipMechanics, type LipReed } from "../reed/lip-reed.js";
import type { LengthUnit } from "../reed/units.js";
import { define } from "./define.js";
import { look } from "./look.js";
import { ReedLipAssumptions } from "./reed-lip-assumptions.js";
import { ReedLipDials } from "./reed-lip-dials.js";
import { ReedLipFlow } from "./reed-lip-flow.js";
import { ReedLipHinges } from "./reed-lip-hinges.js";
import { ReedLipOpening } from "./reed-lip-opening.js";
import { ReedLipPresets } from "./reed-lip-presets.js";
import { ReedLipPressures } from "./reed-lip-pressures.js";
import { ReedLipQuestions } from "./reed-lip-questions.js";
import { ReedLipRegion } from "./reed-lip-region.js";
import { ReedLipTrade } from "./reed-lip-trade.js";
import { reedLipStyle } from "./reed-lip-style.js";
import { remembered } from "./remembered.js";

define("reed-lip-presets", ReedLipPresets);
define("reed-lip-pressures", ReedLipPressures);
define("reed-lip-opening", ReedLipOpening);
define("reed-lip-region", ReedLipRegion);
define("reed-lip-flow", ReedLipFlow);
define("reed-lip-dials", ReedLipDials);
define("reed-lip-hinges", ReedLipHinges);
define("reed-lip-questions", ReedLipQuestions);
define("reed-lip-trade", ReedLipTrade);
define("reed-lip-assumptions", ReedLipAssumptions);

/** A reed with its name. */
export interface NamedReed {
  readonly name: string;
  readonly values: Values;
}

/** What is shown of the reeds under the present lips and breath. */
interface Shown {
  readonly mine: LipReed;
  readonly other: LipReed | undefined;
  readonly allRound: LipReed;
  readonly at: Required<LipState>;
}

/**
 * Lip and opening: what elementary mechanics says of a reed under lips and breath. A simple model that never moves the
 * point of the triangle.
 *
 * @slot - under the title: which reeds are shown
 * @fires pressure-picked - another pressure of lips or breath
 * @fires lip-preset-picked - a way of playing
 * @fires assumption-picked - another value of a constant
 * @fires assumptions-reset - the first value of all constants
 * @fires lip-purpose-picked - whose rows the table shall show
 * @fires gesture-ended - a slider was let go, or a number entered
 */
export class ReedLip extends LitElement {
  static override styles = [look, reedLipStyle];

  static override properties = {
    model: { attribute: false },
    mine: { attribute: false },
    second: { attribute: false },
    unit: { type: String },
    lip: { type: Number },
    blow: { type: Number },
    changes: { attribute: false },
    purpose: { type: String },
    text: { attribute: false },
  };

  declare model: ReedModel;
  /** Readings; what is not measured is computed as on the all-round reed, and said. */
  declare mine: NamedReed;
  /** Laid over as an outline. */
  declare second: NamedReed | undefined;
  declare unit: LengthUnit;
  /** Pressures, Pa. */
  declare lip: number;
  declare blow: number;
  /** Constants of the model that are not at their first values. */
  declare changes: Partial<Assumptions>;
  /** Whose rows the table shows; undefined: all. */
  declare purpose: LipPurpose | undefined;
  declare text: LipCatalogue;

  readonly #given = remembered(withAssumptions);
  readonly #allRound = remembered(allRoundValues);
  readonly #mechanics = {
    mine: remembered(lipMechanics),
    other: remembered(lipMechanics),
    allRound: remembered(lipMechanics),
  };

  constructor() {
    super();
    this.unit = "mm";
    this.lip = 0;
    this.blow = 0;
    this.changes = {};
    this.text = lipEnglish;
  }

  override render() {
    const { lip } = this.text;
    const shown = this.#shown();
    return html`<header>
        <h2>${lip.title}</h2>
        <p>${lip.simpleModel} ${lip.beside} ${lip.noSound}</p>
        <slot></slot>
        ${this.#remarks(shown)}
      </header>
      ${shown ? this.#panel(shown) : html`<p class="refused">${lip.panel.cannot}</p>`}
      <section class="card whole">
        <reed-lip-assumptions
          .given=${this.#given(this.changes)}
          .text=${this.text}
        ></reed-lip-assumptions>
      </section>`;
  }

  #shown(): Shown | undefined {
    const { model, mine, second } = this;
    const given = this.#given(this.changes);
    const at = { lip: this.lip, blow: this.blow, place: given.lipPlace };
    const under = (name: string, reed: ReedMechanics | undefined): LipReed | undefined =>
      reed && { name, reed, response: respond(reed, at) };
    const own = under(mine.name, this.#mechanics.mine(model, mine.values, given));
    const allRound = under("", this.#mechanics.allRound(model, this.#allRound(model), given));
    const other = second && under(second.name, this.#mechanics.other(model, second.values, given));
    return own && allRound && { mine: own, allRound, other, at };
  }

  #remarks(shown: Shown | undefined) {
    const { panel } = this.text.lip;
    const missing = filledIn(this.model, this.mine.values).map((id) =>
      inSentence(this.model.features.find((one) => one.id === id)!.label),
    );
    return html`${missing.length > 0 ? html`<p class="soft">${panel.filledIn(missing)}</p>` : nothing}
    ${
      this.second && shown && !shown.other
        ? html`<p class="soft">${panel.cannotOther(this.second.name)}</p>`
        : nothing
    }`;
  }

  #panel(shown: Shown) {
    const { text } = this;
    const { mine, at } = shown;
    return html`${this.#work(shown)}
      <section class="card whole">
        <reed-lip-hinges .mine=${mine} .at=${at} .text=${text}></reed-lip-hinges>
      </section>
      <section class="card whole">
        <reed-lip-questions .mine=${mine} .text=${text}></reed-lip-questions>
      </section>
      <section class="card whole long">
        <reed-lip-trade
          .model=${this.model}
          .values=${this.mine.values}
          .given=${mine.reed.assumptions}
          .purpose=${this.purpose}
          .text=${text}
        ></reed-lip-trade>
      </section>`;
  }

  #work({ mine, other, allRound, at }: Shown) {
    const { text, model, unit } = this;
    const { cautions, controls } = text.lip;
    return html`<div class="work">
      <div class="press">
        <reed-lip-presets .at=${at} .text=${text}></reed-lip-presets>
        <reed-lip-pressures
          class="pressures"
          .mine=${mine}
          .at=${at}
          .text=${text}
        ></reed-lip-pressures>
        <p class="soft bare">${controls.adds} ${cautions.lips} ${cautions.loud}</p>
        <section class="card">
          <reed-lip-opening
            .model=${model}
            .mine=${mine}
            .other=${other}
            .unit=${unit}
            .text=${text}
          ></reed-lip-opening>
        </section>
      </div>
      <section class="card region">
        <reed-lip-region
          .model=${model}
          .mine=${mine}
          .other=${other}
          .place=${at.place}
          .unit=${unit}
          .text=${text}
        ></reed-lip-region>
      </section>
      <section class="card flow">
        <reed-lip-flow .mine=${mine} .other=${other} .at=${at} .text=${text}></reed-lip-flow>
      </section>
      <section class="card dials">
        <reed-lip-dials
          .mine=${mine}
          .allRound=${allRound.response}
          .other=${other}
          .text=${text}
        ></reed-lip-dials>
      </section>
    </div>`;
  }
}
