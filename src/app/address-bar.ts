import { Deadline } from "./deadline.js";

/** What the address bar is told: the bench's code, and what no link holds but a reload brings back. */
export interface Told {
  readonly code: string;
  readonly beside: unknown;
}

/** Browsers that refuse too many changes count them over half a minute, ms. */
const retryAfter = 10_000;

/** The address bar as the bench's compact form: told after the fact, asked only on opening and when a link is followed. */
export class AddressBar {
  readonly #window: Window;
  readonly #onOpened: (code: string) => void;
  readonly #rest = new Deadline(() => this.#flush());
  #written: string;

  constructor(page: Window, onOpened: (code: string) => void) {
    this.#window = page;
    this.#onOpened = onOpened;
    this.#written = this.code();
  }

  /** What the address holds now, without its "#". */
  code(): string {
    return this.#window.location.hash.slice(1);
  }

  connect(): void {
    this.#window.addEventListener("hashchange", this.#onHash);
    // A reload reads what was written before the page began to go; a phone may tell only that the page is hidden.
    this.#window.addEventListener("beforeunload", this.#flush);
    this.#window.addEventListener("pagehide", this.#flush);
  }

  disconnect(): void {
    this.#rest.clear();
    this.#window.removeEventListener("hashchange", this.#onHash);
    this.#window.removeEventListener("beforeunload", this.#flush);
    this.#window.removeEventListener("pagehide", this.#flush);
  }

  /**
   * Browsers refuse more than some 200 changes in half a minute, so a drag is written when it rests; only then are the code
   * and what lies beside it made.
   */
  tell(make: () => Told): void {
    this.#pending = make;
    this.#rest.set(200);
  }

  /** The whole address for a code. */
  linkTo(code: string): string {
    return `${this.#window.location.href.split("#")[0]}#${code}`;
  }

  #pending: (() => Told) | undefined;

  /** What was told beside the code the last time, if this page was left with that code: it outlasts a reload, no more. */
  beside(): unknown {
    const kept = this.#window.history.state as { code?: unknown; beside?: unknown } | null;
    return kept?.code === this.code() ? kept.beside : undefined;
  }

  readonly #flush = (): void => {
    this.#rest.clear();
    const make = this.#pending;
    if (!make) return;
    const told = make();
    try {
      this.#write(told);
      this.#written = told.code;
      this.#pending = undefined;
    } catch (error) {
      this.#refused(error);
    }
  };

  #write(told: Told): void {
    const { history } = this.#window;
    const address = `#${told.code}`;
    try {
      history.replaceState(told, "", address);
    } catch (error) {
      if (!(error instanceof DOMException && error.name === "DataCloneError")) throw error;
      console.warn(
        "Reedpoint: what lies beside the address cannot be kept through a reload.",
        error,
      );
      history.replaceState({ code: told.code }, "", address);
    }
  }

  /** What was not written waits and is tried again; a page without an origin of its own may never change its address. */
  #refused(error: unknown): void {
    if (this.#window.origin === "null") {
      this.#pending = undefined;
      return;
    }
    console.warn("Reedpoint: the address could not be changed; it is tried again.", error);
    this.#rest.set(retryAfter);
  }

  /** Writes at once what was told: a reload that a script begins reads the address before the page hears of it. */
  settle(): void {
    this.#flush();
  }

  readonly #onHash = (): void => {
    if (this.code() === this.#written) return;
    this.#written = this.code();
    this.#pending = undefined;
    this.#rest.clear();
    this.#onOpened(this.code());
  };
}
