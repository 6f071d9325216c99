import { css, html, type PropertyValues, type PropertyDeclarations } from "lit";
import { live } from "lit/directives/live.js";
import { LateParts, type Loaders } from "../app/late-parts.js";
import { firstRequest } from "../app/stand-in-list.js";
import { define } from "../widgets/define.js";
import { AppPartElement } from "./app-part-element.js";
import { lateStyle, lateWords } from "./late-words.js";
import { given } from "./read-attributes.js";
import { warnOnce } from "./warn-once.js";

const parts: Loaders = {
  standIns: async () =>
    define("bench-stand-ins", (await import("../app/bench-stand-ins.js")).BenchStandIns),
};

/**
 * `<reed-stand-ins>`: what can be done instead of changing a feature, each to be tried, kept or taken back.
 *
 * @tagname reed-stand-ins
 * @csspart choice - which feature is asked about
 * @csspart list - the answer
 * @fires reed-stand-in-tried - a stand-in was tried; detail also holds `changes`, a list of feature and change
 */
export class StandInsElement extends AppPartElement {
  static override styles = [
    ...AppPartElement.styles,
    lateStyle,
    css`
      .choice {
        display: flex;
        flex-wrap: wrap;
        gap: 0.3rem 0.6rem;
        align-items: center;
        margin-bottom: 0.6rem;
      }
      select {
        min-width: 0;
        max-width: 100%;
      }
    `,
  ];

  static override properties: PropertyDeclarations = { feature: { type: String } };

  /** The feature whose stand-ins are told, by id. */
  declare feature: string;
  readonly #late = new LateParts(this, parts);

  constructor() {
    super();
    this.feature = "tip";
  }

  override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    const { state } = this.shared;
    if (changed.has("feature") || !state.advice.asked) this.#ask(this.#known());
  }

  /** The feature asked about; one that the model has, whatever the page says. */
  #known(): string {
    const { features } = this.shared.state.model;
    const ids = features.map(({ id }) => id);
    const asked = given(this.feature, ids.includes("tip") ? "tip" : ids[0]!);
    if (ids.includes(asked)) return asked;
    warnOnce(`feature: “${asked}” is not known; allowed: ${ids.join(", ")}`);
    return ids[0]!;
  }

  #ask(feature: string): void {
    const request = firstRequest(this.shared.state, feature, this.text);
    this.shared.dispatch({ type: "stand-ins-asked", request });
  }

  protected override parts() {
    const { text } = this;
    const { state } = this.shared;
    const title = text.advice.standIns.title;
    return html`<div class="choice" part="choice">
        <h2>${title}</h2>
        <select aria-label=${title} @change=${this.#onFeature}>
          ${state.model.features.map(
            ({ id, label }) =>
              html`<option value=${id} .selected=${live(id === state.advice.asked?.feature)}>
                ${label}
              </option>`,
          )}
        </select>
      </div>
      ${this.#list()}`;
  }

  #list() {
    const { text } = this;
    const arrival = this.#late.arrival("standIns");
    if (arrival !== "here") return lateWords(arrival, text);
    return html`<bench-stand-ins
      part="list"
      .stays=${true}
      .state=${this.shared.state}
      .text=${text}
    ></bench-stand-ins>`;
  }

  #onFeature(event: Event): void {
    this.#ask((event.target as HTMLSelectElement).value);
  }
}
