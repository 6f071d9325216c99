import { LitElement, html, nothing, type PropertyValues } from "lit";
import { cache } from "lit/directives/cache.js";
import type { PictureWords } from "../drawing/png-text.js";
import type { Blend } from "../engine/blend.js";
import type { FeatureId } from "../engine/model.js";
import type { PageName } from "../reed/bench.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import { AtRest } from "../widgets/at-rest.js";
import { define } from "../widgets/define.js";
import { look } from "../widgets/look.js";
import type { Handle } from "../widgets/triangle-drag.js";
import { BenchComparison } from "./bench-comparison.js";
import { BenchControls } from "./bench-controls.js";
import { BenchDrawing } from "./bench-drawing.js";
import { BenchPlace } from "./bench-place.js";
import { BenchRecipe } from "./bench-recipe.js";
import { BenchWords, type Shown } from "./bench-words.js";
import { drawnAdvice } from "./drawn-advice.js";
import { gridStyle } from "./grid-style.js";
import { LateParts, type Loaders } from "./late-parts.js";
import { latePlace, latePlaceStyle } from "./late-place.js";
import { planGridStyle } from "./plan-grid-style.js";
import { planner, type PlanView } from "./plan-view.js";
import type { Room } from "./page-width.js";

define("bench-drawing", BenchDrawing);
define("bench-place", BenchPlace);
define("bench-recipe", BenchRecipe);
define("bench-words", BenchWords);
define("bench-controls", BenchControls);
define("bench-comparison", BenchComparison);

/** The pages that come when they are opened. */
const latePages: Loaders = {
  measure: async () => define("measure-page", (await import("./measure-page.js")).MeasurePage),
  lip: async () => define("bench-lip", (await import("./bench-lip.js")).BenchLip),
  plan: () => import("./plan-parts.js"),
  lessons: async () => define("lessons-page", (await import("./lessons-page.js")).LessonsPage),
};

/** Where the parts of a page stand: in one column, in two, in three. */
export class BenchGrid extends LitElement {
  static override styles = [look, gridStyle, planGridStyle, latePlaceStyle];

  static override properties = {
    now: { attribute: false },
    drawn: { attribute: false },
    worded: { attribute: false },
    room: { attribute: false },
    way: { attribute: false },
    moves: { type: String },
    pointed: { type: String },
    text: { attribute: false },
  };

  /** What the point, the drawings and the words show: under a fast gesture each at its own pace. */
  declare now: Shown;
  declare drawn: Shown;
  declare worded: Shown;
  declare room: Room;
  /** Along which the point is seen going to its new place. */
  declare way: readonly Blend[];
  /** What clicks and keys move on the triangle. */
  declare moves: Handle;
  /** The feature at whose place the pointer or the keyboard is. */
  declare pointed: FeatureId | undefined;
  declare text: Catalogue;

  readonly #rest = new AtRest(this);
  readonly #late = new LateParts(this, latePages);
  readonly #planFor = planner();
  #lastPlan: PlanView | undefined;

  constructor() {
    super();
    this.text = english;
    this.way = [];
    this.moves = "point";
  }

  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has("now") && this.now.state.gesture !== undefined) this.#rest.moved(true);
  }

  override render() {
    const { page } = this.now.state.present.bench;
    const { narrow } = this.room;
    return html`<div class="page">
        <main tabindex="-1" class="${page}Page" @focusin=${this.#onFocus}>
          ${cache(this.#parts(page))}
        </main>
      </div>
      ${narrow && page !== "measure" && page !== "lessons" ? this.#recipe() : nothing}`;
  }

  #parts(page: PageName) {
    const arrival = this.#late.arrival(page);
    if (arrival !== "here") return latePlace(arrival, this.text);
    if (page === "measure") return this.#measure();
    if (page === "plan") return this.#planPage();
    if (page === "lessons") return this.#lessons();
    return page === "lip" ? this.#lip() : this.#bench();
  }

  #measure() {
    return html`<measure-page
      class="wide"
      .shown=${this.now}
      .narrow=${this.room.narrow}
      .text=${this.text}
    ></measure-page>`;
  }

  #lessons() {
    const { state } = this.now;
    return html`<lessons-page
      class="wide"
      .model=${state.model}
      .open=${state.present.bench.lesson}
      .progress=${state.progress}
      .file=${state.lessonFile}
      .presenting=${state.presenting}
      .unit=${state.present.bench.unit}
      .narrow=${this.room.narrow}
      .text=${this.text}
    ></lessons-page>`;
  }

  #bench() {
    const { text, drawn, worded } = this;
    const { narrow } = this.room;
    return html`${this.#place()}
      <bench-words class="says" .shown=${worded} .text=${text}></bench-words>
      ${this.#drawing()} ${narrow ? this.#side() : nothing}
      <bench-controls
        class="under"
        .drawn=${drawn}
        .worded=${worded}
        .moves=${this.moves}
        .picture=${this.#picture}
        .pictureWords=${this.#pictureWords}
        .text=${text}
      ></bench-controls>
      ${narrow ? nothing : this.#side()}`;
  }

  #planPage() {
    const { text, now } = this;
    const { narrow } = this.room;
    const plan = this.#plan();
    const seen = this.#rest.resting ? now : this.worded;
    return html`${this.#place(this.#rest.resting ? plan : undefined)}
      <bench-plan
        class="plan"
        .shown=${seen}
        .plan=${plan}
        .resting=${this.#rest.resting}
        .moves=${this.moves}
        .text=${text}
      ></bench-plan>
      ${narrow ? this.#trouble(seen) : nothing}
      <bench-gains class="gains" .shown=${seen} .plan=${plan} .text=${text}></bench-gains>
      ${narrow ? nothing : html`<div class="side">${this.#recipe()} ${this.#trouble(seen)}</div>`}`;
  }

  #trouble(shown: Shown) {
    const { target, looked } = this.#lastPlan ?? {};
    const isWay = target !== undefined && looked !== undefined && looked.plan.steps.length > 0;
    return html`<bench-trouble
      class="trouble"
      .shown=${shown}
      .toward=${isWay ? this.text.advice.plan.target(target.id, target.label) : ""}
      .text=${this.text}
      @plan-asked=${() => this.focusOn("bench-plan")}
    ></bench-trouble>`;
  }

  /**
   * Plans are worked out where they are shown, and only when the point rests; until then the last one keeps its room,
   * so that nothing on the page jumps under a finger.
   */
  #plan(): PlanView | undefined {
    if (this.#rest.resting) this.#lastPlan = this.#planFor(this.now.state, this.text);
    return this.#lastPlan;
  }

  #lip() {
    return html`<bench-lip class="wide" .state=${this.drawn.state} .text=${this.text}></bench-lip>
      ${this.room.narrow ? nothing : html`<div class="side">${this.#recipe()}</div>`}`;
  }

  #place(plan?: PlanView) {
    const { state, view } = this.now;
    return html`<bench-place
      class="place ${this.room.sticks ? "sticks" : ""}"
      .narrow=${this.room.narrow}
      .bench=${state.present.bench}
      .view=${view}
      .advice=${drawnAdvice(state, plan, this.text)}
      .way=${this.way}
      .moves=${this.moves}
      .greatestHeight=${this.room.triangleHeight}
      .text=${this.text}
    ></bench-place>`;
  }

  /** Recipe and comparison; in one column the recipe is a sheet, and a comparison stands by the drawings. */
  #side() {
    const { worded } = this;
    const { narrow } = this.room;
    if (narrow && !worded.view.comparison) return nothing;
    return html`<div class="side">
      ${narrow ? nothing : this.#recipe()}
      ${
        worded.view.comparison
          ? html`<bench-comparison .shown=${worded} .text=${this.text}></bench-comparison>`
          : nothing
      }
    </div>`;
  }

  #drawing() {
    const { state } = this.drawn;
    return html`<section class="card drawing" aria-label=${this.text.drawing.title}>
      <bench-drawing
        .model=${this.now.state.model}
        .bench=${state.present.bench}
        .lying=${this.room.narrow}
        .pointed=${this.pointed}
        .text=${this.text}
      ></bench-drawing>
    </section>`;
  }

  /** Values at the pace of the drawings; what they pull, in compasses and words, at that of the words. */
  #recipe() {
    const { state } = this.drawn;
    return html`<bench-recipe
      class="recipe"
      .model=${this.now.state.model}
      .state=${state}
      .view=${this.worded.view}
      .pointed=${this.pointed}
      .sheet=${this.room.narrow}
      .text=${this.text}
      @sheet-opened=${this.#onSheet}
    ></bench-recipe>`;
  }

  readonly #picture = (): SVGSVGElement => this.#placePart.picture;
  readonly #pictureWords = (): PictureWords => this.#placePart.pictureWords;

  get #placePart(): BenchPlace {
    return this.renderRoot.querySelector<BenchPlace>("bench-place")!;
  }

  get #recipePart(): BenchRecipe | null {
    return this.renderRoot.querySelector<BenchRecipe>("bench-recipe");
  }

  /** With the sheet up only the triangle is in sight: what else has the focus needs the room. */
  #onFocus(event: Event): void {
    const inSight = event.composedPath().includes(this.#placePart);
    if (this.room.narrow && !inSight) this.#recipePart?.close();
  }

  /** The triangle comes to the top of the window, above the open sheet. */
  #onSheet(): void {
    const top = this.renderRoot.querySelector(".place")?.getBoundingClientRect().top ?? 0;
    if (top > 0) window.scrollBy(0, top);
  }

  /** On the page itself, when what had the focus is gone. */
  override focus(): void {
    this.renderRoot.querySelector<HTMLElement>("main")?.focus();
  }

  /** The button that was pressed is gone: the focus goes to the part where its work is undone. */
  async focusOn(part: string): Promise<void> {
    await this.updateComplete;
    const element = this.renderRoot.querySelector<LitElement>(part);
    await element?.updateComplete;
    element?.focus();
  }

  /** Brings the recipe into sight, with the focus in it. */
  showRecipe(): void {
    void this.#recipePart?.show();
  }
}
