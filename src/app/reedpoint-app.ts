import { LitElement, html, nothing } from "lit";
import type { FeatureId, ReedModel } from "../engine/model.js";
import { bassoonModel } from "../reed/bassoon.js";
import { decodeBench, encodeBench } from "../reed/bench.js";
import { english, sentenceText, type Catalogue } from "../reed/catalogue.js";
import { demoReeds } from "../reed/demo-reeds.js";
import { targets } from "../reed/targets.js";
import { lengthUnits, type LengthUnit } from "../reed/units.js";
import { define } from "../widgets/define.js";
import type {
  BlendPickedEvent,
  FeaturePointedEvent,
  LockPickedEvent,
  ReadingsTakenEvent,
  ValuePickedEvent,
} from "../widgets/events.js";
import { look } from "../widgets/look.js";
import { ReedCertainty } from "../widgets/reed-certainty.js";
import { ReedDrawing } from "../widgets/reed-drawing.js";
import { ReedRecipe } from "../widgets/reed-recipe.js";
import { ReedSentence } from "../widgets/reed-sentence.js";
import { ReedShares } from "../widgets/reed-shares.js";
import { ReedTriangle } from "../widgets/reed-triangle.js";
import { AddressBar } from "./address-bar.js";
import { Announcer } from "./announcer.js";
import { appStyle } from "./app-style.js";
import type { BenchActionEvent } from "./bench-action-event.js";
import { BenchHeader, type ThemePickedEvent } from "./bench-header.js";
import { BenchOptions } from "./bench-options.js";
import { isUnchanged, isUntouched } from "./bench-reed.js";
import { ReadingsDialog } from "./readings-dialog.js";
import { Pace } from "./pace.js";
import { isNarrow, triangleHeight } from "./page-width.js";
import { stoppedLine } from "./stopped-line.js";
import {
  reduce,
  startState,
  type BenchAction,
  type BenchState,
  type Moment,
} from "./bench-state.js";
import { viewBench, type BenchView } from "./bench-view.js";
import { targetLine } from "./target-line.js";
import { undoKey } from "./undo-key.js";
import { setTheme, type Theme } from "./theme.js";

define("reed-triangle", ReedTriangle);
define("reed-shares", ReedShares);
define("reed-recipe", ReedRecipe);
define("reed-drawing", ReedDrawing);
define("reed-sentence", ReedSentence);
define("reed-certainty", ReedCertainty);
define("bench-header", BenchHeader);
define("bench-options", BenchOptions);
define("readings-dialog", ReadingsDialog);

/** A moment of the bench and what is seen of it. */
interface Shown {
  readonly moment: Moment;
  readonly view: BenchView;
}

const moved = new Set<BenchAction["type"]>(["value-set", "point-moved", "gesture-ended"]);

/** The app: owner of the one state. Child event → action → new state → properties down. */
export class ReedpointApp extends LitElement {
  static override styles = [look, appStyle];

  static override properties = {
    text: { attribute: false },
    state: { state: true },
    notice: { state: true },
    said: { state: true },
    theme: { state: true },
    narrow: { state: true },
    triangleHeight: { state: true },
    pointed: { state: true },
  };

  declare text: Catalogue;
  declare state: BenchState;
  declare notice: string;
  declare said: string;
  declare theme: Theme;
  /** One column: the triangle then stays in sight, so it must leave room. */
  declare narrow: boolean;
  declare triangleHeight: number;
  /** The feature at whose place the pointer or the keyboard is. */
  declare pointed: FeatureId | undefined;

  readonly #model: ReedModel = bassoonModel;
  readonly #address = new AddressBar(window, (code) => this.#openCode(code));
  readonly #watcher = new ResizeObserver(() => this.#onWidth());
  readonly #drawn = new Pace<Shown>(45, () => this.requestUpdate());
  readonly #worded = new Pace<Shown>(120, () => this.requestUpdate());
  readonly #announcer = new Announcer((words) => (this.said = words));

  constructor() {
    super();
    this.text = english;
    this.notice = "";
    this.said = "";
    this.theme = "auto";
    this.narrow = isNarrow();
    this.triangleHeight = triangleHeight();
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
    this.state = next;
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

  override render() {
    const view = viewBench(this.state, this.text);
    const now: Shown = { moment: this.state.present, view };
    // The point follows every move; drawing and recipe every other frame, and words stand long enough to be read.
    const hurried = this.state.gesture !== undefined;
    const drawn = this.#drawn.take(now, hurried);
    const worded = this.#worded.take(now, hurried);
    return html`
      <bench-header
        .text=${this.text}
        .reed=${this.state.present.bench.reed}
        .unchanged=${isUnchanged(this.state)}
        .canUndo=${this.state.past.length > 0}
        .canRedo=${this.state.future.length > 0}
        .theme=${this.theme}
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
        .kept=${isUntouched(this.state) ? [] : Object.keys(this.state.present.bench.values)}
        .text=${this.text}
        @readings-taken=${this.#onReadings}
      ></readings-dialog>
      <div class="page">
        <main
          tabindex="-1"
          @value-picked=${this.#onValue}
          @blend-picked=${this.#onBlend}
          @lock-picked=${this.#onLock}
          @feature-pointed=${this.#onPointed}
          @gesture-ended=${() => this.#dispatch({ type: "gesture-ended" })}
        >
          ${this.#drawing(drawn)} ${this.#place(view)} ${this.#under(worded, drawn)} ${this.#recipe(drawn)}
        </main>
      </div>
      <div class="unseen" role="status" aria-live="polite">${this.said}</div>
    `;
  }

  #unitChoice() {
    return html`<label class="unitChoice"
      >${this.text.bar.unit}
      <select @change=${this.#onUnit}>
        ${lengthUnits.map(
          (unit) =>
            html`<option value=${unit} ?selected=${unit === this.state.present.bench.unit}>
              ${this.text.units[unit].name}
            </option>`,
        )}
      </select></label
    >`;
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
    const { bench } = this.state.present;
    const target = targets.find(({ id }) => id === bench.target);
    return html`<section class="place" aria-label=${this.text.triangle.title}>
        <h1 class="printOnly">${bench.reed || this.text.bar.allRound}</h1>
        <reed-triangle
          .blend=${view.placed?.raw}
          .ghost=${view.ghost}
          .ellipse=${view.drawnEllipse}
          .layers=${bench.layers}
          .chain=${view.chain}
          .reach=${view.reach}
          .target=${target}
          .greatestHeight=${this.triangleHeight}
          .text=${this.text}
        ></reed-triangle>
      </section>`;
  }

  #under({ moment: { bench }, view }: Shown, drawn: Shown) {
    const target = targets.find(({ id }) => id === bench.target);
    const story = isUnchanged(this.state)
      ? demoReeds.find((one) => one.reed === bench.reed)
      : undefined;
    return html`<div class="under">
        <p class="stopped" ?hidden=${!view.placed}>
          ${stoppedLine(this.#model, bench, view, this.text)}
        </p>
        <reed-sentence .sentence=${view.sentence}></reed-sentence>
        <reed-certainty
          .blend=${view.placed?.raw}
          .ellipse=${view.ellipse}
          .gaugeEllipse=${view.gaugeEllipse}
          .text=${this.text}
        ></reed-certainty>
        ${target && view.placed ? html`<p class="story">${targetLine(target, view.placed.raw, this.text)} ${target.why}</p>` : nothing}
        ${story ? html`<p class="story">${story.story}</p>` : nothing}
        <reed-shares .blend=${drawn.view.placed?.raw} .text=${this.text}></reed-shares>
        <bench-options
          .bench=${this.state.present.bench}
          .text=${this.text}
          @bench-action=${this.#onAction}
        ></bench-options>
        <details class="noPrint">
          <summary>${this.text.triangle.help}</summary>
          <p>${this.text.triangle.instructions}</p>
          <p>${this.text.triangle.convention}</p>
        </details>
        <p class="honest">${this.text.certainty.modelNote}</p>
      </div>`;
  }

  #drawing({ moment }: Shown) {
    const { values, unit } = moment.bench;
    return html`<section class="card drawing" aria-label=${this.text.drawing.title}>
      <h2>${this.text.drawing.title}</h2>
      <reed-drawing
        .model=${this.#model}
        .values=${values}
        .unit=${unit}
        .lying=${this.narrow}
        .pointed=${this.pointed}
        .text=${this.text}
      ></reed-drawing>
    </section>`;
  }

  #recipe({ moment: { bench, readings }, view }: Shown) {
    return html`<section class="card recipe" tabindex="-1" aria-label=${this.text.recipe.title}>
      <div class="cardHead">
        <h2>${this.text.recipe.title}</h2>
        ${this.#unitChoice()}
      </div>
      <reed-recipe
        .model=${this.#model}
        .values=${bench.values}
        .readings=${readings}
        .locked=${bench.locked}
        .pulls=${view.pulls}
        .earlier=${view.earlier}
        .pointed=${this.pointed}
        .unit=${bench.unit}
        .text=${this.text}
      ></reed-recipe>
    </section>`;
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

  #goToRecipe(): void {
    this.renderRoot.querySelector<HTMLElement>(".recipe")?.focus();
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

  #onUnit(event: Event): void {
    this.#dispatch({ type: "unit-set", unit: picked(event) as LengthUnit });
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
    this.narrow = isNarrow();
    this.triangleHeight = triangleHeight();
  }

  readonly #onKey = (event: KeyboardEvent): void => {
    const type = undoKey(event);
    if (!type) return;
    event.preventDefault();
    this.#dispatch({ type });
  };
}

function picked(event: Event): string {
  return (event.target as HTMLSelectElement).value;
}

define("reedpoint-app", ReedpointApp);
