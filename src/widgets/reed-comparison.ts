import { LitElement, css, html, nothing } from "lit";
import type { RecipeDifference } from "../engine/differences.js";
import type { FeatureId, Purpose, ReedModel, Values } from "../engine/model.js";
import { nearestBlend } from "../engine/nearest-blend.js";
import type { Blend } from "../engine/blend.js";
import { pullDirection } from "../engine/direction.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import { inSentence } from "../reed/in-sentence.js";
import { readingWithUnit } from "../reed/reading-text.js";
import type { LengthUnit } from "../reed/units.js";
import { wholeShares } from "../reed/whole-shares.js";
import { look } from "./look.js";

const order: readonly Purpose[] = ["high", "low", "loud"];
/** So many differences are told at once; the others on demand. */
const atOnce = 4;

/** A reed that is compared. */
export interface ComparedReed {
  readonly name: string;
  readonly values: Values;
  /** Its raw place, where it has one. */
  readonly blend: Blend | undefined;
}

/**
 * Two reeds against each other: how their places differ, then what differs in the recipes, what matters most first.
 *
 * @fires swap-asked - the two shall change places
 * @fires unpin-asked - the comparison is over
 */
export class ReedComparison extends LitElement {
  static override styles = [
    look,
    css`
      :host {
        display: block;
        min-width: 0;
        container-type: inline-size;
      }
      .head {
        display: flex;
        flex-wrap: wrap;
        gap: 0.4rem;
        align-items: center;
      }
      h2 {
        margin-inline-end: auto;
        overflow-wrap: anywhere;
      }
      p {
        margin: 0.4rem 0;
      }
      .scroll {
        overflow-x: auto;
      }
      table {
        width: 100%;
        border-collapse: collapse;
      }
      th,
      td {
        padding: 0.25rem 0.6rem 0.25rem 0;
        border-bottom: 1px solid var(--rule);
        text-align: start;
        vertical-align: baseline;
        font-weight: inherit;
      }
      thead th {
        color: var(--ink-soft);
        font-size: 0.8125rem;
        overflow-wrap: anywhere;
      }
      td.number,
      th.number {
        text-align: end;
        white-space: nowrap;
      }
      thead th.number {
        white-space: normal;
      }
      .high {
        color: var(--high-word);
      }
      .low {
        color: var(--low-word);
      }
      .loud {
        color: var(--loud-word);
      }
      .soft {
        color: var(--ink-soft);
        font-size: 0.8125rem;
      }
      summary {
        min-height: 1.75rem;
        color: var(--ink-soft);
        cursor: pointer;
      }
      /* On a phone what a difference does stands under its numbers. */
      @container (max-width: 26rem) {
        thead th:last-child {
          display: none;
        }
        tr {
          display: grid;
          grid-template-columns: minmax(0, 1fr) 4.2rem 4.2rem;
          border-bottom: 1px solid var(--rule);
        }
        th,
        td {
          border: 0;
          overflow-wrap: break-word;
        }
        td.number {
          white-space: normal;
        }
        td:last-child {
          grid-column: 1 / -1;
          padding-top: 0;
        }
      }
      @media print {
        button,
        details {
          display: none;
        }
      }
    `,
  ];

  static override properties = {
    model: { attribute: false },
    mine: { attribute: false },
    pinned: { attribute: false },
    differences: { attribute: false },
    onlyOne: { attribute: false },
    unit: { type: String },
    text: { attribute: false },
  };

  declare model: ReedModel;
  /** The reed on the bench. */
  declare mine: ComparedReed;
  declare pinned: ComparedReed;
  /** From the pinned reed to the one on the bench. */
  declare differences: readonly RecipeDifference[];
  declare onlyOne: readonly FeatureId[];
  declare unit: LengthUnit;
  declare text: Catalogue;

  constructor() {
    super();
    this.unit = "mm";
    this.text = english;
    this.differences = [];
    this.onlyOne = [];
  }

  override render() {
    const { text, differences, onlyOne, pinned } = this;
    const words = text.compare;
    const rest = differences.slice(atOnce);
    return html`<div class="head">
        <h2>${words.pinned(pinned.name)}</h2>
        <button @click=${() => this.dispatchEvent(new Event("swap-asked"))}>${words.swap}</button>
        <button @click=${() => this.dispatchEvent(new Event("unpin-asked"))}>${words.unpin}</button>
      </div>
      <p>${this.#placeWords()}</p>
      ${differences.length > 0 ? this.#table(differences.slice(0, atOnce)) : nothing}
      ${
        rest.length > 0
          ? html`<details>
              <summary>${words.more(rest.length)}</summary>
              ${this.#table(rest)}
            </details>`
          : nothing
      }
      ${
        onlyOne.length > 0
          ? html`<p class="soft">
              ${words.onlyOne(onlyOne.map((id) => inSentence(this.#label(id))))}
            </p>`
          : nothing
      }`;
  }

  /** On the button that ends the comparison: so that who pinned a reed by keyboard can go on from there. */
  override focus(): void {
    this.renderRoot.querySelector<HTMLElement>(".head button:last-of-type")?.focus();
  }

  /** The shares that differ by a whole per cent, the greatest gap first. */
  #placeWords(): string {
    const { text, mine, pinned, differences } = this;
    const words = text.compare;
    if (!pinned.blend) return words.notPlaced(pinned.name);
    if (!mine.blend) return words.notPlaced(mine.name);
    const here = wholeShares(nearestBlend(mine.blend));
    const there = wholeShares(nearestBlend(pinned.blend));
    const gaps = order
      .map((id, k) => ({ id, gap: here[k]! - there[k]! }))
      .filter(({ gap }) => Math.abs(gap) >= 0.005)
      .toSorted((a, b) => Math.abs(b.gap) - Math.abs(a.gap));
    if (gaps.length === 0)
      return differences.length === 0 ? words.same : words.samePlaceOtherRecipe;
    return words.place(
      pinned.name,
      gaps.map(({ id, gap }) => ({
        id,
        words: text.purposes[id],
        gap,
      })),
    );
  }

  #table(differences: readonly RecipeDifference[]) {
    const words = this.text.compare;
    return html`<div class="scroll">
      <table>
        <thead>
          <tr>
            <th scope="col">${words.feature}</th>
            <th scope="col" class="number">${this.mine.name}</th>
            <th scope="col" class="number">${this.pinned.name}</th>
            <th scope="col">${words.moves}</th>
          </tr>
        </thead>
        <tbody>
          ${differences.map((one) => this.#row(one))}
        </tbody>
      </table>
    </div>`;
  }

  #row({ feature, move }: RecipeDifference) {
    const { mine, pinned, text } = this;
    const words = text.compare;
    const direction = pullDirection(move);
    const way =
      direction &&
      words[direction.way === "toward" ? "toward" : "awayFrom"](text.purposes[direction.purpose]);
    // Distances in shares are √2 times those in sides of the triangle.
    const share = text.percent(Math.hypot(...move) / Math.SQRT2);
    return html`<tr>
      <th scope="row">${this.#label(feature)}</th>
      <td class="number">${this.#shown(feature, mine.values[feature]!)}</td>
      <td class="number">${this.#shown(feature, pinned.values[feature]!)}</td>
      <td class=${direction?.way === "toward" ? direction.purpose : nothing}>
        ${way ? words.movedBy(way, share) : words.hardly}
      </td>
    </tr>`;
  }

  #label(id: FeatureId): string {
    return this.model.features.find((one) => one.id === id)!.label;
  }

  #shown(id: FeatureId, value: number): string {
    const feature = this.model.features.find((one) => one.id === id)!;
    return readingWithUnit(feature, value, this.unit, this.text);
  }
}
