import { LitElement, html, nothing } from "lit";
import type { Feature, FeatureId, ReedModel, Values } from "../engine/model.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import { readingText, unitSign } from "../reed/reading-text.js";
import { typedReading } from "../reed/typed-reading.js";
import type { LengthUnit } from "../reed/units.js";
import { isWire, wireReading } from "../reed/wire-reading.js";
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
      <div class="fields">
        ${this.asked.map((id) => (isWire(id) ? this.#wire(id) : this.#field(id)))}
      </div>
      <div class="buttons">
        <button class="take">${words.take}</button>
        <button type="button" @click=${this.#putOff}>${words.notYet}</button>
      </div>
    </form>`;
  }

  #feature(id: FeatureId): Feature {
    return this.model.features.find((one) => one.id === id)!;
  }

  /** A wire is read as on the measuring sheet: height and width; its roundness does, too. */
  #wire(id: FeatureId) {
    const { text, unit } = this;
    const feature = this.#feature(id);
    const words = text.planPage.plan;
    const { height, width, roundness } = words.wireParts;
    const sign = text.units[unit].sign;
    const expected = readingText(feature, this.expected[id]!, unit, text);
    return html`<fieldset class="field wire">
      <legend>${words.wire(feature.label)}</legend>
      ${this.#input(id, `${id}-height`, height(sign), "")}
      ${this.#input(id, `${id}-width`, width(sign), "")} ${this.#input(id, id, roundness, expected)}
      ${this.#problem(id)}
    </fieldset>`;
  }

  #input(id: FeatureId, name: string, label: string, expected: string) {
    const problem = this.problems[id];
    return html`<span class="part"
      ><label for=${name}>${label}</label>
      <input
        id=${name}
        type="text"
        inputmode="decimal"
        autocomplete="off"
        placeholder=${expected || nothing}
        aria-invalid=${problem ? "true" : nothing}
        aria-describedby=${problem ? `${id}-problem` : nothing}
    /></span>`;
  }

  #problem(id: FeatureId) {
    const problem = this.problems[id];
    return problem
      ? html`<p class="problem" role="alert" id="${id}-problem">${problem}</p>`
      : nothing;
  }

  #field(id: FeatureId) {
    const { text, unit } = this;
    const feature = this.#feature(id);
    const label = text.planPage.plan.reading(feature.label, unitSign(feature, unit, text));
    const expected = readingText(feature, this.expected[id]!, unit, text);
    return html`<div class="field">
      ${this.#input(id, id, label, expected)} ${this.#problem(id)}
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
      const read = this.#read(id);
      if (!read) continue;
      if (read.value === undefined) problems[id] = read.problem;
      else readings[id] = [read.value];
    }
    this.problems = problems;
    const [wrong] = Object.keys(problems);
    if (wrong === undefined) this.dispatchEvent(new ReadingsTakenEvent(readings, true));
    else this.#focusOn(wrong);
  }

  /** In the middle of the window: the triangle may stand over its upper part. */
  #focusOn(id: FeatureId): void {
    const all = ["-height", "-width", ""].flatMap(
      (part) => this.renderRoot.querySelector<HTMLInputElement>(`#${id}${part}`) ?? [],
    );
    const field = all.find(({ value }) => value.trim() !== "") ?? all[0];
    field?.focus({ preventScroll: true });
    field?.scrollIntoView({ block: "center" });
  }

  /** What was typed; undefined where nothing was. */
  #read(id: FeatureId) {
    const { unit, text } = this;
    const feature = this.#feature(id);
    const typed = (name: string): string =>
      this.renderRoot.querySelector<HTMLInputElement>(`#${name}`)!.value;
    if (isWire(id)) {
      const [height, width] = [typed(`${id}-height`), typed(`${id}-width`)];
      return wireReading(feature, { height, width, roundness: typed(id) }, unit, text);
    }
    if (typed(id).trim() === "") return undefined;
    return typedReading(feature, typed(id), undefined, unit, text);
  }

  #onKey(event: KeyboardEvent): void {
    if (event.key === "Escape") this.#putOff();
  }

  #putOff(): void {
    this.dispatchEvent(new Event("readings-put-off"));
  }
}
