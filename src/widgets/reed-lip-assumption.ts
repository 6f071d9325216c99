import { LitElement, css, html, nothing } from "lit";
import { live } from "lit/directives/live.js";
import { assumptions, type AssumptionId } from "../acoustics/assumptions.js";
import { lipEnglish, type LipCatalogue } from "../reed/lip-catalogue.js";
import { AssumptionPickedEvent } from "./lip-events.js";
import { lipStyle } from "./lip-style.js";
import { look } from "./look.js";
import { sliderMove } from "./slider-move.js";

/**
 * One constant of the model: what it is, where it comes from, and a slider over its plausible range.
 *
 * @fires assumption-picked - another value, or its first one
 */
export class ReedLipAssumption extends LitElement {
  static override styles = [
    look,
    lipStyle,
    css`
      :host {
        padding: 0.5rem 0;
        border-top: 1px solid var(--rule);
      }
      .row {
        display: flex;
        flex-wrap: wrap;
        gap: 0 0.6rem;
        align-items: center;
      }
      label {
        font-weight: 600;
      }
      input[type="range"] {
        flex: 1 1 6rem;
        min-width: 0;
      }
      input[type="number"] {
        width: 5rem;
        min-height: 2rem;
        padding: 0 0.4rem;
        text-align: end;
      }
      .cell {
        white-space: nowrap;
      }
      button {
        min-width: 2.25rem;
        padding: 0 0.5rem;
      }
      p {
        margin: 0.1rem 0;
      }
      @media print {
        button,
        input[type="range"] {
          display: none;
        }
      }
    `,
  ];

  static override properties = {
    name: { type: String },
    value: { type: Number },
    text: { attribute: false },
  };

  declare name: AssumptionId;
  /** In the constant's own unit. */
  declare value: number;
  declare text: LipCatalogue;

  constructor() {
    super();
    this.text = lipEnglish;
  }

  override render() {
    const { text, name, value } = this;
    const { assumptions: words, panel } = text.lip;
    const { label, unit, hint, factor } = words.words[name];
    const { min, max, value: first } = assumptions[name];
    const shown = this.#shown(value);
    const changed = value !== first;
    return html`<label for="slider">${label}</label>
      <div class="row">
        <input
          id="slider"
          type="range"
          min=${min * factor}
          max=${max * factor}
          step="any"
          .value=${live(String(value * factor))}
          aria-valuetext=${`${shown} ${unit}`.trim()}
          @input=${this.#onSlide}
          @keydown=${this.#onKey}
        />
        <span class="cell"
          ><input
            type="number"
            min=${Number(this.#shown(min))}
            max=${Number(this.#shown(max))}
            step="any"
            aria-label=${unit ? panel.field(label, unit) : label}
            .value=${live(shown)}
            @change=${this.#onEnter}
          />
          ${unit}</span
        >
        ${
          changed
            ? html`<button
                title=${panel.assumptions.resetOne(label)}
                @click=${() => this.#pick(undefined)}
              >
                <span aria-hidden="true">↺</span>
              </button>`
            : nothing
        }
      </div>
      <p class="soft">
        ${hint} ${words.basis(assumptions[name])}
        ${words.range(this.#shown(min), this.#shown(max), unit)}
        ${changed ? panel.assumptions.first(`${this.#shown(first)} ${unit}`.trim()) : nothing}
      </p>`;
  }

  get #words() {
    return this.text.lip.assumptions.words[this.name];
  }

  /** One of the last digit that is shown. */
  get #step(): number {
    return 10 ** -this.#words.decimals;
  }

  #shown(value: number): string {
    const { factor, decimals } = this.#words;
    return this.text.number(value * factor, decimals);
  }

  /** As shown → as the model counts, inside the plausible range. */
  #pick(shown: number | undefined): void {
    const { min, max } = assumptions[this.name];
    const value =
      shown === undefined ? undefined : Math.min(max, Math.max(min, shown / this.#words.factor));
    this.dispatchEvent(new AssumptionPickedEvent(this.name, value));
  }

  #onSlide(event: Event): void {
    const { valueAsNumber } = event.target as HTMLInputElement;
    this.#pick(Math.round(valueAsNumber / this.#step) * this.#step);
  }

  #onKey(event: KeyboardEvent): void {
    const move = sliderMove(event, this.#step);
    if (move === undefined) return;
    event.preventDefault();
    this.#pick(this.value * this.#words.factor + move);
  }

  #onEnter(event: Event): void {
    const { valueAsNumber } = event.target as HTMLInputElement;
    if (Number.isFinite(valueAsNumber)) this.#pick(valueAsNumber);
    this.requestUpdate(); // an empty or too great number gives way to the present one
  }
}
