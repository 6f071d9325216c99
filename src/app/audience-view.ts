import { LitElement, css, html, nothing, type PropertyValues } from "lit";
import type { ReedModel } from "../engine/model.js";
import { lessonMap } from "../lesson/exercise-reed.js";
import type { Telling } from "../lesson/feedback.js";
import type { StepView } from "../lesson/lesson-view.js";
import { bassoonActions, bassoonModel } from "../reed/bassoon.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import { withLessons, type LessonCatalogue } from "../reed/lesson-catalogue.js";
import { define } from "../widgets/define.js";
import { LessonStep } from "../widgets/lesson-step.js";
import { look } from "../widgets/look.js";
import { clickerKey, type Ring, type Slide } from "./presenter-messages.js";
import { setTheme } from "./theme.js";
import { WindowPair } from "./window-pair.js";

define("lesson-step", LessonStep);

/** What was handed in comes to the top, with its outcome; anything else that changed only if it is not all in sight. */
function bringIntoSight(step: LessonStep, before: StepView, now: StepView): void {
  const changed = now.blocks.findIndex(
    (block, index) => JSON.stringify(block) !== JSON.stringify(before.blocks[index]),
  );
  const block = step.block(changed);
  const [was, is] = [before.blocks[changed], now.blocks[changed]];
  if (!block || !was || !is) return;
  const isHandedIn = "id" in is && "id" in was && is.locked && !was.locked;
  const { top, bottom } = block.getBoundingClientRect();
  const { innerHeight } = window;
  const isCut = bottom > innerHeight && top > 0.1 * innerHeight;
  if (isHandedIn || bottom < 0 || isCut) block.scrollIntoView();
}

/** The smallest type of a lesson, px at no enlargement. */
const smallestType = 12;

/** What the class sees: a step of a lesson, large. It shows what the presenter's window sends and asks for nothing else. */
export class AudienceView extends LitElement {
  static override styles = [
    look,
    css`
      :host {
        display: block;
        min-height: 100svh;
        background: var(--ground);
      }
      /* Nothing essential in the outer twentieth: projectors cut it off. */
      main {
        --lesson-help: none;
        --lesson-triangle: calc(58svh / var(--enlarged));
        position: relative;
        padding: calc(5svh / var(--enlarged)) calc(5vw / var(--enlarged));
      }
      h1 {
        margin: 0 0 0.2rem;
        font-weight: 400;
        color: var(--ink-soft);
        font-size: 0.9375rem;
      }
      .state {
        position: fixed;
        inset-block-end: 1vh;
        inset-inline-end: 1vw;
        padding: 0.3rem 0.8rem;
        border: 1px solid var(--edge);
        border-radius: 8px;
        background: var(--card);
      }
      .waits {
        padding: 20vh 10vw;
        font-size: 1.5rem;
        text-align: center;
      }
      .blank {
        position: fixed;
        inset: 0;
        background: #000000;
      }
      .pointer {
        position: absolute;
        width: 4.5rem;
        height: 4.5rem;
        margin: -2.25rem 0 0 -2.25rem;
        border: 5px solid var(--accent);
        border-radius: 50%;
        box-shadow:
          0 0 0 3px var(--ground),
          inset 0 0 0 3px var(--ground);
        pointer-events: none;
      }
    `,
  ];

  static override properties = {
    pair: { type: String },
    text: { attribute: false },
    slide: { state: true },
    connected: { state: true },
    ringAt: { state: true },
    enlarged: { state: true },
  };

  /** Which presenter's window it belongs to. */
  declare pair: string;
  declare text: Catalogue;
  declare slide: Slide | undefined;
  declare connected: boolean;
  /** Where the ring stands on the page, px before enlargement. */
  declare ringAt: { readonly x: number; readonly y: number } | undefined;
  /** How many times larger than on a page of one's own. */
  declare enlarged: number;

  readonly #model: ReedModel = bassoonModel;
  #windows: WindowPair | undefined;
  #telling: Telling | undefined;

  constructor() {
    super();
    this.text = english;
    this.connected = false;
    this.enlarged = 1;
  }

  get #words(): LessonCatalogue {
    return withLessons(this.text);
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#windows = new WindowPair(this.pair, "audience", {
      onMessage: (message) => {
        if (message.kind === "slide") this.slide = message.slide;
        if (message.kind === "sight") this.#follow(message.block, message.y);
        this.#windows?.send({ kind: "here", needs: this.slide === undefined });
      },
      onConnected: () => (this.connected = this.#windows?.isConnected ?? false),
    });
    this.#windows.open();
    this.#windows.send({ kind: "here", needs: true });
    window.addEventListener("keydown", this.#onKey, { capture: true });
    window.addEventListener("resize", this.#onResize);
    document.title = this.#words.lessons.presenter.audience;
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#windows?.close();
    window.removeEventListener("keydown", this.#onKey, { capture: true });
    window.removeEventListener("resize", this.#onResize);
  }

  override willUpdate(changed: PropertyValues<this>): void {
    const { slide } = this;
    if (!changed.has("slide") || !slide) return;
    setTheme(document.documentElement, slide.theme);
    this.#onResize();
    const before = changed.get("slide");
    const isSame = before && String(before.features) === String(slide.features);
    if (isSame && before.unit === slide.unit && this.#telling) return;
    this.#telling = {
      map: lessonMap(slide, this.#model),
      actions: bassoonActions,
      text: this.#words,
      unit: slide.unit,
    };
  }

  override updated(changed: PropertyValues<this>): void {
    if (changed.has("slide") && this.slide) void this.#show(changed.get("slide"), this.slide);
  }

  override render() {
    const words = this.#words.lessons.presenter;
    const { slide } = this;
    if (!slide) return html`<p class="waits" role="status">${words.waits}</p>`;
    return html`<main .style=${`zoom: ${this.enlarged}; --enlarged: ${this.enlarged}`}>
        <h1>${slide.title} · ${this.#words.lessons.step(slide.view.step + 1, slide.steps)}</h1>
        <lesson-step
          inert
          .view=${slide.view}
          .lesson=${slide}
          .telling=${this.#telling}
          .text=${this.#words}
        ></lesson-step>
        ${this.ringAt ? html`<div class="pointer" .style=${`left: ${this.ringAt.x}px; top: ${this.ringAt.y}px`}></div>` : nothing}
      </main>
      ${slide.blank ? html`<div class="blank"></div>` : nothing}
      ${this.connected ? nothing : html`<p class="state" role="status">${words.lost}</p>`}`;
  }

  /** What is new comes into sight: another step from its top, within a step what was opened last, and what is pointed at. */
  async #show(before: Slide | undefined, slide: Slide): Promise<void> {
    const step = this.renderRoot.querySelector<LessonStep>("lesson-step");
    await step?.updateComplete;
    if (!step || slide !== this.slide) return;
    const isOther = before?.view.step !== slide.view.step || before?.title !== slide.title;
    if (isOther) window.scrollTo(0, 0);
    else bringIntoSight(step, before.view, slide.view);
    this.#point(step, slide.ring);
  }

  #point(step: LessonStep, ring: Ring | undefined): void {
    const block = ring && step.block(ring.block);
    if (!block) {
      this.ringAt = undefined;
      return;
    }
    const main = this.renderRoot.querySelector("main")!.getBoundingClientRect();
    const box = block.getBoundingClientRect();
    const x = box.left + ring.x * box.width;
    const y = box.top + ring.y * box.height;
    this.ringAt = { x: (x - main.left) / this.enlarged, y: (y - main.top) / this.enlarged };
    if (y < 0 || y > window.innerHeight) window.scrollBy(0, y - window.innerHeight / 2);
  }

  /** The presenter has scrolled: what stands near the top there stands near the top here. */
  #follow(block: number, y: number): void {
    const step = this.renderRoot.querySelector<LessonStep>("lesson-step");
    const box = step?.block(block)?.getBoundingClientRect();
    if (box) window.scrollBy(0, box.top + y * box.height - 0.05 * window.innerHeight);
  }

  readonly #onResize = (): void => {
    if (this.slide)
      this.enlarged = Math.max(1, (this.slide.type * window.innerHeight) / smallestType);
  };

  /** A clicker talks to the window that happens to have the focus. */
  readonly #onKey = (event: KeyboardEvent): void => {
    const key = clickerKey(event);
    if (!key) return;
    event.preventDefault();
    this.#windows?.send({ kind: "key", key });
  };
}
