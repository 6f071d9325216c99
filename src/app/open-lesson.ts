import { LitElement, css, html, nothing } from "lit";
import type { ReedModel } from "../engine/model.js";
import type { Lesson } from "../lesson/lesson.js";
import type { LessonState } from "../lesson/lesson-state.js";
import { lessonEnglish, type LessonCatalogue } from "../reed/lesson-catalogue.js";
import type { LengthUnit } from "../reed/units.js";
import { define } from "../widgets/define.js";
import { LessonPlayer } from "../widgets/lesson-player.js";
import { look } from "../widgets/look.js";
import { LateParts, type Loaders } from "./late-parts.js";
import { LessonPackage } from "./lesson-package.js";
import type { Presenting } from "./presenting.js";

define("lesson-player", LessonPlayer);
define("lesson-package", LessonPackage);

const lateParts: Loaders = {
  presenter: async () =>
    define("lesson-presenter", (await import("./lesson-presenter.js")).LessonPresenter),
};

/**
 * A lesson that is open: its player, which stands in the presenter's view while it is presented, and its package.
 *
 * @fires lesson-worked - by the player
 * @fires step-asked - by the player, or the presenter's view
 * @fires presenting-changed - by the presenter's view
 * @slot end - what can be done after the last step
 */
export class OpenLessonView extends LitElement {
  static override styles = [
    look,
    css`
      :host {
        display: block;
      }
    `,
  ];

  static override properties = {
    lesson: { attribute: false },
    run: { attribute: false },
    faulty: { type: Boolean },
    presenting: { attribute: false },
    model: { attribute: false },
    unit: { type: String },
    text: { attribute: false },
  };

  declare lesson: Lesson;
  declare run: LessonState;
  /** Whether something is wrong in its file. */
  declare faulty: boolean;
  declare presenting: Presenting | undefined;
  declare model: ReedModel;
  declare unit: LengthUnit;
  declare text: LessonCatalogue;

  readonly #late = new LateParts(this, lateParts);

  constructor() {
    super();
    this.faulty = false;
    this.unit = "mm";
    this.text = lessonEnglish;
  }

  override render() {
    const { presenting } = this;
    if (presenting && this.#late.arrival("presenter") === "here")
      return this.#presenter(presenting);
    return html`${this.#player()}
    ${
      presenting
        ? nothing
        : html`<lesson-package
            .lesson=${this.lesson}
            .faulty=${this.faulty}
            .text=${this.text}
          ></lesson-package>`
    }`;
  }

  #player(listed = false) {
    return html`<lesson-player
      ?listed=${listed}
      .lesson=${this.lesson}
      .run=${this.run}
      .model=${this.model}
      .unit=${this.unit}
      .text=${this.text}
    >
      <slot name="end" slot="end"></slot>
    </lesson-player>`;
  }

  #presenter(presenting: Presenting) {
    return html`<lesson-presenter
      .presenting=${presenting}
      .lesson=${this.lesson}
      .run=${this.run}
      .model=${this.model}
      .unit=${this.unit}
      .text=${this.text}
      >${this.#player(true)}</lesson-presenter
    >`;
  }

  /** On the title of the step that is shown. */
  override focus(): void {
    void this.updateComplete.then(() =>
      this.renderRoot.querySelector<LessonPlayer>("lesson-player")?.focus(),
    );
  }
}
