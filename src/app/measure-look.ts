import { LitElement, css, html, nothing } from "lit";
import { live } from "lit/directives/live.js";
import type { Bench } from "../reed/bench.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import { bassoonSymptoms, type SoundnessCheck } from "../reed/symptoms.js";
import { FeaturePointedEvent } from "../widgets/events.js";
import { look } from "../widgets/look.js";
import { BenchActionEvent } from "./bench-action-event.js";
import type { Sheet } from "./blank-sheet.js";

/** Where on the drawing a look goes; none for what is not on the reed. */
const placeOfLook: Readonly<Record<string, string>> = {
  tight: "wings rails",
  wires: "firstWire secondWire",
  whole: "tip tipWidth",
  even: "wings rails openingHeight",
};

/**
 * Is it sound? Six looks before measuring; a reed that fails one gets no place until that is mended or overruled.
 *
 * @fires bench-action - an answer, or the overruling
 * @fires feature-pointed - where on the drawing to look
 */
export class MeasureLook extends LitElement {
  static override styles = [
    look,
    css`
      :host {
        display: block;
        min-width: 0;
      }
      h2 {
        font-size: 1.375rem;
      }
      fieldset {
        margin: 0.6rem 0 0;
        padding: 0.6rem 0 0;
        border: 0;
        border-top: 1px solid var(--rule);
      }
      legend {
        float: inline-start;
        width: 100%;
        padding: 0 0 0.2rem;
      }
      label {
        display: inline-flex;
        gap: 0.4rem;
        align-items: center;
        min-width: 6rem;
        min-height: 2.75rem;
        cursor: pointer;
      }
      input {
        width: 1.35rem;
        height: 1.35rem;
        margin: 0;
      }
      .help {
        margin: 0;
        font-weight: 600;
      }
      .stopped {
        max-width: 36rem;
        margin-top: 0.8rem;
        padding: 0.7rem 0.9rem;
        border: 2px solid var(--loud-word);
        border-radius: 8px;
      }
      .stopped p {
        margin: 0 0 0.5rem;
      }
    `,
  ];

  static override properties = {
    bench: { attribute: false },
    sheet: { attribute: false },
    text: { attribute: false },
  };

  declare bench: Bench;
  declare sheet: Sheet;
  declare text: Catalogue;

  constructor() {
    super();
    this.text = english;
  }

  /** On its title: there a new step begins to be read. */
  override focus(): void {
    this.renderRoot.querySelector<HTMLElement>("h2")?.focus();
  }

  override render() {
    const words = this.text.measure.sound;
    return html`<h2 tabindex="-1">${words.title}</h2>
      <p>${words.explain}</p>
      ${bassoonSymptoms.soundness.map((check) => this.#check(check))} ${this.#stopped()}`;
  }

  #check({ id }: SoundnessCheck) {
    const words = this.text.measure.sound;
    const { look: what, firstHelp } = words.looks[id]!;
    const answer = this.sheet.sound[id] ?? (this.bench.unsound.includes(id) ? "not" : undefined);
    const point = (): boolean => this.dispatchEvent(new FeaturePointedEvent(placeOfLook[id]));
    return html`<fieldset @pointerenter=${point} @focusin=${point}>
      <legend>${what}</legend>
      ${(["ok", "not"] as const).map(
        (one) =>
          html`<label
            ><input
              type="radio"
              name=${id}
              .checked=${live(answer === one)}
              @change=${() => this.#act(id, one)}
            />${words[one]}</label
          >`,
      )}
      ${answer === "not" ? html`<p class="help">${words.firstHelp(firstHelp)}</p>` : nothing}
    </fieldset>`;
  }

  #stopped() {
    const words = this.text.measure.sound;
    const { unsound, overruled } = this.bench;
    if (unsound.length === 0) return nothing;
    return html`<div class="stopped">
      <p>${overruled ? words.overruled : words.stopped}</p>
      <label
        ><input
          type="checkbox"
          .checked=${live(overruled)}
          @change=${(event: Event) =>
            this.dispatchEvent(
              new BenchActionEvent({
                type: "overruled-set",
                on: (event.target as HTMLInputElement).checked,
              }),
            )}
        />${words.overrule}</label
      >
    </div>`;
  }

  #act(check: string, answer: "ok" | "not"): void {
    this.dispatchEvent(new BenchActionEvent({ type: "sound-set", check, answer }));
  }
}
