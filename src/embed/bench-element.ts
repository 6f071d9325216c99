import { css, html, nothing } from "lit";
import { shownValues } from "../reed/tried.js";
import { BenchPlace } from "../app/bench-place.js";
import { BenchRecipe } from "../app/bench-recipe.js";
import { BenchWords } from "../app/bench-words.js";
import { define } from "../widgets/define.js";
import { ReedDrawing } from "../widgets/reed-drawing.js";
import { ReedShares } from "../widgets/reed-shares.js";
import { AppPartElement } from "./app-part-element.js";

define("bench-place", BenchPlace);
define("bench-recipe", BenchRecipe);
define("bench-words", BenchWords);
define("reed-drawing", ReedDrawing);
define("reed-shares", ReedShares);

/**
 * `<reed-bench>`: triangle, sentence, drawing and recipe of one reed; what is moved in one is seen in the others.
 *
 * @tagname reed-bench
 * @csspart triangle - the triangle
 * @csspart words - the sentence, and how sure it is
 * @csspart shares - the three sliders
 * @csspart tools - undo, redo, reset
 * @csspart drawing - the reed against the lamp
 * @csspart recipe - the recipe
 * @fires reed-stand-in-tried - a stand-in was tried; detail also holds `changes`, a list of feature and change
 */
export class BenchElement extends AppPartElement {
  static override styles = [
    ...AppPartElement.styles,
    css`
      .inside {
        display: grid;
        gap: 1rem;
        grid-template-columns: minmax(0, 1fr);
      }
      .middle {
        display: grid;
        gap: 0.75rem;
        grid-template-columns: minmax(0, 1fr);
        align-content: start;
      }
      .tools {
        display: flex;
        flex-wrap: wrap;
        gap: 0.4rem;
      }
      @container reed (min-width: 56rem) {
        .inside {
          grid-template-columns: minmax(0, 1.2fr) minmax(26rem, 1fr);
          align-items: start;
        }
      }
      @media print {
        .tools,
        reed-shares {
          display: none;
        }
      }
    `,
  ];

  protected override parts() {
    const { text, view } = this;
    const { state } = this.shared;
    return html`<div class="inside">
      <div class="middle">
        <bench-place
          part="triangle"
          .bench=${state.present.bench}
          .view=${view}
          .way=${this.way}
          .moves=${this.moves}
          .still=${this.isStill}
          .embedded=${true}
          .text=${text}
        ></bench-place>
        <bench-words part="words" .shown=${{ state, view }} .text=${text}></bench-words>
        <reed-shares
          part="shares"
          .blend=${view.placed?.raw}
          .still=${this.isStill}
          .text=${text}
        ></reed-shares>
        ${this.isStill ? nothing : this.#tools()}
        <reed-drawing
          part="drawing"
          .model=${this.model}
          .values=${shownValues(state.present.bench)}
          .lying=${true}
          .pointed=${this.pointed}
          .text=${text}
        ></reed-drawing>
      </div>
      <bench-recipe
        part="recipe"
        .model=${state.model}
        .state=${state}
        .view=${view}
        .pointed=${this.pointed}
        .sheet=${false}
        .still=${this.isStill}
        .embedded=${true}
        .text=${text}
      ></bench-recipe>
    </div>`;
  }

  /** A picture has nothing to take back. */
  #tools() {
    const { text } = this;
    const { past, future } = this.shared.state;
    return html`<div class="tools" part="tools">
      ${this.#tool("undo", past.length > 0)} ${this.#tool("redo", future.length > 0)}
      <button @click=${this.#onReset}>${text.bar.reset}</button>
    </div>`;
  }

  #tool(type: "undo" | "redo", can: boolean) {
    return html`<button aria-disabled=${!can} @click=${() => this.act({ type })}>
      ${this.text.bar[type]}
    </button>`;
  }

  /** As the page says it, not as the model's all-round reed. */
  #onReset(): void {
    this.reset();
    this.tell("input");
    this.tell("change");
  }
}
