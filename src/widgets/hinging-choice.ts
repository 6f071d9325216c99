import { LitElement, css, html } from "lit";
import { hingingPicture } from "../drawing/hinging-picture.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import { hingingPictures } from "../reed/measuring-steps.js";
import { look } from "./look.js";

/** A picture of hinging was picked. */
export class HingingPickedEvent extends Event {
  readonly value: number;
  constructor(value: number) {
    super("hinging-picked", { bubbles: true, composed: true });
    this.value = value;
  }
}

const width = 96;
const height = 34;

/**
 * Five small pictures of how a blade closes; one is picked.
 *
 * @fires hinging-picked - the value of the picture
 */
export class HingingChoice extends LitElement {
  static override styles = [
    look,
    css`
      fieldset {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(8.5rem, 1fr));
        gap: 0.5rem;
        margin: 0;
        padding: 0;
        border: 0;
      }
      legend {
        padding: 0 0 0.4rem;
      }
      label {
        display: grid;
        gap: 0.3rem;
        justify-items: center;
        padding: 0.6rem 0.4rem;
        border: 1px solid var(--edge);
        border-radius: 8px;
        background: var(--card);
        font-size: 0.8125rem;
        text-align: center;
        cursor: pointer;
      }
      label:has(:checked) {
        border-color: var(--accent);
        outline: 2px solid var(--accent);
      }
      input {
        width: 1.25rem;
        height: 1.25rem;
        margin: 0;
      }
      path {
        fill: none;
        stroke: var(--ink);
        stroke-width: 2.4;
        stroke-linejoin: round;
      }
      @media (forced-colors: active) {
        path {
          stroke: CanvasText;
        }
      }
    `,
  ];

  static override properties = { value: { attribute: false }, text: { attribute: false } };

  /** What was picked; undefined: nothing yet. */
  declare value: number | undefined;
  declare text: Catalogue;

  constructor() {
    super();
    this.text = english;
  }

  override render() {
    const words = this.text.measure.step;
    return html`<fieldset>
      <legend>${words.choose}</legend>
      ${hingingPictures.map((value, i) => this.#picture(value, words.pictures[i]!))}
    </fieldset>`;
  }

  /** On the picture that is picked, or the first. */
  override focus(): void {
    this.renderRoot.querySelector<HTMLElement>("input:checked, input")?.focus();
  }

  #picture(value: number, words: string) {
    const { upper, lower } = hingingPicture(value, width - 8, height - 6);
    const box = `${-width / 2} ${-height / 2} ${width} ${height}`;
    return html`<label>
      <svg width=${width} height=${height} viewBox=${box} aria-hidden="true">
        <path d=${upper}></path>
        <path d=${lower}></path>
      </svg>
      <input
        type="radio"
        name="hinging"
        .checked=${this.value === value}
        @change=${() => this.dispatchEvent(new HingingPickedEvent(value))}
      />
      <span>${words}</span>
    </label>`;
  }
}
