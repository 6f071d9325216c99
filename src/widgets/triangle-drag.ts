import type { Point } from "../engine/frame.js";

/** What can be dragged on the triangle. */
export type Handle = "point" | "aim";

/** What the drag needs to know of the triangle, and whom it tells. */
export interface DragHost {
  /** The handles and where they are, px; first the one that wins where they overlap. None: nothing can be moved. */
  handles(): readonly (readonly [Handle, Point])[];
  inside(place: Point): boolean;
  ask(handle: Handle, place: Point): void;
  ended(): void;
}

/** How near the pointer must be to a handle, px: a finger's width across. */
const graspRadius = 22;

/**
 * Pointer to place: a press on a handle drags it; elsewhere inside the triangle it brings the first handle there.
 * Only the gesture in progress is kept.
 */
export class TriangleDrag {
  readonly #host: DragHost;
  /** While dragging: what, and from the pointer to it, px. */
  #grip: { readonly pointer: number; readonly handle: Handle; readonly offset: Point } | undefined;
  #moved = false;

  constructor(host: DragHost) {
    this.#host = host;
  }

  get isDragging(): boolean {
    return this.#grip !== undefined;
  }

  /** Browsers scroll in spite of touch-action inside SVG; a finger on a handle has to say that it does not. */
  readonly onTouch = (event: TouchEvent): void => {
    const finger = event.touches.length === 1 ? event.touches[0]! : undefined;
    if (finger && this.#handleAt(placeOf(event, finger))) event.preventDefault();
  };

  readonly onDown = (event: PointerEvent): void => {
    const first = this.#host.handles()[0];
    // A second finger leaves the drag of the first alone.
    if (!first || event.button !== 0 || this.#grip) return;
    const [x, y] = placeOf(event, event);
    const held = this.#handleAt([x, y]);
    // A finger on the triangle may be scrolling the page: it drags only from a handle, and a tap places it.
    if (!held && (event.pointerType === "touch" || !this.#host.inside([x, y]))) return;
    const pointer = event.pointerId;
    this.#grip = held
      ? { pointer, handle: held[0], offset: [held[1][0] - x, held[1][1] - y] }
      : { pointer, handle: first[0], offset: [0, 0] };
    (event.currentTarget as Element).setPointerCapture(event.pointerId);
    if (!held) this.#host.ask(first[0], [x, y]);
  };

  readonly onMove = (event: PointerEvent): void => {
    if (this.#grip?.pointer !== event.pointerId) return;
    const { handle, offset } = this.#grip;
    const [x, y] = placeOf(event, event);
    this.#moved = true;
    this.#host.ask(handle, [x + offset[0], y + offset[1]]);
  };

  readonly onUp = (event: PointerEvent): void => {
    if (this.#grip?.pointer !== event.pointerId) return;
    // A fast finger is lifted before its last move was told.
    if (this.#moved && event.type === "pointerup") this.onMove(event);
    this.#moved = false;
    this.#grip = undefined;
    this.#host.ended();
  };

  readonly onClick = (event: MouseEvent): void => {
    const first = this.#host.handles()[0];
    if (!first || (event as PointerEvent).pointerType !== "touch") return;
    const place = placeOf(event, event);
    if (!this.#host.inside(place)) return;
    this.#host.ask(first[0], place);
    this.#host.ended();
  };

  #handleAt([x, y]: Point): readonly [Handle, Point] | undefined {
    return this.#host.handles().find(([, [hx, hy]]) => Math.hypot(x - hx, y - hy) <= graspRadius);
  }
}

function placeOf(event: Event, { clientX, clientY }: { clientX: number; clientY: number }): Point {
  const box = (event.currentTarget as Element).getBoundingClientRect();
  return [clientX - box.left, clientY - box.top];
}
