import { LitElement, adoptStyles, html, noChange, nothing, type PropertyValues } from "lit";
import { guard } from "lit/directives/guard.js";
import { blendDistance, type Blend } from "../engine/blend.js";
import type { CertaintyEllipse } from "../engine/certainty.js";
import { blendToPoint, pointToBlend, type Frame, type Point } from "../engine/frame.js";
import type { ChainLink } from "../engine/pull-chain.js";
import { nearestBlend } from "../engine/nearest-blend.js";
import type { StepNumber } from "../drawing/step-numbers.js";
import { isInside } from "../drawing/is-inside.js";
import { round, triangleLayout, type TriangleLayout } from "../drawing/triangle-layout.js";
import type { Layer } from "../reed/bench.js";
import { triangleWords, type TriangleWords } from "../reed/triangle-words.js";
import { AimPickedEvent, BlendPickedEvent, GestureEndedEvent } from "./events.js";
import { look } from "./look.js";
import { OwnSize } from "./own-size.js";
import { Travel } from "./travel.js";
import { TriangleDrag, type DragHost, type Handle } from "./triangle-drag.js";
import { describeTriangle } from "./triangle-words.js";
import { centreMark, cornerLabels } from "./triangle-labels.js";
import { chainBoxes, isCentreFree, nameTexts, type Standing } from "./triangle-names.js";
import { keyMove, movedBy } from "./triangle-keys.js";
import {
  aimHandle,
  certaintyLayer,
  chainLayer,
  reachLayer,
  readingLayer,
  targetLayer,
  type DrawnReach,
  type DrawnTarget,
} from "./triangle-layers.js";
import type { DrawnAdvice } from "./triangle-advice.js";
import { triangleStyle } from "./triangle-style.js";
import { ghostMark, pinnedMark, pointMark, type DrawnReed } from "./triangle-point.js";
import { groundLayer } from "./triangle-ground.js";

const order = ["high", "low", "loud"] as const;

/**
 * The triangle with the reed's point: click, drag or keys ask for another blend.
 *
 * @fires blend-picked - the blend that was asked for, inside the closed triangle
 * @fires aim-picked - another place for one's own target, inside the closed triangle
 * @fires gesture-ended - when a drag or a row of key presses is over
 */
export class ReedTriangle extends LitElement {
  static override styles = [look, triangleStyle];

  static override properties = {
    blend: { attribute: false },
    ghost: { attribute: false },
    base: { attribute: false },
    ellipse: { attribute: false },
    layers: { attribute: false },
    chain: { attribute: false },
    reach: { attribute: false },
    target: { attribute: false },
    pinned: { attribute: false },
    advice: { attribute: false },
    way: { attribute: false },
    moves: { type: String },
    still: { type: Boolean },
    unread: {},
    text: { attribute: false },
    greatestHeight: { type: Number, attribute: "greatest-height" },
    layoutWidth: { state: true },
    em: { state: true },
  };

  /** The raw blend of the reed; undefined while the readings cannot place it. */
  declare blend: Blend | undefined;
  /** Where it was before. */
  declare ghost: Blend | undefined;
  /** What the reed has, while the point shows what is tried: marked, and the ellipse lies round it. */
  declare base: Blend | undefined;
  declare ellipse: CertaintyEllipse | undefined;
  declare layers: readonly Layer[];
  /** Pulls head to tail; empty: not drawn. */
  declare chain: readonly ChainLink[];
  declare reach: DrawnReach | undefined;
  declare target: DrawnTarget | undefined;
  /** Another reed to compare with. */
  declare pinned: DrawnReed | undefined;
  declare advice: DrawnAdvice | undefined;
  /** Along which the point is seen going to a new blend; fewer than two places: it jumps. */
  declare way: readonly Blend[];
  /** What clicks and keys move; "aim" only where the target is one's own. */
  declare moves: Handle;
  /** A picture only: nothing can be moved. */
  declare still: boolean;
  /** Without the shares, because they are what is to be read. */
  declare unread: boolean | undefined;
  declare text: TriangleWords;
  /** Keeps the drawing from growing taller than this, px at the usual text size of 16 px. */
  declare greatestHeight: number;
  declare layoutWidth: number;
  /** The page's text size, px. */
  declare em: number;
  /** Where the keys stand: the owner may round the recipe, but ten fine steps must still be ten. */
  #keyBlend: Blend | undefined;
  #gesture = 0;
  #gestureOpen = false;
  #isDressed = false;
  readonly #travel = new Travel(this);
  readonly #drag = new TriangleDrag(this.#dragHost());

  constructor() {
    super();
    this.layers = [];
    this.chain = [];
    this.way = [];
    this.moves = "point";
    this.still = false;
    this.text = triangleWords;
    this.greatestHeight = 640;
    this.layoutWidth = 480;
    this.em = 16;
    this.addController(new OwnSize(this));
  }

  override willUpdate(changed: PropertyValues<this>): void {
    if (this.advice && !this.#isDressed) this.#dress(this.advice);
    if (changed.has("way")) this.#travel.start(this.#drag.isDragging ? [] : this.way);
  }

  /** Advice brings its style with it, once. */
  #dress({ by }: DrawnAdvice): void {
    this.#isDressed = true;
    adoptStyles(this.renderRoot as ShadowRoot, [...ReedTriangle.elementStyles, by.style]);
  }

  override render() {
    const layout = this.#layout();
    return html`
      <div
        class="plane"
        part="plane"
        tabindex=${this.still ? nothing : 0}
        role="group"
        aria-label=${this.moves === "aim" ? this.text.target.ownShares : this.text.triangle.point}
        aria-describedby=${this.still ? nothing : "help"}
        @keydown=${this.#onKey}
        @blur=${this.#endKeys}
      >
        ${this.#drawing(layout)}
      </div>
      <span class="rem"></span>
      ${this.still ? nothing : html`<p id="help" class="unseen">${this.#help()}</p>`}
    `;
  }

  #drawing(layout: TriangleLayout) {
    const { width, height, frame } = layout;
    const seen = this.#travel.at ?? this.blend;
    const numbers = this.advice?.by.numbers(this.advice, this.#standing(), layout, this.em) ?? [];
    return html`<svg
      width=${round(width)}
      height=${round(height)}
      viewBox="0 0 ${round(width)} ${round(height)}"
      role="img"
      class=${this.advice?.contours ? "judged" : nothing}
      aria-label=${this.#drag.isDragging ? noChange : this.description}
      @touchstart=${this.#drag.onTouch}
      @pointerdown=${this.#drag.onDown}
      @pointermove=${this.#drag.onMove}
      @pointerup=${this.#drag.onUp}
      @pointercancel=${this.#drag.onUp}
      @click=${this.#drag.onClick}
    >
      ${guard([frame.flat().join(" ")], () => groundLayer(frame))}
      ${this.advice?.by.under(this.advice, frame, this.em)} ${centreMark(frame)}
      ${cornerLabels(layout, this.unread ? undefined : this.blend, this.em, this.text)}
      ${reachLayer(this.reach, frame)}
      ${certaintyLayer(this.layers.includes("certainty") ? this.ellipse : undefined, this.base ?? seen, layout)}
      ${targetLayer(this.target, layout)} ${pinnedMark(this.pinned, frame)}
      ${chainLayer(this.chain, frame)}
      ${readingLayer(this.layers.includes("readingLines") ? seen : undefined, frame, this.em, this.text)}
      ${this.#names(layout, numbers)}
      ${ghostMark(this.base ?? this.ghost, seen, frame, this.base !== undefined)}
      ${this.#handleMarks(seen, frame)}
      ${this.advice?.by.over(this.advice, numbers, layout, this.em)}
    </svg>`;
  }

  /** What can be moved; what clicks and keys move lies on top. */
  #handleMarks(seen: Blend | undefined, frame: Frame) {
    const aim = aimHandle(this.still ? undefined : this.target, frame);
    const point = pointMark(seen, frame);
    return this.moves === "aim" ? [point, aim] : [aim, point];
  }

  /** The drawing itself, to be saved. */
  get picture(): SVGSVGElement {
    return this.renderRoot.querySelector("svg")!;
  }

  /** What it shows, in words. */
  get description(): string {
    if (this.unread) return this.text.triangle.point;
    return describeTriangle(this, this.text);
  }

  /** The same for a file, which has no tables to look things up in. */
  get fileDescription(): string {
    const { blend, target, pinned } = this;
    const alone = { layers: [], ellipse: undefined, chain: [], reach: undefined };
    return describeTriangle({ blend, target, pinned, ...alone }, this.text);
  }

  #help(): string {
    const words = this.text.triangle;
    if (this.moves === "aim") return words.aimInstructions;
    return this.blend ? words.instructions : words.nothingToMove;
  }

  /** What stands already and nothing may cover. */
  #standing(): Standing {
    return {
      point: this.blend,
      corners: order.map((id) => this.text.corners[id]),
      ticks: this.layers.includes("readingLines"),
    };
  }

  #names(layout: TriangleLayout, numbers: readonly StepNumber[]) {
    return nameTexts(
      {
        centre: isCentreFree(this) ? this.text.triangle.centre : undefined,
        target: this.target,
        pinned: this.pinned,
        base: this.base,
        ...this.#standing(),
        outside: this.text.triangle.outside,
        also: [
          ...(this.still ? chainBoxes(this.chain, layout.frame) : []),
          ...(this.advice?.by.boxes(this.advice, numbers, layout.frame, this.em) ?? []),
        ],
      },
      layout,
      this.em,
    );
  }

  #layout(): TriangleLayout {
    const { text, greatestHeight } = this;
    const [high, low, loud] = order.map((id) => text.corners[id].length);
    return triangleLayout(Math.max(240, this.layoutWidth), {
      greatestHeight: (greatestHeight * this.em) / 16,
      ticks: this.layers.includes("readingLines"),
      em: this.em,
      names: [high!, low!, loud!],
    });
  }

  #dragHost(): DragHost {
    return {
      handles: () => this.#handles(),
      inside: (place) => isInside(place, this.#layout().frame),
      ask: (handle, place) => {
        if (this.#keyBlend) this.#end(); // keys and pointer are two gestures
        if (!this.#gestureOpen) this.#begin();
        this.#ask(handle, nearestBlend(pointToBlend(place, this.#layout().frame)));
      },
      ended: () => this.#end(),
    };
  }

  /** What can be moved now and where it is drawn; the one that clicks and keys move wins where they overlap. */
  #handles(): (readonly [Handle, Point])[] {
    if (this.still) return [];
    const { frame } = this.#layout();
    const at = (blend: Blend): Point => blendToPoint(nearestBlend(blend), frame);
    const all: (readonly [Handle, Point])[] = [];
    if (this.blend) all.push(["point", at(this.blend)]);
    if (this.target?.own) all.push(["aim", at(this.target.blend)]);
    return this.moves === "aim" ? all.toReversed() : all;
  }

  #begin(): void {
    this.#gesture += 1;
    this.#gestureOpen = true;
  }

  #end(): void {
    this.requestUpdate(); // what it shows was not said while it was dragged
    this.#gestureOpen = false;
    this.#keyBlend = undefined;
    this.dispatchEvent(new GestureEndedEvent());
  }

  #ask(handle: Handle, blend: Blend): void {
    const gesture = `${this.#keyBlend ? "keys-" : ""}${handle}-${this.#gesture}`;
    const event = handle === "point" ? BlendPickedEvent : AimPickedEvent;
    this.dispatchEvent(new event(blend, gesture));
  }

  #onKey(event: KeyboardEvent): void {
    const handle = this.#handles()[0]?.[0];
    if (event.ctrlKey || event.metaKey) this.#endKeys(); // undo may come: the keys then stand elsewhere
    const move = event.ctrlKey || event.metaKey || event.altKey ? undefined : keyMove(event);
    if (!handle || !move) return;
    event.preventDefault();
    const now = handle === "point" ? this.blend! : this.target!.blend;
    const near = this.#keyBlend && blendDistance(this.#keyBlend, now) < 0.03;
    const from = near ? this.#keyBlend! : nearestBlend(now);
    if (!this.#keyBlend) this.#begin();
    this.#keyBlend = movedBy(from, move);
    this.#ask(handle, this.#keyBlend);
  }

  #endKeys(): void {
    if (this.#keyBlend) this.#end();
  }
}
