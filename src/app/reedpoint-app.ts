import { LitElement, html, nothing } from "lit";
import type { ReedModel } from "../engine/model.js";
import { bassoonModel } from "../reed/bassoon.js";
import { allRoundValues, decodeBench, encodeBench, type Layer } from "../reed/bench.js";
import { english, sentenceText, type Catalogue } from "../reed/catalogue.js";
import { demoReeds } from "../reed/demo-reeds.js";
import { lengthUnits, type LengthUnit } from "../reed/units.js";
import { define } from "../widgets/define.js";
import type {
  BlendPickedEvent,
  LockPickedEvent,
  ReadingsTakenEvent,
  ValuePickedEvent,
} from "../widgets/events.js";
import { look } from "../widgets/look.js";
import { ReedCertainty } from "../widgets/reed-certainty.js";
import { ReedReadings } from "../widgets/reed-readings.js";
import { ReedRecipe } from "../widgets/reed-recipe.js";
import { ReedSentence } from "../widgets/reed-sentence.js";
import { ReedShares } from "../widgets/reed-shares.js";
import { ReedTriangle } from "../widgets/reed-triangle.js";
import { AddressBar } from "./address-bar.js";
import { Announcer } from "./announcer.js";
import { appStyle } from "./app-style.js";
import { reduce, startState, type BenchAction, type BenchState } from "./bench-state.js";
import { viewBench, type BenchView } from "./bench-view.js";
import { setTheme, type Theme } from "./theme.js";

define("reed-triangle", ReedTriangle);
define("reed-shares", ReedShares);
define("reed-recipe", ReedRecipe);
define("reed-sentence", ReedSentence);
define("reed-certainty", ReedCertainty);
define("reed-readings", ReedReadings);

const moved = new Set<BenchAction["type"]>(["value-set", "point-moved", "gesture-ended"]);

/** The app: owner of the one state. Child event → action → new state → properties down. */
export class ReedpointApp extends LitElement {
  static override styles = [look, appStyle];

  static override properties = {
    text: { attribute: false },
    state: { state: true },
    notice: { state: true },
    said: { state: true },
    pasting: { state: true },
    theme: { state: true },
    narrow: { state: true },
  };

  declare text: Catalogue;
  declare state: BenchState;
  declare notice: string;
  declare said: string;
  declare pasting: boolean;
  declare theme: Theme;
  /** One column: the triangle then stays in sight, so it must leave room. */
  declare narrow: boolean;

  readonly #model: ReedModel = bassoonModel;
  readonly #address = new AddressBar(window, (code) => this.#openCode(code));
  readonly #wide = window.matchMedia("(min-width: 62rem)");
  readonly #announcer = new Announcer((words) => (this.said = words));

  constructor() {
    super();
    this.text = english;
    this.notice = "";
    this.said = "";
    this.pasting = false;
    this.theme = "auto";
    this.narrow = !this.#wide.matches;
    this.state = startState(this.#model);
    const code = this.#address.code();
    if (code) this.#start(code);
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#address.connect();
    this.#wide.addEventListener("change", this.#onWidth);
    window.addEventListener("keydown", this.#onKey);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#address.disconnect();
    this.#announcer.stop();
    this.#wide.removeEventListener("change", this.#onWidth);
    window.removeEventListener("keydown", this.#onKey);
  }

  /** The first thing a link opens has nothing before it that undo could bring back. */
  #start(code: string): void {
    const { bench, problems } = decodeBench(code, this.#model);
    this.state = startState(this.#model, bench);
    if (problems.length > 0) this.notice = this.text.address.problems(problems);
  }

  #openCode(code: string): void {
    const { bench, problems } = decodeBench(code, this.#model);
    this.notice = problems.length > 0 ? this.text.address.problems(problems) : "";
    this.#dispatch({ type: "bench-opened", bench });
  }

  #dispatch(action: BenchAction): void {
    const next = reduce(this.state, action);
    if (next === this.state) return;
    this.state = next;
    this.notice = "";
    this.#address.tell(encodeBench(next.present.bench, this.#model));
    const words = this.#told(next, action);
    if (moved.has(action.type)) this.#announcer.later(words);
    else this.#announcer.now(words);
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
    return html`
      ${this.#header()} ${this.#noticeBar()} ${this.pasting ? this.#readings() : nothing}
      <main
        tabindex="-1"
        @value-picked=${this.#onValue}
        @blend-picked=${this.#onBlend}
        @lock-picked=${this.#onLock}
        @gesture-ended=${() => this.#dispatch({ type: "gesture-ended" })}
      >
        ${this.#place(view)} ${this.#recipe(view)}
      </main>
      <div class="unseen" role="status" aria-live="polite">${this.said}</div>
    `;
  }

  #header() {
    const words = this.text.bar;
    const { past, future } = this.state;
    return html` <header>
      <a class="skip" href="#" @click=${this.#skip}>${words.skipToRecipe}</a>
      <h1>${this.text.productName}</h1>
      <div class="tools">
        ${this.#reedChoice()}
        <button aria-haspopup="dialog" @click=${this.#openDialog}>
          ${this.text.readings.open}
        </button>
        <button aria-disabled=${past.length === 0} @click=${() => this.#dispatch({ type: "undo" })}>
          ${words.undo}
        </button>
        <button
          aria-disabled=${future.length === 0}
          @click=${() => this.#dispatch({ type: "redo" })}
        >
          ${words.redo}
        </button>
        <button @click=${() => this.#dispatch({ type: "reset" })}>${words.reset}</button>
        <button @click=${this.#copyLink}>${words.link}</button>
        <label
          ><span class="label">${words.theme}</span>
          <select @change=${this.#onTheme}>
            ${(["auto", "paper", "night"] as const).map(
              (theme) =>
                html`<option value=${theme} ?selected=${theme === this.theme}>
                  ${words.themes[theme]}
                </option>`,
            )}
          </select></label
        >
      </div>
    </header>`;
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

  #reedChoice() {
    const words = this.text.bar;
    const { reed } = this.state.present.bench;
    const known = reed === "" || demoReeds.some((one) => one.reed === reed);
    const now = reed === "" ? words.allRound : reed;
    const shown = known && !this.#isUnchanged() ? words.changed(now) : "";
    const option = (value: string, label: string) =>
      html`<option value=${value} ?selected=${!shown && value === reed}>${label}</option>`;
    return html`<label
      ><span class="label">${words.reed}</span>
      <select @change=${this.#onReed}>
        ${shown ? html`<option value="changed" selected>${shown}</option>` : nothing}
        ${known ? nothing : option(reed, reed)} ${option("", words.allRound)}
        <option value="empty">${words.emptyReed}</option>
        <optgroup label=${words.demo}>
          ${demoReeds.map((one) => option(one.reed, one.reed))}
        </optgroup>
      </select></label
    >`;
  }

  /** Whether every reading is still as the reed of that name has it. */
  #isUnchanged(): boolean {
    return (
      this.#isUntouched() &&
      this.#model.features.every(({ id }) => id in this.state.present.bench.values)
    );
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

  #readings() {
    const { unit, values } = this.state.present.bench;
    return html`<dialog
      class="noPrint"
      aria-label=${this.text.readings.title}
      @close=${this.#onDialogClosed}
      @readings-taken=${this.#onReadings}
    >
      <reed-readings
        .model=${this.#model}
        .unit=${unit}
        .kept=${this.#isUntouched() ? [] : Object.keys(values)}
        .text=${this.text}
      ></reed-readings>
      <button class="closeDialog" @click=${this.#closeDialog}>${this.text.bar.close}</button>
    </dialog>`;
  }

  /** Whether the values are the all-round reed's or a demo reed's: nobody has entered anything. */
  #isUntouched(): boolean {
    const { reed, values } = this.state.present.bench;
    const shipped =
      demoReeds.find((one) => one.reed === reed)?.readings ?? allRoundValues(this.#model);
    const ids = this.#model.features.map(({ id }) => id);
    return ids.every((id) => values[id] === undefined || values[id] === shipped[id]);
  }

  #place(view: BenchView) {
    const { bench } = this.state.present;
    const story = this.#isUnchanged()
      ? demoReeds.find((one) => one.reed === bench.reed)
      : undefined;
    return html`<section class="place" aria-label=${this.text.triangle.title}>
        <reed-triangle
          .blend=${view.placed?.raw}
          .ghost=${view.ghost}
          .ellipse=${view.drawnEllipse}
          .layers=${bench.layers}
          .greatestHeight=${this.narrow ? 300 : 640}
          .text=${this.text}
        ></reed-triangle>
      </section>
      <div class="under">
        <p class="stopped" ?hidden=${!view.placed}>${this.#stopped(view)}</p>
        <reed-sentence .sentence=${view.sentence}></reed-sentence>
        <reed-certainty
          .blend=${view.placed?.raw}
          .ellipse=${view.ellipse}
          .gaugeEllipse=${view.gaugeEllipse}
          .text=${this.text}
        ></reed-certainty>
        ${story ? html`<p class="story">${story.story}</p>` : nothing}
        <reed-shares .blend=${view.placed?.raw} .text=${this.text}></reed-shares>
        ${this.#follow()} ${this.#layers()}
        <details class="noPrint">
          <summary>${this.text.triangle.help}</summary>
          <p>${this.text.triangle.instructions}</p>
          <p>${this.text.triangle.convention}</p>
        </details>
        <p class="honest">${this.text.certainty.modelNote}</p>
      </div>`;
  }

  #stopped({ stoppedBy }: BenchView): string {
    if (stoppedBy.length === 0) return "";
    const { locked } = this.state.present.bench;
    const words = this.text.reached;
    const name = (id: string): string =>
      this.#model.features.find((one) => one.id === id)!.label.toLowerCase();
    const held = stoppedBy.filter((id) => locked.includes(id)).map(name);
    const limits = stoppedBy.filter((id) => !locked.includes(id)).map(name);
    const short =
      limits.length > 4 ? [...limits.slice(0, 3), words.more(limits.length - 3)] : limits;
    return words.stopped(short, held);
  }

  #follow() {
    const words = this.text.triangle;
    const { finished } = this.state.present.bench;
    const choice = (value: boolean, label: string) =>
      html`<label
        ><input
          type="radio"
          name="finished"
          .checked=${finished === value}
          @change=${() => this.#dispatch({ type: "finished-set", finished: value })}
        />${label}</label
      >`;
    return html`<fieldset class="follow">
      <legend>${words.follows}</legend>
      ${choice(false, words.newReed)} ${choice(true, words.finishedReed)}
      <span class="hint">${finished ? words.finishedReedHint : words.newReedHint}</span>
    </fieldset>`;
  }

  #layers() {
    const words = this.text.triangle;
    const names: readonly [Layer, string][] = [
      ["readingLines", words.readingLines],
      ["certainty", words.certainty],
    ];
    return html`<div class="layers">
      ${names.map(
        ([layer, label]) =>
          html`<label
            ><input
              type="checkbox"
              .checked=${this.state.present.bench.layers.includes(layer)}
              @change=${(event: Event) =>
                this.#dispatch({
                  type: "layer-set",
                  layer,
                  on: (event.target as HTMLInputElement).checked,
                })}
            />${label}</label
          >`,
      )}
    </div>`;
  }

  #recipe(view: BenchView) {
    const { bench, readings } = this.state.present;
    return html`<section class="card" tabindex="-1" aria-label=${this.text.recipe.title}>
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

  #skip(event: Event): void {
    event.preventDefault();
    this.renderRoot.querySelector<HTMLElement>(".card")?.focus();
  }

  async #openDialog(): Promise<void> {
    this.pasting = true;
    await this.updateComplete;
    const dialog = this.renderRoot.querySelector("dialog");
    if (!dialog?.open) dialog?.showModal();
    this.renderRoot.querySelector<ReedReadings>("reed-readings")?.focus();
  }

  #closeDialog(): void {
    this.renderRoot.querySelector("dialog")?.close();
  }

  #onDialogClosed(): void {
    this.pasting = false;
  }

  #onLock(event: LockPickedEvent): void {
    this.#dispatch({ type: "lock-set", feature: event.feature, locked: event.locked });
  }

  #onReadings({ readings, complete }: ReadingsTakenEvent): void {
    const { reed, values } = this.state.present.bench;
    const fresh = this.#isUntouched();
    const own =
      demoReeds.some((one) => one.reed === reed) || reed === "" ? this.text.bar.ownReed : reed;
    const count = Object.keys(readings).length;
    const kept = fresh ? 0 : Object.keys(values).filter((id) => !(id in readings)).length;
    this.#dispatch({ type: "readings-taken", reed: own, fresh, readings });
    if (!complete) return;
    this.#closeDialog();
    this.notice = this.text.readings.accepted(count, kept);
  }

  #onReed(event: Event): void {
    const reed = picked(event);
    const demo = demoReeds.find((one) => one.reed === reed);
    if (demo) {
      const readings = demo.wingsSingly ? { wings: demo.wingsSingly } : {};
      this.#dispatch({ type: "reed-loaded", reed, values: demo.readings, readings });
    } else if (reed === "empty") {
      this.#dispatch({ type: "reed-loaded", reed: this.text.bar.ownReed, values: {} });
    } else if (reed === "") {
      this.#dispatch({ type: "reset" });
    }
  }

  #onUnit(event: Event): void {
    this.#dispatch({ type: "unit-set", unit: picked(event) as LengthUnit });
  }

  #onTheme(event: Event): void {
    this.theme = picked(event) as Theme;
    setTheme(document.documentElement, this.theme);
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

  readonly #onWidth = (): void => {
    this.narrow = !this.#wide.matches;
  };

  readonly #onKey = (event: KeyboardEvent): void => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
    const key = event.key.toLowerCase();
    const typing = event.composedPath()[0];
    // In a text field the browser's own undo is what the user means.
    if (
      typing instanceof HTMLTextAreaElement ||
      (typing instanceof HTMLInputElement && typing.type === "text")
    )
      return;
    if (key === "z") this.#dispatch({ type: event.shiftKey ? "redo" : "undo" });
    else if (key === "y") this.#dispatch({ type: "redo" });
    else return;
    event.preventDefault();
  };
}

function picked(event: Event): string {
  return (event.target as HTMLSelectElement).value;
}

define("reedpoint-app", ReedpointApp);
