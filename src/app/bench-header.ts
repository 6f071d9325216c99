import { LitElement, html, nothing } from "lit";
import { live } from "lit/directives/live.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import { demoReeds } from "../reed/demo-reeds.js";
import { ListWalk } from "../widgets/list-walk.js";
import { look } from "../widgets/look.js";
import { BenchActionEvent } from "./bench-action-event.js";
import { benchHeaderStyle } from "./bench-header-style.js";
import type { BenchAction } from "./bench-state.js";
import type { Theme } from "./theme.js";

// Values of the list of reeds: none of them can be a name that somebody has given.
const present = "present";
const allRound = "all-round";
const empty = "empty";
const demo = (reed: string): string => `demo ${reed}`;

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
 * @fires page-asked - the whole is wanted as one file
 * @fires embed-asked - lines for another page are wanted
 * @fires recipe-asked - the keyboard wants to skip to the recipe
 */
export class BenchHeader extends LitElement {
  static override styles = [look, benchHeaderStyle];

  static override properties = {
    text: { attribute: false },
    reed: { type: String },
    name: { type: String },
    canUndo: { attribute: false },
    canRedo: { attribute: false },
    theme: { type: String },
    compact: { type: Boolean },
    reedless: { type: Boolean },
  };

  declare text: Catalogue;
  /** The reed's name; empty for the all-round reed. */
  declare reed: string;
  /** What it is called while something is tried on it; else its name. */
  declare name: string;
  declare canUndo: boolean;
  declare canRedo: boolean;
  declare theme: Theme;
  /** On a phone: the lesser tools are folded away. */
  declare compact: boolean;
  /** On a page where the reed of the bench is not in sight. */
  declare reedless: boolean;
  readonly #walk = new ListWalk(this, (value) => this.#open(value));

  constructor() {
    super();
    this.text = english;
    this.reed = "";
    this.name = "";
    this.canUndo = false;
    this.canRedo = false;
    this.theme = "auto";
    this.compact = false;
    this.reedless = false;
  }

  override render() {
    const words = this.text.bar;
    const skip = this.reedless
      ? nothing
      : html`<a class="skip" href="#" @click=${this.#skip}>${words.skipToRecipe}</a>`;
    if (this.compact)
      return html`<header class="compact">
        ${skip}
        <h1 class=${this.reedless ? nothing : "unseen"}>${this.text.productName}</h1>
        <div class="tools ${this.reedless ? "alone" : ""}">
          ${this.reedless ? nothing : this.#reedTools("↶", "↷")}
          <details @keydown=${this.#onMenuKey} @focusout=${this.#onMenuLeft}>
            <summary>${words.more}</summary>
            <div class="menu" @click=${this.#onMenuClick}>${this.#lesser()}</div>
          </details>
        </div>
      </header>`;
    return html`<header>
      ${skip}
      <h1>${this.text.productName}</h1>
      <div class="tools">${this.reedless ? nothing : this.#reedTools()} ${this.#lesser()}</div>
    </header>`;
  }

  #reedTools(undo = "", redo = "") {
    return html`${this.#reedChoice()} ${this.#travel("undo", undo)} ${this.#travel("redo", redo)}`;
  }

  #travel(way: "undo" | "redo", icon = "") {
    const can = way === "undo" ? this.canUndo : this.canRedo;
    const name = this.text.bar[way];
    return html`<button
      class=${icon ? "icon" : nothing}
      title=${icon ? name : nothing}
      aria-disabled=${!can}
      @click=${() => this.#act({ type: way })}
    >
      ${icon ? html`<span aria-hidden="true">${icon}</span>` : name}
    </button>`;
  }

  #lesser() {
    const words = this.text.bar;
    return html`${this.reedless ? nothing : this.#fresh()}
      <button @click=${() => this.#ask("link-asked")}>${words.link}</button>
      <button @click=${() => this.#ask("page-asked")}>${words.onePage}</button>
      <button aria-haspopup="dialog" class="embed" @click=${() => this.#ask("embed-asked")}>
        ${this.text.embed.open}
      </button>
      ${this.#themeChoice()}`;
  }

  #fresh() {
    return html`<button aria-haspopup="dialog" @click=${() => this.#ask("table-asked")}>
        ${this.text.readings.open}
      </button>
      <button @click=${() => this.#act({ type: "reset" })}>${this.text.bar.reset}</button>`;
  }

  /** On the way to the table of readings, which has just been closed. */
  override focus(): void {
    this.#focusOn("[aria-haspopup]");
  }

  /** On the way to the lines for another page. */
  focusEmbed(): void {
    this.#focusOn(".embed");
  }

  #focusOn(button: string): void {
    this.renderRoot.querySelector<HTMLElement>(this.compact ? "summary" : button)?.focus();
  }

  #closeMenu(): void {
    this.renderRoot.querySelector("details")?.removeAttribute("open");
  }

  /** The menu closes after its work, and the focus stays where it was opened. */
  #onMenuClick(event: Event): void {
    if (!(event.target as Element).closest("button")) return;
    this.renderRoot.querySelector("summary")?.focus();
    this.#closeMenu();
  }

  #onMenuLeft(event: FocusEvent): void {
    const menu = event.currentTarget as Element;
    if (event.relatedTarget && !menu.contains(event.relatedTarget as Node)) this.#closeMenu();
  }

  #onMenuKey(event: KeyboardEvent): void {
    if (event.key !== "Escape") return;
    this.#closeMenu();
    this.renderRoot.querySelector("summary")?.focus();
  }

  #reedChoice() {
    const words = this.text.bar;
    const option = (value: string, label: string) =>
      html`<option value=${value} .selected=${live(value === (this.#walk.walked ?? this.#present))}>
        ${label}
      </option>`;
    return html`<span class="choice" @focusout=${this.#onChoiceLeft}
      ><label
        ><span class=${this.compact ? "unseen" : "label"}>${words.reed}</span>
        <select
          aria-describedby="walk-help"
          @change=${this.#walk.onChange}
          @keydown=${this.#walk.onKey}
          @pointerdown=${this.#walk.onPointer}
        >
          ${this.#present === present ? option(present, this.name || this.reed) : nothing}
          ${option(allRound, words.allRound)} ${option(empty, words.emptyReed)}
          <optgroup label=${words.demo}>
            ${demoReeds.map((one) => option(demo(one.reed), one.reed))}
          </optgroup>
        </select></label
      ><span id="walk-help" class="unseen">${words.walkHelp}</span> ${
        this.#walk.walked === undefined
          ? nothing
          : html`<button class="open" @click=${this.#walk.choose}>${words.openReed}</button>`
      }</span
    >`;
  }

  /** The value of the reed that is on the bench. */
  get #present(): string {
    const { reed, name } = this;
    if (name !== "" && name !== (reed || this.text.bar.allRound)) return present;
    if (reed === "") return allRound;
    return demoReeds.some((one) => one.reed === reed) ? demo(reed) : present;
  }

  /** Whoever goes on without choosing has only looked. */
  #onChoiceLeft({ relatedTarget, currentTarget }: FocusEvent): void {
    const isInside = (currentTarget as Element).contains(relatedTarget as Node | null);
    if (!isInside) this.#walk.leave();
  }

  #themeChoice() {
    const words = this.text.bar;
    return html`<label
      ><span class="label">${words.theme}</span>
      <select @change=${this.#onTheme}>
        ${(["auto", "paper", "night"] as const).map(
          (theme) =>
            html`<option value=${theme} .selected=${live(theme === this.theme)}>
              ${words.themes[theme]}
            </option>`,
        )}
      </select></label
    >`;
  }

  #act(action: BenchAction): void {
    this.dispatchEvent(new BenchActionEvent(action));
  }

  #ask(what: `${"table" | "link" | "page" | "embed" | "recipe"}-asked`): void {
    this.dispatchEvent(new Event(what));
  }

  #skip(event: Event): void {
    event.preventDefault(); // the address belongs to the bench
    this.#ask("recipe-asked");
  }

  #open(value: string): void {
    if (value === allRound) this.#act({ type: "reset" });
    if (value === empty)
      this.#act({ type: "reed-loaded", reed: this.text.bar.ownReed, values: {} });
    const found = demoReeds.find(({ reed }) => demo(reed) === value);
    if (!found) return;
    const { reed, readings: values, wingsSingly } = found;
    const readings = wingsSingly ? { wings: wingsSingly } : {};
    this.#act({ type: "reed-loaded", reed, values, readings });
  }

  #onTheme(event: Event): void {
    this.dispatchEvent(new ThemePickedEvent((event.target as HTMLSelectElement).value as Theme));
  }
}
