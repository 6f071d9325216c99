import { LitElement, html, nothing } from "lit";
import type { BlendMap } from "../engine/compile.js";
import type { FeatureId, Values } from "../engine/model.js";
import { place } from "../engine/place.js";
import { pulls } from "../engine/pulls.js";
import type { ExerciseView } from "../lesson/lesson-view.js";
import { lessonEnglish, type LessonCatalogue } from "../reed/lesson-catalogue.js";
import { targetsInSentence } from "../reed/advice-terms.js";
import { toThousandths, type LengthUnit } from "../reed/units.js";
import { define } from "./define.js";
import type { ValuePickedEvent } from "./events.js";
import { AnswerPickedEvent } from "./lesson-events.js";
import { lessonStyle } from "./lesson-style.js";
import { look } from "./look.js";
import { ReedFeatureRow } from "./reed-feature-row.js";
import { ReedTriangle } from "./reed-triangle.js";

define("triangle-plane", ReedTriangle);
define("reed-feature-row", ReedFeatureRow);

/**
 * A recipe that is to bring the point somewhere: the triangle with the zone, and a row for each feature that may move.
 *
 * @fires answer-picked - another recipe
 */
export class LessonRecipe extends LitElement {
  static override styles = [look, lessonStyle];

  static override properties = {
    view: { attribute: false },
    map: { attribute: false },
    unit: { type: String },
    text: { attribute: false },
  };

  declare view: ExerciseView;
  declare map: BlendMap;
  declare unit: LengthUnit;
  declare text: LessonCatalogue;

  constructor() {
    super();
    this.unit = "mm";
    this.text = lessonEnglish;
  }

  override render() {
    const { text, view } = this;
    const values = this.#values();
    const words = text.lessons;
    const { target, part } = view.given;
    const label =
      (part && targetsInSentence[part]) || (view.kind === "aim" ? words.target : words.was);
    return html`<div class="parts two">
      <triangle-plane
        still
        .blend=${place(this.map, values).raw}
        .ghost=${place(this.map, view.from).raw}
        .target=${target && { blend: target, label }}
        .greatestHeight=${340}
        .text=${text}
      ></triangle-plane>
      <div>${this.#rules()} ${view.locked ? nothing : this.#rows(values)}</div>
    </div>`;
  }

  #rules() {
    const words = this.text.lessons;
    const { finished, mostFeatures } = this.view.given;
    const held = this.#held().map((id) => this.#feature(id).label.toLowerCase());
    return html`${mostFeatures === undefined ? nothing : html`<p>${words.atMost(mostFeatures)}</p>`}
    ${finished ? html`<p>${words.isFinished}</p>` : nothing}
    ${held.length > 0 ? html`<p class="soft">${words.stays(held)}</p>` : nothing}`;
  }

  #rows(values: Values) {
    const held = this.#held();
    const all = pulls(this.map, values);
    return html`${this.map.features
        .filter((id) => !held.includes(id))
        .map(
          (id) =>
            html`<reed-feature-row
              .feature=${this.#feature(id)}
              .value=${values[id]}
              .earlier=${this.view.from[id]}
              .pull=${all.find(({ feature }) => feature === id)}
              .unit=${this.unit}
              .bare=${true}
              .text=${this.text}
              @value-picked=${this.#onValue}
              @gesture-ended=${stop}
              @feature-pointed=${stop}
            ></reed-feature-row>`,
        )} <button @click=${this.#startAgain}>${this.text.lessons.startAgain}</button>`;
  }

  #feature(id: FeatureId) {
    return this.map.model.features.find((one) => one.id === id)!;
  }

  #held(): FeatureId[] {
    const { locked = [], missing = {} } = this.view.given;
    return [...new Set([...locked, ...Object.keys(missing)])];
  }

  #values(): Values {
    const { answer, from } = this.view;
    return answer?.kind === "aim" || answer?.kind === "stand-in"
      ? { ...from, ...answer.values }
      : from;
  }

  #onValue(event: ValuePickedEvent): void {
    event.stopPropagation();
    const { feature, value } = event;
    if (value !== undefined) this.#tell({ ...this.#values(), [feature]: toThousandths(value) });
  }

  #startAgain(): void {
    this.#tell({ ...this.view.from });
  }

  #tell(values: Values): void {
    const kind = this.view.kind === "aim" ? "aim" : "stand-in";
    this.dispatchEvent(new AnswerPickedEvent({ kind, values }));
  }
}

function stop(event: Event): void {
  event.stopPropagation();
}
