import { LitElement, css, html, nothing } from "lit";
import type { Feature, FeatureId, ReedModel } from "../engine/model.js";
import { mostUsefulReading } from "../engine/next-reading.js";
import { actionsOf } from "../reed/actions-of.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import { crossChecks } from "../reed/cross-checks.js";
import { measuringSteps } from "../reed/measuring-steps.js";
import { placesOf } from "../reed/places.js";
import { readingText, readingWithUnit } from "../reed/reading-text.js";
import { byPlace, isEveryPlaceRead } from "../reed/readings.js";
import { look } from "../widgets/look.js";
import { BenchActionEvent } from "./bench-action-event.js";
import { firstFeatureStep } from "./blank-sheet.js";
import { checkText } from "./check-text.js";
import { gaugeErrors } from "./gauge-errors.js";
import type { Moment } from "./moment.js";
import { isRead, readFeatures } from "./read-features.js";

/** Asks for a step of the sheet by its feature. */
export class StepAskedEvent extends Event {
  readonly feature: FeatureId;
  constructor(feature: FeatureId) {
    super("step-asked", { bubbles: true, composed: true });
    this.feature = feature;
  }
}

/**
 * The sheet so far: every reading, what to look at again, the next most useful reading, and what was done to the reed since.
 *
 * @fires step-asked - a feature is to be read
 * @fires bench-action - something was done to the reed
 */
export class MeasureSummary extends LitElement {
  static override styles = [
    look,
    css`
      :host {
        display: block;
        min-width: 0;
      }
      h2 {
        font-size: 1.375rem;
      }
      h3 {
        margin-top: 0.9rem;
      }
      .scroll {
        overflow-x: auto;
      }
      table {
        width: 100%;
        border-collapse: collapse;
      }
      th,
      td {
        padding: 0.15rem 0.5rem 0.15rem 0;
        border-bottom: 1px solid var(--rule);
        font-weight: inherit;
        text-align: start;
      }
      td.number {
        text-align: end;
        white-space: nowrap;
      }
      thead th {
        color: var(--ink-soft);
        font-size: 0.8125rem;
      }
      ul {
        margin: 0.3rem 0;
        padding-inline-start: 1.2rem;
      }
      li {
        margin-bottom: 0.3rem;
      }
      .link {
        min-height: 1.75rem;
        padding: 0 0.5rem;
      }
      .soft {
        color: var(--ink-soft);
      }
      label {
        display: flex;
        flex-wrap: wrap;
        gap: 0.4rem;
        align-items: center;
        margin-top: 0.9rem;
      }
      select {
        min-width: 0;
        max-width: 100%;
      }
    `,
  ];

  static override properties = {
    model: { attribute: false },
    moment: { attribute: false },
    text: { attribute: false },
  };

  declare model: ReedModel;
  declare moment: Moment;
  declare text: Catalogue;

  constructor() {
    super();
    this.text = english;
  }

  /** On its title: there a new step begins to be read. */
  override focus(): void {
    this.renderRoot.querySelector<HTMLElement>("h2")?.focus();
  }

  override render() {
    const words = this.text.measure.summary;
    return html`<h2 tabindex="-1">${words.title}</h2>
      ${this.#again()} ${this.#suggestion()} ${this.#checks()} ${this.#table()} ${this.#worked()}`;
  }

  #suggestion() {
    const words = this.text.measure.summary;
    const gaugeError = gaugeErrors(this.model, this.moment.readings);
    const next = mostUsefulReading(this.model, readFeatures(this.moment.bench), { gaugeError });
    if (!next) return html`<p>${words.complete}</p>`;
    const { label } = this.#feature(next.feature);
    return html`<p>
      ${next.area === Infinity ? words.more : nothing} ${words.suggestion(label)}
      ${this.#goTo(next.feature)}
    </p>`;
  }

  #goTo(feature: FeatureId) {
    const words = this.text.measure.checks;
    return html`<button
      class="link"
      @click=${() => this.dispatchEvent(new StepAskedEvent(feature))}
    >
      ${words.goTo(this.#feature(feature).label)}
    </button>`;
  }

  #checks() {
    const words = this.text.measure.checks;
    const { bench, readings } = this.moment;
    const found = crossChecks(bench.values, readings);
    const missing = this.#missing();
    return html`<h3>${words.title}</h3>
      ${
        found.length === 0 && missing.length === 0
          ? html`<p class="soft">${words.none}</p>`
          : html`<ul>
              ${missing.map(
                ({ line, step, name }) =>
                  html`<li>
                    ${line}
                    <button class="link" @click=${() => this.#toStep(step)}>
                      ${words.toStep(name)}
                    </button>
                  </li>`,
              )}
              ${found.map(
                (one) =>
                  html`<li>
                    ${checkText(one, this.model, this.moment.bench.unit, this.text)}
                    ${one.features.map((feature) => this.#goTo(feature))}
                  </li>`,
              )}
            </ul>`
      }`;
  }

  /** What the sheet still lacks besides readings that were skipped on purpose. */
  #missing(): { readonly line: string; readonly step: number; readonly name: string }[] {
    const { text } = this;
    const words = text.measure.checks;
    const { bench, readings, sheet } = this.moment;
    const looks = Object.keys(text.measure.sound.looks);
    const open = looks.filter((id) => sheet?.sound[id] === undefined).length;
    const isSaidDry = bench.wet === "dry" && sheet?.sound["soaked"] === "ok";
    const sound = { step: 0, name: text.measure.sound.title };
    const state = { step: 1, name: text.measure.state.title };
    const places = measuringSteps.flatMap(({ feature }, i) => {
      const read = byPlace(readings[feature] ?? []).size;
      const { label } = this.#feature(feature);
      if (read === 0 || isEveryPlaceRead(feature, readings[feature]!)) return [];
      const line = words.placesMissing(label, read, placesOf(feature).length);
      return [{ line, step: firstFeatureStep + i, name: label }];
    });
    return [
      ...(open > 0 ? [{ ...sound, line: words.soundMissing(open) }] : []),
      ...(bench.wet === "" ? [{ ...state, line: words.stateMissing }] : []),
      ...(isSaidDry ? [{ ...state, line: words.soakedAndDry }] : []),
      ...(sheet?.zero ? [] : [{ ...state, line: text.measure.state.zeroMissing }]),
      ...places,
    ];
  }

  #toStep(step: number): void {
    this.dispatchEvent(new BenchActionEvent({ type: "sheet-moved", step }));
  }

  /** What was read before something was done to the reed, and not since. */
  #again() {
    const { bench, sheet } = this.moment;
    const ids = Object.keys(sheet?.before ?? {}).filter((id) => bench.values[id] === undefined);
    if (ids.length === 0) return nothing;
    const labels = ids.map((id) => this.#feature(id).label);
    return html`<p>${this.text.measure.summary.workedExplain(labels)}</p>`;
  }

  #table() {
    const words = this.text.measure.summary;
    return html`<div class="scroll" tabindex="0" role="region" aria-label=${words.title}>
      <table>
        <thead>
          <tr>
            <th scope="col">${words.feature}</th>
            <th scope="col">${words.value}</th>
            <th scope="col">${words.readings}</th>
          </tr>
        </thead>
        <tbody>
          ${measuringSteps.map(({ feature }) => this.#row(this.#feature(feature)))}
        </tbody>
      </table>
    </div>`;
  }

  #row(feature: Feature) {
    const { bench, readings } = this.moment;
    const value = bench.values[feature.id];
    const all = readings[feature.id] ?? [];
    const single = all
      .map(({ place, value: one }) =>
        this.text.measure.step.takenAt(
          readingText(feature, one, bench.unit, this.text),
          this.text.measure.places[place],
        ),
      )
      .join(", ");
    return html`<tr>
      <th scope="row">${feature.label}</th>
      <td class="number">
        ${value === undefined ? html`<span class="soft">${this.text.measure.summary.notMeasured}</span>` : this.#withUnit(feature, value)}
      </td>
      <td>
        ${all.length > 1 ? single : nothing}
        ${value !== undefined && !isRead(bench, feature.id) ? html`<span class="soft">${this.text.measure.summary.onlyExpected}</span>` : nothing}
      </td>
    </tr>`;
  }

  /** Readings of a reed that was worked on since are no longer those of this reed. */
  #worked() {
    const words = this.text.measure.summary;
    return html`<label
      >${words.worked}
      <select>
        <option value="">${words.workedNone}</option>
        ${actionsOf(this.model).actions.map(({ id, label }) => html`<option value=${id}>${label}</option>`)}
      </select>
      <button @click=${this.#onWorked}>${words.workedGo}</button></label
    >`;
  }

  #onWorked(): void {
    const select = this.renderRoot.querySelector("select")!;
    const action = actionsOf(this.model).actions.find(({ id }) => id === select.value);
    select.value = "";
    if (!action) return;
    const features = Object.keys(action.effects);
    this.dispatchEvent(
      new BenchActionEvent({ type: "reed-worked", features, own: this.text.bar.ownReed }),
    );
    const first = measuringSteps.find(({ feature }) => features.includes(feature));
    if (first) this.dispatchEvent(new StepAskedEvent(first.feature));
  }

  #feature(id: FeatureId): Feature {
    return this.model.features.find((one) => one.id === id)!;
  }

  #withUnit(feature: Feature, value: number): string {
    const { unit } = this.moment.bench;
    return readingWithUnit(feature, value, unit, this.text);
  }
}
