import { LitElement, css, html, nothing } from "lit";
import { keyed } from "lit/directives/keyed.js";
import { unsafeHTML } from "lit/directives/unsafe-html.js";
import { exerciseReed } from "../lesson/exercise-reed.js";
import type { Telling } from "../lesson/feedback.js";
import type { Lesson, ShowBlock } from "../lesson/lesson.js";
import { safeProse } from "../lesson/safe-prose.js";
import { shownReed, type BlockView, type StepView } from "../lesson/lesson-view.js";
import { lessonEnglish, type LessonCatalogue } from "../reed/lesson-catalogue.js";
import { define } from "./define.js";
import { LessonExercise } from "./lesson-exercise.js";
import { LessonShow } from "./lesson-show.js";
import { lessonStyle } from "./lesson-style.js";
import { look } from "./look.js";

define("lesson-exercise", LessonExercise);
define("lesson-show", LessonShow);

/**
 * One step of a lesson, as far as it may be seen: up to the first exercise that is open.
 *
 * @fires answer-picked - the open exercise has another answer
 * @fires exercise-asked - to hand in, a hint, another try
 */
export class LessonStep extends LitElement {
  static override styles = [
    look,
    lessonStyle,
    css`
      .blocks {
        display: grid;
        gap: 1.1rem;
        grid-template-columns: minmax(0, 1fr);
        max-width: 60rem;
      }
      .prose {
        font-family: var(--serif);
        font-size: 1.125rem;
        line-height: 1.55;
      }
      .prose p,
      .prose li {
        max-width: 38em;
      }
      .claim {
        margin: 0;
        padding: 0.3rem 0.9rem;
        border-inline-start: 4px solid var(--accent);
        font-family: var(--serif);
        font-size: 1.125rem;
        font-weight: 650;
      }
      h2 {
        margin-bottom: 0.8rem;
        font-size: 1.375rem;
      }
      h2:focus {
        outline: none;
      }
    `,
  ];

  static override properties = {
    view: { attribute: false },
    lesson: { attribute: false },
    telling: { attribute: false },
    text: { attribute: false },
  };

  declare view: StepView;
  /** Which lesson it is of, and what its reeds begin with. */
  declare lesson: Pick<Lesson, "title" | "reed" | "start">;
  declare telling: Telling;
  declare text: LessonCatalogue;

  constructor() {
    super();
    this.text = lessonEnglish;
  }

  override render() {
    const { view } = this;
    if (!view.sound)
      return html`<h2 tabindex="-1">${view.title}</h2>
        <p>${this.text.lessons.file.unsound}</p>`;
    return html`<h2 tabindex="-1">${view.title}</h2>
      ${keyed(this.#key, this.#blocks())}`;
  }

  /** Blocks of another step are other elements: nothing that was begun in one carries over. */
  get #key(): string {
    const { step, title } = this.view;
    return JSON.stringify([this.lesson.title, step, title]);
  }

  #blocks() {
    const { blocks, more } = this.view;
    return html`<div class="blocks">
      ${blocks.map((block) => this.#block(block))}
      ${more ? html`<p class="soft">${this.text.lessons.more}</p>` : nothing}
    </div>`;
  }

  #block(block: BlockView) {
    if ("id" in block)
      return html`<lesson-exercise
        .view=${block}
        .telling=${this.telling}
        .text=${this.text}
      ></lesson-exercise>`;
    if (block.kind === "prose")
      return html`<div class="prose">${unsafeHTML(safeProse(block.html))}</div>`;
    if (block.kind === "claim") return html`<p class="claim">${block.says}</p>`;
    return this.#show(block);
  }

  #show(block: ShowBlock) {
    const { directionsHidden, sharesHidden, more, blocks } = this.view;
    const { map, actions, unit } = this.telling;
    const besides = block.beside && exerciseReed(this.lesson, block.beside, map.model);
    const isOpen = more || blocks.some((one) => "id" in one && !one.locked);
    // Where a reed lies answers many a question: unless its author laid something on the triangle, it comes afterwards.
    const asksForIt =
      block.layers !== undefined || block.target !== undefined || block.reed !== undefined;
    return html`<lesson-show
      .block=${block}
      .reed=${shownReed(this.lesson, block, { map })}
      .beside=${besides}
      .map=${map}
      .actions=${actions}
      .placeless=${directionsHidden || (isOpen && !asksForIt) || block.place !== undefined}
      .unread=${sharesHidden}
      .unit=${unit}
      .text=${this.text}
    ></lesson-show>`;
  }

  /** One of its blocks as it stands on the page. */
  block(index: number): Element | undefined {
    return this.renderRoot.querySelector(".blocks")?.children[index];
  }

  /** On the title of the step, which has just been opened. */
  override focus(): void {
    this.renderRoot.querySelector<HTMLElement>("h2")?.focus();
  }
}
