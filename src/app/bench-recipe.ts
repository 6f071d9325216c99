import { LitElement, css, html, nothing } from "lit";
import { live } from "lit/directives/live.js";
import type { FeatureId, ReedModel } from "../engine/model.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import { lengthUnits, type LengthUnit } from "../reed/units.js";
import { givenValues, shownValues } from "../reed/tried.js";
import type { StandInsAskedEvent } from "../widgets/advice-events.js";
import { define } from "../widgets/define.js";
import { look } from "../widgets/look.js";
import type { ReedFeatureRow } from "../widgets/reed-feature-row.js";
import { ReedRecipe } from "../widgets/reed-recipe.js";
import { BenchActionEvent } from "./bench-action-event.js";
import type { BenchState } from "./bench-state.js";
import type { BenchView } from "./bench-view.js";
import { LateParts, type Loaders } from "./late-parts.js";
import { firstRequest } from "./stand-in-list.js";

define("reed-recipe", ReedRecipe);

const lateParts: Loaders = {
  standIns: async () =>
    define("bench-stand-ins", (await import("./bench-stand-ins.js")).BenchStandIns),
};

const noFeatures: readonly FeatureId[] = [];

/**
 * The recipe as a card or, in one column, as a sheet that comes up from the bottom of the window: so the triangle
 * above it stays in sight while a slider is moved.
 *
 * @fires bench-action - another unit, stand-ins
 * @fires sheet-opened - the sheet has come up
 */
export class BenchRecipe extends LitElement {
  static override styles = [
    look,
    css`
      :host {
        display: block;
        min-width: 0;
      }
      .card {
        padding: 0.9rem 1rem 1rem;
        border: 1px solid var(--rule);
        border-radius: 10px;
        background: var(--card);
      }
      .card:focus {
        outline: none;
      }
      .head {
        display: flex;
        flex-wrap: wrap;
        gap: 0.4rem;
        align-items: center;
        justify-content: space-between;
        margin-bottom: 0.5rem;
      }
      .hint {
        margin: 0 0 0.4rem;
        color: var(--ink-soft);
        font-size: 0.8125rem;
      }
      label {
        min-width: 0;
        max-width: 100%;
      }
      .sheet {
        position: fixed;
        inset: auto 0 0;
        z-index: 2;
        overflow: hidden auto;
        max-height: 58vh;
        max-height: min(58svh, var(--sheet, 58svh));
        overscroll-behavior: contain;
        border-top: 1px solid var(--edge);
        background: var(--card);
        box-shadow: 0 -4px 18px rgb(0 0 0 / 14%);
      }
      .sheet {
        scroll-padding: 4rem 0 0.5rem;
      }
      /* On a phone on its side the sheet comes from the side, so that the triangle is not covered. */
      @media (max-height: 30rem) and (min-width: 36rem) {
        .sheet.open {
          inset-block: 0;
          inset-inline: auto 0;
          width: 55%;
          max-height: none;
          border-inline-start: 1px solid var(--edge);
        }
      }
      .sheet .head {
        position: sticky;
        top: 0;
        z-index: 1;
        margin: 0;
        padding: 0.3rem clamp(0.75rem, 2.5vw, 2rem);
        background: var(--card);
      }
      .sheet h2 {
        flex: 1 1 9rem;
      }
      .sheet .handle {
        width: 100%;
        min-height: 2.75rem;
        border-color: var(--accent);
        font-weight: 600;
      }
      .measured {
        min-height: 2.75rem;
      }
      .none {
        visibility: hidden;
      }
      #body {
        padding: 0 clamp(0.75rem, 2.5vw, 2rem) 1rem;
      }
      @media print {
        .card {
          padding: 0.3rem;
          border: 0;
          break-inside: avoid;
        }
        .sheet {
          position: static;
          overflow: visible;
          max-height: none;
          border: 0;
          box-shadow: none;
        }
        #body[hidden] {
          display: block !important;
        }
        label,
        .hint,
        .measured,
        bench-stand-ins,
        .handle {
          display: none;
        }
      }
    `,
  ];

  static override properties = {
    model: { attribute: false },
    state: { attribute: false },
    view: { attribute: false },
    pointed: { type: String },
    sheet: { type: Boolean },
    embedded: { type: Boolean },
    still: { type: Boolean },
    text: { attribute: false },
    open: { state: true },
  };

  declare model: ReedModel;
  declare state: BenchState;
  declare view: BenchView;
  declare pointed: FeatureId | undefined;
  /** At the bottom of the window, to be opened. */
  declare sheet: boolean;
  /** On somebody else's page, where the same may stand several times: no landmark. */
  declare embedded: boolean;
  /** Nothing can be moved. */
  declare still: boolean;
  declare text: Catalogue;
  declare open: boolean;
  readonly #late = new LateParts(this, lateParts);

  constructor() {
    super();
    this.text = english;
    this.sheet = false;
    this.embedded = false;
    this.still = false;
    this.open = false;
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    if (this.open) document.documentElement.toggleAttribute("data-sheet", false);
  }

  override render() {
    return this.sheet ? this.#sheet() : this.#card();
  }

  #card() {
    const { text } = this;
    return html`<section
      class="card"
      tabindex="-1"
      role=${this.embedded ? "group" : nothing}
      aria-label=${text.recipe.title}
    >
      <div class="head">
        <h2>${text.recipe.title}</h2>
        ${this.#unitChoice()}
      </div>
      <p class="hint">${text.planPage.standIns.hint}</p>
      ${this.#rows()}
    </section>`;
  }

  #sheet() {
    const { text, open } = this;
    return html`<section
      class="sheet ${open ? "open" : ""}"
      aria-label=${text.recipe.title}
      @keydown=${this.#onKey}
    >
      <div class="head">
        <h2>
          <button class="handle" aria-expanded=${open} aria-controls="body" @click=${this.#toggle}>
            ${open ? text.sheet.close : text.sheet.open}
          </button>
        </h2>
        ${open ? html`${this.#asMeasured()} ${this.#unitChoice()}` : nothing}
      </div>
      <div id="body" ?hidden=${!open}>
        <p class="hint">${text.planPage.standIns.hint}</p>
        ${this.#rows()}
      </div>
    </section>`;
  }

  /** Its room is kept, so that nothing moves under the finger that tries something. */
  #asMeasured() {
    const { tried } = this.state.present.bench;
    return html`<button
      class="measured ${tried ? "" : "none"}"
      @click=${() => this.dispatchEvent(new BenchActionEvent({ type: "as-measured" }))}
    >
      ${this.text.tried.asMeasured(this.view.isGiven)}
    </button>`;
  }

  #rows() {
    const { bench, readings } = this.state.present;
    return html`<reed-recipe
      .model=${this.model}
      .values=${shownValues(bench)}
      .readings=${readings}
      .expected=${bench.expected ?? noFeatures}
      .locked=${bench.locked}
      .still=${this.still}
      .pulls=${this.view.pulls}
      .measured=${bench.values}
      .tried=${bench.tried}
      .own=${!givenValues(this.model, bench)}
      .pointed=${this.pointed}
      .asked=${this.state.advice.asked?.feature}
      .unit=${bench.unit}
      .text=${this.text}
      @stand-ins-asked=${this.#onAsked}
      >${this.#standIns()}</reed-recipe
    >`;
  }

  #standIns() {
    const { state, text } = this;
    if (!state.advice.asked) return nothing;
    const arrival = this.#late.arrival("standIns");
    if (arrival === "coming") return nothing;
    if (arrival === "failed")
      return html`<p slot="stand-ins" class="hint" role="alert">${text.pages.failed}</p>`;
    return html`<bench-stand-ins
      slot="stand-ins"
      .state=${state}
      .text=${text}
      @stand-ins-closed=${this.#onClosed}
    ></bench-stand-ins>`;
  }

  #onAsked({ feature }: StandInsAskedEvent): void {
    const request =
      feature === undefined ? undefined : firstRequest(this.state, feature, this.text);
    this.dispatchEvent(new BenchActionEvent({ type: "stand-ins-asked", request }));
  }

  /** The list is gone: the focus goes to the button that opens it. */
  #onClosed(): void {
    const row = this.renderRoot
      .querySelector<ReedRecipe>("reed-recipe")
      ?.renderRoot.querySelector<ReedFeatureRow>(`#${this.state.advice.asked?.feature}`);
    this.dispatchEvent(new BenchActionEvent({ type: "stand-ins-asked", request: undefined }));
    row?.focusAsk();
  }

  #unitChoice() {
    return html`<label
      >${this.text.bar.unit}
      <select @change=${this.#onUnit}>
        ${lengthUnits.map(
          (unit) =>
            html`<option value=${unit} .selected=${live(unit === this.state.present.bench.unit)}>
              ${this.text.units[unit].name}
            </option>`,
        )}
      </select></label
    >`;
  }

  /** Brings the recipe into sight, with the focus in it. */
  async show(): Promise<void> {
    if (this.sheet) this.#setOpen(true);
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLElement>(".card, .handle")?.focus();
  }

  /** Lets the sheet go down: what has the focus now would lie under it. */
  close(): void {
    if (this.open) this.#setOpen(false);
  }

  #toggle(): void {
    this.#setOpen(!this.open);
  }

  #setOpen(open: boolean): void {
    this.open = open;
    document.documentElement.toggleAttribute("data-sheet", open);
    if (open) this.dispatchEvent(new Event("sheet-opened"));
  }

  #onKey(event: KeyboardEvent): void {
    // A field takes the key first: there it brings back what was typed over.
    if (event.key !== "Escape" || !this.open || isField(event)) return;
    this.#setOpen(false);
    this.renderRoot.querySelector<HTMLElement>(".handle")?.focus();
  }

  #onUnit(event: Event): void {
    const unit = (event.target as HTMLSelectElement).value as LengthUnit;
    this.dispatchEvent(new BenchActionEvent({ type: "unit-set", unit }));
  }
}

function isField(event: Event): boolean {
  const [first] = event.composedPath();
  return first instanceof HTMLInputElement && first.type === "text";
}
