import { Deadline } from "./deadline.js";

/** What the address bar is told: the bench's code, and what no link holds but a reload brings back. */
export interface HistoryEntry {
  readonly code: string;
  readonly beside: unknown;
}

/** Browsers that refuse too many changes count them over half a minute, ms. */
const retryAfter = 10_000;

/** The address bar as the bench's compact form: told after the fact, asked only on opening and when a link is followed. */
export class AddressBar {
  readonly #window: Window;
  readonly #onOpened: (code: string) => void;
  readonly #onRevisited: (code: string) => void;
  readonly #rest = new Deadline(() => this.#flush());
  #written: string;

  constructor(
    page: Window,
    told: {
      /** A link was followed, or an address typed. */
      readonly onOpened: (code: string) => void;
      /** Back or Forward led to where the app was before. */
      readonly onRevisited: (code: string) => void;
    },
  ) {
    this.#window = page;
    this.#onOpened = told.onOpened;
    this.#onRevisited = told.onRevisited;
    this.#written = this.code();
  }

  /** What the address holds now, without its "#". */
  code(): string {
    return this.#window.location.hash.slice(1);
  }

  connect(): void {
    this.#window.addEventListener("popstate", this.#onPop);
    this.#window.addEventListener("hashchange", this.#onHash);
    this.#mark();
    // A reload reads what was written before the page began to go; a phone may tell only that the page is hidden.
    this.#window.addEventListener("beforeunload", this.#flush);
    this.#window.addEventListener("pagehide", this.#flush);
  }

  disconnect(): void {
    this.#rest.clear();
    this.#window.removeEventListener("popstate", this.#onPop);
    this.#window.removeEventListener("hashchange", this.#onHash);
    this.#window.removeEventListener("beforeunload", this.#flush);
    this.#window.removeEventListener("pagehide", this.#flush);
  }

  /**
   * Browsers refuse more than some 200 changes in half a minute, so a drag is written when it rests; only then are the code
   * and what lies beside it made.
   */
  tell(make: () => HistoryEntry): void {
    this.#pending = make;
    this.#rest.set(200);
  }

  /** Another place in the app: an entry of its own in the browser's history, to which Back leads. */
  enter(make: () => HistoryEntry): void {
    this.#pending = make;
    this.#isEntry = true;
    this.#flush();
  }

  /** The entry that the app began with is told from a link that is followed later. */
  #mark(): void {
    const { history } = this.#window;
    if (isOwn(history.state)) return;
    try {
      history.replaceState({ code: this.code() }, "");
    } catch {
      // A page in a sandbox may not; it has no history to go back in either.
    }
  }

  /** The whole address for a code. */
  linkTo(code: string): string {
    return `${this.#window.location.href.split("#")[0]}#${code}`;
  }

  #pending: (() => HistoryEntry) | undefined;
  /** Whether what is pending is an entry of its own. */
  #isEntry = false;

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
      this.#isEntry = false;
    } catch (error) {
      this.#refused(error);
    }
  };

  #write(told: HistoryEntry): void {
    const { history } = this.#window;
    const address = `#${told.code}`;
    const write = (state: object): void =>
      this.#isEntry
        ? history.pushState(state, "", address)
        : history.replaceState(state, "", address);
    try {
      write(told);
    } catch (error) {
      if (!(error instanceof DOMException && error.name === "DataCloneError")) throw error;
      console.warn(
        "Reedpoint: what lies beside the address cannot be kept through a reload.",
        error,
      );
      write({ code: told.code });
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

  readonly #onPop = ({ state }: PopStateEvent): void => {
    if (!isOwn(state)) return; // an address that was typed or followed: told by its hash
    this.#forget();
    this.#onRevisited(this.code());
  };

  #forget(): void {
    this.#written = this.code();
    this.#pending = undefined;
    this.#isEntry = false;
    this.#rest.clear();
  }

  readonly #onHash = (): void => {
    if (this.code() === this.#written) return;
    this.#forget();
    this.#mark();
    this.#onOpened(this.code());
  };
}

/** Whether the app has written this entry of the history. */
function isOwn(state: unknown): state is { readonly code: string } {
  return typeof (state as { code?: unknown } | null)?.code === "string";
}
