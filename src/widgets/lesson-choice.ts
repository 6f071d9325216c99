import { LitElement, html } from "lit";
import { repeat } from "lit/directives/repeat.js";
import type { ExerciseView } from "../lesson/lesson-view.js";
import { lessonEnglish, type LessonCatalogue } from "../reed/lesson-catalogue.js";
import { AnswerPickedEvent } from "./lesson-events.js";
import { lessonStyle } from "./lesson-style.js";
import { look } from "./look.js";

/**
 * One of several statements.
 *
 * @fires answer-picked - another one was picked
 */
export class LessonChoice extends LitElement {
  static override styles = [look, lessonStyle];

  static override properties = { view: { attribute: false }, text: { attribute: false } };

  declare view: ExerciseView;
  declare text: LessonCatalogue;

  constructor() {
    super();
    this.text = lessonEnglish;
  }

  /** On what was picked, else on the first. */
  override focus(): void {
    const all = [...this.renderRoot.querySelectorAll("input")];
    (all.find(({ checked }) => checked) ?? all[0])?.focus();
  }

  override render() {
    const { given, answer, locked, ask } = this.view;
    const { options = [], order = [...options.keys()] } = given;
    const picked = answer?.kind === "choose" ? answer.option : undefined;
    return html`<fieldset ?disabled=${locked}>
      <legend class="unseen">${ask}</legend>
      ${repeat(
        order,
        (k) => k,
        (k) =>
          html`<label class="option"
            ><input
              type="radio"
              name="option"
              .value=${k}
              .checked=${picked === k}
              @change=${() => this.dispatchEvent(new AnswerPickedEvent({ kind: "choose", option: k }))}
            /><span>${options[k]}</span></label
          >`,
      )}
    </fieldset>`;
  }
}
