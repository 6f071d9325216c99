import { LitElement, css, html, nothing } from "lit";
import type { Lesson } from "../lesson/lesson.js";
import { lessonEnglish, type LessonCatalogue } from "../reed/lesson-catalogue.js";
import { define } from "../widgets/define.js";
import { look } from "../widgets/look.js";

/** The button under a lesson that makes a package for a learning platform. What makes it comes when it is pressed. */
export class LessonPackage extends LitElement {
  static override styles = [
    look,
    css`
      :host {
        display: block;
        margin-top: 1.6rem;
      }
      @media print {
        :host {
          display: none;
        }
      }
    `,
  ];

  static override properties = {
    lesson: { attribute: false },
    faulty: { type: Boolean },
    text: { attribute: false },
    isOpen: { state: true },
    trouble: { state: true },
  };

  declare lesson: Lesson;
  /** Whether the lesson's file has problems. */
  declare faulty: boolean;
  declare text: LessonCatalogue;
  declare isOpen: boolean;
  declare trouble: string;

  constructor() {
    super();
    this.text = lessonEnglish;
    this.faulty = false;
    this.isOpen = false;
    this.trouble = "";
  }

  override render() {
    return html`<button @click=${this.#open}>${this.text.lessons.platform.open}</button>
      ${this.trouble ? html`<p role="alert">${this.trouble}</p>` : nothing}
      ${
        this.isOpen
          ? html`<lesson-package-dialog
              .lesson=${this.lesson}
              .faulty=${this.faulty}
              .text=${this.text}
              @dialog-closed=${this.#onClosed}
            ></lesson-package-dialog>`
          : nothing
      }`;
  }

  async #open(): Promise<void> {
    try {
      const { LessonPackageDialog } = await import("./lesson-package-dialog.js");
      define("lesson-package-dialog", LessonPackageDialog);
      this.trouble = "";
      this.isOpen = true;
    } catch {
      this.trouble = this.text.pages.failed;
    }
  }

  #onClosed(): void {
    this.isOpen = false;
    this.renderRoot.querySelector("button")!.focus();
  }
}
