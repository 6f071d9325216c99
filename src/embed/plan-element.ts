import { css, html } from "lit";
import { BenchPlace } from "../app/bench-place.js";
import { BenchPlan } from "../app/bench-plan.js";
import { drawnAdvice } from "../app/drawn-advice.js";
import { planner } from "../app/plan-view.js";
import { define } from "../widgets/define.js";
import { AppPartElement } from "./app-part-element.js";

define("bench-place", BenchPlace);
define("bench-plan", BenchPlan);

/**
 * `<reed-plan>`: from the reed as it is to a part to play, step by step, each with its caution; drawn on the triangle.
 *
 * @tagname reed-plan
 * @fires reed-target-picked - another part to play was picked
 * @fires reed-step-done - a step was done to the reed; detail also holds `step`, an action and its amount
 */
export class PlanElement extends AppPartElement {
  static override styles = [
    ...AppPartElement.styles,
    css`
      .inside {
        display: grid;
        gap: 1rem;
        grid-template-columns: minmax(0, 1fr);
      }
      @container reed (min-width: 50rem) {
        .inside {
          grid-template-columns: minmax(0, 1fr) minmax(0, 1fr);
          align-items: start;
        }
      }
    `,
  ];

  readonly #planFor = planner();

  protected override parts() {
    const { text, view } = this;
    const { state } = this.shared;
    const plan = this.#planFor(state, text);
    return html`<div class="inside">
      <bench-place
        part="triangle"
        .bench=${state.present.bench}
        .view=${view}
        .advice=${drawnAdvice(state, plan, text)}
        .way=${this.way}
        .moves=${this.moves}
        .still=${this.isStill}
        .text=${text}
      ></bench-place>
      <bench-plan
        part="plan"
        .shown=${{ state, view }}
        .plan=${plan}
        .moves=${this.moves}
        .embedded=${true}
        .text=${text}
      ></bench-plan>
    </div>`;
  }
}
