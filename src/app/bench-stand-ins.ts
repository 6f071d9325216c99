import { LitElement, html, nothing, type PropertyValues } from "lit";
import { live } from "lit/directives/live.js";
import { repeat } from "lit/directives/repeat.js";
import type { HandStandIn } from "../engine/hand-stand-ins.js";
import type { Feature } from "../engine/model.js";
import { readingsAfter } from "../engine/plan-notes.js";
import type { StandInRequest } from "../engine/stand-ins.js";
import { actionsOf } from "../reed/actions-of.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import { readingText, typedValue, unitSign } from "../reed/reading-text.js";
import { unitDecimals } from "../reed/units.js";
import { define } from "../widgets/define.js";
import type { ReadingsTakenEvent } from "../widgets/events.js";
import { ReedStepReadings } from "../widgets/reed-step-readings.js";
import { AtRest } from "../widgets/at-rest.js";
import { look } from "../widgets/look.js";
import { trialOf } from "./advice-state.js";
import { BenchActionEvent } from "./bench-action-event.js";
import type { BenchAction, BenchState } from "./bench-state.js";
import { isUnsound, mapFor } from "./measured-map.js";
import { careParts } from "./care-parts.js";
import { standInList, type Offer, type StandInList } from "./stand-in-list.js";
import { standInsStyle } from "./stand-ins-style.js";
import { unsoundText } from "./unsound-text.js";

define("reed-step-readings", ReedStepReadings);

/**
 * What stands in for a feature: what is asked, the list in the trade's words, and each to be tried, done or taken back.
 *
 * @fires bench-action - another question, a trial, its end, what was done
 * @fires stand-ins-closed - the list is to go
 */
export class BenchStandIns extends LitElement {
  static override styles = [look, standInsStyle];

  static override properties = {
    state: { attribute: false },
    stays: { type: Boolean },
    text: { attribute: false },
    doing: { state: true },
  };

  declare state: BenchState;
  /** It was not opened by anybody: it takes no focus when it comes, and cannot be closed. */
  declare stays: boolean;
  declare text: Catalogue;
  /** The new readings after what is tried was done are asked for. */
  declare doing: boolean;
  readonly #rest = new AtRest(this);
  #list: StandInList | undefined;

  constructor() {
    super();
    this.stays = false;
    this.doing = false;
    this.text = english;
  }

  /** While the recipe changes many times a second the list stays as it was. */
  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has("state") && this.state.gesture !== undefined) this.#rest.moved(true);
    if (this.#rest.resting) this.#list = standInList(this.state, this.text);
  }

  override firstUpdated(): void {
    if (this.stays) return;
    const section = this.renderRoot.querySelector("section");
    section?.focus({ preventScroll: true });
    const { top, bottom } = this.getBoundingClientRect();
    if (top < 0 || bottom > window.innerHeight) this.scrollIntoView({ block: "start" });
  }

  override render() {
    const { asked } = this.state.advice;
    const feature = this.state.model.features.find(({ id }) => id === asked?.feature);
    if (!asked || !feature) return nothing;
    const words = this.text.planPage.standIns;
    return html`<section
      tabindex="-1"
      role=${this.stays ? "group" : nothing}
      aria-label=${words.ask(feature.label)}
      @keydown=${this.#onKey}
    >
      <div class="head">
        <h3>${words.ask(feature.label)}</h3>
        ${
          this.stays
            ? nothing
            : html`<button title=${words.close} @click=${this.#close}>
                <span aria-hidden="true">×</span>
              </button>`
        }
      </div>
      ${this.#list ? this.#answer(asked, feature, this.#list) : html`<p>${this.#whyNot(feature)}</p>`}
    </section>`;
  }

  #whyNot({ id, label }: Feature): string {
    const words = this.text.planPage.standIns;
    const { bench } = this.state.present;
    const { values } = bench;
    if (isUnsound(bench)) return unsoundText(bench, this.text);
    if (values[id] === undefined) return words.notMeasured(label);
    return mapFor(this.state.model, values) ? "" : words.noPlace;
  }

  #answer(asked: StandInRequest, feature: Feature, list: StandInList) {
    const words = this.text.advice.standIns;
    const page = this.text.planPage.standIns;
    const isTried = trialOf(this.state) !== undefined;
    return html`${this.#modes(asked)} ${this.#change(asked, feature)}
      <p class="sentence">${list.sentence}</p>
      ${isTried ? html`<p class="soft">${page.tried} ${page.leftover}</p>` : nothing}
      <div class="lists">
        <div>
          <h4>${words.byHand}</h4>
          ${list.hands.length > 0 ? html`<p class="soft">${this.text.advice.plan.ownRules}</p>` : nothing}
          ${this.#offers("hand", list.hands, words.noneByHand)}
        </div>
        <div>
          <h4>${words.features}</h4>
          ${this.#offers("feature", list.features, words.none)}
          ${
            list.pairs.length > 0
              ? html`<h4>${words.pairs}</h4>
                  ${this.#offers("pair", list.pairs, "")}`
              : nothing
          }
        </div>
      </div>
      ${
        list.differences.length > 0
          ? html`<div class="differences">
              ${list.differences.map((difference) => html`<p class="soft">${difference}</p>`)}
            </div>`
          : nothing
      }
      <p class="soft">${page.unmeasured}</p>`;
  }

  #modes(asked: StandInRequest) {
    const words = this.text.planPage.standIns;
    return html`<fieldset>
      <legend class="unseen">${words.mode}</legend>
      <div class="modes">
        ${(["instead", "offset"] as const).map(
          (mode) =>
            html`<label
              ><input
                type="radio"
                name="mode"
                .checked=${live(asked.mode === mode)}
                @change=${() => this.#ask({ ...asked, mode })}
              />${words.modes[mode]}</label
            >`,
        )}
      </div>
      <p class="soft">${words.modeHints[asked.mode]}</p>
    </fieldset>`;
  }

  /** Which way and by how much the feature would change. */
  #change(asked: StandInRequest, feature: Feature) {
    const { text } = this;
    const { unit } = this.state.present.bench;
    const words = text.planPage.standIns;
    const size = Math.abs(asked.change);
    return html`<div class="ask">
      <label
        >${words.sense}
        <select
          @change=${(event: Event) => {
            const more = (event.target as HTMLSelectElement).value === "more";
            this.#ask({ ...asked, change: more ? size : -size });
          }}
        >
          ${[false, true].map(
            (more) =>
              html`<option
                value=${more ? "more" : "less"}
                .selected=${live(asked.change > 0 === more)}
              >
                ${words.senses(feature.id, more)}
              </option>`,
          )}
        </select></label
      >
      <label
        >${words.amount(unitSign(feature, unit, text))}
        <input
          type="number"
          inputmode="decimal"
          min="0"
          step=${10 ** -unitDecimals(feature, unit)}
          .value=${live(readingText(feature, size, unit, text))}
          @change=${(event: Event) => this.#onSize(event, asked, feature)}
      /></label>
    </div>`;
  }

  /** Nothing, or more than the whole range, is no change that could be asked about. */
  #onSize(event: Event, asked: StandInRequest, feature: Feature): void {
    const field = event.target as HTMLInputElement;
    const size = typedValue(feature, field.value, this.state.present.bench.unit);
    if (size === undefined || !(size > 0)) {
      this.requestUpdate();
      return;
    }
    const most = Math.min(size, feature.max - feature.min);
    this.#ask({ ...asked, change: asked.change > 0 ? most : -most });
  }

  #offers(kind: string, offers: readonly Offer[], none: string) {
    if (offers.length === 0) return html`<p class="soft">${none}</p>`;
    return html`<ol>
      ${repeat(
        offers,
        ({ id }) => id,
        (offer) => this.#offer(`${kind} ${offer.id}`, offer),
      )}
    </ol>`;
  }

  #offer(what: string, { words: said, changes, hand, care }: Offer) {
    const words = this.text.advice.standIns;
    const on = trialOf(this.state)?.what === what;
    const id = what.replaceAll(" ", "-");
    return html`<li class=${on ? "on" : ""} data-what=${what}>
      <div id=${id}>
        <p>${said}</p>
        ${care ? careParts(care, on, this.text) : nothing}
      </div>
      ${
        on
          ? html`${this.doing && hand ? this.#form(hand) : nothing}
              <div class="pair">
                ${
                  hand && !this.doing
                    ? html`<button class="done" @click=${this.#open}>
                        ${this.text.advice.plan.done}
                      </button>`
                    : nothing
                }
                <button class="back" @click=${() => this.#back(what)}>${words.back}</button>
              </div>`
          : changes.length > 0
            ? html`<button
                class="try"
                aria-describedby=${id}
                @click=${() => this.#try(what, changes)}
              >
                ${words.try}
              </button>`
            : nothing
      }
    </li>`;
  }

  #ask(request: StandInRequest): void {
    this.#act({ type: "stand-ins-asked", request });
  }

  #try(what: string, changes: Offer["changes"]): void {
    this.#act({ type: "stand-in-tried", what, changes });
    this.doing = false;
    void this.#focusOn(`[data-what="${what}"] .pair button`);
  }

  /** What hands have done is read again, as after a step of a plan. */
  #form(hand: HandStandIn) {
    const { actions, changes } = hand;
    const { model, present } = this.state;
    const done = actionsOf(model).actions.filter(({ id }) => actions.includes(id));
    const touched = new Set(done.flatMap((action) => readingsAfter(model, action)));
    const { bench } = present;
    const by = new Map(changes.map(({ feature, change }) => [feature, change]));
    const expected = Object.entries(bench.values).map(([id, value]) => [
      id,
      value + (by.get(id) ?? 0),
    ]);
    return html`<reed-step-readings
      .model=${model}
      .asked=${[...touched].filter((id) => bench.values[id] !== undefined)}
      .expected=${Object.fromEntries(expected)}
      .unit=${bench.unit}
      .text=${this.text}
      @readings-taken=${(event: ReadingsTakenEvent) => this.#onTaken(event, hand)}
      @readings-put-off=${() => (this.doing = false)}
    ></reed-step-readings>`;
  }

  readonly #open = (): void => {
    this.doing = true;
    void this.#focusOn("reed-step-readings");
  };

  /** Each deed is a step of the reed's own; the readings belong to the last. */
  #onTaken(event: ReadingsTakenEvent, { actions, amount }: HandStandIn): void {
    event.stopPropagation(); // these are the readings of a step, not of a table
    actions.forEach((action, i) => {
      const readings = i === actions.length - 1 ? event.readings : {};
      this.#act({ type: "step-done", step: { action, amount }, readings });
    });
    this.doing = false;
    void this.#focusOn("section");
  }

  #back(what: string): void {
    this.#act({ type: "trial-ended" });
    void this.#focusOn(`[data-what="${what}"] .try`);
  }

  async #focusOn(selector: string): Promise<void> {
    await new Promise((done) => requestAnimationFrame(done)); // the new state has come down
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLElement>(selector)?.focus();
  }

  #onKey(event: KeyboardEvent): void {
    if (event.key !== "Escape") return;
    event.stopPropagation(); // the sheet stays
    if (!this.stays) this.#close();
  }

  #close(): void {
    this.dispatchEvent(new Event("stand-ins-closed"));
  }

  #act(action: BenchAction): void {
    this.dispatchEvent(new BenchActionEvent(action));
  }
}
