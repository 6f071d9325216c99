import { LitElement, css, html } from "lit";
import { live } from "lit/directives/live.js";
import { lipControls } from "../acoustics/lip-presets.js";
import { lipEnglish, type LipCatalogue } from "../reed/lip-catalogue.js";
import { GestureEndedEvent } from "./events.js";
import { PressurePickedEvent } from "./lip-events.js";
import { look } from "./look.js";
import { sliderMove } from "./slider-move.js";

/** kPa of an arrow key; the store counts Pa. */
const step = 0.1;

/**
 * One of the two pressures: a slider with a number field.
 *
 * @fires pressure-picked - the pressure that was asked for, Pa
 * @fires gesture-ended - when the slider is let go, or a number has been entered
 */
export class ReedLipPressure extends LitElement {
  static override styles = [
    look,
    css`
      :host {
        display: block;
        container-type: inline-size;
      }
      .control {
        display: grid;
        gap: 0 0.6rem;
        grid-template-columns: minmax(0, 8.6rem) minmax(3rem, 1fr) auto;
        align-items: center;
      }
      input[type="number"] {
        width: 4.2rem;
        min-height: 2rem;
        padding: 0 0.4rem;
        text-align: end;
      }
      input[type="range"] {
        min-width: 0;
      }
      .cell {
        white-space: nowrap;
      }
      label {
        overflow-wrap: anywhere;
      }
      @container (max-width: 22rem) {
        .control {
          grid-template-columns: minmax(3rem, 1fr) auto;
        }
        label {
          grid-column: 1 / -1;
        }
      }
      @media print {
        .control {
          grid-template-columns: minmax(0, 10rem) auto;
          justify-content: start;
        }
        input[type="range"] {
          display: none;
        }
      }
    `,
  ];

  static override properties = {
    which: { type: String },
    pressure: { type: Number },
    effect: { type: String },
    text: { attribute: false },
  };

  declare which: "lip" | "blow";
  /** Pa. */
  declare pressure: number;
  /** What it does now, told behind the value. */
  declare effect: string;
  declare text: LipCatalogue;

  constructor() {
    super();
    this.which = "lip";
    this.pressure = 0;
    this.effect = "";
    this.text = lipEnglish;
  }

  override render() {
    const words = this.text.lip.controls;
    const { min, max } = lipControls[this.which];
    const label = words[this.which];
    const shown = this.#shown();
    return html`<div class="control">
      <label for="slider">${label}</label>
      <input
        id="slider"
        type="range"
        min=${min / 1000}
        max=${max / 1000}
        step=${step}
        .value=${live(shown)}
        aria-valuetext=${`${words.valueText(this.pressure)}; ${this.effect}`}
        @input=${this.#onSlide}
        @keydown=${this.#onKey}
        @change=${this.#end}
      />
      <span class="cell"
        ><input
          type="number"
          min=${min / 1000}
          max=${max / 1000}
          step=${step}
          aria-label=${this.text.lip.panel.field(label, words.unit)}
          .value=${live(shown)}
          @change=${this.#onEnter}
        />
        ${words.unit}</span
      >
    </div>`;
  }

  /** Whole tenths of a kPa, or what was typed more finely. */
  #shown(): string {
    const kilo = this.pressure / 1000;
    return kilo.toFixed(Number.isInteger(Math.round(kilo * 1000) / 100) ? 1 : 2);
  }

  #pick(kilo: number): void {
    const { min, max } = lipControls[this.which];
    const pressure = Math.min(max, Math.max(min, Math.round(kilo * 1000)));
    this.dispatchEvent(new PressurePickedEvent(this.which, pressure));
  }

  #onSlide(event: Event): void {
    this.#pick((event.target as HTMLInputElement).valueAsNumber);
  }

  #onKey(event: KeyboardEvent): void {
    const move = sliderMove(event, step);
    if (move === undefined) return;
    event.preventDefault();
    this.#pick(this.pressure / 1000 + move);
    this.#end();
  }

  #onEnter(event: Event): void {
    const { valueAsNumber } = event.target as HTMLInputElement;
    if (Number.isFinite(valueAsNumber)) this.#pick(valueAsNumber);
    this.requestUpdate(); // an empty or too great number gives way to the present one
    this.#end();
  }

  #end(): void {
    this.dispatchEvent(new GestureEndedEvent());
  }
}
