import { LitElement, html, nothing, type PropertyValues } from "lit";
import { unsafeHTML } from "lit/directives/unsafe-html.js";
import type { ReedModel } from "../engine/model.js";
import { lessonMap } from "../lesson/exercise-reed.js";
import type { Lesson } from "../lesson/lesson.js";
import type { LessonState } from "../lesson/lesson-state.js";
import { safeProse } from "../lesson/safe-prose.js";
import { stepView } from "../lesson/lesson-view.js";
import { bassoonActions } from "../reed/bassoon.js";
import { lessonEnglish, type LessonCatalogue } from "../reed/lesson-catalogue.js";
import type { LengthUnit } from "../reed/units.js";
import { StepAskedEvent } from "../widgets/lesson-events.js";
import type { LessonPlayer } from "../widgets/lesson-player.js";
import { look } from "../widgets/look.js";
import { lessonPresenterStyle } from "./lesson-presenter-style.js";
import { OwnScrolling } from "./own-scrolling.js";
import {
  clickerKey,
  leastType,
  typeShare,
  type ClickerKey,
  type Ring,
  type Slide,
} from "./presenter-messages.js";
import { audienceAddress, type Presenting } from "./presenting.js";
import type { Theme } from "./theme.js";
import { WindowPair } from "./window-pair.js";

/** Presenting has begun, goes on in another way, or has ended. */
export class PresentingChangedEvent extends Event {
  readonly presenting: Presenting | undefined;
  constructor(presenting: Presenting | undefined) {
    super("presenting-changed", { bubbles: true, composed: true });
    this.presenting = presenting;
  }
}

/**
 * The presenter's view of a lesson: the lesson itself, the teacher's notes, the next step, and what the class sees.
 *
 * @slot - the player with the lesson
 * @fires presenting-changed - frozen, blank, another size, ended
 * @fires step-asked - another step, by button or clicker
 */
export class LessonPresenter extends LitElement {
  static override styles = [look, lessonPresenterStyle];

  static override properties = {
    presenting: { attribute: false },
    lesson: { attribute: false },
    run: { attribute: false },
    model: { attribute: false },
    unit: { type: String },
    text: { attribute: false },
    connected: { state: true },
    ring: { state: true },
    refused: { state: true },
  };

  declare presenting: Presenting;
  declare lesson: Lesson;
  declare run: LessonState;
  declare model: ReedModel;
  declare unit: LengthUnit;
  declare text: LessonCatalogue;
  declare connected: boolean;
  declare ring: Ring | undefined;
  /** Whether the browser would not open the window. */
  declare refused: boolean;

  #windows: WindowPair | undefined;

  constructor() {
    super();
    this.unit = "mm";
    this.text = lessonEnglish;
    this.connected = false;
    this.addController(new OwnScrolling(() => this.#onScrolled()));
    this.refused = false;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    const windows = new WindowPair(this.presenting.id, "presenter", {
      onMessage: (message) => {
        if (message.kind === "key") this.#onClicker(message.key);
        if (message.kind === "here" && message.needs) this.#send();
      },
      onConnected: () => (this.connected = windows.isConnected),
    });
    this.#windows = windows;
    windows.open();
    window.addEventListener("keydown", this.#onKey, { capture: true });
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#windows?.close();
    window.removeEventListener("keydown", this.#onKey, { capture: true });
  }

  /** The class follows to what stands near the top now. */
  #onScrolled(): void {
    if (this.presenting.frozen) return;
    const player = this.querySelector<LessonPlayer>("lesson-player");
    const top = player?.blockAt(player.getBoundingClientRect().left + 40, 40);
    if (top) this.#windows?.send({ kind: "sight", block: top.block, y: top.y });
  }

  override updated(changed: PropertyValues<this>): void {
    const isAbout = [...changed.keys()].some((name) => name !== "connected");
    if (isAbout) this.#send();
  }

  /** A frozen picture can still be made dark, or larger. */
  #send(): void {
    const { frozen } = this.presenting;
    const now = this.#slide();
    const { theme, blank, type } = now;
    this.#windows?.send({ kind: "slide", slide: frozen ? { ...frozen, theme, blank, type } : now });
  }

  #toggleFrozen(): void {
    const { ring: _ring, ...slide } = this.#slide();
    this.#set({ frozen: this.presenting.frozen ? undefined : slide });
  }

  #slide(): Slide {
    const { lesson, run, model, unit, presenting, ring } = this;
    const { title, features, reed, start, steps } = lesson;
    const marking = { map: lessonMap(lesson, model), actions: bassoonActions };
    const theme = (document.documentElement.dataset["theme"] ?? "auto") as Theme;
    return {
      title,
      steps: steps.length,
      ...(features ? { features } : {}),
      ...(reed === undefined ? {} : { reed }),
      ...(start ? { start } : {}),
      view: stepView(lesson, run, marking),
      unit,
      theme,
      blank: presenting.blank,
      ...(ring ? { ring } : {}),
      type: this.#type(),
    };
  }

  #type(): number {
    const { seat, height } = this.presenting;
    return seat !== undefined && height !== undefined ? typeShare(seat, height) : leastType;
  }

  override render() {
    return html`<div class="desk">
      <div class="lesson" @pointermove=${this.#onPointer} @pointerleave=${this.#onAway}>
        <slot></slot>
      </div>
      <aside aria-label=${this.text.lessons.presenter.title}>
        ${this.#audience()} ${this.#controls()} ${this.#notes()} ${this.#size()}
        <button @click=${() => this.#change(undefined)}>${this.text.lessons.presenter.end}</button>
      </aside>
    </div>`;
  }

  #audience() {
    const words = this.text.lessons.presenter;
    return html`<p class="badge ${this.connected ? "on" : "off"}" role="status">
        ${this.connected ? words.connected : words.lost}
      </p>
      ${
        this.connected
          ? nothing
          : html`<button @click=${this.#openAudience}>${words.open}</button>
              ${this.refused ? html`<p role="alert">${words.refused}</p>` : nothing}`
      }`;
  }

  #controls() {
    const words = this.text.lessons.presenter;
    const { frozen, blank, points } = this.presenting;
    const toggle = (name: string, on: boolean, act: () => void) =>
      html`<button aria-pressed=${on} @click=${act}>${name}</button>`;
    return html`<div class="buttons">
        <button @click=${() => this.#turn(-1)}>${this.text.lessons.previous}</button>
        <button @click=${() => this.#turn(1)}>${this.text.lessons.next}</button>
      </div>
      <div class="buttons">
        ${toggle(words.freeze, frozen !== undefined, () => this.#toggleFrozen())}
        ${toggle(words.blank, blank, () => this.#set({ blank: !blank }))}
        ${toggle(words.point, points, () => this.#togglePoint())}
      </div>
      ${frozen || blank ? html`<p class="still" role="status">${this.#sees()}</p>` : nothing}
      <p class="soft">${words.keys}</p>`;
  }

  /** What the class sees in place of what the presenter sees. */
  #sees(): string {
    const words = this.text.lessons.presenter;
    const { frozen, blank } = this.presenting;
    return blank || !frozen ? words.seesNothing : words.stillSees(frozen.view.title);
  }

  #notes() {
    const words = this.text.lessons.presenter;
    const { steps } = this.lesson;
    const { notes = [] } = steps[this.run.step] ?? {};
    const next = steps[this.run.step + 1];
    return html`<section class="notes" aria-labelledby="notes">
        <h3 id="notes">${words.notes}</h3>
        ${
          notes.length > 0
            ? notes.map((note) => html`<div class="note">${unsafeHTML(safeProse(note))}</div>`)
            : html`<p class="soft">${words.noNotes}</p>`
        }
      </section>
      <p><strong>${words.upNext}</strong> ${next ? next.title : words.lastStep}</p>`;
  }

  #size() {
    const words = this.text.lessons.presenter;
    const { seat, height } = this.presenting;
    const field = (label: string, value: number | undefined, key: "seat" | "height") =>
      html`<label
        >${label}
        <input
          type="number"
          min="0.5"
          step="0.1"
          .value=${value === undefined ? "" : String(value)}
          @change=${({ target }: Event) =>
            this.#set({ [key]: numberIn(target as HTMLInputElement) })}
      /></label>`;
    return html`<details>
      <summary>${words.size}</summary>
      <p class="soft">${words.sizeHelp}</p>
      ${field(words.seat, seat, "seat")} ${field(words.height, height, "height")}
      <p>${words.type(this.text.percent(this.#type()))}</p>
    </details>`;
  }

  #set(change: {
    readonly [Key in keyof Presenting]?: Presenting[Key] | undefined;
  }): void {
    const entries = Object.entries({ ...this.presenting, ...change });
    const whole = Object.fromEntries(entries.filter(([, value]) => value !== undefined));
    this.#change(whole as unknown as Presenting);
  }

  #change(presenting: Presenting | undefined): void {
    this.dispatchEvent(new PresentingChangedEvent(presenting));
  }

  #openAudience(): void {
    const { id } = this.presenting;
    const opened = window.open(audienceAddress(id), `reedpoint-${id}`, "popup");
    this.refused = opened === null;
    if (opened && this.#windows) this.#windows.other = opened;
  }

  #turn(by: 1 | -1): void {
    const { steps } = this.lesson;
    const step = this.run.step + by;
    if (!steps[step]) return;
    const says = `${this.text.lessons.step(step + 1, steps.length)}: ${steps[step].title}`;
    this.dispatchEvent(new StepAskedEvent(step, says));
  }

  #onClicker(key: ClickerKey): void {
    if (key === "next") this.#turn(1);
    else if (key === "previous") this.#turn(-1);
    else if (key === "blank") this.#set({ blank: !this.presenting.blank });
    else this.#set({ blank: false, frozen: undefined });
  }

  /** In the presenter's view a clicker's keys have their meaning wherever the focus is; a point may still be typed. */
  readonly #onKey = (event: KeyboardEvent): void => {
    const key = clickerKey(event);
    const [typing] = event.composedPath();
    const isTyped = typing instanceof HTMLInputElement && typing.type !== "range";
    if (!key || (key === "blank" && isTyped)) return;
    if (key === "plain" && !this.presenting.blank && !this.presenting.frozen) return;
    event.preventDefault();
    event.stopPropagation();
    this.#onClicker(key);
  };

  #togglePoint(): void {
    this.ring = undefined;
    this.#set({ points: !this.presenting.points });
  }

  #onPointer(event: PointerEvent): void {
    if (!this.presenting.points) return;
    const player = this.querySelector<LessonPlayer>("lesson-player");
    this.ring = player?.blockAt(event.clientX, event.clientY);
  }

  #onAway(): void {
    this.ring = undefined;
  }
}

function numberIn({ valueAsNumber }: HTMLInputElement): number | undefined {
  return Number.isFinite(valueAsNumber) && valueAsNumber > 0 ? valueAsNumber : undefined;
}
