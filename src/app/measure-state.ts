import { LitElement, css, html, nothing } from "lit";
import { live } from "lit/directives/live.js";
import type { Bench, Wet } from "../reed/bench.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import { look } from "../widgets/look.js";
import { BenchActionEvent } from "./bench-action-event.js";
import type { Sheet } from "./blank-sheet.js";

/**
 * The state of reed and gauge before the first reading: soaked or dry, zero checked. Sets of both kinds are not mixed.
 *
 * @fires bench-action - soaked or dry, zero checked, a new set
 */
export class MeasureState extends LitElement {
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
        margin: 0.6rem 0;
        padding: 0;
        border: 0;
      }
      label {
        display: flex;
        gap: 0.5rem;
        align-items: center;
        min-height: 2.75rem;
        cursor: pointer;
      }
      input {
        flex: none;
        width: 1.35rem;
        height: 1.35rem;
        margin: 0;
      }
      .mixed {
        max-width: 34rem;
        padding: 0.7rem 0.9rem;
        border: 2px solid var(--accent);
        border-radius: 8px;
      }
      .mixed button {
        min-height: 2.75rem;
      }
      p {
        max-width: 40rem;
      }
    `,
  ];

  static override properties = {
    bench: { attribute: false },
    sheet: { attribute: false },
    text: { attribute: false },
    wanted: { state: true },
  };

  declare bench: Bench;
  declare sheet: Sheet;
  declare text: Catalogue;
  /** The other state, while it is asked whether a new set begins. */
  declare wanted: Wet;

  constructor() {
    super();
    this.text = english;
    this.wanted = "";
  }

  /** On its title: there a new step begins to be read. */
  override focus(): void {
    this.renderRoot.querySelector<HTMLElement>("h2")?.focus();
  }

  override render() {
    const words = this.text.measure.state;
    const { wet } = this.bench;
    return html`<h2 tabindex="-1">${words.title}</h2>
      <fieldset>
        <legend>${words.question}</legend>
        ${(["soaked", "dry"] as const).map(
          (one) =>
            html`<label
              ><input
                type="radio"
                name="wet"
                .checked=${live(wet === one)}
                @change=${() => this.#pick(one)}
              />${words[one]}</label
            >`,
        )}
      </fieldset>
      ${this.wanted ? this.#mixed() : nothing}
      ${wet === "dry" ? html`<p>${words.dryNote}</p>` : nothing}
      <label
        ><input
          type="checkbox"
          .checked=${live(this.sheet.zero)}
          @change=${this.#onZero}
        />${words.zero(words.feeler[this.bench.unit])}</label
      >
      ${this.sheet.zero ? nothing : html`<p>${words.zeroMissing}</p>`}`;
  }

  #mixed() {
    const words = this.text.measure.state;
    const was = this.bench.wet === "dry" ? words.wasDry : words.wasSoaked;
    const count = Object.keys(this.bench.values).length;
    return html`<div class="mixed" role="alert">
      <p>${words.mixed(was)}</p>
      <button @click=${this.#correct}>
        ${this.wanted === "dry" ? words.correctDry : words.correctSoaked}
      </button>
      <button @click=${this.#newSet}>${words.newSet(count)}</button>
      <button @click=${this.#leave}>${words.keep}</button>
    </div>`;
  }

  #pick(wet: Wet): void {
    const { bench } = this;
    const begun = Object.keys(bench.values).length > 0 && bench.wet !== "";
    if (begun && wet !== bench.wet) this.wanted = wet;
    else this.#set(wet);
  }

  #set(wet: Wet): void {
    this.dispatchEvent(new BenchActionEvent({ type: "wet-set", wet }));
  }

  /** The state was told wrongly; the readings are those of the other one. */
  #correct(): void {
    this.#set(this.wanted);
    this.wanted = "";
  }

  #newSet(): void {
    const { wanted: wet, bench } = this;
    this.wanted = "";
    this.dispatchEvent(new BenchActionEvent({ type: "set-started", reed: bench.reed, wet }));
  }

  #leave(): void {
    this.wanted = "";
  }

  #onZero(event: Event): void {
    const on = (event.target as HTMLInputElement).checked;
    this.dispatchEvent(new BenchActionEvent({ type: "zero-set", on }));
  }
}
