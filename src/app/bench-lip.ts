import { LitElement, css, html, nothing } from "lit";
import type { AssumptionId, Assumptions } from "../acoustics/assumptions.js";
import { presetState } from "../acoustics/lip-presets.js";
import type { LipPurpose } from "../acoustics/trade-and-model.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import { withLip } from "../reed/lip-catalogue.js";
import { shownValues } from "../reed/tried.js";
import { define } from "../widgets/define.js";
import type {
  AssumptionPickedEvent,
  LipPresetPickedEvent,
  LipPurposePickedEvent,
  PressurePickedEvent,
} from "../widgets/lip-events.js";
import { look } from "../widgets/look.js";
import { ReedLip, type NamedReed } from "../widgets/reed-lip.js";
import { BenchActionEvent } from "./bench-action-event.js";
import { reedName } from "./bench-reed.js";
import type { BenchState } from "./bench-state.js";

define("lip-panel", ReedLip);

/**
 * The page section on lips and opening: the reed of the bench, the pinned one as an outline, and what belongs to this
 * section alone: lips, breath, changed constants, whose rows are shown. None of it is a step of undo.
 *
 * @fires bench-action - the reed is pinned or unpinned
 */
export class BenchLip extends LitElement {
  static override styles = [
    look,
    css`
      :host {
        display: block;
        min-width: 0;
      }
      .compare {
        display: flex;
        flex-wrap: wrap;
        gap: 0.3rem 0.8rem;
        align-items: center;
        margin: 0.6rem 0 0;
        color: var(--ink-soft);
        font-size: 0.8125rem;
      }
      .compare button {
        color: var(--ink);
        font-size: 0.9375rem;
      }
      .compare strong {
        color: var(--ink);
        font-size: 0.9375rem;
      }
      @media print {
        button,
        .hint {
          display: none;
        }
      }
    `,
  ];

  static override properties = {
    state: { attribute: false },
    embedded: { type: Boolean },
    text: { attribute: false },
    lip: { state: true },
    blow: { state: true },
    changes: { state: true },
    purpose: { state: true },
  };

  declare state: BenchState;
  /** On somebody else's page, where the same may stand several times: no landmark. */
  declare embedded: boolean;
  declare text: Catalogue;
  /** Pa. */
  declare lip: number;
  declare blow: number;
  declare changes: Partial<Assumptions>;
  declare purpose: LipPurpose | undefined;

  constructor() {
    super();
    this.text = english;
    this.embedded = false;
    const { lip, blow } = presetState("middle");
    this.lip = lip;
    this.blow = blow;
    this.changes = {};
    this.purpose = "high";
  }

  override render() {
    const text = withLip(this.text);
    const { bench } = this.state.present;
    const { pinned } = bench;
    return html`<section role=${this.embedded ? "group" : nothing} aria-label=${text.lip.title}>
      <lip-panel
        .model=${this.state.model}
        .mine=${this.#named({ reed: bench.reed, values: shownValues(bench) })}
        .second=${pinned && this.#named(pinned)}
        .unit=${bench.unit}
        .lip=${this.lip}
        .blow=${this.blow}
        .changes=${this.changes}
        .purpose=${this.purpose}
        .text=${text}
        @pressure-picked=${this.#onPressure}
        @lip-preset-picked=${this.#onPreset}
        @assumption-picked=${this.#onAssumption}
        @assumptions-reset=${this.#onReset}
        @lip-purpose-picked=${this.#onPurpose}
        @gesture-ended=${(event: Event) => event.stopPropagation()}
        >${this.#compare(pinned?.reed)}</lip-panel
      >
    </section>`;
  }

  #compare(pinned: string | undefined) {
    const text = withLip(this.text);
    const { model, present } = this.state;
    const { bench } = present;
    return html`<p class="compare">
      <strong>${text.lip.panel.mine(reedName({ model, bench }, text))}</strong>
      ${
        pinned !== undefined
          ? html`<span>${text.compare.pinned(pinned || text.bar.allRound)}</span>
              <button @click=${() => this.#ask("reed-unpinned")}>${text.compare.unpin}</button>`
          : html`<button @click=${() => this.#ask("reed-pinned")}>${text.compare.pin}</button>
              <span class="hint">${text.lip.panel.pinHint}</span>`
      }
    </p>`;
  }

  #named({
    reed,
    values,
  }: {
    readonly reed: string;
    readonly values: NamedReed["values"];
  }): NamedReed {
    return { name: reed || this.text.bar.allRound, values };
  }

  #ask(type: "reed-pinned" | "reed-unpinned"): void {
    this.dispatchEvent(new BenchActionEvent({ type }));
    // The button that was pressed is another one now: the focus stays in its place.
    requestAnimationFrame(() =>
      this.renderRoot.querySelector<HTMLElement>(".compare button")?.focus(),
    );
  }

  #onPressure({ which, pressure }: PressurePickedEvent): void {
    if (which === "lip") this.lip = pressure;
    else this.blow = pressure;
  }

  /** A preset brings the place of the lips with it. */
  #onPreset({ preset }: LipPresetPickedEvent): void {
    const { lip, blow, place } = presetState(preset);
    this.lip = lip;
    this.blow = blow;
    this.#change("lipPlace", place);
  }

  #onAssumption({ assumption, value }: AssumptionPickedEvent): void {
    this.#change(assumption, value);
  }

  #onReset(): void {
    this.changes = {};
  }

  #onPurpose({ purpose }: LipPurposePickedEvent): void {
    this.purpose = purpose;
  }

  #change(id: AssumptionId, value: number | undefined): void {
    const { [id]: _before, ...others } = this.changes;
    this.changes = value === undefined ? others : { ...others, [id]: value };
  }
}
