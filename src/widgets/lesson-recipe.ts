import { LitElement, css, html, nothing, type PropertyValues } from "lit";
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
import { undoKey } from "./undo-key.js";
import { changed, noHistory, travelled } from "./value-history.js";
import { inSentence } from "../reed/in-sentence.js";

define("triangle-plane", ReedTriangle);
define("reed-feature-row", ReedFeatureRow);

/**
 * A recipe that is to bring the point somewhere: the triangle with the zone, and a row for each feature that may move.
 *
 * @fires answer-picked - another recipe
 */
export class LessonRecipe extends LitElement {
  static override styles = [
    look,
    lessonStyle,
    css`
      /* In one column the point must stay in sight of the slider that moves it. */
      @media (min-height: 35rem) {
        @container (max-width: 43.99rem) {
          .open triangle-plane {
            position: sticky;
            top: 0;
            z-index: 1;
            padding-inline: max(0px, 50% - 8.5rem);
            background: var(--card);
          }
          reed-feature-row {
            scroll-margin-top: 20rem;
          }
        }
      }
      .travel {
        display: flex;
        flex-wrap: wrap;
        gap: 0.6rem;
        margin-top: 0.6rem;
      }
      .travel button {
        min-height: 2.75rem;
      }
    `,
  ];

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

  #history = noHistory;

  constructor() {
    super();
    this.addEventListener("keydown", this.#onKey);
    this.unit = "mm";
    this.text = lessonEnglish;
  }

  override willUpdate(changes: PropertyValues<this>): void {
    if (changes.has("view") && changes.get("view")?.id !== this.view.id) this.#history = noHistory;
  }

  override render() {
    const { text, view } = this;
    const values = this.#values();
    const words = text.lessons;
    const { target, part, within } = view.given;
    const label =
      (part && targetsInSentence[part]) || (view.kind === "aim" ? words.target : words.was);
    // The largest circle in which no share differs by more than what counts as there.
    const radius = (within ?? 0) * Math.sqrt(1.5);
    return html`<div class="parts two ${view.locked ? "" : "open"}">
      <triangle-plane
        still
        .blend=${place(this.map, values).raw}
        .ghost=${place(this.map, view.from).raw}
        .target=${target && { blend: target, label, radius }}
        .greatestHeight=${340}
        .text=${text}
      ></triangle-plane>
      <div>${this.#rules()} ${view.locked ? nothing : this.#rows(values)}</div>
    </div>`;
  }

  /** On the first feature that may move. */
  override focus(): void {
    void this.#focusFirst();
  }

  async #focusFirst(): Promise<void> {
    await this.updateComplete;
    const row = this.renderRoot.querySelector<ReedFeatureRow>("reed-feature-row");
    await row?.updateComplete;
    row?.focusField();
  }

  #rules() {
    const words = this.text.lessons;
    const { finished, mostFeatures } = this.view.given;
    const held = this.#held().map((id) => inSentence(this.#feature(id).label));
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
              .measured=${this.view.from[id]}
              .pull=${all.find(({ feature }) => feature === id)}
              .unit=${this.unit}
              .bare=${true}
              .text=${this.text}
              @value-picked=${this.#onValue}
              @gesture-ended=${stop}
              @feature-pointed=${stop}
            ></reed-feature-row>`,
        )}
      <div class="travel">
        ${this.#travel("undo", this.#history.past)} ${this.#travel("redo", this.#history.future)}
        <button @click=${this.#startAgain}>${this.text.lessons.startAgain}</button>
      </div>`;
  }

  #travel(way: "undo" | "redo", left: readonly Values[]) {
    return html`<button aria-disabled=${left.length === 0} @click=${() => this.#go(way)}>
      ${this.text.bar[way]}
    </button>`;
  }

  #go(way: "undo" | "redo"): void {
    const reached = travelled(this.#history, this.#values(), way);
    if (!reached || this.view.locked) return;
    this.#history = reached.history;
    this.#tell(reached.values);
  }

  readonly #onKey = (event: KeyboardEvent): void => {
    const way = undoKey(event);
    if (!way) return;
    event.preventDefault();
    this.#go(way);
  };

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
    const { feature, value, gesture } = event;
    if (value === undefined) return;
    this.#history = changed(this.#history, this.#values(), gesture);
    this.#tell({ ...this.#values(), [feature]: toThousandths(value) });
  }

  #startAgain(): void {
    this.#history = changed(this.#history, this.#values());
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
