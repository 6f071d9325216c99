import type { ReactiveController, ReactiveControllerHost } from "lit";
import { alongWay } from "../drawing/along-way.js";
import type { Blend } from "../engine/blend.js";

/** How long the point is on its way, ms. */
const travelTime = 280;

/** Lets a point be seen on its way along pulls; under reduced motion it is there at once. */
export class Travel implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  #frame = 0;
  /** Where the point is seen now; undefined: where it is. */
  at: Blend | undefined;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  /** Sets out along places in order; a way of one place is none. */
  start(way: readonly Blend[]): void {
    this.stop();
    if (way.length < 2 || isMotionReduced()) return;
    const begin = performance.now();
    this.at = way[0];
    const go = (now: number): void => {
      const share = (now - begin) / travelTime;
      this.at = share < 1 ? alongWay(way, eased(share)) : undefined;
      this.#host.requestUpdate();
      if (share < 1) this.#frame = requestAnimationFrame(go);
    };
    this.#frame = requestAnimationFrame(go);
  }

  stop(): void {
    cancelAnimationFrame(this.#frame);
    this.at = undefined;
  }

  hostDisconnected(): void {
    this.stop();
  }
}

/** Slow at both ends: 3t² − 2t³. */
function eased(share: number): number {
  const t = Math.max(0, share);
  return t * t * (3 - 2 * t);
}

function isMotionReduced(): boolean {
  const asks = typeof matchMedia === "function" ? matchMedia : undefined;
  return !asks || asks("(prefers-reduced-motion: reduce)").matches;
}
