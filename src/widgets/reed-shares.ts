import { LitElement, css, html } from "lit";
import { withShare, type Blend } from "../engine/blend.js";
import { nearestBlend } from "../engine/nearest-blend.js";
import { triangleWords, type TriangleWords } from "../reed/triangle-words.js";
import { wholeShares } from "../reed/whole-shares.js";
import { BlendPickedEvent, GestureEndedEvent } from "./events.js";
import { look } from "./look.js";

const order = ["high", "low", "loud"] as const;

/**
 * The point as three sliders with number fields; what one takes, the others give in proportion.
 *
 * @fires blend-picked - the blend that was asked for
 * @fires gesture-ended - when the slider is let go, left, or a number has been entered
 */
export class ReedShares extends LitElement {
  static override styles = [
    look,
    css`
      :host {
        display: block;
        container-type: inline-size;
      }
      fieldset {
        display: grid;
        gap: 0.1rem 0.75rem;
        grid-template-columns: minmax(0, auto) minmax(3rem, 1fr) auto;
        align-items: center;
        margin: 0;
        padding: 0;
        border: 0;
      }
      input[type="number"] {
        width: 4.2rem;
        min-height: 2rem;
        padding: 0 0.4rem;
        text-align: end;
      }
      .cell {
        white-space: nowrap;
      }
      input[type="range"] {
        min-width: 0;
      }
      @container (max-width: 19rem) {
        fieldset {
          grid-template-columns: minmax(0, 1fr) auto;
        }
        label {
          grid-column: 1 / -1;
        }
      }
      .high {
        color: var(--high-word);
      }
      .low {
        color: var(--low-word);
      }
      .loud {
        color: var(--loud-word);
      }
    `,
  ];

  static override properties = {
    blend: { attribute: false },
    name: { type: String },
    still: { attribute: false },
    text: { attribute: false },
  };

  /** The raw blend of the reed; undefined: nothing to move. */
  declare blend: Blend | undefined;
  /** What the group is called where it is not the reed's own point. */
  declare name: string;
  /** The shares are told and cannot be changed. */
  declare still: boolean;
  declare text: TriangleWords;
  #gesture = 0;
  /** The blend that the gesture set out from: out to 100 % and back brings the other two back. */
  #from: Blend | undefined;

  constructor() {
    super();
    this.text = triangleWords;
    this.name = "";
    this.still = false;
  }

  /** The shares as they are told: whole per cents that sum to 100. */
  get #shown(): Blend | undefined {
    return this.blend && wholeShares(nearestBlend(this.blend));
  }

  override render() {
    const inside = this.#shown;
    return html`<fieldset ?disabled=${!inside || this.still}>
      <legend class="unseen">${this.name || this.text.shares.title}</legend>
      ${order.map((id, k) => this.#row(id, k as 0 | 1 | 2, inside?.[k]))}
    </fieldset>`;
  }

  #row(id: (typeof order)[number], k: 0 | 1 | 2, share: number | undefined) {
    const { text } = this;
    return html`<label class=${id} for="slider-${id}">${text.corners[id]}</label>
      <input
        id="slider-${id}"
        type="range"
        min="0"
        max="100"
        step="1"
        aria-valuetext=${share === undefined ? text.triangle.nothingToMove : text.shares.valueText(share, text.purposes[id])}
        @pointerdown=${this.#begin}
        @focus=${this.#begin}
        @input=${(event: Event) => this.#ask(k, event)}
        @change=${this.#end}
      />
      <span class="cell"
        ><input
          type="number"
          min="0"
          max="100"
          step="1"
          aria-label=${text.shares.field(text.corners[id])}
          @change=${(event: Event) => this.#enter(k, event)}
          @keydown=${this.#onFieldKey}
        />
        %</span
      >`;
  }

  /** What was typed or dragged gives way to the shares as they are, even where these have not changed. */
  override updated(): void {
    const inside = this.#shown;
    const fields = this.renderRoot.querySelectorAll("input");
    fields.forEach((field, i) => {
      const share = inside?.[Math.floor(i / 2)];
      const percent = share === undefined ? "" : String(Math.round(share * 100));
      // A slider without a value stands in its middle.
      if (field.value !== percent) field.value = percent;
    });
  }

  #begin(): void {
    this.#gesture += 1;
  }

  #ask(k: 0 | 1 | 2, event: Event): void {
    const share = (event.target as HTMLInputElement).valueAsNumber / 100;
    if (!this.blend || !Number.isFinite(share)) return;
    this.#from ??= nearestBlend(this.blend);
    this.dispatchEvent(
      new BlendPickedEvent(withShare(this.#from, k, share), `share-${k}-${this.#gesture}`),
    );
  }

  #enter(k: 0 | 1 | 2, event: Event): void {
    const field = event.target as HTMLInputElement;
    this.#begin();
    if (Number.isFinite(field.valueAsNumber)) this.#ask(k, event);
    else this.requestUpdate(); // an empty field takes the present share back
    this.#end();
  }

  /** Escape takes what was typed and not entered back. */
  #onFieldKey({ key }: KeyboardEvent): void {
    if (key === "Escape") this.requestUpdate();
  }

  #end(): void {
    this.#from = undefined;
    this.dispatchEvent(new GestureEndedEvent());
  }
}
