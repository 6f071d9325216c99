import { LitElement, css, html, nothing } from "lit";
import { live } from "lit/directives/live.js";
import type { ReedModel } from "../engine/model.js";
import type { Bench } from "../reed/bench.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import { look } from "../widgets/look.js";
import { fileLesson } from "../lesson/progress.js";
import { shippedLessons } from "./shipped-lessons.js";
import { embedded, frameAddress, snippet, type Embedding } from "./snippet.js";
import { stateInside } from "./state-inside.js";

/** Where the files of a page that lies on a disk could be. */
const somewhere = "https://school.example/reedpoint/";

/**
 * The lines that put the reed into another page, with a choice of what they show, and how that looks.
 *
 * @fires dialog-closed - it is gone
 */
export class EmbedDialog extends LitElement {
  static override styles = [
    look,
    css`
      dialog {
        width: min(54rem, calc(100% - 1.5rem));
        padding: 1rem;
        border: 1px solid var(--edge);
        border-radius: 12px;
        background: var(--card);
        color: inherit;
      }
      dialog::backdrop {
        background: rgb(0 0 0 / 35%);
      }
      .choices {
        display: flex;
        flex-wrap: wrap;
        gap: 0.5rem 1.25rem;
        align-items: center;
        margin: 0.75rem 0;
      }
      fieldset {
        display: flex;
        flex-wrap: wrap;
        gap: 0.2rem 1rem;
        min-width: 0;
        margin: 0;
        padding: 0;
        border: 0;
      }
      legend {
        float: inline-start;
        padding: 0;
        margin-inline-end: 0.5rem;
      }
      label {
        display: inline-flex;
        flex-wrap: wrap;
        gap: 0.4rem;
        align-items: center;
        max-width: 100%;
        min-height: 1.75rem;
      }
      select {
        min-width: 0;
        max-width: 100%;
      }
      label:has([type="radio"], [type="checkbox"]) {
        flex-wrap: nowrap;
      }
      .address {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
      }
      input[type="text"],
      textarea {
        width: 100%;
        padding: 0.4rem 0.5rem;
      }
      textarea {
        min-height: 8rem;
        font-family: ui-monospace, monospace;
        font-size: 0.8125rem;
        overflow-wrap: anywhere;
        resize: vertical;
      }
      iframe {
        width: 100%;
        height: 26rem;
        border: 1px solid var(--rule);
        border-radius: 6px;
        background: var(--ground);
      }
      p {
        margin: 0.4rem 0;
      }
      .soft {
        color: var(--ink-soft);
        font-size: 0.8125rem;
      }
      .foot {
        display: flex;
        flex-wrap: wrap;
        gap: 0.5rem 1rem;
        align-items: center;
        margin: 0.5rem 0 0.9rem;
      }
    `,
  ];

  static override properties = {
    model: { attribute: false },
    bench: { attribute: false },
    says: { type: String },
    text: { attribute: false },
    show: { state: true },
    as: { state: true },
    theme: { state: true },
    locked: { state: true },
    folder: { state: true },
    said: { state: true },
  };

  declare model: ReedModel;
  declare bench: Bench;
  /** The sentence about the reed. */
  declare says: string;
  declare text: Catalogue;
  declare show: Embedding["show"];
  declare as: Embedding["as"];
  declare theme: Embedding["theme"];
  declare locked: boolean;
  declare folder: string;
  declare said: string;

  constructor() {
    super();
    this.text = english;
    this.show = "triangle";
    this.as = "element";
    this.theme = "";
    this.locked = false;
    this.folder = stateInside(document) === undefined ? here() : somewhere;
    this.said = "";
    this.says = "";
  }

  /** The lesson that is open: one of the list, for a file's and a review's cannot be found from another page. */
  get #lesson() {
    return shippedLessons.find(({ id }) => id === this.bench.lesson?.id);
  }

  /** A lesson file of one's own has no address here. */
  get #isOwn(): boolean {
    return this.bench.page === "lessons" && this.bench.lesson?.id === fileLesson;
  }

  override willUpdate(): void {
    if (!this.hasUpdated && this.bench.page === "lessons" && this.#lesson) this.show = "lesson";
  }

  override firstUpdated(): void {
    this.renderRoot.querySelector("dialog")!.showModal();
  }

  override render() {
    const words = this.text.embed;
    const isLesson = this.show === "lesson";
    const shows = embedded.filter((one) => one !== "lesson" || this.#lesson);
    return html`<dialog
      aria-labelledby="title"
      @close=${() => this.dispatchEvent(new Event("dialog-closed"))}
    >
      <h2 id="title">${words.title}</h2>
      <p>${isLesson ? words.explainLesson : words.explain}</p>
      ${this.#isOwn ? html`<p>${words.ownLesson}</p>` : nothing}
      <div class="choices">
        ${this.#choice("show", words.show, shows, words.shows)} ${this.#kinds()}
        ${this.#choice("theme", words.look, ["", "paper", "night", "auto"], words.looks)}
        ${isLesson ? nothing : this.#lock()}
      </div>
      <label class="address"
        >${words.address} <input type="text" .value=${live(this.folder)} @change=${this.#onFolder}
      /></label>
      <p class="soft">${words.addressHint}</p>
      <label class="address"
        >${words.lines} <textarea readonly .value=${this.#lines}></textarea>
      </label>
      <div class="foot">
        <button @click=${this.#copy}>${words.copy}</button>
        <button @click=${() => this.renderRoot.querySelector("dialog")!.close()}>
          ${this.text.bar.close}
        </button>
        <span role="status">${this.said}</span>
      </div>
      <h3>${words.preview}</h3>
      ${this.#preview()}
    </dialog>`;
  }

  #lock() {
    return html`<label
      ><input
        type="checkbox"
        .checked=${live(this.locked)}
        @change=${this.#onLocked}
      />${this.text.embed.locked}</label
    >`;
  }

  get #how(): Embedding {
    const { show, as, theme, locked, folder, bench, text } = this;
    const { title, goal = "" } = (show === "lesson" && this.#lesson) || {};
    const name = bench.reed || text.bar.allRound;
    const says =
      title === undefined ? text.embed.says(name, this.says) : text.embed.says(title, goal);
    return { show, as, theme, locked, folder, says };
  }

  get #lines(): string {
    return snippet(this.bench, this.model, this.#how);
  }

  /** It runs beside this page, as it would beside another one. */
  #preview() {
    const words = this.text.embed;
    if (stateInside(document) !== undefined) return html`<p class="soft">${words.noPreview}</p>`;
    const address = frameAddress(this.bench, this.model, { ...this.#how, folder: here() });
    // Another address is another page: a new frame, so that no step of the history is made of it.
    return html`<iframe title=${words.preview} src=${address}></iframe>`;
  }

  #choice(
    key: "show" | "theme",
    label: string,
    values: readonly string[],
    names: Readonly<Record<string, string>>,
  ) {
    return html`<label
      >${label}
      <select
        @change=${(event: Event) => this.#pick(key, (event.target as HTMLSelectElement).value)}
      >
        ${values.map(
          (value) =>
            html`<option value=${value} .selected=${live(value === this[key])}>
              ${names[value]}
            </option>`,
        )}
      </select></label
    >`;
  }

  #pick(key: "show" | "theme", value: string): void {
    if (key === "show") this.show = value as Embedding["show"];
    else this.theme = value as Embedding["theme"];
    this.said = "";
  }

  #kinds() {
    const words = this.text.embed;
    return html`<fieldset>
      <legend>${words.as}</legend>
      ${(["element", "frame"] as const).map(
        (as) =>
          html`<label
            ><input
              type="radio"
              name="as"
              .checked=${live(as === this.as)}
              @change=${() => (this.as = as)}
            />${words[as]}</label
          >`,
      )}
    </fieldset>`;
  }

  #onLocked(event: Event): void {
    this.locked = (event.target as HTMLInputElement).checked;
  }

  #onFolder(event: Event): void {
    const folder = (event.target as HTMLInputElement).value.trim();
    this.folder = folder === "" ? here() : folder.replace(/\/*$/, "/");
  }

  async #copy(): Promise<void> {
    const words = this.text.embed;
    try {
      await navigator.clipboard.writeText(this.#lines);
      this.said = words.copied;
    } catch {
      this.said = words.copyFailed;
      this.renderRoot.querySelector("textarea")!.select();
    }
  }
}

/** The folder of this page. */
function here(): string {
  return new URL(".", document.baseURI).href;
}
