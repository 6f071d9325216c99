import { LitElement, css, html, nothing } from "lit";
import type { FeatureId, ReedModel } from "../engine/model.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import type { LengthUnit } from "../reed/units.js";
import { define } from "../widgets/define.js";
import { look } from "../widgets/look.js";
import { ReedReadings } from "../widgets/reed-readings.js";

define("reed-readings", ReedReadings);

/** The table of readings in a dialog of its own; the browser gives the focus back when it closes. */
export class ReadingsDialog extends LitElement {
  static override styles = [
    look,
    css`
      dialog {
        width: min(46rem, calc(100% - 1.5rem));
        padding: 0.75rem;
        border: 1px solid var(--edge);
        border-radius: 12px;
        background: var(--card);
        color: inherit;
      }
      dialog::backdrop {
        background: rgb(0 0 0 / 35%);
      }
      .close {
        margin-top: 0.6rem;
      }
    `,
  ];

  static override properties = {
    model: { attribute: false },
    unit: { type: String },
    kept: { attribute: false },
    text: { attribute: false },
    shown: { state: true },
  };

  declare model: ReedModel;
  declare unit: LengthUnit;
  /** Features with readings that stay beside the new ones. */
  declare kept: readonly FeatureId[];
  declare text: Catalogue;
  declare shown: boolean;

  constructor() {
    super();
    this.unit = "mm";
    this.kept = [];
    this.text = english;
    this.shown = false;
  }

  override render() {
    if (!this.shown) return nothing;
    return html`<dialog aria-label=${this.text.readings.title} @close=${this.#onClosed}>
      <reed-readings
        .model=${this.model}
        .unit=${this.unit}
        .kept=${this.kept}
        .text=${this.text}
      ></reed-readings>
      <button class="close" @click=${this.close}>${this.text.bar.close}</button>
    </dialog>`;
  }

  /** Opens it with an empty table and the cursor in it. */
  async open(): Promise<void> {
    this.shown = true;
    await this.updateComplete;
    const dialog = this.renderRoot.querySelector("dialog");
    if (dialog && !dialog.open) dialog.showModal();
    this.renderRoot.querySelector<ReedReadings>("reed-readings")?.focus();
  }

  close(): void {
    this.renderRoot.querySelector("dialog")?.close();
  }

  #onClosed(): void {
    this.shown = false;
    this.dispatchEvent(new Event("dialog-closed"));
  }
}
