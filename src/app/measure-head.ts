import { LitElement, css, html } from "lit";
import { live } from "lit/directives/live.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import { lengthUnits, type LengthUnit } from "../reed/units.js";
import { ListWalk } from "../widgets/list-walk.js";
import { look } from "../widgets/look.js";
import { BenchActionEvent } from "./bench-action-event.js";

/**
 * How far the sheet is, whose it is, the unit of the gauge, and the way to any other step.
 *
 * @fires bench-action - another step, another unit
 */
export class MeasureHead extends LitElement {
  static override styles = [
    look,
    css`
      :host {
        display: block;
        container-type: inline-size;
      }
      header {
        display: flex;
        flex-wrap: wrap;
        gap: 0.3rem 1.5rem;
        align-items: center;
        justify-content: space-between;
        margin-bottom: 0.8rem;
      }
      .progress {
        display: flex;
        flex-wrap: wrap;
        gap: 0.1rem 0.8rem;
        align-items: center;
        margin: 0;
      }
      .progress span {
        color: var(--ink-soft);
        overflow-wrap: anywhere;
      }
      progress {
        width: 9rem;
      }
      .jump {
        display: flex;
        flex-wrap: wrap;
        gap: 0.4rem;
        align-items: center;
        max-width: 100%;
        color: var(--ink-soft);
      }
      .jump select {
        min-width: 0;
        max-width: 100%;
        color: var(--ink);
      }
      @container (max-width: 30rem) {
        header {
          margin-bottom: 0.5rem;
        }
        .jump {
          flex: 1 1 8rem;
        }
        .jump span {
          position: absolute;
          width: 1px;
          height: 1px;
          overflow: hidden;
          clip-path: inset(50%);
        }
        .jump select {
          width: 100%;
        }
        progress {
          display: none;
        }
      }
    `,
  ];

  static override properties = {
    step: { type: Number },
    names: { attribute: false },
    reed: { type: String },
    unit: { type: String },
    text: { attribute: false },
  };

  declare step: number;
  /** The names of all steps. */
  declare names: readonly string[];
  declare reed: string;
  declare unit: LengthUnit;
  declare text: Catalogue;

  constructor() {
    super();
    this.text = english;
    this.step = 0;
    this.names = [];
    this.reed = "";
    this.unit = "mm";
  }

  override render() {
    const { text, step, names } = this;
    const words = text.measure;
    return html`<header>
      <p class="progress">
        <strong>${words.progress(step + 1, names.length)}</strong>
        <span>${words.start.continueWith(this.reed)}</span>
        <progress max=${names.length - 1} value=${step} aria-hidden="true"></progress>
      </p>
      <label class="jump"
        ><span>${text.bar.unit}</span>
        <select @change=${this.#onUnit}>
          ${lengthUnits.map(
            (unit) =>
              html`<option value=${unit} .selected=${live(unit === this.unit)}>
                ${text.units[unit].name}
              </option>`,
          )}
        </select>
      </label>
      <label class="jump"
        ><span>${words.jump}</span>
        <select
          @change=${this.#walk.onChange}
          @keydown=${this.#walk.onKey}
          @pointerdown=${this.#walk.onPointer}
          @blur=${this.#walk.choose}
        >
          ${names.map(
            (name, i) =>
              html`<option value=${i} .selected=${live(i === Number(this.#walk.walked ?? step))}>
                ${i + 1}. ${name}
              </option>`,
          )}
        </select>
      </label>
    </header>`;
  }

  #onUnit(event: Event): void {
    const unit = (event.target as HTMLSelectElement).value as LengthUnit;
    this.dispatchEvent(new BenchActionEvent({ type: "unit-set", unit }));
  }

  /** With the keyboard one passes by the steps in between: only Enter, or going on from here, opens one. */
  readonly #walk = new ListWalk(this, (value) => this.#open(Number(value)));

  #open(step: number): void {
    if (step !== this.step) this.dispatchEvent(new BenchActionEvent({ type: "sheet-moved", step }));
  }
}
