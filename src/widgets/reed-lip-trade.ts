import { LitElement, html, nothing, type PropertyValues } from "lit";
import type { Assumptions } from "../acoustics/assumptions.js";
import { tradeAndModel, type LipPurpose, type TradeRow } from "../acoustics/trade-and-model.js";
import type { ReedModel, Values } from "../engine/model.js";
import { lipEnglish, type LipCatalogue } from "../reed/lip-catalogue.js";
import { lipRecipe, orNothing } from "../reed/lip-reed.js";
import { tradeFeatures } from "../reed/trade-features.js";
import { AtRest } from "./at-rest.js";
import { LipPurposePickedEvent } from "./lip-events.js";
import { lipStyle } from "./lip-style.js";
import { look } from "./look.js";
import { lipTradeStyle } from "./reed-lip-trade-style.js";

const purposes: readonly LipPurpose[] = ["high", "low", "loud"];

/**
 * What the trade says of each feature for each purpose beside what the model says at this reed, and why the two agree
 * or do not. Computed when the recipe rests, for it costs a few milliseconds.
 *
 * @fires lip-purpose-picked - the purpose whose rows were asked for
 */
export class ReedLipTrade extends LitElement {
  static override styles = [look, lipStyle, lipTradeStyle];

  static override properties = {
    model: { attribute: false },
    values: { attribute: false },
    given: { attribute: false },
    purpose: { type: String },
    text: { attribute: false },
  };

  declare model: ReedModel;
  declare values: Values;
  /** Every constant of the model. */
  declare given: Assumptions;
  /** Whose rows are shown; undefined: all. */
  declare purpose: LipPurpose | undefined;
  declare text: LipCatalogue;
  readonly #rest = new AtRest(this);
  #stale = true;
  #rows: readonly TradeRow[] | undefined;

  constructor() {
    super();
    this.text = lipEnglish;
  }

  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has("values") || changed.has("given") || changed.has("model")) {
      this.#rest.moved();
      this.#stale = true;
    }
    if (!this.#stale || !this.#rest.resting) return;
    const recipe = lipRecipe(this.model, this.values);
    this.#rows = orNothing(() =>
      tradeAndModel(recipe, tradeFeatures(this.model), undefined, this.given),
    );
    this.#stale = false;
  }

  override render() {
    const { trade, panel } = this.text.lip;
    const rows = this.#rows?.filter(
      ({ purpose }) => this.purpose === undefined || purpose === this.purpose,
    );
    return html`<h3>${trade.title}</h3>
      ${this.#filter()}
      <p class="soft">
        ${panel.trade.about} ${trade.tradeNote}
        ${this.#shownPurposes.map((id) => trade.meaning[id]).join(" ")}
      </p>
      ${
        rows
          ? html`<p class="count">${trade.count(rows)} ${this.#stale ? panel.trade.waiting : ""}</p>
              ${this.#table(rows)}`
          : html`<p>${panel.trade.noTable}</p>`
      }`;
  }

  get #shownPurposes(): readonly LipPurpose[] {
    return this.purpose === undefined ? purposes : [this.purpose];
  }

  #filter() {
    const { text } = this;
    const choice = (purpose: LipPurpose | undefined, words: string) =>
      html`<label
        ><input
          type="radio"
          name="purpose"
          .checked=${this.purpose === purpose}
          @change=${() => this.dispatchEvent(new LipPurposePickedEvent(purpose))}
        />${words}</label
      >`;
    return html`<fieldset>
      <legend class="unseen">${text.lip.trade.purpose}</legend>
      ${purposes.map((id) => choice(id, text.corners[id]))}
      ${choice(undefined, text.lip.panel.trade.all)}
    </fieldset>`;
  }

  #table(rows: readonly TradeRow[]) {
    const { trade, panel } = this.text.lip;
    return html`<table role="table">
      <caption class="unseen">
        ${panel.trade.caption}
      </caption>
      <thead>
        <tr>
          <th scope="col">${trade.feature}</th>
          ${this.purpose === undefined ? html`<th scope="col">${trade.purpose}</th>` : nothing}
          <th scope="col">${trade.tradeSays}</th>
          <th scope="col">${trade.modelSays}</th>
          <th scope="col">${trade.agree}</th>
          <th scope="col">${trade.why}</th>
        </tr>
      </thead>
      <tbody role="rowgroup">
        ${rows.map((row) => this.#row(row))}
      </tbody>
    </table>`;
  }

  /** Roles are told again: laid out as blocks on a phone, a row would no longer be one to a screen reader. */
  #row(row: TradeRow) {
    const { trade, panel } = this.text.lip;
    const named = (name: string) => html`<span class="cellName">${name}: </span>`;
    return html`<tr role="row">
      <th scope="row" role="rowheader">${this.#label(row.feature)}</th>
      ${
        this.purpose === undefined
          ? html`<td role="cell" class=${row.purpose}>${this.text.corners[row.purpose]}</td>`
          : nothing
      }
      <td role="cell">${named(trade.tradeSays)}${trade.says[row.trade]}</td>
      <td role="cell">${named(trade.modelSays)}${trade.says[row.model]}</td>
      <td role="cell" class="agree ${row.agree}">
        <span class="sign" aria-hidden="true">${panel.trade.signs[row.agree]}</span
        >${trade.agreement[row.agree]}
      </td>
      <td role="cell" class="why">${trade.whyOf(row)}</td>
    </tr>`;
  }

  #label(id: string): string {
    const named = [...this.model.features, ...this.model.ratios].find((one) => one.id === id);
    return named?.label ?? id;
  }
}
