import { html, type LitElement } from "lit";
import type { Catalogue } from "../reed/catalogue.js";
import { define } from "../widgets/define.js";
import { LateParts, type Loaders } from "./late-parts.js";
import { latePlace } from "./late-place.js";
import { audienceOf } from "./presenting.js";

const views: Loaders = {
  audience: async () => define("audience-view", (await import("./audience-view.js")).AudienceView),
};

/** The window for a class: it shows what the presenter's window sends, and nothing of a bench. */
export class ClassWindow {
  readonly #late: LateParts;
  readonly #pair: string | undefined;

  constructor(app: LitElement, address: string) {
    this.#late = new LateParts(app, views);
    this.#pair = audienceOf(address);
  }

  /** Whether this is the class's window. */
  get isOpen(): boolean {
    return this.#pair !== undefined;
  }

  /** What it shows; undefined where the address is that of the app itself. */
  view(text: Catalogue) {
    if (this.#pair === undefined) return undefined;
    const arrival = this.#late.arrival("audience");
    if (arrival !== "here") return latePlace(arrival, text);
    return html`<audience-view .pair=${this.#pair} .text=${text}></audience-view>`;
  }
}
