import { LitElement, html, type PropertyValues } from "lit";
import { guard } from "lit/directives/guard.js";
import type { Blend } from "../engine/blend.js";
import type { FeatureId, ReedModel } from "../engine/model.js";
import { bassoonModel } from "../reed/bassoon.js";
import { decodeBench, encodeBench, ownTarget, type PageName } from "../reed/bench.js";
import { isShortAddress, routeKey } from "../reed/route.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import { demoReeds } from "../reed/demo-reeds.js";
import { define } from "../widgets/define.js";
import type { FeaturePointedEvent, ReadingsTakenEvent } from "../widgets/events.js";
import { look } from "../widgets/look.js";
import type { Handle } from "../widgets/triangle-drag.js";
import { actionOf } from "./action-of-event.js";
import { AddressBar, type HistoryEntry } from "./address-bar.js";
import { Announcer } from "./announcer.js";
import { appStyle } from "./app-style.js";
import type { BenchActionEvent } from "./bench-action-event.js";
import { BenchHeader, type ThemePickedEvent } from "./bench-header.js";
import type { MovesPickedEvent } from "./bench-options.js";
import { isGiven } from "./bench-reed.js";
import { ClassWindow } from "./class-window.js";
import { HandOut } from "./hand-out.js";
import { momentBeside, lessonsBeside } from "./moment-beside.js";
import { ReadingsDialog } from "./readings-dialog.js";
import { BenchGrid } from "./bench-grid.js";
import type { Shown } from "./bench-words.js";
import { Pace } from "./pace.js";
import { movesOf } from "./moves-of.js";
import { NoticeBar } from "./notice-bar.js";
import { Offline } from "./offline.js";
import type { PageTitledEvent } from "./page-titled-event.js";
import { PageTabs } from "./page-tabs.js";
import { PageRoom } from "./page-room.js";
import { reduce, startState, type BenchAction, type BenchState } from "./bench-state.js";
import { viewBench } from "./bench-view.js";
import { stateInside } from "./state-inside.js";
import { told } from "./told.js";
import { wayBetween } from "./way-between.js";
import { undoKey } from "../widgets/undo-key.js";
import { setTheme, type Theme } from "./theme.js";

define("bench-header", BenchHeader);
define("notice-bar", NoticeBar);
define("page-tabs", PageTabs);
define("bench-grid", BenchGrid);
define("readings-dialog", ReadingsDialog);

const moved = new Set<BenchAction["type"]>(["value-set", "point-moved", "aim-moved"]);

/** Actions by which the browser itself has led elsewhere: its history has the entry already. */
const arrived = new Set<BenchAction["type"]>(["place-revisited", "bench-opened"]);

/** The app: owner of the one state. Child event → action → new state → properties down. */
export class ReedpointApp extends LitElement {
  static override styles = [look, appStyle];

  static override properties = {
    text: { attribute: false },
    state: { state: true },
    notice: { state: true },
    details: { state: true },
    said: { state: true },
    theme: { state: true },
    pointed: { state: true },
    moves: { state: true },
    way: { state: true },
    titles: { state: true },
  };

  declare text: Catalogue;
  declare state: BenchState;
  declare notice: string;
  /** What the notice says one by one. */
  declare details: readonly string[];
  declare said: string;
  declare theme: Theme;
  /** The feature at whose place the pointer or the keyboard is. */
  declare pointed: FeatureId | undefined;
  /** What clicks and keys move on the triangle. */
  declare moves: Handle;
  /** Along which the point is seen going to its new place. */
  declare way: readonly Blend[];
  /** What is open on the page, the innermost first. */
  declare titles: readonly string[];

  readonly #model: ReedModel = bassoonModel;
  readonly #class = new ClassWindow(this, location.href);
  readonly #page = new PageRoom(this);
  readonly #address = new AddressBar(window, {
    onOpened: (code) => this.#openCode(code),
    onRevisited: (code) => this.#revisit(code),
  });
  readonly #handOut = new HandOut(this, () => this.#address.linkTo(this.#code));
  readonly #offline = new Offline(this, () => this.#address.settle());
  readonly #drawn = new Pace<Shown>(75, () => this.requestUpdate());
  readonly #worded = new Pace<Shown>(160, () => this.requestUpdate());
  #seen:
    | { readonly state: BenchState; readonly text: Catalogue; readonly shown: Shown }
    | undefined;
  readonly #announcer = new Announcer((words) => (this.said = words));

  constructor() {
    super();
    this.text = english;
    this.notice = "";
    this.details = [];
    this.said = "";
    this.theme = "auto";
    this.moves = "point";
    this.way = [];
    this.titles = [];
    this.state = startState(this.#model);
    const code = this.#address.code() || stateInside(document);
    if (code) this.#start(code);
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#address.connect();
    window.addEventListener("keydown", this.#onKey);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#address.disconnect();
    this.#announcer.stop();
    this.#drawn.stop();
    this.#worded.stop();
    window.removeEventListener("keydown", this.#onKey);
  }

  /** The page speaks the catalogue's language, and runs the way its script runs. */
  override updated(changed: PropertyValues<this>): void {
    const page = document.documentElement;
    const { page: name } = this.state.present.bench;
    page.dataset["page"] = name;
    if (!this.#class.isOpen) document.title = this.#title(name);
    if (changed.has("text")) [page.lang, page.dir] = [this.text.language, this.text.direction];
  }

  /** What a tab, the history and a bookmark call the page: the innermost first. */
  #title(page: PageName): string {
    const inside = page === "lessons" ? this.titles : [];
    return [...inside, this.text.pages[page], this.text.productName].filter(Boolean).join(" – ");
  }

  /** The first thing a link opens has nothing before it that undo could bring back. */
  #start(code: string): void {
    const { bench, problems } = decodeBench(code, this.#model, this.text);
    const beside = this.#address.beside();
    const state = startState(this.#model, bench, momentBeside(beside, bench));
    this.state = { ...state, ...lessonsBeside(beside) };
    this.#tellProblems(problems);
  }

  /** Back and Forward are for the way, undo is for the reed: what is on the bench stays. */
  #revisit(code: string): void {
    const { page, lesson } = decodeBench(code, this.#model, this.text).bench;
    this.#dispatch({ type: "place-revisited", route: { page, lesson } });
    // A step of a lesson takes the focus by itself.
    if (page !== "lessons" || !lesson) void this.updateComplete.then(() => this.#grid.focus());
  }

  #openCode(code: string): void {
    if (isShortAddress(code)) return this.#revisit(code);
    const { bench, problems } = decodeBench(code, this.#model, this.text);
    this.#dispatch({ type: "bench-opened", bench });
    this.#tellProblems(problems);
  }

  #tellProblems(problems: readonly string[]): void {
    if (problems.length === 0) return;
    this.notice = this.text.address.problems;
    this.details = problems;
  }

  get #code(): string {
    return encodeBench(this.state.present.bench, this.#model);
  }

  #dispatch(action: BenchAction): void {
    const next = reduce(this.state, action);
    if (next === this.state) {
      if ("says" in action) this.#announcer.now(action.says);
      return;
    }
    const before = this.state;
    this.way = wayBetween(before, next);
    this.state = next;
    this.#forgetNotice();
    const { bench, readings, sheet } = next.present;
    const { progress, lessonFile, presenting } = next;
    const entry = (): HistoryEntry => ({
      code: encodeBench(bench, this.#model),
      beside: { readings, sheet, progress, lessonFile, presenting },
    });
    const isElsewhere = routeKey(bench) !== routeKey(before.present.bench);
    if (isElsewhere && !arrived.has(action.type)) this.#address.enter(entry);
    else this.#address.tell(entry);
    // The entry that Back has led to holds the reed as it was then.
    if (action.type === "place-revisited") this.#address.settle();
    // The end of a gesture says nothing of its own: what the gesture did is about to be told.
    if (action.type === "gesture-ended") return;
    if (moved.has(action.type)) this.#announcer.later(() => told(next, action, this.text));
    else this.#announcer.now(told(next, action, this.text));
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
    return this.#class.view(this.text) ?? this.#app();
  }

  #app() {
    const now = this.#now();
    // The point follows every move; drawing and recipe every fifth frame, and words stand long enough to be read.
    const { gesture: open = "keys" } = this.state;
    const gesture = !open.startsWith("keys");
    const drawn = this.#drawn.take(now, gesture);
    const worded = this.#worded.take(now, gesture);
    return html`
      <bench-header
        .text=${this.text}
        .reed=${this.state.present.bench.reed}
        .name=${now.view.name}
        .canUndo=${this.state.past.length > 0}
        .canRedo=${this.state.future.length > 0}
        .theme=${this.theme}
        .compact=${this.#page.room.compact}
        .reedless=${this.state.present.bench.page === "lessons"}
        @bench-action=${this.#onAction}
        @theme-picked=${this.#onTheme}
        @table-asked=${this.#openDialog}
        @link-asked=${this.#handOut.copyLink}
        @page-asked=${this.#handOut.savePage}
        @embed-asked=${this.#handOut.openEmbed}
        @recipe-asked=${this.#goToRecipe}
      ></bench-header>
      <page-tabs
        .page=${this.state.present.bench.page}
        .text=${this.text}
        @bench-action=${this.#onAction}
      ></page-tabs>
      <notice-bar
        .words=${this.notice}
        .details=${this.details}
        .text=${this.text}
        @notice-closed=${this.#closeNotice}
      ></notice-bar>
      <readings-dialog
        class="noPrint"
        .model=${this.#model}
        .unit=${this.state.present.bench.unit}
        .kept=${guard([drawn], () => (isGiven(reedOf(drawn.state)) ? [] : Object.keys(drawn.state.present.bench.values)))}
        .text=${this.text}
        @readings-taken=${this.#onReadings}
        @dialog-closed=${this.#onDialogClosed}
      ></readings-dialog>
      ${this.#handOut.dialog(now)} ${this.#offline.bar()}
      <div
        class="bench"
        @value-picked=${this.#onAsked}
        @lock-picked=${this.#onAsked}
        @blend-picked=${this.#onAsked}
        @aim-picked=${this.#onAsked}
        @try-left=${this.#onAsked}
        @try-accepted=${this.#onAsked}
        @bench-action=${this.#onAction}
        @moves-picked=${this.#onMoves}
        @feature-pointed=${this.#onPointed}
        @page-titled=${this.#onTitled}
        @gesture-ended=${this.#onAsked}
      >
        <bench-grid
          .now=${now}
          .drawn=${drawn}
          .worded=${worded}
          .room=${this.#page.room}
          .way=${this.way}
          .moves=${movesOf(this.state.present.bench, this.moves)}
          .pointed=${this.pointed}
          .text=${this.text}
        ></bench-grid>
      </div>
      <div class="unseen" role="status" aria-live="polite">${this.said}</div>
    `;
  }

  #onTitled({ titles }: PageTitledEvent): void {
    this.titles = titles;
  }

  #forgetNotice(): void {
    this.notice = "";
    this.details = [];
  }

  #closeNotice(): void {
    this.#forgetNotice();
    this.#grid.focus();
  }

  get #grid(): BenchGrid {
    return this.renderRoot.querySelector<BenchGrid>("bench-grid")!;
  }

  /** A part asks for a change of the reed. */
  #onAsked(event: Event): void {
    const action = actionOf(event);
    if (action) this.#dispatch(action);
  }

  #onMoves(event: MovesPickedEvent): void {
    this.moves = event.moves;
  }

  #goToRecipe(): void {
    this.#grid.showRecipe();
  }

  get #dialog(): ReadingsDialog {
    return this.renderRoot.querySelector<ReadingsDialog>("readings-dialog")!;
  }

  /** The button that opened it may be folded away by now. */
  #onDialogClosed(): void {
    this.renderRoot.querySelector<BenchHeader>("bench-header")?.focus();
  }

  #openDialog(): void {
    void this.#dialog.open();
  }

  #onPointed(event: FeaturePointedEvent): void {
    this.pointed = event.feature;
  }

  #onReadings({ readings, complete }: ReadingsTakenEvent): void {
    const { reed, values } = this.state.present.bench;
    const fresh = isGiven(reedOf(this.state));
    const own =
      demoReeds.some((one) => one.reed === reed) || reed === "" ? this.text.bar.ownReed : reed;
    const count = Object.keys(readings).length;
    const kept = fresh ? 0 : Object.keys(values).filter((id) => !(id in readings)).length;
    this.#dispatch({ type: "readings-taken", reed: own, fresh, readings });
    if (!complete) return;
    this.#dialog.close();
    this.notice = this.text.readings.accepted(count, kept);
  }

  #onAction({ action }: BenchActionEvent): void {
    this.#dispatch(action);
    if (action.type === "reed-pinned") void this.#focusOn("bench-comparison");
    if (action.type === "reed-unpinned") void this.#focusOn("bench-drawing");
    if (action.type === "target-set") this.moves = action.target === ownTarget ? "aim" : "point";
  }

  async #focusOn(part: string): Promise<void> {
    await this.updateComplete;
    await this.#grid.focusOn(part);
  }

  #onTheme(event: ThemePickedEvent): void {
    this.theme = event.theme;
    setTheme(document.documentElement, event.theme);
  }

  readonly #onKey = (event: KeyboardEvent): void => {
    const type = undoKey(event);
    // What is undone must be in sight: a lesson does not show the reed of the bench.
    if (!type || this.state.present.bench.page === "lessons") return;
    event.preventDefault();
    this.#dispatch({ type });
  };
}

/** The reed on the bench of a state. */
function reedOf({ model, present: { bench } }: BenchState) {
  return { model, bench };
}

define("reedpoint-app", ReedpointApp);
