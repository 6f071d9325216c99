import { LitElement, html } from "lit";
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

  override render() {
    const { given, answer, locked, ask } = this.view;
    const picked = answer?.kind === "choose" ? answer.option : undefined;
    return html`<fieldset ?disabled=${locked}>
      <legend class="unseen">${ask}</legend>
      ${given.options?.map(
        (option, k) =>
          html`<label class="option"
            ><input
              type="radio"
              name="option"
              .checked=${picked === k}
              @change=${() => this.dispatchEvent(new AnswerPickedEvent({ kind: "choose", option: k }))}
            /><span>${option}</span></label
          >`,
      )}
    </fieldset>`;
  }
}
