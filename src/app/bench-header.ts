import { LitElement, css, html, nothing } from "lit";
import { english, type Catalogue } from "../reed/catalogue.js";
import { demoReeds } from "../reed/demo-reeds.js";
import { look } from "../widgets/look.js";
import { BenchActionEvent } from "./bench-action-event.js";
import type { BenchAction } from "./bench-state.js";
import type { Theme } from "./theme.js";

/** Another look was chosen. */
export class ThemePickedEvent extends Event {
  readonly theme: Theme;
  constructor(theme: Theme) {
    super("theme-picked", { bubbles: true, composed: true });
    this.theme = theme;
  }
}

/**
 * The bar above the bench: which reed, a table of readings, undo and redo, the link, the look.
 *
 * @fires bench-action - load, reset, undo, redo
 * @fires theme-picked - another look
 * @fires table-asked - readings from a table are wanted
 * @fires link-asked - the link is wanted
 * @fires recipe-asked - the keyboard wants to skip to the recipe
 */
export class BenchHeader extends LitElement {
  static override styles = [
    look,
    css`
      header {
        display: flex;
        flex-wrap: wrap;
        gap: 0.5rem 1rem;
        align-items: center;
        padding: 0.6rem clamp(0.75rem, 2.5vw, 2rem);
        border-bottom: 1px solid var(--rule);
      }
      h1 {
        margin: 0 auto 0 0;
        font-family: var(--serif);
        font-size: 1.375rem;
        line-height: 1.2;
      }
      .tools {
        min-width: 0;
        display: flex;
        flex-wrap: wrap;
        gap: 0.4rem;
        align-items: center;
      }
      .tools label {
        min-width: 0;
        max-width: 100%;
      }
      .tools select {
        max-width: 100%;
        min-width: 0;
      }
      .tools label {
        display: flex;
        gap: 0.35rem;
        align-items: center;
        color: var(--ink-soft);
      }
      .skip {
        position: absolute;
        inset-inline-start: -100rem;
        padding: 0.5rem 0.8rem;
        background: var(--card);
        color: inherit;
      }
      .skip:focus {
        inset: 0.3rem auto auto 0.3rem;
        z-index: 4;
      }
      [aria-disabled="true"] {
        border-color: var(--rule);
        color: var(--ink-soft);
        cursor: default;
      }
      @media (max-width: 34rem) {
        .tools .label {
          position: absolute;
          width: 1px;
          height: 1px;
          overflow: hidden;
          clip-path: inset(50%);
        }
        .tools button,
        .tools select {
          padding-inline: 0.5rem;
        }
      }
    `,
  ];

  static override properties = {
    text: { attribute: false },
    reed: { type: String },
    unchanged: { type: Boolean },
    canUndo: { attribute: false },
    canRedo: { attribute: false },
    theme: { type: String },
  };

  declare text: Catalogue;
  /** The reed's name; empty for the all-round reed. */
  declare reed: string;
  /** Whether its readings are still those of the reed of that name. */
  declare unchanged: boolean;
  declare canUndo: boolean;
  declare canRedo: boolean;
  declare theme: Theme;

  constructor() {
    super();
    this.text = english;
    this.reed = "";
    this.unchanged = true;
    this.canUndo = false;
    this.canRedo = false;
    this.theme = "auto";
  }

  override render() {
    const words = this.text.bar;
    return html`<header>
      <a class="skip" href="#" @click=${this.#skip}>${words.skipToRecipe}</a>
      <h1>${this.text.productName}</h1>
      <div class="tools">
        ${this.#reedChoice()}
        <button aria-haspopup="dialog" @click=${() => this.#ask("table-asked")}>
          ${this.text.readings.open}
        </button>
        <button aria-disabled=${!this.canUndo} @click=${() => this.#act({ type: "undo" })}>
          ${words.undo}
        </button>
        <button aria-disabled=${!this.canRedo} @click=${() => this.#act({ type: "redo" })}>
          ${words.redo}
        </button>
        <button @click=${() => this.#act({ type: "reset" })}>${words.reset}</button>
        <button @click=${() => this.#ask("link-asked")}>${words.link}</button>
        ${this.#themeChoice()}
      </div>
    </header>`;
  }

  #reedChoice() {
    const words = this.text.bar;
    const { reed } = this;
    const known = reed === "" || demoReeds.some((one) => one.reed === reed);
    const changed =
      known && !this.unchanged ? words.changed(reed === "" ? words.allRound : reed) : "";
    const option = (value: string, label: string) =>
      html`<option value=${value} ?selected=${!changed && value === reed}>${label}</option>`;
    return html`<label
      ><span class="label">${words.reed}</span>
      <select @change=${this.#onReed}>
        ${changed ? html`<option value="changed" selected>${changed}</option>` : nothing}
        ${known ? nothing : option(reed, reed)} ${option("", words.allRound)}
        <option value="empty">${words.emptyReed}</option>
        <optgroup label=${words.demo}>
          ${demoReeds.map((one) => option(one.reed, one.reed))}
        </optgroup>
      </select></label
    >`;
  }

  #themeChoice() {
    const words = this.text.bar;
    return html`<label
      ><span class="label">${words.theme}</span>
      <select @change=${this.#onTheme}>
        ${(["auto", "paper", "night"] as const).map(
          (theme) =>
            html`<option value=${theme} ?selected=${theme === this.theme}>
              ${words.themes[theme]}
            </option>`,
        )}
      </select></label
    >`;
  }

  #act(action: BenchAction): void {
    this.dispatchEvent(new BenchActionEvent(action));
  }

  #ask(what: "table-asked" | "link-asked" | "recipe-asked"): void {
    this.dispatchEvent(new Event(what));
  }

  #skip(event: Event): void {
    event.preventDefault(); // the address belongs to the bench
    this.#ask("recipe-asked");
  }

  #onReed(event: Event): void {
    const reed = (event.target as HTMLSelectElement).value;
    const demo = demoReeds.find((one) => one.reed === reed);
    if (demo) {
      const readings = demo.wingsSingly ? { wings: demo.wingsSingly } : {};
      this.#act({ type: "reed-loaded", reed, values: demo.readings, readings });
    } else if (reed === "empty") {
      this.#act({ type: "reed-loaded", reed: this.text.bar.ownReed, values: {} });
    } else if (reed === "") {
      this.#act({ type: "reset" });
    }
  }

  #onTheme(event: Event): void {
    this.dispatchEvent(new ThemePickedEvent((event.target as HTMLSelectElement).value as Theme));
  }
}
