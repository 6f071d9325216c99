import { LitElement, html, noChange, nothing } from "lit";
import { live } from "lit/directives/live.js";
import type { Feature } from "../engine/model.js";
import type { Pull } from "../engine/pulls.js";
import { pullDirection } from "../drawing/direction.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import { isFarOutside } from "../reed/far-outside.js";
import { readingText, typedValue, unitSign, unitSpoken } from "../reed/reading-text.js";
import type { LengthUnit } from "../reed/units.js";
import { define } from "./define.js";
import { GestureEndedEvent, LockPickedEvent, ValuePickedEvent } from "./events.js";
import { featureRowStyle } from "./feature-row-style.js";
import { look } from "./look.js";
import { ReedCompass } from "./reed-compass.js";

define("reed-compass", ReedCompass);

/**
 * One feature of the recipe: slider, number, lock, "not measured", the mark of the all-round value, its compass.
 *
 * @fires value-picked - another value, in the feature's own unit; undefined: not measured
 * @fires gesture-ended - the slider is let go or left
 * @fires lock-picked - locked or freed
 */
export class ReedFeatureRow extends LitElement {
  static override styles = [look, featureRowStyle];

  static override properties = {
    feature: { attribute: false },
    value: { attribute: false },
    pull: { attribute: false },
    locked: { type: Boolean },
    unit: { type: String },
    note: { type: String },
    text: { attribute: false },
    problem: { state: true },
    editing: { state: true },
    open: { state: true },
  };

  declare feature: Feature;
  /** In the feature's own unit; undefined: not measured. */
  declare value: number | undefined;
  /** Undefined while the reed cannot be placed. */
  declare pull: Pull | undefined;
  declare locked: boolean;
  declare unit: LengthUnit;
  /** A remark under the row: how many readings, or that they disagree. */
  declare note: string;
  declare text: Catalogue;
  declare problem: string;
  declare editing: boolean;
  declare open: boolean;
  #gesture = 0;

  constructor() {
    super();
    this.text = english;
    this.locked = false;
    this.unit = "mm";
    this.note = "";
    this.problem = "";
    this.editing = false;
    this.open = false;
  }

  override render() {
    const { feature, text } = this;
    const remark = this.problem || this.note || this.#outside();
    return html`<div class="row">
        <button
          class="name"
          aria-expanded=${this.open}
          title=${text.recipe.howTo(feature.label)}
          @click=${this.#toggleHow}
        >
          ${feature.label}
        </button>
        ${this.value === undefined ? this.#unmeasured() : this.#measured(this.value)}
      </div>
      <p
        class="remark ${this.problem ? "problem" : ""}"
        id="remark"
        role=${this.problem ? "alert" : nothing}
        ?hidden=${!remark}
      >
        ${remark}
      </p>
      <p class="how" ?hidden=${!this.open}>${feature.howToMeasure} ${this.#range()}</p>`;
  }

  /** A value taken while the field has the focus is shown as it was kept. */
  override updated(changed: Map<string, unknown>): void {
    if (!this.editing || this.problem || this.value === undefined) return;
    if (!changed.has("value") && !changed.has("unit")) return;
    const field = this.renderRoot.querySelector<HTMLInputElement>("input[type=text]");
    if (field) field.value = this.#exact(this.value);
  }

  #unmeasured() {
    const { text, feature } = this;
    return html`<span class="blank">${text.recipe.notMeasured}</span>
      <button class="enter" aria-label=${text.recipe.enter(feature.label)} @click=${this.#measure}>
        ${text.recipe.measure}
      </button>`;
  }

  #measured(value: number) {
    const { feature, text, unit } = this;
    // What the user is typing, or what was refused, stays in the field until it is good.
    const typed = readingText(feature, value, unit, text);
    return html`${this.#slider(value)}
      <span class="number">
        <input
          type="text"
          inputmode="decimal"
          autocomplete="off"
          aria-label=${text.recipe.field(feature.label)}
          aria-describedby="remark"
          aria-invalid=${this.problem ? "true" : nothing}
          .value=${this.editing || this.problem ? noChange : live(typed)}
          @focus=${this.#onFieldFocus}
          @blur=${this.#onFieldBlur}
          @change=${this.#onTyped}
          @keydown=${this.#onFieldKey}
        /><span class="unit" aria-hidden="true">${unitSign(feature, unit, text)}</span>
      </span>
      <button
        class="icon lock"
        aria-pressed=${this.locked}
        aria-label=${text.recipe.lock(feature.label)}
        title=${text.recipe.lock(feature.label)}
        @click=${() => this.dispatchEvent(new LockPickedEvent(feature.id, !this.locked))}
      >
        ${lockPicture(this.locked)}
      </button>
      <button
        class="icon forget"
        aria-label=${text.recipe.forget(feature.label)}
        title=${text.recipe.forget(feature.label)}
        @click=${() => this.#forget()}
      >
        ×
      </button>
      ${this.pull ? html`<reed-compass .feature=${feature} .pull=${this.pull}></reed-compass>` : html`<span></span>`}`;
  }

  #slider(value: number) {
    const { feature, text, unit } = this;
    const [low, high] = [Math.min(feature.min, value), Math.max(feature.max, value)];
    const { corners } = feature;
    const allRound = (corners.high + corners.low + corners.loud) / 3;
    const mark = `inset-inline-start: calc(12px + (100% - 24px) * ${((allRound - low) / (high - low)).toFixed(4)})`;
    return html`<span class="slide">
      <span
        class="mark"
        .style=${mark}
        title=${text.recipe.allRoundMark(this.#withUnit(allRound))}
      ></span>
      <input
        type="range"
        min=${low}
        max=${high}
        step=${feature.step}
        .value=${live(String(value))}
        ?disabled=${this.locked}
        aria-label=${feature.label}
        aria-valuetext=${this.#valueText(value)}
        @pointerdown=${this.#begin}
        @focus=${this.#begin}
        @input=${this.#onSlide}
        @keydown=${this.#onSliderKey}
        @change=${this.#end}
      />
      <span class="unseen">${unitSpoken(feature, unit, text)}</span>
    </span>`;
  }

  #withUnit(value: number): string {
    return `${readingText(this.feature, value, this.unit, this.text)} ${unitSign(this.feature, this.unit, this.text)}`.trim();
  }

  /** Value first, then unit, then what it does now. */
  #valueText(value: number): string {
    const { feature, unit, text } = this;
    const spoken =
      `${readingText(feature, value, unit, text)} ${unitSpoken(feature, unit, text)}`.trim();
    return this.pull ? `${spoken}; ${this.#pullWords(this.pull)}` : spoken;
  }

  #pullWords({ now, perUnit }: Pull): string {
    const words = this.text.recipe.pull;
    const direction = pullDirection(now);
    if (direction) return words[direction.way](direction.purpose);
    // At the all-round value nothing pulls; what more of it would do is then the useful word.
    const reach = this.feature.max - this.feature.min;
    const more = pullDirection([perUnit[0] * reach, perUnit[1] * reach, perUnit[2] * reach]);
    return more ? `${words.none}; ${words.ifMore(words[more.way](more.purpose))}` : words.none;
  }

  #range(): string {
    const { feature, unit, text } = this;
    return text.recipe.range(...this.#usual(), unitSign(feature, unit, text));
  }

  #usual(): [string, string] {
    const { feature, unit, text } = this;
    return [
      readingText(feature, feature.min, unit, text),
      readingText(feature, feature.max, unit, text),
    ];
  }

  #outside(): string {
    const { feature, value, unit, text } = this;
    if (value === undefined || (value >= feature.min && value <= feature.max)) return "";
    return text.recipe.outside(...this.#usual(), unitSign(feature, unit, text));
  }

  #toggleHow(): void {
    this.open = !this.open;
  }

  #begin(): void {
    this.#gesture += 1;
  }

  #end(): void {
    this.dispatchEvent(new GestureEndedEvent());
  }

  #pick(value: number): void {
    this.problem = "";
    this.dispatchEvent(
      new ValuePickedEvent(this.feature.id, value, `slider-${this.feature.id}-${this.#gesture}`),
    );
  }

  #onSlide(event: Event): void {
    this.#pick((event.target as HTMLInputElement).valueAsNumber);
  }

  /** Shift with an arrow is a tenth of a step; the Page keys are five steps. */
  #onSliderKey(event: KeyboardEvent): void {
    const sign = { ArrowUp: 1, ArrowRight: 1, ArrowDown: -1, ArrowLeft: -1 }[event.key];
    const page = { PageUp: 5, PageDown: -5 }[event.key];
    const steps = page ?? (event.shiftKey && sign ? sign / 10 : undefined);
    if (
      steps === undefined ||
      this.value === undefined ||
      event.ctrlKey ||
      event.altKey ||
      event.metaKey
    )
      return;
    event.preventDefault();
    const { min, max, step } = this.feature;
    const least = Math.max(step / 10, 0.001); // the store keeps whole thousandths
    const size = Math.abs(steps) < 1 ? Math.sign(steps) * least : steps * step;
    this.#pick(
      Math.min(Math.max(max, this.value), Math.max(Math.min(min, this.value), this.value + size)),
    );
    this.#end();
  }

  /** The field then shows every digit that is kept, ready to be typed over. */
  #onFieldFocus(event: Event): void {
    this.editing = true;
    const field = event.target as HTMLInputElement;
    if (this.problem || this.value === undefined) return;
    field.value = this.#exact(this.value);
    field.select();
  }

  #exact(value: number): string {
    return readingText(this.feature, value, this.unit, this.text, true);
  }

  #onFieldBlur(): void {
    this.editing = false;
  }

  #onFieldKey(event: KeyboardEvent): void {
    const field = event.target as HTMLInputElement;
    if (event.key === "Enter") this.#onTyped(event);
    if (event.key !== "Escape" || this.value === undefined) return;
    this.problem = "";
    field.value = this.#exact(this.value);
  }

  #onTyped(event: Event): void {
    const { feature, unit, text, value: before } = this;
    const typed = (event.target as HTMLInputElement).value;
    // Leaving the field untouched must not round what the store holds.
    if (before !== undefined && typed.trim() === this.#exact(before)) {
      this.problem = "";
      return;
    }
    const value = typedValue(feature, typed, unit);
    const sign = unitSign(feature, unit, text);
    if (value === undefined) {
      this.problem = text.recipe.badNumber(typed, ...this.#usual(), sign);
    } else if (isFarOutside(feature, value) || (value < 0 && feature.min >= 0)) {
      this.problem = text.recipe.farOff(typed, ...this.#usual(), sign);
    } else {
      this.problem = "";
      this.dispatchEvent(new ValuePickedEvent(feature.id, value));
      this.#end();
    }
  }

  #forget(): void {
    this.problem = "";
    this.dispatchEvent(new ValuePickedEvent(this.feature.id, undefined));
    this.#end();
    void this.updateComplete.then(() =>
      this.renderRoot.querySelector<HTMLElement>(".enter")?.focus(),
    );
  }

  /** Starts from the all-round value: the nearest thing to knowing nothing. */
  #measure(): void {
    const { high, low, loud } = this.feature.corners;
    this.dispatchEvent(new ValuePickedEvent(this.feature.id, (high + low + loud) / 3));
    this.#end();
    void this.updateComplete.then(() =>
      this.renderRoot.querySelector<HTMLElement>("input[type=text]")?.focus(),
    );
  }
}

function lockPicture(locked: boolean) {
  const bow = locked ? "M4.5 7V5a3.5 3.5 0 0 1 7 0v2" : "M4.5 7V5a3.5 3.5 0 0 1 6.6-1.6";
  return html`<svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true">
    <path d=${bow} fill="none" stroke="currentColor" stroke-width="1.6"></path>
    <rect x="3" y="7" width="10" height="7" rx="1.5" fill="currentColor"></rect>
  </svg>`;
}
