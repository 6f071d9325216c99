import { LitElement, html, nothing } from "lit";
import type { FeatureId, ReedModel, Values } from "../engine/model.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import { readingText, unitSign } from "../reed/reading-text.js";
import { typedReading } from "../reed/typed-reading.js";
import type { LengthUnit } from "../reed/units.js";
import { ReadingsTakenEvent } from "./events.js";
import { look } from "./look.js";
import { reedStepsStyle } from "./reed-steps-style.js";

/**
 * The new readings after a step; what is left empty is taken as the step should have made it, which stands there in grey.
 *
 * @fires readings-taken - what was read, in the features' own units
 * @fires readings-put-off - not done yet
 */
export class ReedStepReadings extends LitElement {
  static override styles = [look, reedStepsStyle];

  static override properties = {
    model: { attribute: false },
    asked: { attribute: false },
    expected: { attribute: false },
    unit: { type: String },
    text: { attribute: false },
    problems: { state: true },
  };

  declare model: ReedModel;
  declare asked: readonly FeatureId[];
  /** The reed after the step, as the effects say. */
  declare expected: Values;
  declare unit: LengthUnit;
  declare text: Catalogue;
  declare problems: Readonly<Record<FeatureId, string>>;

  constructor() {
    super();
    this.asked = [];
    this.expected = {};
    this.unit = "mm";
    this.text = english;
    this.problems = {};
  }

  override render() {
    const words = this.text.planPage.plan;
    return html`<form
      novalidate
      aria-label=${words.newReadings}
      @submit=${this.#onSubmit}
      @keydown=${this.#onKey}
    >
      <h3>${words.newReadings}</h3>
      <p class="soft">${words.expected}</p>
      <div class="fields">${this.asked.map((id) => this.#field(id))}</div>
      <div class="buttons">
        <button class="take">${words.take}</button>
        <button type="button" @click=${this.#putOff}>${words.notYet}</button>
      </div>
    </form>`;
  }

  #field(id: FeatureId) {
    const { text, unit } = this;
    const feature = this.model.features.find((one) => one.id === id)!;
    const problem = this.problems[id];
    return html`<div class="field">
      <label for=${id}
        >${text.planPage.plan.reading(feature.label, unitSign(feature, unit, text))}</label
      >
      <input
        id=${id}
        type="text"
        inputmode="decimal"
        autocomplete="off"
        placeholder=${readingText(feature, this.expected[id]!, unit, text)}
        aria-invalid=${problem ? "true" : nothing}
        aria-describedby=${problem ? `${id}-problem` : nothing}
      />
      ${problem ? html`<p class="problem" role="alert" id="${id}-problem">${problem}</p>` : nothing}
    </div>`;
  }

  override focus(): void {
    const first = this.renderRoot.querySelector<HTMLElement>("input, .take");
    first?.focus();
  }

  #onSubmit(event: Event): void {
    event.preventDefault();
    const readings: Record<FeatureId, readonly number[]> = {};
    const problems: Record<FeatureId, string> = {};
    for (const id of this.asked) {
      const typed = this.renderRoot.querySelector<HTMLInputElement>(`#${id}`)!.value;
      if (typed.trim() === "") continue;
      const feature = this.model.features.find((one) => one.id === id)!;
      const { value, problem } = typedReading(feature, typed, undefined, this.unit, this.text);
      if (value === undefined) problems[id] = problem;
      else readings[id] = [value];
    }
    this.problems = problems;
    const [wrong] = Object.keys(problems);
    if (wrong === undefined) this.dispatchEvent(new ReadingsTakenEvent(readings, true));
    else this.renderRoot.querySelector<HTMLElement>(`#${wrong}`)?.focus();
  }

  #onKey(event: KeyboardEvent): void {
    if (event.key === "Escape") this.#putOff();
  }

  #putOff(): void {
    this.dispatchEvent(new Event("readings-put-off"));
  }
}
