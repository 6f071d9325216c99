import { LitElement, css, html, nothing } from "lit";
import { live } from "lit/directives/live.js";
import type { Bench, Layer } from "../reed/bench.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import { look } from "../widgets/look.js";
import type { Handle } from "../widgets/triangle-drag.js";
import { BenchActionEvent } from "./bench-action-event.js";
import type { BenchAction } from "./bench-state.js";
import { layerSign, layerSignStyle, type LayerLine } from "./layer-sign.js";
import { movesChoice, targetChoice } from "./target-choice.js";

/** Another thing shall be moved on the triangle. */
export class MovesPickedEvent extends Event {
  readonly moves: Handle;
  constructor(moves: Handle) {
    super("moves-picked", { bubbles: true, composed: true });
    this.moves = moves;
  }
}

/**
 * How the recipe follows the point, and what is laid over the triangle.
 *
 * @fires bench-action - another way of following, a layer on or off, a target
 * @fires moves-picked - the point or one's own target shall be moved
 */
export class BenchOptions extends LitElement {
  static override styles = [
    look,
    layerSignStyle,
    css`
      :host {
        display: block;
      }
      fieldset,
      .line,
      .targets {
        display: flex;
        flex-wrap: wrap;
        gap: 0.1rem 1rem;
        align-items: center;
        margin: 0;
        padding: 0;
        border: 0;
      }
      .layers,
      .targets {
        margin-top: 0.5rem;
        padding-top: 0.5rem;
        border-top: 1px solid var(--rule);
      }
      .targets {
        gap: 0.4rem 1rem;
      }
      .targets label {
        flex-wrap: wrap;
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
        max-width: 100%;
        min-height: 1.75rem;
        cursor: pointer;
      }
      select {
        flex: 1 1 auto;
        min-width: 0;
        max-width: 100%;
      }
      .line select {
        min-height: 1.75rem;
        padding: 0.1rem 0.3rem;
        font-size: 0.8125rem;
      }
      .line label + label {
        color: var(--ink-soft);
        font-size: 0.8125rem;
      }
      input {
        flex: none;
        width: 1.1rem;
        height: 1.1rem;
        margin: 0;
      }
      .hint {
        flex-basis: 100%;
        margin: 0 0 0.3rem;
        color: var(--ink-soft);
        font-size: 0.8125rem;
      }
      /* On paper only the legend of what is drawn. */
      @media print {
        fieldset,
        .targets,
        .line:not(.on),
        .line input,
        .line label + label {
          display: none;
        }
        .layers {
          margin: 0;
          padding: 0;
          border: 0;
        }
        .line {
          flex-wrap: nowrap;
          gap: 0.5rem;
        }
        .line label {
          flex: none;
          min-height: 0;
          font-size: 0.8125rem;
        }
        .line .hint {
          flex-basis: auto;
          margin: 0;
        }
      }
    `,
  ];

  static override properties = {
    bench: { attribute: false, hasChanged: optionsChanged },
    moves: { type: String },
    text: { attribute: false },
  };

  declare bench: Bench;
  /** What clicks and keys move on the triangle. */
  declare moves: Handle;
  declare text: Catalogue;

  constructor() {
    super();
    this.text = english;
    this.moves = "point";
  }

  override render() {
    const words = this.text.triangle;
    const { finished, layers } = this.bench;
    const of100 = layers.includes("coverage95") ? 95 : 68;
    const certaintyLegend = words.legend.certainty(of100, layers.includes("gaugeAlone"));
    const eachPull = this.#layer("eachPull", words.eachPull);
    return html`<fieldset>
        <legend>${words.follows}</legend>
        ${this.#choice(false, words.newReed)} ${this.#choice(true, words.finishedReed)}
        <p class="hint">${finished ? words.finishedReedHint : words.newReedHint}</p>
      </fieldset>
      <div role="group" aria-label=${words.layers} class="layers">
        ${this.#line("readingLines", words.readingLines, words.legend.readingLines)}
        ${this.#line("certainty", words.certainty, certaintyLegend, this.#certainty())}
        ${this.#line("pulls", words.pulls, words.legend.pulls, eachPull)}
        ${this.#line("reach", words.reach, words.legend.reach)}
      </div>
      <div class="targets">
        ${targetChoice(this.bench, this.text, (target) => this.#act({ type: "target-set", target }))}
        ${movesChoice(this.bench, this.moves, this.text, (moves) => this.dispatchEvent(new MovesPickedEvent(moves)))}
      </div>`;
  }

  /** A layer with its switch; when it is on, with what can be chosen of it and its legend. */
  #line(layer: LayerLine, label: string, legend: string, more: unknown = nothing) {
    const on = this.bench.layers.includes(layer);
    return html`<div class="line ${on ? "on" : ""}">
      ${this.#layer(layer, label, layerSign(layer))} ${on ? more : nothing}
      ${on ? html`<p class="hint">${legend}</p>` : nothing}
    </div>`;
  }

  /** From what the ellipse is computed, and how many cases of 100 it holds. */
  #certainty() {
    const words = this.text.triangle;
    const { layers } = this.bench;
    const choice = (layer: Layer, label: string, off: string, on: string) =>
      html`<label
        >${label}
        <select
          @change=${(event: Event) => this.#act({ type: "layer-set", layer, on: picked(event) === "on" })}
        >
          <option value="off" .selected=${live(!layers.includes(layer))}>${off}</option>
          <option value="on" .selected=${live(layers.includes(layer))}>${on}</option>
        </select></label
      >`;
    const percent = this.text.percent;
    return html`${choice("gaugeAlone", words.certaintyFrom, words.withRecipe, words.gaugeAlone)}
    ${choice("coverage95", words.coverage, percent(0.68), percent(0.95))}`;
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

  #layer(layer: Layer, label: string, sign: unknown = nothing) {
    const toggled = (event: Event): void =>
      this.#act({ type: "layer-set", layer, on: (event.target as HTMLInputElement).checked });
    return html`<label
      ><input
        type="checkbox"
        .checked=${this.bench.layers.includes(layer)}
        @change=${toggled}
      />${sign}${label}</label
    >`;
  }

  #act(action: BenchAction): void {
    this.dispatchEvent(new BenchActionEvent(action));
  }
}

function picked(event: Event): string {
  return (event.target as HTMLSelectElement).value;
}

/** Readings change with every move of a drag; what is chosen here does not. */
function optionsChanged(next: Bench, before: Bench | undefined): boolean {
  return (
    next.layers !== before?.layers ||
    next.finished !== before.finished ||
    next.target !== before.target
  );
}
