import { LitElement, css, html, nothing } from "lit";
import { live } from "lit/directives/live.js";
import type { FeatureId, ReedModel } from "../engine/model.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import { lengthUnits, type LengthUnit } from "../reed/units.js";
import { ReadingsTakenEvent } from "./events.js";
import { smallText } from "./small-text.js";
import { look } from "./look.js";

/** Of a file; a reed's readings are some hundred. */
const mostBytes = 200_000;
/** More problems than this nobody reads. */
const mostTold = 50;

/**
 * Readings from a table: paste, choose or drop; good cells are taken, each bad one is told.
 *
 * @fires readings-taken - all readings of each feature, in the model's units
 */
export class ReedReadings extends LitElement {
  static override styles = [
    look,
    css`
      :host {
        display: block;
      }
      .drop {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: 0.6rem;
        padding: 0.9rem;
        border: 1.5px dashed var(--edge);
        border-radius: 10px;
      }
      .drop.over {
        border-color: var(--accent);
        background: color-mix(in srgb, var(--accent) 10%, transparent);
      }
      p,
      ul {
        max-width: 44rem;
        margin: 0;
      }
      textarea {
        width: 100%;
        min-height: 9rem;
        padding: 0.5rem;
        font-family: ui-monospace, "DejaVu Sans Mono", monospace;
        tab-size: 24;
      }
      .row {
        display: flex;
        flex-wrap: wrap;
        gap: 0.6rem;
        align-items: center;
      }
      input[type="file"] {
        min-height: 2.25rem;
        max-width: 100%;
        font: inherit;
      }
      .file {
        max-width: 100%;
      }
      .soft {
        color: var(--ink-soft);
      }
      .main {
        border-color: var(--accent);
        font-weight: 600;
      }
      .problems {
        padding-inline-start: 1.2rem;
        color: var(--loud-word);
      }
    `,
  ];

  static override properties = {
    model: { attribute: false },
    unit: { type: String },
    kept: { attribute: false },
    text: { attribute: false },
    outcome: { state: true },
    over: { state: true },
  };

  declare model: ReedModel;
  /** The unit of lengths that name none; the user may choose another one here. */
  declare unit: LengthUnit;
  /** Features with readings that stay beside the new ones. */
  declare kept: readonly FeatureId[];
  declare text: Catalogue;
  declare outcome:
    | { readonly count: number; readonly kept: number; readonly problems: readonly string[] }
    | undefined;
  declare over: boolean;

  constructor() {
    super();
    this.unit = "mm";
    this.kept = [];
    this.text = english;
    this.over = false;
  }

  override render() {
    const words = this.text.readings;
    return html`<div
      class="drop ${this.over ? "over" : ""}"
      @dragover=${this.#onDragOver}
      @dragleave=${this.#onDragLeave}
      @drop=${this.#onDrop}
    >
      <h2>${words.title}</h2>
      <p>${words.explain}</p>
      <label>
        <span class="unseen">${words.area}</span>
        <textarea spellcheck="false" placeholder=${words.placeholder}></textarea>
      </label>
      <label class="soft"
        >${words.unit}
        <select @change=${this.#onUnit}>
          ${lengthUnits.map(
            (unit) =>
              html`<option value=${unit} .selected=${live(unit === this.unit)}>
                ${this.text.units[unit].name}
              </option>`,
          )}
        </select></label
      >
      <div class="row">
        <button class="main" @click=${this.#takePasted}>${words.take}</button>
        <label class="file"
          >${words.file}
          <input
            type="file"
            accept=".csv,.tsv,.txt,.json,text/csv,application/json"
            @change=${this.#onFile}
        /></label>
        <span class="soft">${words.drop}</span>
      </div>
      <div role="status">${this.#told()}</div>
    </div>`;
  }

  #told() {
    if (!this.outcome) return nothing;
    const { count, kept, problems } = this.outcome;
    const words = this.text.readings;
    return html`<p>${count > 0 ? words.accepted(count, kept) : words.none}</p>
      ${
        problems.length > 0
          ? html`<p>${words.problems(problems.length)}</p>
              <ul class="problems">
                ${problems.slice(0, mostTold).map((problem) => html`<li>${problem}</li>`)}
              </ul>
              ${problems.length > mostTold ? html`<p>${words.moreProblems(problems.length - mostTold)}</p>` : nothing}`
          : nothing
      }`;
  }

  override focus(): void {
    this.renderRoot.querySelector("textarea")?.focus();
  }

  #takePasted(): void {
    void this.#take(this.renderRoot.querySelector("textarea")!.value);
  }

  #onFile(event: Event): void {
    const field = event.target as HTMLInputElement;
    const file = field.files?.[0];
    if (file) void this.#takeFile(file);
    field.value = ""; // the same file, mended, can be chosen again
  }

  #onUnit(event: Event): void {
    this.unit = (event.target as HTMLSelectElement).value as LengthUnit;
  }

  #onDragOver(event: DragEvent): void {
    event.preventDefault();
    this.over = true;
  }

  #onDragLeave(): void {
    this.over = false;
  }

  #onDrop(event: DragEvent): void {
    event.preventDefault();
    this.over = false;
    const file = event.dataTransfer?.files[0];
    const dropped = event.dataTransfer?.getData("text/plain");
    if (file) void this.#takeFile(file);
    else if (dropped) void this.#take(dropped);
  }

  async #takeFile(file: File): Promise<void> {
    const words = this.text.readings;
    const read = await smallText(file, mostBytes);
    if ("fault" in read)
      this.#refuse(
        read.fault === "tooLarge" ? words.tooLarge(file.name) : words.unreadable(file.name),
      );
    else await this.#take(read.text, file.name);
  }

  #refuse(problem: string): void {
    this.outcome = { count: 0, kept: 0, problems: [problem] };
  }

  /** The parser comes only when it is needed: most visits never paste. */
  async #take(text: string, file?: string): Promise<void> {
    const parser = await import("../book/read-readings.js").catch((cause: unknown) => {
      console.warn("Reedpoint: the part that reads tables could not be loaded.", cause);
    });
    if (!parser) return this.#refuse(this.text.readings.notLoaded);
    const { model, unit } = this;
    const named = file === undefined ? {} : { file };
    const rules = { model, unit, text: this.text, ...named };
    const { readings, problems } = parser.readReadings(text, rules);
    const count = Object.keys(readings).length;
    const kept = this.kept.filter((id) => !(id in readings)).length;
    this.outcome = { count, kept, problems: problems.map(({ message }) => message) };
    if (count > 0) this.dispatchEvent(new ReadingsTakenEvent(readings, problems.length === 0));
  }
}
