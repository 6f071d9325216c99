import { LitElement, css, html } from "lit";
import { lessonEnglish, type LessonCatalogue } from "../reed/lesson-catalogue.js";
import { look } from "../widgets/look.js";

/** A file was picked. */
export class FilePickedEvent extends Event {
  readonly file: File;
  constructor(file: File) {
    super("file-picked", { bubbles: true, composed: true });
    this.file = file;
  }
}

/**
 * Where a lesson file is picked; the page takes what is dropped on it.
 *
 * @fires file-picked - a file
 */
export class LessonFileDrop extends LitElement {
  static override styles = [
    look,
    css`
      :host {
        display: block;
      }
      h3 {
        margin: 0 0 0.3rem;
      }
      p {
        max-width: 44em;
        margin: 0.3rem 0 0.6rem;
      }
      .soft {
        color: var(--ink-soft);
        font-size: 0.875rem;
      }
      input {
        display: none;
      }
      button {
        min-height: 2.75rem;
      }
    `,
  ];

  static override properties = {
    again: { type: Boolean },
    text: { attribute: false },
  };

  /** Below a file that is open: only the button. */
  declare again: boolean;
  declare text: LessonCatalogue;

  constructor() {
    super();
    this.again = false;
    this.text = lessonEnglish;
  }

  override render() {
    const words = this.text.lessons.file;
    const pick = html`<button @click=${this.#pick}>${this.again ? words.again : words.pick}</button>
      <input type="file" accept=".md,text/markdown,text/plain" @change=${this.#onFile} />`;
    if (this.again) return pick;
    return html`<section aria-labelledby="title">
      <h3 id="title">${words.title}</h3>
      <p class="soft">${words.explain} ${words.help}</p>
      ${pick}
    </section>`;
  }

  #pick(): void {
    this.renderRoot.querySelector("input")!.click();
  }

  #onFile({ target }: Event): void {
    const input = target as HTMLInputElement;
    const [file] = input.files ?? [];
    if (file) this.dispatchEvent(new FilePickedEvent(file));
    // The same file may be picked again once it is mended.
    input.value = "";
  }
}
