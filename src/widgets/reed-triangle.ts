import { LitElement, html, nothing, svg, type SVGTemplateResult } from "lit";
import type { Blend } from "../engine/blend.js";
import type { CertaintyEllipse } from "../engine/certainty.js";
import { blendToPoint, pointToBlend, type Point } from "../engine/frame.js";
import type { ChainLink } from "../engine/pull-chain.js";
import { nearestBlend } from "../engine/nearest-blend.js";
import {
  gridLines,
  polygonPath,
  round,
  triangleLayout,
  type TriangleLayout,
} from "../drawing/triangle-layout.js";
import type { Layer } from "../reed/bench.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import { BlendPickedEvent, GestureEndedEvent } from "./events.js";
import { look } from "./look.js";
import { keyMove } from "./triangle-keys.js";
import {
  certaintyLayer,
  chainLayer,
  reachLayer,
  readingLayer,
  targetLayer,
  type DrawnReach,
  type DrawnTarget,
} from "./triangle-layers.js";
import { triangleStyle } from "./triangle-style.js";
import { ghostMark, pointMark } from "./triangle-point.js";
import { triangleTint } from "./triangle-tint.js";

const order = ["high", "low", "loud"] as const;

/**
 * The triangle with the reed's point: click, drag or keys ask for another blend.
 *
 * @fires blend-picked - the blend that was asked for, inside the closed triangle
 * @fires gesture-ended - when a drag or a row of key presses is over
 */
export class ReedTriangle extends LitElement {
  static override styles = [look, triangleStyle];

  static override properties = {
    blend: { attribute: false },
    ghost: { attribute: false },
    ellipse: { attribute: false },
    layers: { attribute: false },
    chain: { attribute: false },
    reach: { attribute: false },
    target: { attribute: false },
    still: { type: Boolean },
    text: { attribute: false },
    greatestHeight: { type: Number, attribute: "greatest-height" },
    layoutWidth: { state: true },
    em: { state: true },
    grip: { state: true },
  };

  /** The raw blend of the reed; undefined while the readings cannot place it. */
  declare blend: Blend | undefined;
  /** Where it was before. */
  declare ghost: Blend | undefined;
  declare ellipse: CertaintyEllipse | undefined;
  declare layers: readonly Layer[];
  /** Pulls head to tail; empty: not drawn. */
  declare chain: readonly ChainLink[];
  declare reach: DrawnReach | undefined;
  declare target: DrawnTarget | undefined;
  /** A picture only: nothing can be moved. */
  declare still: boolean;
  declare text: Catalogue;
  /** Keeps the drawing from growing taller than this, px at the usual text size of 16 px. */
  declare greatestHeight: number;
  declare layoutWidth: number;
  /** The page's text size, px. */
  declare em: number;
  /** While dragging: from the pointer to the point, px. */
  declare grip: Point | undefined;

  /** Where the keys stand: the owner may round the recipe, but ten fine steps must still be ten. */
  #keyBlend: Blend | undefined;
  #gesture = 0;
  #moved = false;
  #watcher: ResizeObserver | undefined;

  constructor() {
    super();
    this.layers = [];
    this.chain = [];
    this.still = false;
    this.text = english;
    this.greatestHeight = 640;
    this.layoutWidth = 480;
    this.em = 16;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    if (typeof ResizeObserver === "undefined") return;
    this.#watcher = new ResizeObserver(() => this.#measure());
    this.#watcher.observe(this);
  }

  /** The size of the text can change while the element keeps its width: so a mark one rem wide is watched too. */
  override firstUpdated(): void {
    this.#watcher?.observe(this.renderRoot.querySelector(".rem")!);
  }

  #measure(): void {
    const width = Math.round(this.getBoundingClientRect().width);
    const rem = this.renderRoot.querySelector(".rem")?.getBoundingClientRect().width ?? 0;
    if (rem > 0) this.em = rem;
    if (width > 0) this.layoutWidth = width;
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#watcher?.disconnect();
  }

  override render() {
    const layout = this.#layout();
    return html`
      <div
        class="plane"
        part="plane"
        tabindex=${this.still ? nothing : 0}
        role="group"
        aria-label=${this.text.triangle.point}
        aria-describedby="help"
        @keydown=${this.#onKey}
        @blur=${this.#endKeys}
      >
        ${this.#drawing(layout)}
      </div>
      <span class="rem"></span>
      <p id="help" class="unseen">${this.text.triangle.instructions}</p>
    `;
  }

  #drawing(layout: TriangleLayout) {
    const { width, height, frame } = layout;
    const corners = polygonPath(frame);
    return html`<svg
      width=${round(width)}
      height=${round(height)}
      viewBox="0 0 ${round(width)} ${round(height)}"
      role="img"
      aria-label=${this.#description()}
      @touchstart=${this.#onTouch}
      @pointerdown=${this.#onDown}
      @pointermove=${this.#onMove}
      @pointerup=${this.#onUp}
      @pointercancel=${this.#onUp}
      @click=${this.#onClick}
    >
      <defs>
        ${order.map((id, k) => triangleTint(id, k, frame))}
        <clipPath id="inside"><path d=${corners}></path></clipPath>
      </defs>
      <path class="paper" d=${corners}></path>
      ${order.map((id) => svg`<path class="tint" d=${corners} fill="url(#tint-${id})"></path>`)}
      ${gridLines(frame).map(
        ({ from, to }) =>
          svg`<line class="grid" x1=${round(from[0])} y1=${round(from[1])} x2=${round(to[0])} y2=${round(to[1])}></line>`,
      )}
      <path class="side" d=${corners}></path>
      ${this.#centre(layout)} ${this.#labels(layout)} ${reachLayer(this.reach, frame)}
      ${certaintyLayer(this.layers.includes("certainty") ? this.ellipse : undefined, this.blend, layout)}
      ${targetLayer(this.target, this.blend, layout, this.em)} ${chainLayer(this.chain, frame)}
      ${readingLayer(this.layers.includes("readingLines") ? this.blend : undefined, frame, this.em, this.text)}
      ${ghostMark(this.ghost, this.blend, frame)} ${pointMark(this.blend, frame, this.text)}
    </svg>`;
  }

  #description(): string {
    const { blend, text } = this;
    if (!blend) return `${text.triangle.title}. ${text.triangle.noPoint}`;
    const near = nearestBlend(blend);
    const shares = order.map((id, k) => `${text.percent(near[k]!)} ${text.purposes[id]}`);
    return `${text.triangle.title}. ${text.triangle.point}: ${shares.join(", ")}.`;
  }

  #labels({ labels, lineHeight }: TriangleLayout): SVGTemplateResult[] {
    return order.map((id, k) => {
      const { x, y, anchor } = labels[k]!;
      const share = this.blend ? this.text.percent(nearestBlend(this.blend)[k]!) : "";
      return svg`<text class="corner ${id}" x=${round(x)} y=${round(y)} text-anchor=${anchor}>${this.text.corners[id]}</text>
        <text class="share" x=${round(x)} y=${round(y + lineHeight * 0.95)} text-anchor=${anchor}>${share}</text>`;
    });
  }

  #centre({ frame }: TriangleLayout): SVGTemplateResult {
    const [x, y] = blendToPoint([1 / 3, 1 / 3, 1 / 3], frame);
    const far =
      !this.target &&
      this.chain.length === 0 &&
      this.blend &&
      Math.hypot(...this.blend.map((share) => share - 1 / 3)) > 0.16;
    return svg`<circle class="centre" cx=${round(x)} cy=${round(y)} r="5"></circle>
      ${far ? svg`<text class="note" x=${round(x)} y=${round(y + 20)} text-anchor="middle">${this.text.triangle.centre}</text>` : nothing}`;
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

  #pointerPlace(event: PointerEvent | MouseEvent): Point {
    const box = (event.currentTarget as Element).getBoundingClientRect();
    return [event.clientX - box.left, event.clientY - box.top];
  }

  /** Browsers scroll in spite of touch-action inside SVG; a finger on the point has to say that it does not. */
  #onTouch(event: TouchEvent): void {
    const finger = event.touches.length === 1 ? event.touches[0]! : undefined;
    if (this.still || !this.blend || !finger) return;
    const box = (event.currentTarget as Element).getBoundingClientRect();
    if (this.#isOnPoint([finger.clientX - box.left, finger.clientY - box.top]))
      event.preventDefault();
  }

  #isOnPoint([x, y]: Point): boolean {
    const point = blendToPoint(nearestBlend(this.blend!), this.#layout().frame);
    return Math.hypot(x - point[0], y - point[1]) <= 22;
  }

  #onDown(event: PointerEvent): void {
    if (this.still || !this.blend || event.button !== 0) return;
    const [x, y] = this.#pointerPlace(event);
    const { frame } = this.#layout();
    const point = blendToPoint(nearestBlend(this.blend), frame);
    const onHandle = this.#isOnPoint([x, y]);
    // A finger on the triangle may be scrolling the page: it drags only from the point, and a tap places it.
    if (!onHandle && (event.pointerType === "touch" || !inside(pointToBlend([x, y], frame))))
      return;
    this.grip = onHandle ? [point[0] - x, point[1] - y] : [0, 0];
    this.#gesture += 1;
    this.#keyBlend = undefined;
    (event.currentTarget as Element).setPointerCapture(event.pointerId);
    if (!onHandle) this.#ask([x, y]);
  }

  #onMove(event: PointerEvent): void {
    if (!this.grip) return;
    const [x, y] = this.#pointerPlace(event);
    this.#moved = true;
    this.#ask([x + this.grip[0], y + this.grip[1]]);
  }

  #onUp(event: PointerEvent): void {
    if (!this.grip) return;
    // A fast finger is lifted before its last move was told.
    if (this.#moved && event.type === "pointerup") this.#onMove(event);
    this.#moved = false;
    this.grip = undefined;
    this.dispatchEvent(new GestureEndedEvent());
  }

  #onClick(event: MouseEvent): void {
    const touched = (event as PointerEvent).pointerType === "touch";
    if (this.still || !this.blend || !touched) return;
    const place = this.#pointerPlace(event);
    if (!inside(pointToBlend(place, this.#layout().frame))) return;
    this.#gesture += 1;
    this.#ask(place);
    this.dispatchEvent(new GestureEndedEvent());
  }

  #ask(point: Point): void {
    const blend = nearestBlend(pointToBlend(point, this.#layout().frame));
    this.dispatchEvent(new BlendPickedEvent(blend, `point-${this.#gesture}`));
  }

  #onKey(event: KeyboardEvent): void {
    if (this.still || !this.blend || event.ctrlKey || event.metaKey || event.altKey) return;
    const move = keyMove(event);
    if (!move) return;
    event.preventDefault();
    const near =
      this.#keyBlend &&
      Math.hypot(...this.#keyBlend.map((share, k) => share - this.blend![k]!)) < 0.03;
    const from = near ? this.#keyBlend! : nearestBlend(this.blend);
    const next = nearestBlend(
      move === "centre"
        ? [1 / 3, 1 / 3, 1 / 3]
        : [from[0] + move[0], from[1] + move[1], from[2] + move[2]],
    );
    if (!this.#keyBlend) this.#gesture += 1;
    this.#keyBlend = next;
    this.dispatchEvent(new BlendPickedEvent(next, `keys-${this.#gesture}`));
  }

  #endKeys(): void {
    if (!this.#keyBlend) return;
    this.#keyBlend = undefined;
    this.dispatchEvent(new GestureEndedEvent());
  }
}

function inside(blend: Blend): boolean {
  return blend.every((share) => share >= -0.01);
}
