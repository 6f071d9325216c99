import { LitElement, html, nothing } from "lit";
import { live } from "lit/directives/live.js";
import type { Lesson } from "../lesson/lesson.js";
import { lessonEnglish, type LessonCatalogue } from "../reed/lesson-catalogue.js";
import { isMastery } from "../scorm/lesson-package.js";
import type { ScormEdition } from "../scorm/manifest.js";
import { look } from "../widgets/look.js";
import { lessonPackageDialogStyle } from "./lesson-package-dialog-style.js";
import { saveLessonPackage } from "./save-lesson-package.js";
import { stateInside } from "./state-inside.js";

const editions: readonly ScormEdition[] = ["1.2", "2004"];

/**
 * Makes a package of one lesson for a learning platform, and saves it.
 *
 * @fires dialog-closed - it is gone
 */
export class LessonPackageDialog extends LitElement {
  static override styles = [look, lessonPackageDialogStyle];

  static override properties = {
    lesson: { attribute: false },
    faulty: { type: Boolean },
    text: { attribute: false },
    edition: { state: true },
    mastery: { state: true },
    said: { state: true },
    problem: { state: true },
  };

  declare lesson: Lesson;
  declare faulty: boolean;
  declare text: LessonCatalogue;
  declare edition: ScormEdition;
  /** As it was typed. */
  declare mastery: string;
  declare said: string;
  declare problem: string;

  constructor() {
    super();
    this.text = lessonEnglish;
    this.faulty = false;
    this.edition = "1.2";
    this.mastery = "";
    this.said = "";
    this.problem = "";
  }

  override firstUpdated(): void {
    this.renderRoot.querySelector("dialog")!.showModal();
  }

  override render() {
    const words = this.text.lessons.platform;
    return html`<dialog
      aria-labelledby="title"
      @close=${() => this.dispatchEvent(new Event("dialog-closed"))}
    >
      <h2 id="title">${words.title}</h2>
      ${this.#body()}
    </dialog>`;
  }

  #body() {
    const words = this.text.lessons.platform;
    // A page on a disk fetches nothing, so it has no player to put into a package.
    if (stateInside(document) !== undefined) return this.#refusal(words.oneFile);
    if (this.faulty) return this.#refusal(words.faulty);
    return html`<p>${words.explain}</p>
      ${this.#editions()} ${this.#passMark()}
      <p class="soft">${words.told}</p>
      <div class="foot">
        <button class="save" @click=${this.#save}>${words.save}</button>
        ${this.#closeButton()}
        <span role="status">${this.said}</span>
      </div>`;
  }

  #refusal(why: string) {
    return html`<p>${why}</p>
      <div class="foot">${this.#closeButton()}</div>`;
  }

  #closeButton() {
    const close = (): void => this.renderRoot.querySelector("dialog")!.close();
    return html`<button @click=${close}>${this.text.bar.close}</button>`;
  }

  #editions() {
    const words = this.text.lessons.platform;
    return html`<fieldset>
      <legend>${words.edition}</legend>
      ${editions.map(
        (edition) =>
          html`<label
            ><input
              type="radio"
              name="edition"
              .checked=${live(edition === this.edition)}
              @change=${() => this.#pick(edition)}
            />${words.editions[edition]}</label
          >`,
      )}
    </fieldset>`;
  }

  #pick(edition: ScormEdition): void {
    this.edition = edition;
    this.said = "";
  }

  #passMark() {
    const words = this.text.lessons.platform;
    return html`<label
        >${words.mastery}
        <input
          type="text"
          inputmode="numeric"
          autocomplete="off"
          aria-describedby="hint"
          aria-invalid=${this.problem ? "true" : "false"}
          .value=${live(this.mastery)}
          @input=${this.#onMastery}
      /></label>
      <p id="hint" class="soft">${words.masteryHint}</p>
      ${this.problem ? html`<p class="problem" role="alert">${this.problem}</p>` : nothing}`;
  }

  #onMastery(event: Event): void {
    this.mastery = (event.target as HTMLInputElement).value;
    this.problem = "";
    this.said = "";
  }

  async #save(): Promise<void> {
    const words = this.text.lessons.platform;
    const typed = this.mastery.trim();
    const mastery = /^\d{1,3}$/.test(typed) ? Number(typed) : NaN;
    const isFault = typed !== "" && !isMastery(mastery);
    this.problem = isFault ? words.masteryFault(typed) : "";
    if (isFault) return this.renderRoot.querySelector<HTMLElement>("input[type=text]")!.focus();
    const order = { edition: this.edition, ...(typed === "" ? {} : { mastery }) };
    try {
      this.said = words.saved(await saveLessonPackage(document, this.lesson, order));
    } catch {
      this.said = words.failedToSave;
    }
  }
}
