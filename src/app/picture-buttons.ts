import { LitElement, css, html, nothing } from "lit";
import type { PictureWords } from "../drawing/png-text.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import { look } from "../widgets/look.js";
import { pictureFile, saveFile } from "../widgets/picture-file.js";

/** Saves a drawing of the page as SVG or PNG. */
export class PictureButtons extends LitElement {
  static override styles = [
    look,
    css`
      :host {
        display: flex;
        flex-wrap: wrap;
        gap: 0.4rem;
        align-items: center;
        color: var(--ink-soft);
        font-size: 0.8125rem;
      }
      button {
        min-height: 1.75rem;
        padding: 0.1rem 0.55rem;
        color: var(--ink);
      }
      p {
        flex-basis: 100%;
        margin: 0;
        color: var(--loud-word);
      }
      @media print {
        :host {
          display: none;
        }
      }
    `,
  ];

  static override properties = {
    what: { type: String },
    file: { type: String },
    source: { attribute: false },
    words: { attribute: false },
    text: { attribute: false },
    problem: { state: true },
  };

  /** What is saved, as a button's name says it. */
  declare what: string;
  /** Name of the file without its ending; it carries no name of a person or reed. */
  declare file: string;
  declare source: () => SVGSVGElement;
  declare words: () => PictureWords;
  declare text: Catalogue;
  declare problem: string;

  constructor() {
    super();
    this.text = english;
    this.problem = "";
  }

  override render() {
    const words = this.text.picture;
    return html`<span aria-hidden="true">${words.save}</span> ${(["SVG", "PNG"] as const).map(
        (kind) =>
          html`<button aria-label=${words.as(kind, this.what)} @click=${() => this.#save(kind)}>
            ${kind}
          </button>`,
      )}
      ${this.problem ? html`<p role="alert">${this.problem}</p>` : nothing}`;
  }

  async #save(kind: "SVG" | "PNG"): Promise<void> {
    this.problem = "";
    try {
      const picture = await pictureFile(kind, this.source(), this.words());
      saveFile(picture, `${this.file}.${kind.toLowerCase()}`);
    } catch {
      this.problem = this.text.picture.failed(kind);
    }
  }
}
