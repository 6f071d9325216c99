import { html } from "lit";
import type { BenchState } from "../app/bench-state.js";
import type { BenchLip } from "../app/bench-lip.js";
import { LateParts, type Loaders } from "../app/late-parts.js";
import type { ReedModel } from "../engine/model.js";
import { define } from "../widgets/define.js";
import { remembered } from "../widgets/remembered.js";
import { AppPartElement } from "./app-part-element.js";
import { lateStyle, lateWords } from "./late-words.js";

const parts: Loaders = {
  lip: async () => define("bench-lip", (await import("../app/bench-lip.js")).BenchLip),
};

/**
 * `<reed-lip>`: what elementary mechanics says of a reed under lips and breath. It never moves the reed's point.
 *
 * @tagname reed-lip
 * @fires reed-lips-moved - other lips or another breath; detail also holds `lip` and `blow`, Pa
 * @csspart lip - the panel
 */
export class LipElement extends AppPartElement {
  static override styles = [...AppPartElement.styles, lateStyle];

  readonly #late = new LateParts(this, parts);
  /** The whole recipe, also where only some features count. */
  readonly #whole = remembered((state: BenchState, model: ReedModel) => ({ ...state, model }));

  protected override takeInner(event: Event): void {
    super.takeInner(event);
    if (event.type !== "pressure-picked" && event.type !== "lip-preset-picked") return;
    // The part inside has heard it first.
    const { lip, blow } = this.renderRoot.querySelector<BenchLip>("bench-lip")!;
    this.tell("reed-lips-moved", { lip, blow });
  }

  protected override parts() {
    const arrival = this.#late.arrival("lip");
    if (arrival !== "here") return lateWords(arrival, this.text);
    return html`<bench-lip
      part="lip"
      .embedded=${true}
      .state=${this.#whole(this.shared.state, this.model)}
      .text=${this.text}
    ></bench-lip>`;
  }
}
