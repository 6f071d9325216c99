import { LitElement, html, noChange, nothing, type PropertyValues } from "lit";
import { live } from "lit/directives/live.js";
import type { Feature } from "../engine/model.js";
import type { Pull } from "../engine/pulls.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import { readingText, unitSign } from "../reed/reading-text.js";
import { readingWithUnit } from "../reed/reading-text.js";
import { typedReading } from "../reed/typed-reading.js";
import type { LengthUnit } from "../reed/units.js";
import { StandInsAskedEvent } from "./advice-events.js";
import { define } from "./define.js";
import {
  FeaturePointedEvent,
  GestureEndedEvent,
  LockPickedEvent,
  ValuePickedEvent,
  TryAcceptedEvent,
  TryLeftEvent,
} from "./events.js";
import { featureRowStyle } from "./feature-row-style.js";
import {
  outsideText,
  rangeText,
  shownValue,
  spokenState,
  sliderRange,
} from "./feature-row-words.js";
import { lockPicture } from "./lock-picture.js";
import { look } from "./look.js";
import { pullChanged } from "./pull-changed.js";
import { ReedCompass } from "./reed-compass.js";
import { ReedFeatureSlider } from "./reed-feature-slider.js";

define("reed-compass", ReedCompass);
define("reed-feature-slider", ReedFeatureSlider);

/**
 * One feature of the recipe: slider, number, lock, "not measured", the mark of the all-round value, its compass.
 *
 * @fires value-picked - another value, in the feature's own unit; undefined: not measured
 * @fires gesture-ended - the slider is let go or left
 * @fires lock-picked - locked or freed
 * @fires stand-ins-asked - its stand-ins are to be listed, or no more
 */
export class ReedFeatureRow extends LitElement {
  static override styles = [look, featureRowStyle];

  static override properties = {
    feature: { attribute: false },
    value: { attribute: false },
    pull: { attribute: false, hasChanged: pullChanged },
    locked: { type: Boolean },
    pointed: { type: Boolean },
    unit: { type: String },
    asked: { type: Boolean },
    bare: { type: Boolean },
    note: { type: String },
    measured: { attribute: false },
    tried: { type: Boolean },
    own: { type: Boolean },
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
  /** Marked, because the pointer is at its place on the reed. */
  declare pointed: boolean;
  /** Its stand-ins are listed below. */
  declare asked: boolean;
  /** Without lock, "not measured" and stand-ins. */
  declare bare: boolean;
  declare unit: LengthUnit;
  /** A remark under the row: how many readings, or that they disagree. */
  declare note: string;
  /** What the reed has: told, and marked on the slider, while something else is tried. */
  declare measured: number | undefined;
  /** Whether the value is tried, or the feature left out. */
  declare tried: boolean;
  /** A reed of one's own: what it has was read, and what is tried may be a reading. */
  declare own: boolean;
  declare text: Catalogue;
  declare problem: string;
  declare editing: boolean;
  declare open: boolean;

  constructor() {
    super();
    this.text = english;
    this.locked = false;
    this.pointed = false;
    this.asked = false;
    this.bare = false;
    this.unit = "mm";
    this.note = "";
    this.tried = false;
    this.own = false;
    this.problem = "";
    this.editing = false;
    this.open = false;
  }

  override render() {
    const { feature, text } = this;
    const remark = this.problem || this.note || outsideText(this);
    return html`<div
        class="row ${this.pointed ? "pointed" : ""}"
        @pointerenter=${this.#onEnter}
        @pointerleave=${() => this.#point(undefined)}
        @focusin=${this.#onEnter}
      >
        <button
          class="name"
          aria-expanded=${this.open || this.asked}
          title=${text.recipe.howTo(feature.label)}
          @click=${this.#toggleHow}
        >
          ${feature.label}
        </button>
        ${this.#controls()}
      </div>
      ${this.bare ? nothing : this.#was()}
      <p
        class="remark ${this.problem ? "problem" : ""}"
        id="remark"
        role=${this.problem ? "alert" : nothing}
        ?hidden=${!remark}
      >
        ${remark}
      </p>
      <div class="how" ?hidden=${!this.open && !this.asked}>
        ${this.open || this.asked ? this.#how() : nothing}
      </div>`;
  }

  /** What the reed has, with the ways back to it and on from it; the room for it is kept on a phone. */
  #was() {
    const { feature, text, measured, value, unit } = this;
    const shown = (one: number): string => readingWithUnit(feature, one, unit, text, true);
    if (!this.tried) return html`<p class="was" aria-hidden="true"></p>`;
    const told = measured === undefined ? text.recipe.notMeasured : shown(measured);
    return html`<p class="was">
      <span>${measured === undefined ? told : text.tried.value(told, !this.own)}</span>
      <button
        class="back"
        aria-label=${text.tried.backTo(feature.label, told)}
        @click=${() => this.dispatchEvent(new TryLeftEvent(feature.id))}
      >
        ${text.tried.back}
      </button>
      ${
        this.own && value !== undefined
          ? html`<button
              class="accept"
              aria-label=${text.tried.acceptFor(feature.label, shown(value))}
              @click=${() => this.dispatchEvent(new TryAcceptedEvent(feature.id))}
            >
              ${text.tried.accept}
            </button>`
          : nothing
      }
    </p>`;
  }

  #how() {
    const { feature, text } = this;
    return html`<p>${feature.howToMeasure} ${rangeText(this)}</p>
      ${
        this.bare
          ? nothing
          : html`<button class="ask" aria-expanded=${this.asked} @click=${this.#ask}>
              ${text.planPage.standIns.ask(feature.label)}
            </button>`
      }`;
  }

  /** A value that comes from elsewhere (another reed, undo) ends what was typed and not taken. */
  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has("value")) this.problem = "";
  }

  /** A value taken while the field has the focus is shown as it was kept. */
  override updated(changed: Map<string, unknown>): void {
    if (!this.editing || this.problem || (!changed.has("value") && !changed.has("unit"))) return;
    const field = this.renderRoot.querySelector<HTMLInputElement>("input[type=text]");
    if (field) field.value = this.value === undefined ? "" : this.#exact(this.value);
  }

  /** The row has the same shape whether the feature is measured or not, so that nothing jumps while readings go in. */
  #controls() {
    const { feature, text, unit, value } = this;
    const words = text.recipe;
    return html`${
        value === undefined
          ? html`<span class="slide blank" aria-hidden="true"
              >${this.measured === undefined ? words.notMeasured : words.leftOut}</span
            >`
          : html`<reed-feature-slider
              class="slide"
              .feature=${feature}
              .value=${value}
              .measured=${this.measured}
              .own=${this.own}
              .pull=${this.pull}
              .locked=${this.locked}
              .unit=${unit}
              .text=${text}
              @value-picked=${this.#clearProblem}
            ></reed-feature-slider>`
      }
      <span class="number">
        <input
          type="text"
          inputmode="decimal"
          autocomplete="off"
          enterkeyhint="next"
          placeholder=${value === undefined ? sliderRange(this).join("–") : nothing}
          aria-label=${words.field(feature.label)}
          aria-describedby="remark unit"
          aria-invalid=${this.problem ? "true" : nothing}
          ?readonly=${this.locked}
          .value=${this.editing || this.problem ? noChange : live(shownValue(this))}
          @focus=${this.#onFieldFocus}
          @blur=${this.#onFieldBlur}
          @change=${this.#onTyped}
          @keydown=${this.#onFieldKey}
        /><span class="unit" aria-hidden="true">${unitSign(feature, unit, text)}</span>
        <span class="unseen" id="unit">${spokenState(this)}</span>
      </span>
      ${value === undefined || this.bare ? html`<span></span><span></span>` : this.#buttons()}
      ${
        this.pull
          ? html`<reed-compass .feature=${feature} .pull=${this.pull}></reed-compass>`
          : html`<span></span>`
      }`;
  }

  #buttons() {
    const { feature, text } = this;
    return html`<button
        class="icon lock"
        aria-pressed=${this.locked}
        title=${text.recipe.lock(feature.label)}
        @click=${this.#onLock}
      >
        ${lockPicture(this.locked)}
      </button>
      <button
        class="icon forget"
        title=${text.recipe.forget(feature.label)}
        ?disabled=${this.locked}
        @click=${this.#forget}
      >
        <span aria-hidden="true">×</span>
      </button>`;
  }

  /** Closing the row closes its stand-ins too. */
  #toggleHow(): void {
    if (this.asked) {
      this.open = false;
      this.#ask();
    } else this.open = !this.open;
  }

  #ask(): void {
    if (!this.asked) this.open = true;
    this.dispatchEvent(new StandInsAskedEvent(this.asked ? undefined : this.feature.id));
  }

  /** On the button that asks for stand-ins: where who has closed their list goes on. */
  focusAsk(): void {
    this.renderRoot.querySelector<HTMLElement>(".ask")?.focus();
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

  readonly #onFieldBlur = (): void => void (this.editing = false);

  #onFieldKey(event: KeyboardEvent): void {
    const field = event.target as HTMLInputElement;
    if (event.key === "Enter") this.#onTyped(event);
    if (event.key !== "Escape") return;
    this.problem = "";
    field.value = this.value === undefined ? "" : this.#exact(this.value);
  }

  #onTyped(event: Event): void {
    const { value: before } = this;
    const typed = (event.target as HTMLInputElement).value;
    // Leaving the field untouched must not round what the store holds.
    if (before !== undefined && typed.trim() === this.#exact(before)) {
      this.problem = "";
      return;
    }
    if (typed.trim() === "") {
      this.problem = "";
      if (before !== undefined) this.#forget();
      return;
    }
    const { value, problem } = typedReading(this.feature, typed, before, this.unit, this.text);
    this.problem = problem;
    if (value === undefined) return;
    this.dispatchEvent(new ValuePickedEvent(this.feature.id, value));
    this.dispatchEvent(new GestureEndedEvent());
    // The same value said in another unit changes nothing, and is still shown in this one.
    if (value === before) (event.target as HTMLInputElement).value = this.#exact(value);
  }

  readonly #clearProblem = (): void => void (this.problem = "");

  readonly #onEnter = (): void => this.#point(this.feature.id);

  #point(feature: Feature["id"] | undefined): void {
    this.dispatchEvent(new FeaturePointedEvent(feature));
  }

  #onLock(): void {
    this.dispatchEvent(new LockPickedEvent(this.feature.id, !this.locked));
  }

  #forget(): void {
    this.problem = "";
    this.dispatchEvent(new ValuePickedEvent(this.feature.id, undefined));
    this.dispatchEvent(new GestureEndedEvent());
    this.focusField();
  }

  /** Puts the cursor into the number field. */
  focusField(): void {
    const field = this.renderRoot.querySelector<HTMLInputElement>("input[type=text]");
    if (field && this.shadowRoot?.activeElement !== field) field.focus();
  }
}
