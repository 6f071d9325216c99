import { LitElement, html, nothing } from "lit";
import { bassoonModel } from "../reed/bassoon.js";
import { lessonEnglish, type LessonCatalogue } from "../reed/lesson-catalogue.js";
import { define } from "../widgets/define.js";
import type { LessonWorkedEvent, StepAskedEvent } from "../widgets/lesson-events.js";
import { LessonPlayer } from "../widgets/lesson-player.js";
import { look } from "../widgets/look.js";
import { type Standing, standingOf } from "./attempt.js";
import type { PackagedLesson } from "./packaged-lesson.js";
import { platformLessonStyle } from "./platform-lesson-style.js";
import { scorm12 } from "./scorm-12.js";
import { scorm2004 } from "./scorm-2004.js";
import { ToldLesson } from "./told-lesson.js";

define("lesson-player", LessonPlayer);

/** A lesson on the page of a package: plays it, tells the platform, and says on the screen what it tells. */
export class PlatformLesson extends LitElement {
  static override styles = [look, platformLessonStyle];

  static override properties = {
    packaged: { attribute: false },
    text: { attribute: false },
    said: { state: true },
  };

  /** Set before the element comes into the page: then the platform is looked for. */
  declare packaged: PackagedLesson;
  declare text: LessonCatalogue;
  declare said: string;

  #told: ToldLesson | undefined;

  constructor() {
    super();
    this.text = lessonEnglish;
    this.said = "";
  }

  override connectedCallback(): void {
    super.connectedCallback();
    const { lesson, edition, mastery } = this.packaged;
    this.#told ??= new ToldLesson(lesson, window, {
      dialect: edition === "2004" ? scorm2004 : scorm12,
      model: bassoonModel,
      ...(mastery === undefined ? {} : { mastery }),
    });
    document.addEventListener("visibilitychange", this.#onSeen);
    // `unload` may be forbidden to a page, and `pagehide` comes wherever `unload` came.
    window.addEventListener("pagehide", this.#onLeft);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    document.removeEventListener("visibilitychange", this.#onSeen);
    window.removeEventListener("pagehide", this.#onLeft);
  }

  override render() {
    const { lesson } = this.packaged;
    const { run } = this.#told!.attempt;
    const result = this.#result;
    return html`<main>
        <h1 class="unseen">${this.text.lessons.platform.pageTitle}</h1>
        ${this.#head()}
        <lesson-player
          .lesson=${lesson}
          .run=${run}
          .model=${bassoonModel}
          .text=${this.text}
          @lesson-worked=${this.#onWorked}
          @step-asked=${this.#onStep}
        ></lesson-player>
        ${result ? html`<p class="result">${result}</p>` : nothing} ${this.#privacy()}
      </main>
      <div class="unseen" role="status" aria-live="polite">${this.said}</div>`;
  }

  get #standing(): Standing {
    return standingOf(this.packaged.lesson, this.#told!.attempt);
  }

  #head() {
    const words = this.text.lessons.platform;
    const { answered, exercises } = this.#standing;
    const label = words.progress(answered, exercises);
    const { platform } = this.#told!;
    return html`<header>
      <p class="progress">
        ${exercises > 0 ? html`<progress max=${exercises} .value=${answered} aria-label=${label}></progress>` : nothing}
        ${label}
      </p>
      <p class="soft" data-platform=${platform}>${words.states[platform]}</p>
    </header>`;
  }

  /** What came of the lesson; empty while it is not complete. */
  get #result(): string {
    const words = this.text.lessons.platform;
    const { complete, score, rightFirst, exercises } = this.#standing;
    const { mastery } = this.packaged;
    if (!complete) return "";
    if (score === undefined) return words.completed;
    const told = `${words.completed} ${words.score(rightFirst, exercises, score)}`;
    if (mastery === undefined) return told;
    return `${told} ${score >= mastery ? words.passed(mastery) : words.failed(mastery)}`;
  }

  #privacy() {
    const words = this.text.lessons.platform;
    return html`<details>
      <summary>${words.sentTitle}</summary>
      <ul>
        ${words.sent.map((one) => html`<li>${one}</li>`)}
      </ul>
      <p>${words.notRead}</p>
      <p>${words.rule}</p>
    </details>`;
  }

  #onWorked({ run, says, handedIn }: LessonWorkedEvent): void {
    const before = this.#result;
    this.#told!.work(run, handedIn);
    const result = this.#result;
    this.#say(result === before ? says : `${says} ${result}`.trim());
  }

  #onStep({ step, says }: StepAskedEvent): void {
    this.#told!.turn(step);
    this.#say(says);
    window.scrollTo(0, 0);
    void this.updateComplete.then(() =>
      this.renderRoot.querySelector<LessonPlayer>("lesson-player")?.focus(),
    );
  }

  #say(words: string): void {
    if (words !== "") this.said = words;
    this.requestUpdate();
  }

  readonly #onSeen = (): void => {
    if (document.visibilityState === "hidden") this.#told!.hide();
    // Who comes back to a page that the browser had kept finds the sitting closed.
    this.requestUpdate();
  };

  readonly #onLeft = (): void => {
    this.#told!.leave();
    this.requestUpdate();
  };
}
