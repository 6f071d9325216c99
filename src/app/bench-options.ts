import { LitElement, css, html, nothing } from "lit";
import type { Bench, Layer } from "../reed/bench.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import { targets } from "../reed/targets.js";
import { look } from "../widgets/look.js";
import { BenchActionEvent } from "./bench-action-event.js";
import type { BenchAction } from "./bench-state.js";

/**
 * How the recipe follows the point, and what is laid over the triangle.
 *
 * @fires bench-action - another way of following, a layer on or off
 */
export class BenchOptions extends LitElement {
  static override styles = [
    look,
    css`
      :host {
        display: block;
      }
      fieldset,
      .layers {
        display: flex;
        flex-wrap: wrap;
        gap: 0.2rem 1rem;
        align-items: center;
        margin: 0 0 0.4rem;
        padding: 0;
        border: 0;
      }
      legend {
        float: inline-start;
        padding: 0;
        color: var(--ink-soft);
      }
      label {
        display: inline-flex;
        gap: 0.4rem;
        align-items: center;
        min-height: 1.75rem;
        cursor: pointer;
      }
      label {
        max-width: 100%;
      }
      select {
        min-width: 0;
        max-width: 100%;
        flex: 1 1 8rem;
      }
      input {
        width: 1.1rem;
        height: 1.1rem;
        margin: 0;
        accent-color: var(--accent);
      }
      .hint {
        flex-basis: 100%;
        margin: 0;
        color: var(--ink-soft);
        font-size: 0.8125rem;
      }
    `,
  ];

  static override properties = { bench: { attribute: false }, text: { attribute: false } };

  declare bench: Bench;
  declare text: Catalogue;

  constructor() {
    super();
    this.text = english;
  }

  override render() {
    const words = this.text.triangle;
    const { finished, layers } = this.bench;
    const explained = ["readingLines", "certainty", "pulls", "reach"] as const;
    const legends = explained
      .filter((layer) => layers.includes(layer))
      .map((layer) => words.legend[layer]);
    return html`<fieldset>
        <legend>${words.follows}</legend>
        ${this.#choice(false, words.newReed)} ${this.#choice(true, words.finishedReed)}
        <span class="hint">${finished ? words.finishedReedHint : words.newReedHint}</span>
      </fieldset>
      <div class="layers">
        ${this.#layer("readingLines", words.readingLines)}
        ${this.#layer("certainty", words.certainty)} ${this.#layer("pulls", words.pulls)}
        ${layers.includes("pulls") ? this.#layer("eachPull", words.eachPull) : nothing}
        ${this.#layer("reach", words.reach)} ${this.#targets()}
      </div>
      ${legends.length > 0 ? html`<p class="hint">${legends.join(" ")}</p>` : nothing}`;
  }

  #targets() {
    const words = this.text.target;
    return html`<label
      >${words.label}
      <select @change=${this.#onTarget}>
        <option value="" ?selected=${this.bench.target === ""}>${words.none}</option>
        ${targets.map(
          ({ id, label }) =>
            html`<option value=${id} ?selected=${id === this.bench.target}>${label}</option>`,
        )}
      </select></label
    >`;
  }

  #onTarget(event: Event): void {
    this.#act({ type: "target-set", target: (event.target as HTMLSelectElement).value });
  }

  #choice(finished: boolean, label: string) {
    return html`<label
      ><input
        type="radio"
        name="finished"
        .checked=${this.bench.finished === finished}
        @change=${() => this.#act({ type: "finished-set", finished })}
      />${label}</label
    >`;
  }

  #layer(layer: Layer, label: string) {
    const toggled = (event: Event): void =>
      this.#act({ type: "layer-set", layer, on: (event.target as HTMLInputElement).checked });
    return html`<label
      ><input
        type="checkbox"
        .checked=${this.bench.layers.includes(layer)}
        @change=${toggled}
      />${label}</label
    >`;
  }

  #act(action: BenchAction): void {
    this.dispatchEvent(new BenchActionEvent(action));
  }
}
