import { css, html } from "lit";
import { LateParts, type Loaders } from "../app/late-parts.js";
import { AppPartElement } from "./app-part-element.js";
import { lateStyle, lateWords } from "./late-words.js";
import type { planInside } from "./plan-inside.js";

let makeInside: typeof planInside | undefined;

const parts: Loaders = {
  plan: async () => {
    makeInside = (await import("./plan-inside.js")).planInside;
  },
};

/**
 * `<reed-plan>`: from the reed as it is to a part to play, step by step, each with its caution; drawn on the triangle.
 *
 * @tagname reed-plan
 * @csspart triangle - the triangle
 * @csspart plan - the plan
 * @fires reed-target-picked - another part to play was picked
 * @fires reed-step-done - a step was done to the reed; detail also holds `step`, an action and its amount
 */
export class PlanElement extends AppPartElement {
  static override styles = [
    ...AppPartElement.styles,
    lateStyle,
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

  readonly #late = new LateParts(this, parts);
  #inside: ReturnType<typeof planInside> | undefined;

  protected override parts() {
    const arrival = this.#late.arrival("plan");
    if (arrival !== "here" || !makeInside) return lateWords(arrival, this.text);
    this.#inside ??= makeInside();
    const { way, moves, text, view, isStill: still } = this;
    return html`${this.#inside({ state: this.shared.state, view, way, moves, still, text })}`;
  }
}
