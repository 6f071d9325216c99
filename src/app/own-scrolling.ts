import type { ReactiveController } from "lit";

const asked = ["wheel", "touchmove", "pointerdown", "keydown"] as const;
const passive = { passive: true } as const;

/** How long after a wheel, a finger or a key a page's scrolling is still the user's, ms. */
const after = 700;

/** Tells when the user has scrolled the page. A page also scrolls by itself, to what has the focus: that is not told. */
export class OwnScrolling implements ReactiveController {
  readonly #onScrolled: () => void;
  #until = 0;

  constructor(onScrolled: () => void) {
    this.#onScrolled = onScrolled;
  }

  hostConnected(): void {
    for (const type of asked) window.addEventListener(type, this.#onAsked, passive);
    window.addEventListener("scroll", this.#onScroll, passive);
  }

  hostDisconnected(): void {
    for (const type of asked) window.removeEventListener(type, this.#onAsked);
    window.removeEventListener("scroll", this.#onScroll);
  }

  readonly #onAsked = (): void => {
    this.#until = performance.now() + after;
  };

  readonly #onScroll = (): void => {
    if (performance.now() < this.#until) this.#onScrolled();
  };
}
