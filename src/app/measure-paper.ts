import { LitElement, css, html } from "lit";
import type { ReedModel } from "../engine/model.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import { measuringSteps, type MeasuringStep } from "../reed/measuring-steps.js";
import { placesOf, type Place } from "../reed/places.js";
import { readingText, unitSign } from "../reed/reading-text.js";
import { bassoonSymptoms } from "../reed/symptoms.js";
import { look } from "../widgets/look.js";
import type { Moment } from "./moment.js";
import { readingsOf } from "./read-features.js";

/** The sheet on paper, blank or filled in: one page. */
export class MeasurePaper extends LitElement {
  static override styles = [
    look,
    css`
      :host {
        display: block;
      }
      header {
        display: flex;
        flex-wrap: wrap;
        gap: 0.3rem 1.5rem;
        align-items: baseline;
      }
      h1 {
        margin: 0 auto 0 0;
        font-family: var(--serif);
        font-size: 1.4rem;
      }
      ol {
        margin: 0.4rem 0;
        padding: 0;
        columns: 2;
        font-size: 0.8125rem;
        list-style: none;
      }
      table {
        width: 100%;
        border-collapse: collapse;
        font-size: 0.8125rem;
      }
      th,
      td {
        padding: 0.25rem 0.4rem 0.25rem 0;
        border-bottom: 1px solid var(--edge);
        font-weight: inherit;
        text-align: start;
        vertical-align: top;
      }
      thead th {
        font-weight: 600;
      }
      .blank {
        display: inline-block;
        width: 4.5rem;
        height: 1.1em;
        margin-inline-end: 0.3rem;
        border-bottom: 1px solid var(--ink);
      }
      .readings {
        min-width: 17rem;
      }
      .entry {
        display: inline-block;
        margin: 0 0.6rem 0.35rem 0;
        white-space: nowrap;
      }
      .box {
        display: inline-block;
        width: 0.8em;
        height: 0.8em;
        margin-inline-end: 0.4em;
        border: 1px solid var(--ink);
      }
      .box.ticked {
        background: var(--ink);
        print-color-adjust: exact;
      }
      p {
        margin: 0.4rem 0 0;
        font-size: 0.8125rem;
      }
    `,
  ];

  static override properties = {
    model: { attribute: false },
    moment: { attribute: false },
    blank: { type: Boolean },
    text: { attribute: false },
  };

  declare model: ReedModel;
  declare moment: Moment;
  /** Without readings, to be filled in by hand. */
  declare blank: boolean;
  declare text: Catalogue;

  constructor() {
    super();
    this.text = english;
    this.blank = false;
  }

  override render() {
    const { text, blank } = this;
    const words = text.measure.paper;
    const { bench, sheet } = this.moment;
    const tick = (on: boolean, label: string) =>
      html`<span><span class="box ${on && !blank ? "ticked" : ""}"></span>${label}</span>`;
    return html`<header>
        <h1>${words.title}</h1>
        <span
          >${words.reed}
          ${blank ? html`<span class="blank"></span>` : bench.reed || text.bar.allRound}</span
        >
        <span>${words.date} <span class="blank"></span></span>
        ${tick(bench.wet === "soaked", words.soaked)} ${tick(bench.wet === "dry", words.dry)}
        ${tick(sheet?.zero ?? false, words.zero)}
      </header>
      <ol>
        ${bassoonSymptoms.soundness.map(
          ({ id }) =>
            html`<li>${tick(sheet?.sound[id] === "ok", text.measure.sound.looks[id]!.look)}</li>`,
        )}
      </ol>
      <table>
        <thead>
          <tr>
            <th scope="col">${text.measure.summary.feature}</th>
            <th scope="col">${words.where}</th>
            <th scope="col">${words.usual}</th>
            <th scope="col" class="readings">${words.reading}</th>
          </tr>
        </thead>
        <tbody>
          ${measuringSteps.map((step) => this.#row(step))}
        </tbody>
      </table>
      <p>${words.unit(text.units[bench.unit].spoken)} ${words.cautions}</p>`;
  }

  /** A line to write on for every number, named where there is more than one. */
  #blanks(asks: MeasuringStep["asks"], place: Place) {
    const words = this.text.measure;
    const names =
      asks === "heightAndWidth" ? [words.paper.height, words.paper.width] : [words.places[place]];
    return names.map(
      (name) => html`<span class="entry">${name} <span class="blank"></span></span>`,
    );
  }

  #row({ feature: id, asks, usual }: MeasuringStep) {
    const { text, blank } = this;
    const { bench } = this.moment;
    const feature = this.model.features.find((one) => one.id === id)!;
    const shown = (value: number): string => readingText(feature, value, bench.unit, text);
    const how = text.measure.steps[id]!;
    const filled = blank ? [] : readingsOf(this.moment, id);
    const left = filled.some(({ place }) => place === "one")
      ? []
      : placesOf(id).filter((place) => !filled.some((one) => one.place === place));
    return html`<tr>
      <th scope="row">${feature.label}</th>
      <td>${how.where} ${how.hold}</td>
      <td>${shown(usual[0])}–${shown(usual[1])} ${unitSign(feature, bench.unit, text)}</td>
      <td class="readings">
        ${filled
          .map(({ place, value }) =>
            text.measure.step.takenAt(shown(value), text.measure.places[place]),
          )
          .join(", ")}
        ${left.flatMap((place) => this.#blanks(asks, place))}
      </td>
    </tr>`;
  }
}
