import { LitElement, html, nothing, type PropertyValues } from "lit";
import { live } from "lit/directives/live.js";
import type { Feature, ReedModel, Values } from "../engine/model.js";
import { stepWarnings } from "../reed/cross-checks.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import type { MeasuringStep } from "../reed/measuring-steps.js";
import { readingWithUnit, typedValue, unitSign } from "../reed/reading-text.js";
import { inOrder, isEveryPlaceRead, nextPlace, type Reading } from "../reed/readings.js";
import { stepReading, type StepReading } from "../reed/step-reading.js";
import type { LengthUnit } from "../reed/units.js";
import { define } from "../widgets/define.js";
import { HingingChoice, type HingingPickedEvent } from "../widgets/hinging-choice.js";
import { look } from "../widgets/look.js";
import { NumberPad, type PadKeyEvent } from "../widgets/number-pad.js";
import { BenchActionEvent } from "./bench-action-event.js";
import { checkText } from "./check-text.js";
import { measureStepStyle } from "./measure-step-style.js";
import { lengthText, usualText } from "./usual-text.js";
import { slipButtons } from "./slip-buttons.js";
import { takenReadings } from "./taken-readings.js";

define("number-pad", NumberPad);
define("hinging-choice", HingingChoice);

/**
 * One step of the guided sheet: where and how, one number after another, and a question where a number looks like a slip.
 *
 * @fires bench-action - all readings of the feature, or none
 * @fires sheet-next - the step is done
 * @fires sheet-back - one step back
 */
export class MeasureStep extends LitElement {
  static override styles = [look, measureStepStyle];

  static override properties = {
    model: { attribute: false },
    step: { attribute: false },
    values: { attribute: false },
    readings: { attribute: false },
    guess: { type: String },
    unit: { type: String },
    text: { attribute: false },
    typed: { state: true },
    tall: { attribute: false },
    asked: { state: true },
    problem: { state: true },
    again: { state: true },
  };

  declare model: ReedModel;
  declare step: MeasuringStep;
  declare values: Values;
  /** The readings of this feature so far, in its own unit. */
  declare readings: readonly Reading[];
  /** What the reading is likely to be, in words; empty where nobody knows. */
  declare guess: string;
  declare unit: LengthUnit;
  declare text: Catalogue;
  declare typed: string;
  /** The height of a wire, mm, while its width is awaited. */
  declare tall: number | undefined;
  /** The questions about the number in the field, while they wait for an answer. */
  declare asked: StepReading | undefined;
  declare problem: string;
  /** One more reading of a place that has been read. */
  declare again: boolean;

  constructor() {
    super();
    this.readings = [];
    this.values = {};
    this.guess = "";
    this.unit = "mm";
    this.text = english;
    this.#clear();
  }

  /** Another step begins with an empty field. */
  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has("step")) this.#clear();
  }

  override updated(changed: PropertyValues<this>): void {
    const asks = changed.has("asked") && this.asked;
    if (asks) this.renderRoot.querySelector<HTMLElement>(".asked button")?.focus();
  }

  override render() {
    const { step, text } = this;
    const feature = this.#feature;
    const words = text.measure.step;
    const how = text.measure.steps[step.feature]!;
    return html`<h2>${feature.label}</h2>
      <dl>
        <dt>${words.where}</dt>
        <dd>${how.where}</dd>
        <dt>${words.hold}</dt>
        <dd>${how.hold}</dd>
        <dt>${words.slip}</dt>
        <dd>${how.slip}</dd>
      </dl>
      <p class="usual" ?hidden=${step.asks === "picture"}>
        ${usualText(step, feature, this.values, this.unit, text)}
      </p>
      ${step.asks === "picture" ? this.#pictures() : this.#entry()} ${this.#taken()}`;
  }

  get #feature(): Feature {
    return this.model.features.find(({ id }) => id === this.step.feature)!;
  }

  #pictures() {
    return html`<hinging-choice
      .value=${this.readings[0]?.value}
      .text=${this.text}
      @hinging-picked=${(event: HingingPickedEvent) => this.#set(inOrder(this.step.feature, [event.value]))}
    ></hinging-choice>`;
  }

  /** What is asked for now; undefined when every place has been read. */
  get #prompt(): string | undefined {
    const { step, readings, text } = this;
    const words = text.measure.step;
    if (isEveryPlaceRead(step.feature, readings) && !this.again) return undefined;
    if (step.asks === "heightAndWidth")
      return this.tall === undefined
        ? words.height
        : `${words.width} (${words.heightTaken(lengthText(this.#feature, this.tall, this.unit, text))})`;
    if (step.asks === "thicknessOverSpine")
      return this.values["spine"] === undefined ? words.rise : words.thickness;
    return words.reading(text.measure.places[nextPlace(step.feature, readings)]);
  }

  #entry() {
    const { text, asked } = this;
    const prompt = this.#prompt;
    if (prompt === undefined)
      return html`<button class="again" @click=${() => (this.again = true)}>
        ${text.measure.step.again}
      </button>`;
    return html`<label class="field"
        ><span class="unseen">${this.#feature.label}. </span>${prompt}
        <span
          ><input
            type="text"
            inputmode=${isThumb() ? "none" : "decimal"}
            enterkeyhint="next"
            autocomplete="off"
            aria-invalid=${this.problem ? "true" : nothing}
            aria-describedby="problem"
            placeholder=${this.guess || nothing}
            .value=${live(this.typed)}
            @input=${this.#onInput}
            @keydown=${this.#onKey}
          />
          ${this.step.asks === "value" && this.#feature.unit !== "mm" ? nothing : html`<b>${text.units[this.unit].sign}</b>`}</span
        ></label
      >
      <p
        id="problem"
        class="problem"
        role=${this.problem ? "alert" : nothing}
        ?hidden=${!this.problem}
      >
        ${this.problem}
      </p>
      ${
        this.tall === undefined
          ? nothing
          : html`<button class="again" @click=${() => this.#awaitWidth(undefined)}>
              ${text.measure.step.heightAgain}
            </button>`
      }
      ${asked ? slipButtons(asked, this.#words(asked.value), (value) => this.#answer(value)) : nothing}
      ${isThumb() ? html`<number-pad .text=${text} @pad-key=${this.#onPad}></number-pad>` : nothing}`;
  }

  #words(value: number) {
    const { text, model } = this;
    return {
      words: text.measure.ask,
      units: text.units,
      // As it stands in the field; a ratio or a rise is computed, and told as such.
      typed:
        this.step.asks === "value"
          ? `${this.typed} ${unitSign(this.#feature, this.unit, text)}`.trim()
          : this.#withUnit(value),
      // To the digits of the gauge: what a converted number has behind them nobody has read.
      shown: (one: number): string => readingWithUnit(this.#feature, one, this.unit, text),
      usual: this.step.usual.map((one) => this.#withUnit(one)),
      label: (id: string): string => model.features.find((one) => one.id === id)!.label,
    };
  }

  #taken() {
    const { readings, step, text } = this;
    if (readings.length === 0 || step.asks === "picture") return nothing;
    return takenReadings(readings, {
      words: text.measure.step,
      feature: step.feature,
      shown: (value) => this.#withUnit(value),
      places: text.measure.places,
      warnings: this.#warnings(readings),
      remove: (index) => this.#set(readings.filter((_, i) => i !== index)),
    });
  }

  #warnings(readings: readonly Reading[]): string[] {
    const { step, values, model, unit, text } = this;
    return stepWarnings(step.feature, values, readings).map((one) =>
      checkText(one, model, unit, text),
    );
  }

  #withUnit(value: number): string {
    return readingWithUnit(this.#feature, value, this.unit, this.text, true);
  }

  #onInput(event: Event): void {
    this.typed = (event.target as HTMLInputElement).value;
    this.problem = "";
    this.asked = undefined;
  }

  /** Enter goes on; erasing in an empty field takes the height of a wire back, or goes back. */
  #onKey(event: KeyboardEvent): void {
    if (event.key === "Enter") {
      event.preventDefault();
      this.enter();
    } else if (event.key === "Backspace" && this.typed === "") {
      event.preventDefault();
      if (this.tall !== undefined) this.#awaitWidth(undefined);
      else this.dispatchEvent(new Event("sheet-back", { bubbles: true, composed: true }));
    }
  }

  #onPad({ key }: PadKeyEvent): void {
    if (key === "enter") {
      this.enter();
      return;
    }
    // After a refused number the next digit begins another one.
    const refused = this.problem !== "" || this.asked !== undefined;
    if (key === "erase") this.typed = this.typed.slice(0, -1);
    else this.typed = refused ? key : this.typed + key;
    this.problem = "";
    this.asked = undefined;
  }

  /** Takes what stands in the field; an empty field means: go on. */
  enter(): void {
    if (this.typed.trim() === "" && this.tall !== undefined) {
      this.problem = this.text.measure.step.widthMissing;
      return;
    }
    if (this.typed.trim() === "" || this.#prompt === undefined) {
      this.#next();
      return;
    }
    const { step } = this;
    const length =
      step.asks === "value" ? this.#feature : { ...this.#feature, unit: "mm" as const };
    const value = typedValue(length, this.typed, this.unit);
    if (value === undefined) this.problem = this.text.measure.step.cannotRead(this.typed);
    else if (step.asks === "heightAndWidth" && this.tall === undefined) this.#awaitWidth(value);
    else
      this.#consider(
        stepReading(this.model, step, this.values, { value, unit: this.unit, tall: this.tall }),
      );
  }

  /** The height of a wire is read, and its width awaited; undefined: the height is to be read again. */
  #awaitWidth(value: number | undefined): void {
    const { feature } = this.step;
    const height = value === undefined ? undefined : { feature, value };
    this.dispatchEvent(new BenchActionEvent({ type: "height-read", height }));
    this.#clear();
    this.focus();
  }

  #consider(asked: StepReading): void {
    if (!Number.isFinite(asked.value)) this.problem = this.text.measure.step.cannotRead(this.typed);
    else if (asked.questions.length > 0) this.asked = asked;
    else this.#take(asked.value);
  }

  /** The answer to a question: a value, or undefined to type again. */
  #answer(value: number | undefined): void {
    if (value !== undefined) this.#take(value);
    else this.#clear();
    this.focus();
  }

  #take(value: number): void {
    const { feature } = this.step;
    const readings = [...this.readings, { place: nextPlace(feature, this.readings), value }];
    const last = isEveryPlaceRead(feature, readings) && !this.again;
    this.#clear();
    this.#set(readings);
    // What does not go together is told here, where it can still be read again.
    if (last && this.#warnings(readings).length === 0) this.#next();
  }

  #set(readings: readonly Reading[]): void {
    const { feature } = this.step;
    this.dispatchEvent(
      new BenchActionEvent({ type: "places-read", feature, readings, own: this.text.bar.ownReed }),
    );
  }

  #next(): void {
    this.dispatchEvent(new Event("sheet-next", { bubbles: true, composed: true }));
  }

  #clear(): void {
    this.typed = "";
    this.asked = undefined;
    this.problem = "";
    this.again = false;
  }

  override focus(): void {
    const part = this.step.asks === "picture" ? "hinging-choice" : "input, .again";
    this.renderRoot.querySelector<HTMLElement>(part)?.focus();
  }
}

/** Whether a thumb works the page: then large keys stand on it, and the device's keyboard stays away. */
function isThumb(): boolean {
  return typeof matchMedia === "function" && matchMedia("(pointer: coarse)").matches;
}
