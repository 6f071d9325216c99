import { LitElement, html, nothing, type PropertyValues } from "lit";
import { guard } from "lit/directives/guard.js";
import type { Blend } from "../engine/blend.js";
import type { FeatureId, ReedModel } from "../engine/model.js";
import { bassoonModel } from "../reed/bassoon.js";
import { decodeBench, encodeBench, ownTarget } from "../reed/bench.js";
import { english, sentenceText, type Catalogue } from "../reed/catalogue.js";
import type { PictureWords } from "../drawing/png-text.js";
import { demoReeds } from "../reed/demo-reeds.js";
import { define } from "../widgets/define.js";
import type {
  AimPickedEvent,
  BlendPickedEvent,
  FeaturePointedEvent,
  LockPickedEvent,
  ReadingsTakenEvent,
  ValuePickedEvent,
} from "../widgets/events.js";
import { look } from "../widgets/look.js";
import { ReedComparison } from "../widgets/reed-comparison.js";
import type { Handle } from "../widgets/triangle-drag.js";
import { AddressBar } from "./address-bar.js";
import { Announcer } from "./announcer.js";
import { appStyle } from "./app-style.js";
import type { BenchActionEvent } from "./bench-action-event.js";
import { BenchHeader, type ThemePickedEvent } from "./bench-header.js";
import { BenchControls } from "./bench-controls.js";
import { BenchDrawing } from "./bench-drawing.js";
import type { MovesPickedEvent } from "./bench-options.js";
import { isUnchanged, isUntouched } from "./bench-reed.js";
import { ReadingsDialog } from "./readings-dialog.js";
import { BenchPlace } from "./bench-place.js";
import { BenchRecipe } from "./bench-recipe.js";
import { BenchWords, type Shown } from "./bench-words.js";
import { Pace } from "./pace.js";
import { roomOf, sameRoom, type Room } from "./page-width.js";
import { reduce, startState, type BenchAction, type BenchState } from "./bench-state.js";
import { viewBench, type BenchView } from "./bench-view.js";
import { wayBetween } from "./way-between.js";
import { undoKey } from "./undo-key.js";
import { setTheme, type Theme } from "./theme.js";

define("bench-header", BenchHeader);
define("bench-drawing", BenchDrawing);
define("bench-place", BenchPlace);
define("bench-recipe", BenchRecipe);
define("bench-words", BenchWords);
define("bench-controls", BenchControls);
define("reed-comparison", ReedComparison);
define("readings-dialog", ReadingsDialog);

const moved = new Set<BenchAction["type"]>([
  "value-set",
  "point-moved",
  "aim-moved",
  "gesture-ended",
]);

/** The app: owner of the one state. Child event → action → new state → properties down. */
export class ReedpointApp extends LitElement {
  static override styles = [look, appStyle];

  static override properties = {
    text: { attribute: false },
    state: { state: true },
    notice: { state: true },
    said: { state: true },
    theme: { state: true },
    room: { state: true },
    pointed: { state: true },
    moves: { state: true },
    way: { state: true },
  };

  declare text: Catalogue;
  declare state: BenchState;
  declare notice: string;
  declare said: string;
  declare theme: Theme;
  /** How much room the page has. */
  declare room: Room;
  /** The feature at whose place the pointer or the keyboard is. */
  declare pointed: FeatureId | undefined;
  /** What clicks and keys move on the triangle. */
  declare moves: Handle;
  /** Along which the point is seen going to its new place. */
  declare way: readonly Blend[];

  readonly #model: ReedModel = bassoonModel;
  readonly #address = new AddressBar(window, (code) => this.#openCode(code));
  readonly #watcher = new ResizeObserver(() => this.#onWidth());
  readonly #drawn = new Pace<Shown>(45, () => this.requestUpdate());
  readonly #worded = new Pace<Shown>(120, () => this.requestUpdate());
  #seen:
    | { readonly state: BenchState; readonly text: Catalogue; readonly shown: Shown }
    | undefined;
  readonly #announcer = new Announcer((words) => (this.said = words));

  constructor() {
    super();
    this.text = english;
    this.notice = "";
    this.said = "";
    this.theme = "auto";
    this.room = roomOf(document.documentElement);
    this.moves = "point";
    this.way = [];
    this.state = startState(this.#model);
    const code = this.#address.code();
    if (code) this.#start(code);
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#address.connect();
    this.#watcher.observe(document.documentElement);
    window.addEventListener("keydown", this.#onKey);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#address.disconnect();
    this.#announcer.stop();
    this.#watcher.disconnect();
    this.#drawn.stop();
    this.#worded.stop();
    window.removeEventListener("keydown", this.#onKey);
  }

  /** The page speaks the catalogue's language, and runs the way its script runs; forms for one column leave room for the sheet. */
  override updated(changed: PropertyValues<this>): void {
    const page = document.documentElement;
    if (changed.has("text")) [page.lang, page.dir] = [this.text.language, this.text.direction];
    if (!changed.has("room")) return;
    page.toggleAttribute("data-narrow", this.room.narrow);
    page.style.setProperty("--triangle", `${(this.room.triangleHeight + 32) / 16}rem`);
  }

  /** The first thing a link opens has nothing before it that undo could bring back. */
  #start(code: string): void {
    const { bench, problems } = decodeBench(code, this.#model, this.text);
    this.state = startState(this.#model, bench);
    if (problems.length > 0) this.notice = this.text.address.problems(problems);
  }

  #openCode(code: string): void {
    const { bench, problems } = decodeBench(code, this.#model, this.text);
    this.#dispatch({ type: "bench-opened", bench });
    if (problems.length > 0) this.notice = this.text.address.problems(problems);
  }

  #dispatch(action: BenchAction): void {
    const next = reduce(this.state, action);
    if (next === this.state) return;
    this.way = wayBetween(this.state, next);
    this.state = next;
    if (next.present.bench.target !== ownTarget) this.moves = "point";
    this.notice = "";
    this.#address.tell(encodeBench(next.present.bench, this.#model));
    if (moved.has(action.type)) this.#announcer.later(() => this.#told(next, action));
    else this.#announcer.now(this.#told(next, action));
  }

  /** What a screen reader hears: the shares where the point was moved, then the sentence. */
  #told(state: BenchState, action: BenchAction): string {
    const { placed, sentence } = viewBench(state, this.text);
    const words = sentenceText(sentence);
    if (action.type !== "point-moved" || !placed) return words;
    const ids = ["high", "low", "loud"] as const;
    const rows = ids.map((id, k) => ({ id, share: this.text.percent(placed.blend[k]!) }));
    return `${this.text.shares.all(rows)} ${words}`;
  }

  /** What is seen of the present state; the same thing for the same state. */
  #now(): Shown {
    const { state, text } = this;
    if (this.#seen?.state !== state || this.#seen.text !== text) {
      const shown = { state, view: viewBench(state, text) };
      this.#seen = { state, text, shown };
    }
    return this.#seen.shown;
  }

  override render() {
    const now = this.#now();
    const { view } = now;
    // The point follows every move; drawing and recipe every third frame, and words stand long enough to be read.
    const { gesture: open = "keys" } = this.state;
    const gesture = !open.startsWith("keys");
    const drawn = this.#drawn.take(now, gesture);
    const worded = this.#worded.take(now, gesture);
    return html`
      <bench-header
        .text=${this.text}
        .reed=${this.state.present.bench.reed}
        .unchanged=${isUnchanged(this.state)}
        .canUndo=${this.state.past.length > 0}
        .canRedo=${this.state.future.length > 0}
        .theme=${this.theme}
        .compact=${this.room.compact}
        @bench-action=${this.#onAction}
        @theme-picked=${this.#onTheme}
        @table-asked=${this.#openDialog}
        @link-asked=${this.#copyLink}
        @recipe-asked=${this.#goToRecipe}
      ></bench-header>
      ${this.#noticeBar()}
      <readings-dialog
        class="noPrint"
        .model=${this.#model}
        .unit=${this.state.present.bench.unit}
        .kept=${guard([drawn], () => (isUntouched(drawn.state) ? [] : Object.keys(drawn.state.present.bench.values)))}
        .text=${this.text}
        @readings-taken=${this.#onReadings}
      ></readings-dialog>
      <div
        class="bench"
        @value-picked=${this.#onValue}
        @lock-picked=${this.#onLock}
        @blend-picked=${this.#onBlend}
        @aim-picked=${this.#onAim}
        @bench-action=${this.#onAction}
        @moves-picked=${this.#onMoves}
        @feature-pointed=${this.#onPointed}
        @gesture-ended=${() => this.#dispatch({ type: "gesture-ended" })}
      >
        <div class="page">
          <main tabindex="-1" @focusin=${this.#onFocus}>
            ${this.#place(view)}
            <bench-words class="says" .shown=${worded} .text=${this.text}></bench-words>
            ${this.#drawing(drawn)}
            ${
              this.room.narrow && !worded.view.comparison
                ? nothing
                : html`<div class="side">
                    ${this.room.narrow ? nothing : this.#recipe(drawn)}
                    ${guard([worded, this.text], () => this.#comparison(worded))}
                  </div>`
            }
            <bench-controls
              class="under"
              .drawn=${drawn}
              .worded=${worded}
              .moves=${this.moves}
              .picture=${this.#picture}
              .pictureWords=${this.#pictureWords}
              .text=${this.text}
            ></bench-controls>
          </main>
        </div>
        ${this.room.narrow ? this.#recipe(drawn) : nothing}
      </div>
      <div class="unseen" role="status" aria-live="polite">${this.said}</div>
    `;
  }

  #noticeBar() {
    if (!this.notice) return nothing;
    return html`<p class="notice" role="alert">
      <span>${this.notice}</span>
      <button @click=${this.#closeNotice}>${this.text.bar.close}</button>
    </p>`;
  }

  #closeNotice(): void {
    this.notice = "";
    this.renderRoot.querySelector<HTMLElement>("main")?.focus();
  }

  #place(view: BenchView) {
    return html`<bench-place
      class="place"
      .bench=${this.state.present.bench}
      .view=${view}
      .way=${this.way}
      .moves=${this.moves}
      .greatestHeight=${this.room.triangleHeight}
      .text=${this.text}
    ></bench-place>`;
  }

  #drawing({ state }: Shown) {
    return html`<section class="card drawing" aria-label=${this.text.drawing.title}>
      <bench-drawing
        .model=${this.#model}
        .bench=${state.present.bench}
        .lying=${this.room.narrow}
        .pointed=${this.pointed}
        .text=${this.text}
      ></bench-drawing>
    </section>`;
  }

  #recipe({ state, view }: Shown) {
    return html`<bench-recipe
      class="recipe"
      .model=${this.#model}
      .moment=${state.present}
      .view=${view}
      .pointed=${this.pointed}
      .sheet=${this.room.narrow}
      .text=${this.text}
      @sheet-opened=${this.#onSheet}
    ></bench-recipe>`;
  }

  #comparison({ state, view }: Shown) {
    const { bench } = state.present;
    const { comparison, placed } = view;
    if (!comparison) return nothing;
    const { pinned, blend, differences, onlyOne } = comparison;
    const { text } = this;
    const name = (reed: string): string => reed || text.bar.allRound;
    return html`<section class="card compare" aria-label=${text.compare.pinned(name(pinned.reed))}>
      <reed-comparison
        .model=${this.#model}
        .mine=${{ name: name(bench.reed), values: bench.values, blend: placed?.raw }}
        .pinned=${{ name: name(pinned.reed), values: pinned.values, blend }}
        .differences=${differences}
        .onlyOne=${onlyOne}
        .unit=${bench.unit}
        .text=${text}
        @swap-asked=${() => this.#dispatch({ type: "reeds-swapped" })}
        @unpin-asked=${() => this.#dispatch({ type: "reed-unpinned" })}
      ></reed-comparison>
    </section>`;
  }

  readonly #picture = (): SVGSVGElement => this.#placePart.picture;
  readonly #pictureWords = (): PictureWords => this.#placePart.pictureWords;

  get #placePart(): BenchPlace {
    return this.renderRoot.querySelector<BenchPlace>("bench-place")!;
  }

  get #recipePart(): BenchRecipe {
    return this.renderRoot.querySelector<BenchRecipe>("bench-recipe")!;
  }

  /** With the sheet up only the triangle is in sight: what else has the focus needs the room. */
  #onFocus(event: Event): void {
    const inSight = event.composedPath().includes(this.#placePart);
    if (this.room.narrow && !inSight) this.#recipePart.close();
  }

  /** The triangle comes to the top of the window, above the open sheet. */
  #onSheet(): void {
    this.renderRoot.querySelector(".place")?.scrollIntoView({ block: "start" });
  }

  #onValue(event: ValuePickedEvent): void {
    const { feature, value, gesture } = event;
    this.#dispatch({
      type: "value-set",
      feature,
      value,
      ...(gesture === undefined ? {} : { gesture }),
    });
  }

  #onBlend(event: BlendPickedEvent): void {
    this.#dispatch({ type: "point-moved", target: event.blend, gesture: event.gesture });
  }

  #onAim(event: AimPickedEvent): void {
    this.#dispatch({ type: "aim-moved", aim: event.aim, gesture: event.gesture });
  }

  #onMoves(event: MovesPickedEvent): void {
    this.moves = event.moves;
  }

  #goToRecipe(): void {
    void this.#recipePart.show();
  }

  get #dialog(): ReadingsDialog {
    return this.renderRoot.querySelector<ReadingsDialog>("readings-dialog")!;
  }

  #openDialog(): void {
    void this.#dialog.open();
  }

  #onLock(event: LockPickedEvent): void {
    this.#dispatch({ type: "lock-set", feature: event.feature, locked: event.locked });
  }

  #onPointed(event: FeaturePointedEvent): void {
    this.pointed = event.feature;
  }

  #onReadings({ readings, complete }: ReadingsTakenEvent): void {
    const { reed, values } = this.state.present.bench;
    const fresh = isUntouched(this.state);
    const own =
      demoReeds.some((one) => one.reed === reed) || reed === "" ? this.text.bar.ownReed : reed;
    const count = Object.keys(readings).length;
    const kept = fresh ? 0 : Object.keys(values).filter((id) => !(id in readings)).length;
    this.#dispatch({ type: "readings-taken", reed: own, fresh, readings });
    if (!complete) return;
    this.#dialog.close();
    this.notice = this.text.readings.accepted(count, kept);
  }

  #onAction(event: BenchActionEvent): void {
    this.#dispatch(event.action);
  }

  #onTheme(event: ThemePickedEvent): void {
    this.theme = event.theme;
    setTheme(document.documentElement, event.theme);
  }

  async #copyLink(): Promise<void> {
    const words = this.text.bar;
    const link = this.#address.linkTo(encodeBench(this.state.present.bench, this.#model));
    try {
      await navigator.clipboard.writeText(link);
      this.notice = words.linkCopied;
    } catch {
      this.notice = words.linkFailed;
    }
  }

  #onWidth(): void {
    const room = roomOf(document.documentElement);
    if (!sameRoom(room, this.room)) this.room = room;
  }

  readonly #onKey = (event: KeyboardEvent): void => {
    const type = undoKey(event);
    if (!type) return;
    event.preventDefault();
    this.#dispatch({ type });
  };
}

define("reedpoint-app", ReedpointApp);
