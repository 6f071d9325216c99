import { LitElement, css, html, nothing } from "lit";
import type { FeatureId, ReedModel, Values } from "../engine/model.js";
import type { Pull } from "../engine/pulls.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import type { Readings } from "../reed/readings.js";
import { toThousandths, type LengthUnit } from "../reed/units.js";
import type { Tried } from "../reed/tried.js";
import { unevenness } from "../reed/uneven.js";
import { allRoundValue, readingWithUnit } from "../reed/reading-text.js";
import { define } from "./define.js";
import { look } from "./look.js";
import { ReedFeatureRow } from "./reed-feature-row.js";

define("reed-feature-row", ReedFeatureRow);

/**
 * The recipe: every feature in its group, and the ratios read against each other.
 *
 * @slot stand-ins - below the row whose stand-ins are asked for
 */
export class ReedRecipe extends LitElement {
  static override styles = [
    look,
    css`
      :host {
        display: block;
        isolation: isolate; /* painted by itself: a drag elsewhere leaves it as it is */
        min-width: 0;
      }
      @media print {
        :host {
          columns: 3;
          column-gap: 1.6rem;
        }
        section {
          break-inside: avoid;
        }
        dl {
          grid-template-columns: auto auto;
        }
        .allRound {
          grid-column: 1 / -1;
        }
      }
      section + section {
        margin-top: 0.6rem;
        padding-top: 0.5rem;
        border-top: 1px solid var(--rule);
      }
      dl {
        display: grid;
        grid-template-columns: minmax(0, 10.5rem) auto minmax(0, 1fr);
        gap: 0.2rem 0.75rem;
        margin: 0.3rem 0 0;
      }
      .ratios {
        container: ratios / inline-size;
      }
      @container ratios (max-width: 18rem) {
        dl {
          grid-template-columns: minmax(0, 1fr) auto;
        }
        .allRound {
          grid-column: 1 / -1;
        }
      }
      dd {
        margin: 0;
      }
      .allRound {
        color: var(--ink-soft);
      }
    `,
  ];

  static override properties = {
    model: { attribute: false },
    values: { attribute: false },
    readings: { attribute: false },
    expected: { attribute: false },
    locked: { attribute: false },
    still: { type: Boolean },
    pulls: { attribute: false },
    measured: { attribute: false },
    tried: { attribute: false },
    own: { type: Boolean },
    pointed: { type: String },
    asked: { type: String },
    unit: { type: String },
    text: { attribute: false },
  };

  declare model: ReedModel;
  declare values: Values;
  /** All readings of a feature whose value is their mean. */
  declare readings: Readings;
  /** Features whose value a step should have made, and nobody has read since. */
  declare expected: readonly FeatureId[];
  declare locked: readonly FeatureId[];
  /** A picture: nothing can be moved, locked or left out. */
  declare still: boolean;
  declare pulls: readonly Pull[];
  /** What the reed has. */
  declare measured: Values;
  /** What is tried over it. */
  declare tried: Tried | undefined;
  /** A reed of one's own: what it has was read. */
  declare own: boolean;
  /** The feature whose row is to be marked. */
  declare pointed: FeatureId | undefined;
  /** The feature whose stand-ins are listed, in the slot below its row. */
  declare asked: FeatureId | undefined;
  declare unit: LengthUnit;
  declare text: Catalogue;

  constructor() {
    super();
    this.values = {};
    this.readings = {};
    this.expected = [];
    this.locked = [];
    this.still = false;
    this.pulls = [];
    this.measured = {};
    this.own = false;
    this.unit = "mm";
    this.text = english;
  }

  override render() {
    return html`${this.model.groups.map(
      (group) =>
        html`<section>
          <h3>${group.label}</h3>
          ${this.model.features.filter((feature) => feature.group === group.id).map(({ id }) => html`${this.#row(id)}${id === this.asked ? html`<slot name="stand-ins"></slot>` : nothing}`)}
        </section>`,
    )}${this.#ratios()}`;
  }

  #row(id: FeatureId) {
    const feature = this.model.features.find((one) => one.id === id)!;
    return html`<reed-feature-row
      id=${id}
      .feature=${feature}
      .value=${this.values[id]}
      .pull=${this.pulls.find((one) => one.feature === id)}
      .locked=${this.still || this.locked.includes(id)}
      .bare=${this.still}
      .unit=${this.unit}
      .measured=${this.#isTried(id) ? this.measured[id] : undefined}
      .tried=${this.#isTried(id)}
      .own=${this.own}
      .pointed=${this.pointed === id}
      .asked=${this.asked === id}
      .note=${this.#note(id)}
      .text=${this.text}
    ></reed-feature-row>`;
  }

  #isTried(id: FeatureId): boolean {
    return this.tried !== undefined && id in this.tried;
  }

  #note(id: FeatureId): string {
    const all = this.readings[id] ?? [];
    if (this.expected.includes(id)) return this.text.recipe.expected;
    if (all.length < 2) return "";
    const feature = this.model.features.find((one) => one.id === id)!;
    const uneven = unevenness(id, all);
    if (!uneven) return this.text.recipe.repeats(all.length);
    const spread = readingWithUnit(feature, uneven.spread, this.unit, this.text);
    return this.text.recipe.uneven(feature.label, spread);
  }

  #ratios() {
    const rows = this.model.ratios.flatMap((ratio) => {
      const [above, below] = [this.values[ratio.of], this.values[ratio.to]];
      return above === undefined || !below ? [] : [{ ratio, value: above / below }];
    });
    if (rows.length === 0) return nothing;
    return html`<section class="ratios">
      <h3>${this.text.recipe.ratios}</h3>
      <dl>
        ${rows.map(
          ({ ratio, value }) =>
            html`<dt>${ratio.label}</dt>
              <dd>${this.text.number(value, 2)}</dd>
              <dd class="allRound">
                ${this.text.recipe.allRoundMark(this.text.number(this.#allRound(ratio.of) / this.#allRound(ratio.to), 2))}
              </dd>`,
        )}
      </dl>
    </section>`;
  }

  #allRound(id: FeatureId): number {
    return toThousandths(allRoundValue(this.model.features.find((one) => one.id === id)!));
  }
}
