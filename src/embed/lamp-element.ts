import { css, html, type PropertyDeclarations } from "lit";
import { english, type Catalogue } from "../reed/catalogue.js";
import { shownValues } from "../reed/tried.js";
import { define } from "../widgets/define.js";
import { ReedDrawing } from "../widgets/reed-drawing.js";
import { EmbeddedReed } from "./embedded-reed.js";
import { partEvents } from "./stop-inside.js";

define("reed-drawing", ReedDrawing);

/**
 * `<reed-lamp>`: the reed held to a lamp, end-on, and cut along spine and rail, drawn from its recipe.
 *
 * @tagname reed-lamp
 * @csspart drawing - the drawing
 */
export class LampElement extends EmbeddedReed {
  static override styles = [
    ...EmbeddedReed.styles,
    css`
      reed-drawing {
        max-width: 60rem;
        margin-inline: auto;
      }
    `,
  ];

  static override properties: PropertyDeclarations = { lying: { type: Boolean } };

  /** The reed on its side, tip to the left. */
  declare lying: boolean;
  declare text: Catalogue;

  constructor() {
    super();
    this.lying = false;
    this.text = english;
  }

  protected override get inner(): readonly string[] {
    return [...super.inner, ...partEvents];
  }

  protected override parts() {
    const { bench } = this.shared.state.present;
    return html`<reed-drawing
      part="drawing"
      .model=${this.model}
      .values=${shownValues(bench)}
      .unit=${bench.unit}
      .lying=${this.lying}
      .text=${this.text}
    ></reed-drawing>`;
  }
}
