import { LitElement, html } from "lit";
import { place } from "../engine/place.js";
import type { Blend } from "../engine/blend.js";
import type { BlendMap } from "../engine/compile.js";
import type { Answer, Sureness } from "../lesson/answer.js";
import type { ExerciseView } from "../lesson/lesson-view.js";
import { placesAlong, pullLinks } from "../lesson/lesson-way.js";
import { lessonEnglish, withPoint, type LessonCatalogue } from "../reed/lesson-catalogue.js";
import type { LengthUnit } from "../reed/units.js";
import { define } from "./define.js";
import type { BlendPickedEvent } from "./events.js";
import { AnswerPickedEvent } from "./lesson-events.js";
import { lessonStyle } from "./lesson-style.js";
import { look } from "./look.js";
import { ReedDrawing } from "./reed-drawing.js";
import { ReedShares } from "./reed-shares.js";
import { sharesText } from "../reed/whole-shares.js";
import { ReedTriangle } from "./reed-triangle.js";

define("triangle-plane", ReedTriangle);
define("reed-shares", ReedShares);
define("reed-drawing", ReedDrawing);

/** How long keys must rest before it is said where they led, ms; as on the bench. */
const restTime = 500;

/** One and the same at every render. */
const noWay: readonly Blend[] = [];

/**
 * A prediction: the guess is put on the triangle; once it is locked in, the reed changes and the point goes there
 * pull by pull, and the guess stays beside it. Nothing that it shows before comes from the outcome.
 *
 * @fires answer-picked - another guess, or how sure it is
 */
export class LessonPredict extends LitElement {
  static override styles = [look, lessonStyle];

  static override properties = {
    view: { attribute: false },
    map: { attribute: false },
    unit: { type: String },
    text: { attribute: false },
    said: { state: true },
  };

  declare view: ExerciseView;
  declare map: BlendMap;
  declare unit: LengthUnit;
  declare text: LessonCatalogue;
  /** Where the guess has come to rest after keys moved it, for a screen reader. */
  declare said: string;
  #rest: ReturnType<typeof setTimeout> | undefined;
  #way: readonly Blend[] = noWay;
  #wasOpen = false;

  constructor() {
    super();
    this.unit = "mm";
    this.text = lessonEnglish;
    this.said = "";
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearTimeout(this.#rest);
  }

  /** The point travels when the guess has just been locked in, not when the step is opened again. */
  override willUpdate(): void {
    const { locked, mark } = this.view;
    if (!locked) this.#wasOpen = true;
    if (!locked || !this.#wasOpen || mark?.kind !== "predict") return;
    this.#wasOpen = false;
    this.#way = placesAlong(pullLinks(mark.from, mark.pulls));
  }

  override render() {
    return this.view.locked ? this.#outcome() : this.#question();
  }

  get #answer(): (Answer & { readonly kind: "predict" }) | undefined {
    const { answer } = this.view;
    return answer?.kind === "predict" ? answer : undefined;
  }

  #question() {
    const { text, view } = this;
    const words = text.lessons;
    const from = place(this.map, view.from).raw;
    const guess = this.#answer?.guess;
    return html`<p class="soft help">${words.guessHelp}</p>
      <div class="parts two">
        <triangle-plane
          .blend=${guess ?? from}
          .ghost=${from}
          .greatestHeight=${380}
          .text=${withPoint(text, words.guess)}
          @blend-picked=${this.#onMoved}
          @gesture-ended=${stop}
        ></triangle-plane>
        <p class="unseen" role="status">${this.said}</p>
        <div class="beside">
          ${this.#drawing(view.from)}
          <reed-shares
            .blend=${guess ?? from}
            .name=${words.guess}
            .text=${text}
            @blend-picked=${this.#onGuess}
            @gesture-ended=${stop}
          ></reed-shares>
          ${this.#sureness()}
        </div>
      </div>`;
  }

  #sureness() {
    const words = this.text.lessons;
    return html`<fieldset>
      <legend>${words.sure}</legend>
      ${words.sureness.map(
        (name, k) =>
          html`<label class="option"
            ><input
              type="radio"
              name="sure"
              .checked=${this.#answer?.sure === k + 1}
              @change=${() => this.#onSure((k + 1) as Sureness)}
            /><span>${name}</span></label
          >`,
      )}
    </fieldset>`;
  }

  #outcome() {
    const { text, view } = this;
    const { mark } = view;
    if (mark?.kind !== "predict") return this.#drawing(view.from);
    return html`<div class="parts two">
      <triangle-plane
        still
        .blend=${mark.outcome}
        .ghost=${mark.from}
        .chain=${pullLinks(mark.from, mark.pulls)}
        .pinned=${{ blend: mark.guess, label: text.lessons.guess }}
        .way=${this.#way}
        .greatestHeight=${380}
        .text=${text}
      ></triangle-plane>
      ${this.#drawing(view.to ?? view.from)}
    </div>`;
  }

  #drawing(values: ExerciseView["from"]) {
    return html`<reed-drawing
      .model=${this.map.model}
      .values=${values}
      .unit=${this.unit}
      .lying=${true}
      .brief=${true}
      .crop=${this.#crop()}
      .pointed=${this.view.given.features?.join(" ")}
      .text=${this.text}
      @feature-pointed=${stop}
    ></reed-drawing>`;
  }

  /** The part of the drawing where the change is seen. */
  #crop(): "blade" | "ends" {
    const { features = [] } = this.view.given;
    return features.some((id) => /Wire$|^opening/.test(id)) ? "ends" : "blade";
  }

  /** The sliders speak for themselves; the triangle, once it rests. */
  #onMoved(event: BlendPickedEvent): void {
    this.#onGuess(event);
    clearTimeout(this.#rest);
    this.#rest = setTimeout(() => (this.said = sharesText(event.blend, this.text)), restTime);
  }

  #onGuess(event: BlendPickedEvent): void {
    event.stopPropagation();
    const { sure } = this.#answer ?? {};
    this.#tell({ kind: "predict", guess: event.blend, ...(sure ? { sure } : {}) });
  }

  #onSure(sure: Sureness): void {
    const guess = this.#answer?.guess;
    // How sure one is of a guess not made says nothing: it is kept until there is one.
    if (guess) this.#tell({ kind: "predict", guess, sure });
    else this.#early = sure;
  }

  #early: Sureness | undefined;

  #tell(answer: Answer & { readonly kind: "predict" }): void {
    const sure = answer.sure ?? this.#early;
    this.dispatchEvent(new AnswerPickedEvent({ ...answer, ...(sure ? { sure } : {}) }));
  }
}

/** What happens inside a lesson is not the bench's. */
function stop(event: Event): void {
  event.stopPropagation();
}
