import type { ReactiveController, ReactiveControllerHost } from "lit";

/** A drawing that is laid out for the width it gets. */
type Drawing = ReactiveControllerHost & HTMLElement & { layoutWidth: number };

/** Tells a drawing how wide it is, whenever that changes. */
export class OwnWidth implements ReactiveController {
  readonly #host: Drawing;
  #watcher: ResizeObserver | undefined;

  constructor(host: Drawing) {
    this.#host = host;
  }

  hostConnected(): void {
    if (typeof ResizeObserver === "undefined") return;
    this.#watcher = new ResizeObserver(([entry]) => {
      const width = Math.round(entry!.contentRect.width);
      if (width > 0) this.#host.layoutWidth = width;
    });
    this.#watcher.observe(this.#host);
  }

  hostDisconnected(): void {
    this.#watcher?.disconnect();
  }
}

/** px of the page's text size: what is written in a drawing grows with it. */
export function pageEm(): number {
  return Number.parseFloat(getComputedStyle(document.documentElement).fontSize) || 16;
}
