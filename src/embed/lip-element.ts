import { html } from "lit";
import { BenchLip } from "../app/bench-lip.js";
import { define } from "../widgets/define.js";
import { AppPartElement } from "./app-part-element.js";

define("bench-lip", BenchLip);

/**
 * `<reed-lip>`: what elementary mechanics says of a reed under lips and breath. It never moves the reed's point.
 *
 * @tagname reed-lip
 */
export class LipElement extends AppPartElement {
  protected override parts() {
    return html`<bench-lip
      part="lip"
      .state=${{ ...this.shared.state, model: this.model }}
      .text=${this.text}
    ></bench-lip>`;
  }
}
