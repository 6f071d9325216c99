import type { LitElement, ReactiveController } from "lit";

/** A drawing that is laid out for the width it gets and for the page's text size, with a mark one rem wide in it. */
type Drawing = LitElement & { layoutWidth: number; em: number };

/** Tells a drawing how wide it is and how large the page's text is, whenever that changes. */
export class OwnSize implements ReactiveController {
  readonly #host: Drawing;
  #watcher: ResizeObserver | undefined;
  #mark: Element | undefined;

  constructor(host: Drawing) {
    this.#host = host;
  }

  hostConnected(): void {
    if (typeof ResizeObserver === "undefined") return;
    // In the element's own px: where a page is enlarged, so is what a box on the screen measures.
    this.#watcher = new ResizeObserver((entries) => {
      for (const { target, contentRect } of entries)
        if (target === this.#mark) this.#host.em = contentRect.width;
        else if (contentRect.width > 0) this.#host.layoutWidth = Math.round(contentRect.width);
    });
    this.#watcher.observe(this.#host);
    if (this.#mark) this.#watcher.observe(this.#mark);
  }

  /** The size of the text can change while the element keeps its width: so the mark is watched too. */
  hostUpdated(): void {
    if (this.#mark) return;
    this.#mark = this.#host.renderRoot.querySelector(".rem") ?? undefined;
    if (this.#mark) this.#watcher?.observe(this.#mark);
  }

  hostDisconnected(): void {
    this.#watcher?.disconnect();
  }
}
