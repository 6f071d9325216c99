import { LitElement, css, html, nothing } from "lit";
import { noProgress, type Progress } from "../lesson/progress.js";
import { lessonEnglish, type LessonCatalogue } from "../reed/lesson-catalogue.js";
import { look } from "../widgets/look.js";
import { saveFile } from "../widgets/picture-file.js";
import { calendarDay, dayName } from "./calendar-day.js";
import type { Keeping, ProgressWish } from "./progress-keeper.js";
import { smallText } from "../widgets/small-text.js";

const mostBytes = 5_000_000;

/** Somebody wants progress kept, taken in or erased. */
export class ProgressWishedEvent extends Event {
  readonly wish: ProgressWish;
  constructor(wish: ProgressWish) {
    super("progress-wished", { bubbles: true, composed: true });
    this.wish = wish;
  }
}

/**
 * Where progress is kept, and how it comes out and in.
 *
 * @fires progress-wished - to be kept or not, taken in from a file, erased
 */
export class ProgressPanel extends LitElement {
  static override styles = [
    look,
    css`
      :host {
        display: block;
      }
      h3 {
        margin: 0 0 0.4rem;
      }
      label {
        display: inline-flex;
        gap: 0.5rem;
        align-items: center;
        min-height: 2.75rem;
        font-weight: 600;
      }
      input[type="checkbox"] {
        width: 1.25rem;
        height: 1.25rem;
      }
      input[type="file"] {
        display: none;
      }
      p,
      ul {
        max-width: 44em;
        margin: 0.3rem 0 0.6rem;
      }
      .soft {
        color: var(--ink-soft);
        font-size: 0.875rem;
      }
      .refused {
        padding: 0.5rem 0.8rem;
        border-inline-start: 4px solid var(--loud-word);
        background: var(--card);
      }
      .buttons {
        display: flex;
        flex-wrap: wrap;
        gap: 0.6rem;
        align-items: center;
      }
      button {
        min-height: 2.75rem;
      }
    `,
  ];

  static override properties = {
    progress: { attribute: false },
    keeping: { type: String },
    brief: { type: Boolean },
    text: { attribute: false },
    asks: { state: true },
    told: { state: true },
  };

  declare progress: Progress;
  declare keeping: Keeping;
  /** Below a lesson: only the switch. */
  declare brief: boolean;
  declare text: LessonCatalogue;
  /** Whether it is asked if everything is really to be erased. */
  declare asks: boolean;
  /** What is said of the last file. */
  declare told: readonly string[];

  constructor() {
    super();
    this.progress = noProgress;
    this.keeping = "off";
    this.brief = false;
    this.text = lessonEnglish;
    this.asks = false;
    this.told = [];
  }

  override render() {
    const { keeping } = this;
    const words = this.text.lessons.keeping;
    return html`<section aria-labelledby="title">
      <h3 id="title">${words.title}</h3>
      <label>
        <input
          type="checkbox"
          .checked=${keeping !== "off"}
          aria-describedby="state"
          @change=${this.#onKeep}
        />${words.label}
      </label>
      <p id="state" class=${keeping === "memory" ? "refused" : "soft"}>${words[keeping]}</p>
      ${this.brief ? nothing : this.#tools()}
    </section>`;
  }

  #tools() {
    const words = this.text.lessons.keeping;
    return html`<div class="buttons">
        <button @click=${this.#save}>${words.save}</button>
        <button @click=${this.#pick}>${words.open}</button>
        <input type="file" accept=".json,application/json" @change=${this.#onFile} />
        ${this.asks ? nothing : html`<button class="erase" @click=${this.#ask}>${words.erase}</button>`}
      </div>
      ${this.asks ? this.#question() : nothing}
      ${
        this.told.length > 0
          ? html`<ul class="told" role="status">
              ${this.told.map((line) => html`<li>${line}</li>`)}
            </ul>`
          : nothing
      }`;
  }

  #question() {
    const words = this.text.lessons.keeping;
    return html`<div
      role="alertdialog"
      aria-label=${words.eraseTitle}
      aria-describedby="warning"
      @keydown=${this.#onKey}
    >
      <p id="warning">${words.eraseAsk}</p>
      <div class="buttons">
        <button class="no" @click=${this.#leave}>${words.eraseNo}</button>
        <button class="yes" @click=${this.#erase}>${words.eraseYes}</button>
      </div>
    </div>`;
  }

  #wish(wish: ProgressWish): void {
    this.dispatchEvent(new ProgressWishedEvent(wish));
  }

  #onKeep({ target }: Event): void {
    this.#wish({ kind: "keep", on: (target as HTMLInputElement).checked });
  }

  async #save(): Promise<void> {
    const { progressText } = await import("../lesson/progress-file.js");
    const file = new Blob([progressText(this.progress)], { type: "application/json" });
    // Nobody's name is in the name of a file.
    saveFile(file, `reedpoint-progress-${dayName(calendarDay(new Date()))}.json`);
  }

  #pick(): void {
    this.renderRoot.querySelector<HTMLInputElement>("input[type=file]")!.click();
  }

  async #onFile({ target }: Event): Promise<void> {
    const input = target as HTMLInputElement;
    const [file] = input.files ?? [];
    if (file) await this.#take(file);
    // The same file may be picked again.
    input.value = "";
  }

  async #take(file: File): Promise<void> {
    const words = this.text.lessons.keeping;
    const read = await smallText(file, mostBytes);
    if ("fault" in read) {
      this.told = [words[read.fault](file.name)];
      return;
    }
    const { readProgress } = await import("../lesson/progress-file.js");
    const { progress, problems } = readProgress(read.text, file.name);
    const count = Object.keys(progress.runs).length;
    if (count > 0) this.#wish({ kind: "take", progress });
    this.told = [...problems, count > 0 ? words.taken(count) : words.nothing];
  }

  #ask(): void {
    this.asks = true;
    void this.#focusOn(".no");
  }

  #onKey(event: KeyboardEvent): void {
    if (event.key !== "Escape") return;
    event.stopPropagation();
    this.#leave();
  }

  #leave(): void {
    this.asks = false;
    void this.#focusOn(".erase");
  }

  #erase(): void {
    this.asks = false;
    this.told = [];
    this.#wish({ kind: "erase" });
    void this.#focusOn(".erase");
  }

  async #focusOn(what: string): Promise<void> {
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLElement>(what)?.focus();
  }
}
