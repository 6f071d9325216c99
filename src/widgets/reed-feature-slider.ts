import { LitElement, css, html, nothing } from "lit";
import { live } from "lit/directives/live.js";
import type { Feature } from "../engine/model.js";
import type { Pull } from "../engine/pulls.js";
import { pullDirection } from "../engine/direction.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import { allRoundValue, readingText, readingWithUnit, unitSpoken } from "../reed/reading-text.js";
import type { LengthUnit } from "../reed/units.js";
import { GestureEndedEvent, ValuePickedEvent } from "./events.js";
import { look } from "./look.js";
import { pullChanged } from "./pull-changed.js";
import { sliderMove } from "./slider-move.js";

/**
 * A feature's slider, with marks for the all-round value and for the value before the last step.
 *
 * @fires value-picked - another value, in the feature's own unit
 * @fires gesture-ended - the slider is let go
 */
export class ReedFeatureSlider extends LitElement {
  static override styles = [
    look,
    css`
      :host {
        position: relative;
        display: block;
        min-width: 0;
      }
      input {
        position: relative;
        display: block;
        min-width: 0;
      }
      .mark {
        position: absolute;
        top: 50%;
        width: 2px;
        height: 18px;
        margin: -9px 0 0 -1px;
        background: var(--ink-soft);
      }
      .before {
        position: absolute;
        top: 50%;
        width: 12px;
        height: 12px;
        margin: -6px 0 0 -6px;
        border: 1.5px dashed var(--ink-soft);
        border-radius: 50%;
      }
      @media (forced-colors: active) {
        .mark {
          background: CanvasText;
          forced-color-adjust: none;
        }
      }
    `,
  ];

  static override properties = {
    feature: { attribute: false },
    value: { attribute: false },
    measured: { attribute: false },
    own: { type: Boolean },
    pull: { attribute: false, hasChanged: pullChanged },
    locked: { type: Boolean },
    unit: { type: String },
    text: { attribute: false },
  };

  declare feature: Feature;
  /** In the feature's own unit. */
  declare value: number;
  /** What the reed has while another value is tried, marked on the slider. */
  declare measured: number | undefined;
  /** A reed of one's own: what it has was read. */
  declare own: boolean;
  declare pull: Pull | undefined;
  declare locked: boolean;
  declare unit: LengthUnit;
  declare text: Catalogue;
  #gesture = 0;
  /** The value when the pointer went down on the slider. */
  #pressedAt: number | undefined;

  constructor() {
    super();
    this.text = english;
    this.locked = false;
    this.unit = "mm";
  }

  override render() {
    const { feature, text, value } = this;
    const [low, high] = [Math.min(feature.min, value), Math.max(feature.max, value)];
    const allRound = allRoundValue(feature);
    const at = (mark: number): string =>
      `inset-inline-start: calc(12px + (100% - 24px) * ${((mark - low) / (high - low)).toFixed(4)})`;
    const before = this.measured;
    const moved = before !== undefined && before >= low && before <= high && before !== value;
    return html` <span
        class="mark"
        .style=${at(allRound)}
        title=${text.recipe.allRoundMark(this.#withUnit(allRound))}
      ></span>
      ${
        moved
          ? html`<span
              class="before"
              .style=${at(before)}
              title=${text.tried.value(this.#withUnit(before), !this.own)}
            ></span>`
          : nothing
      }
      <input
        type="range"
        min=${low}
        max=${high}
        step="any"
        .value=${live(String(value))}
        ?disabled=${this.locked}
        aria-label=${feature.label}
        aria-valuetext=${this.#valueText(value)}
        @pointerdown=${this.#onPointerDown}
        @pointercancel=${this.#onPointerCancel}
        @focus=${this.#begin}
        @input=${this.#onSlide}
        @keydown=${this.#onSliderKey}
        @change=${this.#onSlideEnd}
      />`;
  }

  #withUnit(value: number): string {
    return readingWithUnit(this.feature, value, this.unit, this.text);
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

  #begin(): void {
    this.#gesture += 1;
  }

  #end(): void {
    this.dispatchEvent(new GestureEndedEvent());
  }

  #pick(value: number): void {
    this.dispatchEvent(
      new ValuePickedEvent(this.feature.id, value, `slider-${this.feature.id}-${this.#gesture}`),
    );
  }

  #onPointerDown(): void {
    this.#begin();
    this.#pressedAt = this.value;
  }

  /** A finger that meant to scroll the page leaves the reading as it was. */
  #onPointerCancel(): void {
    if (this.#pressedAt !== undefined) this.#pick(this.#pressedAt);
    this.#onSlideEnd();
  }

  #onSlide(event: Event): void {
    const { value, feature } = this;
    const raw = (event.target as HTMLInputElement).valueAsNumber;
    const stepped = Math.round(raw / feature.step) * feature.step;
    if (value === undefined) return;
    // Assistive technology nudges a slider by less than a step: that still means one step.
    const nudged = this.#pressedAt === undefined && Math.abs(raw - value) < feature.step;
    this.#pick(this.#kept(nudged ? value + Math.sign(raw - value) * feature.step : stepped));
  }

  #onSlideEnd(): void {
    this.#pressedAt = undefined;
    this.#end();
  }

  /** Inside the range, or where it is when it is outside already. */
  #kept(value: number): number {
    const { min, max } = this.feature;
    const now = this.value ?? value;
    return Math.min(Math.max(max, now), Math.max(Math.min(min, now), value));
  }

  /** An arrow is a step, with Shift a tenth of one; the Page keys are five steps. */
  #onSliderKey(event: KeyboardEvent): void {
    const move = sliderMove(event, this.feature.step);
    if (move === undefined || this.value === undefined) return;
    event.preventDefault();
    this.#pick(this.#kept(this.value + move));
    this.#end();
  }
}
