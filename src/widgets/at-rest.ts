import type { ReactiveController, ReactiveControllerHost } from "lit";

/** What has not changed for so long is at rest, ms. */
const restTime = 150;

/** Tells an element whether its values change many times a second or are at rest, and draws it again when they come to rest. */
export class AtRest implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  #movedAt = -Infinity;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #resting = true;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  /** The values have changed; a single change is no gesture yet, unless it is known to be of one. */
  moved(inGesture = false): void {
    const now = performance.now();
    if (inGesture || now - this.#movedAt < restTime) this.#resting = false;
    this.#movedAt = now;
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.#settle(), restTime);
  }

  get resting(): boolean {
    return this.#resting;
  }

  hostDisconnected(): void {
    clearTimeout(this.#timer);
    this.#resting = true;
  }

  #settle(): void {
    if (this.#resting) return;
    this.#resting = true;
    this.#host.requestUpdate();
  }
}
