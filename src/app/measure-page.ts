import { LitElement, html, nothing, type PropertyValues } from "lit";
import type { FeatureId } from "../engine/model.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import { measuringSteps } from "../reed/measuring-steps.js";
import { define } from "../widgets/define.js";
import type { FeaturePointedEvent } from "../widgets/events.js";
import { look } from "../widgets/look.js";
import { ReedDrawing } from "../widgets/reed-drawing.js";
import { ReedSentence } from "../widgets/reed-sentence.js";
import { ReedTriangle } from "../widgets/reed-triangle.js";
import { BenchActionEvent } from "./bench-action-event.js";
import { viewBench } from "./bench-view.js";
import { withTried } from "../reed/tried.js";
import { isGiven } from "./bench-reed.js";
import type { BenchAction } from "./bench-state.js";
import type { Shown } from "./bench-words.js";
import { MeasureHead } from "./measure-head.js";
import { MeasureLook } from "./measure-look.js";
import { measurePageStyle } from "./measure-page-style.js";
import { MeasurePaper } from "./measure-paper.js";
import { MeasureStart } from "./measure-start.js";
import { MeasureState } from "./measure-state.js";
import { MeasureStep } from "./measure-step.js";
import { nextReadingText } from "./next-reading-text.js";
import { guessText, isRead, readingsOf } from "./read-features.js";
import { MeasureSummary, type StepAskedEvent } from "./measure-summary.js";
import { blankSheet, firstFeatureStep } from "./blank-sheet.js";

define("measure-head", MeasureHead);
define("measure-look", MeasureLook);
define("measure-start", MeasureStart);
define("measure-state", MeasureState);
define("measure-step", MeasureStep);
define("measure-summary", MeasureSummary);
define("measure-paper", MeasurePaper);
define("reed-drawing", ReedDrawing);
define("triangle-plane", ReedTriangle);
define("reed-sentence", ReedSentence);

/** The summary is last. */
const lastStep = firstFeatureStep + measuringSteps.length;

/**
 * The guided sheet: is it sound, its state, then one reading after another, each with its place on the drawing; the point
 * appears as soon as the readings can place it, and its ellipse tightens.
 *
 * @fires bench-action - answers, readings, pages of the sheet, the way to the bench
 */
export class MeasurePage extends LitElement {
  static override styles = [look, measurePageStyle];

  static override properties = {
    shown: { attribute: false },
    narrow: { type: Boolean },
    text: { attribute: false },
    pointed: { state: true },
    printed: { state: true },
  };

  declare shown: Shown;
  /** One column. */
  declare narrow: boolean;
  /** The same without what is tried. */
  declare private base: Shown;
  declare text: Catalogue;
  /** Where a look goes on the drawing. */
  declare pointed: string | undefined;
  /** Which sheet goes to the printer. */
  declare printed: "blank" | "filled";

  constructor() {
    super();
    this.text = english;
    this.narrow = false;
    this.printed = "filled";
  }

  /** What is tried on the bench is no reading: the sheet shows what the reed has. */
  override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has("shown") && !changed.has("text")) return;
    const { state } = this.shown;
    const { bench } = state.present;
    if (!bench.tried) this.base = this.shown;
    else {
      const present = { ...state.present, bench: withTried(bench, undefined) };
      const measured = { ...state, present };
      this.base = { state: measured, view: viewBench(measured, this.text) };
    }
  }

  override render() {
    const { text } = this;
    const { state } = this.base;
    const begun =
      state.present.sheet !== undefined ||
      !isGiven({ model: state.model, bench: state.present.bench });
    return html`<section class="sheet" aria-label=${text.measure.title}>
        ${
          begun
            ? this.#sheet()
            : html`<measure-start
                .reed=${state.present.bench.reed}
                .text=${text}
                @blank-asked=${() => this.#print("blank")}
              ></measure-start>`
        }
      </section>
      <measure-paper
        .model=${state.model}
        .moment=${state.present}
        .blank=${this.printed === "blank" || !begun}
        .text=${text}
      ></measure-paper>`;
  }

  #sheet() {
    const { text } = this;
    const words = text.measure;
    const { step } = this;
    const atEnd = step === lastStep;
    return html`<measure-head
        .step=${step}
        .names=${this.#stepNames()}
        .reed=${this.#moment.bench.reed || text.bar.allRound}
        .unit=${this.#moment.bench.unit}
        .text=${text}
      ></measure-head>
      <div class="both">
        ${this.#figure(step)}
        <div class="step">
          ${this.#step(step)}
          <div class="turn">
            <button ?disabled=${step === 0} @click=${this.#back}>${words.back}</button>
            ${
              step >= firstFeatureStep && !atEnd && !this.#isRead(step)
                ? html`<button @click=${this.#skip}>${words.skip}</button>`
                : nothing
            }
            <button class="main" @click=${atEnd ? this.#stop : this.#enter}>
              ${atEnd ? words.summary.toBench : words.next}
            </button>
          </div>
          <p class="aside">
            ${
              atEnd
                ? html`<button @click=${() => this.#print("blank")}>
                      ${words.summary.printBlank}
                    </button>
                    <button @click=${() => this.#print("filled")}>
                      ${words.summary.printFilled}
                    </button>`
                : html`<button @click=${this.#stop}>${words.stop}</button>`
            }
          </p>
        </div>
        ${this.#place()}
      </div>`;
  }

  get step(): number {
    return Math.min(lastStep, this.#moment.sheet?.step ?? 0);
  }

  get #moment() {
    return this.base.state.present;
  }

  #isRead(step: number): boolean {
    const { feature } = measuringSteps[step - firstFeatureStep]!;
    return isRead(this.#moment.bench, feature);
  }

  #stepNames(): string[] {
    const words = this.text.measure;
    const { features } = this.base.state.model;
    const names = measuringSteps.map(
      ({ feature }) => features.find(({ id }) => id === feature)!.label,
    );
    return [words.sound.title, words.state.title, ...names, words.summary.title];
  }

  #step(step: number) {
    const { text } = this;
    const { bench, sheet = blankSheet } = this.#moment;
    const { model } = this.base.state;
    if (step === 0)
      return html`<measure-look
        .bench=${bench}
        .sheet=${sheet}
        .text=${text}
        @feature-pointed=${this.#onPointed}
      ></measure-look>`;
    if (step === 1)
      return html`<measure-state .bench=${bench} .sheet=${sheet} .text=${text}></measure-state>`;
    if (step === lastStep)
      return html`<measure-summary
        .model=${model}
        .moment=${this.#moment}
        .text=${text}
        @step-asked=${this.#onStepAsked}
      ></measure-summary>`;
    const measuring = measuringSteps[step - firstFeatureStep]!;
    const { feature } = measuring;
    return html`<measure-step
      .model=${model}
      .step=${measuring}
      .values=${bench.values}
      .readings=${readingsOf(this.#moment, feature)}
      .tall=${sheet.height?.feature === feature ? sheet.height.value : undefined}
      .guess=${guessText(this.#moment, model, feature, text)}
      .unit=${bench.unit}
      .text=${text}
      @sheet-next=${this.#next}
      @sheet-back=${this.#back}
    ></measure-step>`;
  }

  /** The reed with the place to be read; on a phone only the part of the drawing where it is. */
  #figure(step: number) {
    const { text, narrow } = this;
    const { model, present } = this.base.state;
    const pointed = measuringSteps[step - firstFeatureStep]?.feature ?? this.pointed;
    const endOn = pointed && /opening|Wire|hinging/.test(pointed) && !/wings|rails/.test(pointed);
    // No room is made between touch and click: before the first reading a phone shows no drawing.
    if (narrow && step < firstFeatureStep) return nothing;
    return html`<figure>
      <reed-drawing
        .model=${model}
        .values=${present.bench.values}
        .unit=${present.bench.unit}
        lying
        brief
        .crop=${narrow ? (endOn ? "ends" : "blade") : undefined}
        .pointed=${pointed}
        .text=${text}
      ></reed-drawing>
    </figure>`;
  }

  #place() {
    const { text } = this;
    const { state, view } = this.base;
    return html`<aside aria-label=${text.triangle.title}>
      <triangle-plane
        still
        .blend=${view.placed?.raw}
        .ellipse=${view.drawnEllipse}
        .layers=${["certainty"]}
        .greatestHeight=${260}
        .text=${text}
      ></triangle-plane>
      <reed-sentence .sentence=${view.sentence}></reed-sentence>
      ${view.placed && this.step < lastStep ? html`<p>${nextReadingText(state, text)}</p>` : nothing}
    </aside>`;
  }

  /** A new step is read from its top, with the cursor in its field. */
  override updated(changed: PropertyValues<this>): void {
    const before = changed.get("shown");
    if (!before || !this.shown.state.present.sheet) return;
    if (before.state.present.sheet?.step === this.step) return;
    this.renderRoot.querySelector(".sheet")?.scrollIntoView({ block: "nearest" });
    const part = this.renderRoot.querySelector<LitElement>(".step > :first-child");
    void part?.updateComplete.then(() => part.focus());
  }

  readonly #enter = (): void => {
    const part = this.renderRoot.querySelector<MeasureStep>("measure-step");
    if (part) part.enter();
    else this.#next();
  };

  readonly #next = (): void => this.#turn(this.step + 1);

  readonly #back = (): void => this.#turn(this.step - 1);

  readonly #skip = (): void => {
    const { feature } = measuringSteps[this.step - firstFeatureStep]!;
    this.#act({ type: "places-read", feature, readings: [], own: this.text.bar.ownReed });
    this.#next();
  };

  readonly #stop = (): void => this.#act({ type: "page-set", page: "bench" });

  #turn(step: number): void {
    this.#act({ type: "sheet-moved", step: Math.max(0, Math.min(lastStep, step)) });
  }

  #onStepAsked({ feature }: StepAskedEvent): void {
    this.#turn(firstFeatureStep + stepOf(feature));
  }

  #onPointed(event: FeaturePointedEvent): void {
    event.stopPropagation();
    this.pointed = event.feature;
  }

  async #print(which: "blank" | "filled"): Promise<void> {
    this.printed = which;
    await this.updateComplete;
    window.print();
    this.printed = "filled";
  }

  #act(action: BenchAction): void {
    this.dispatchEvent(new BenchActionEvent(action));
  }
}

function stepOf(feature: FeatureId): number {
  return measuringSteps.findIndex((one) => one.feature === feature);
}
