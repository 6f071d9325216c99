import { LitElement, html, nothing } from "lit";
import type { FeatureId, ReedModel } from "../engine/model.js";
import type { StepNotes } from "../engine/plan-notes.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import type { StepSentences } from "../reed/plan-sentences.js";
import { readingText, unitSign } from "../reed/reading-text.js";
import type { LengthUnit } from "../reed/units.js";
import { isWire } from "../reed/wire-reading.js";
import { StepDoneEvent } from "./advice-events.js";
import { define } from "./define.js";
import type { ReadingsTakenEvent } from "./events.js";
import { look } from "./look.js";
import { ReedStepReadings } from "./reed-step-readings.js";
import { reedStepsStyle } from "./reed-steps-style.js";

define("reed-step-readings", ReedStepReadings);

/**
 * Steps in the order of trying: what to do, how, caution, pitch, what to read again. "Done" on the first asks for the new
 * readings of what it touched.
 *
 * @fires step-done - a step has been done, with what was read after it
 */
export class ReedSteps extends LitElement {
  static override styles = [look, reedStepsStyle];

  static override properties = {
    model: { attribute: false },
    notes: { attribute: false },
    said: { attribute: false },
    measured: { attribute: false },
    unit: { type: String },
    list: { type: String },
    text: { attribute: false },
    doing: { state: true },
  };

  declare model: ReedModel;
  declare notes: readonly StepNotes[];
  /** What is said of each of them. */
  declare said: readonly StepSentences[];
  /** Features with a reading now: the others are not asked for. */
  declare measured: readonly FeatureId[];
  declare unit: LengthUnit;
  /** What the steps are: the buttons of two lists on one page have different names. */
  declare list: "plan" | "help";
  declare text: Catalogue;
  /** The new readings after the first step are asked for. */
  declare doing: boolean;

  constructor() {
    super();
    this.notes = [];
    this.said = [];
    this.measured = [];
    this.unit = "mm";
    this.list = "plan";
    this.text = english;
    this.doing = false;
  }

  /** Other steps: nothing is asked of the old ones. */
  override willUpdate(changed: Map<string, unknown>): void {
    const before = changed.get("notes") as readonly StepNotes[] | undefined;
    if (before && !isSameSteps(before, this.notes)) this.doing = false;
  }

  override render() {
    return html`<ol>
      ${this.notes.map((note, index) => this.#step(note, this.said[index]!, index))}
    </ol>`;
  }

  #step(note: StepNotes, said: StepSentences, index: number) {
    const words = this.text.planPage.plan;
    return html`<li class="step">
      <span class="number" aria-hidden="true">${index + 1}</span>
      <div>
        <h3 class="deed">
          <span class="unseen">${words.steps[this.list].step(index + 1)}: </span>${said.deed}
        </h3>
        ${said.readFirst ? html`<p><strong>${said.readFirst}</strong></p>` : nothing}
        <p>${[said.how, said.until, said.byEar].filter(Boolean).join(" ")}</p>
        <p class="caution"><strong>${words.caution}</strong> ${said.caution}</p>
        <p>
          <span class=${note.action.reversible ? "" : "final"}>${said.undo}</span> ${said.pitch}
        </p>
        <p class="reread">${said.readAgain}</p>
        ${this.#blanks(note)}
        <p>${said.play}</p>
        ${index === 0 ? this.#doing(note, said.deed) : nothing}
      </div>
    </li>`;
  }

  /** Only the first step can be done now: what the others are to be, the next readings tell. */
  #doing(note: StepNotes, deed: string) {
    const { text } = this;
    if (this.doing) return this.#form(note);
    return html`<button
      class="done"
      aria-label=${text.planPage.plan.steps[this.list].done(1, deed)}
      @click=${this.#open}
    >
      ${text.advice.plan.done}
    </button>`;
  }

  #form(note: StepNotes) {
    return html`<reed-step-readings
      .model=${this.model}
      .asked=${this.#asked(note)}
      .expected=${note.values}
      .unit=${this.unit}
      .text=${this.text}
      @readings-taken=${(event: ReadingsTakenEvent) => this.#onTaken(event, note)}
      @readings-put-off=${this.#putOff}
    ></reed-step-readings>`;
  }

  /** On paper: a line for every new reading. */
  #blanks(note: StepNotes) {
    const { text, unit } = this;
    return html`<p class="blanks">
      <span class="whole">${text.planPage.plan.blanks}</span>
      ${this.#asked(note).map((id) => {
        const feature = this.model.features.find((one) => one.id === id)!;
        const expected = readingText(feature, note.values[id]!, unit, text);
        const line = html`<span class="line"></span>`;
        const { height, width } = text.planPage.plan.wireReadings;
        return html`<span
          >${feature.label}
          ${isWire(id) ? html`${height} ${line} ${width} ${line}` : html`${line} ${unitSign(feature, unit, text)}`}
          ${text.planPage.plan.expectedShort(expected)}</span
        >`;
      })}
    </p>`;
  }

  #asked({ readAgain }: StepNotes): FeatureId[] {
    return readAgain.filter((id) => this.measured.includes(id));
  }

  #open(): void {
    this.doing = true;
    void this.#focusOn("reed-step-readings");
  }

  #putOff(): void {
    this.doing = false;
    void this.#focusOn(".done");
  }

  async #focusOn(selector: string): Promise<void> {
    await this.updateComplete;
    const element = this.renderRoot.querySelector<LitElement>(selector);
    await element?.updateComplete;
    element?.focus();
  }

  #onTaken(event: ReadingsTakenEvent, { action, amount }: StepNotes): void {
    event.stopPropagation(); // these are the readings of a step, not of a table
    const { readings } = event;
    this.doing = false;
    this.dispatchEvent(new StepDoneEvent(action.id, amount, readings));
  }
}

function isSameSteps(a: readonly StepNotes[], b: readonly StepNotes[]): boolean {
  return (
    a.length === b.length &&
    a.every(({ action, amount }, i) => action === b[i]!.action && amount === b[i]!.amount)
  );
}
