/** The address bar as the bench's compact form: told after the fact, asked only on opening and when a link is followed. */
export class AddressBar {
  readonly #window: Window;
  readonly #onOpened: (code: string) => void;
  #timer: ReturnType<typeof setTimeout> | undefined;
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
    this.#window.addEventListener("pagehide", this.#flush);
  }

  disconnect(): void {
    clearTimeout(this.#timer);
    this.#window.removeEventListener("hashchange", this.#onHash);
    this.#window.removeEventListener("pagehide", this.#flush);
  }

  /** Browsers refuse more than some 200 changes in half a minute, so a drag is written when it rests. */
  tell(code: string, beside: unknown): void {
    if (code === this.#pending && beside === this.#beside) return;
    this.#pending = code;
    this.#beside = beside;
    clearTimeout(this.#timer);
    this.#timer = setTimeout(this.#flush, 200);
  }

  /** The whole address for a code. */
  linkTo(code: string): string {
    return `${this.#window.location.href.split("#")[0]}#${code}`;
  }

  #pending: string | undefined;
  #beside: unknown;

  /** What was told beside the code the last time, if this page was left with that code: it outlasts a reload, no more. */
  beside(): unknown {
    const kept = this.#window.history.state as { code?: unknown; beside?: unknown } | null;
    return kept?.code === this.code() ? kept.beside : undefined;
  }

  readonly #flush = (): void => {
    clearTimeout(this.#timer);
    if (this.#pending === undefined) return;
    this.#written = this.#pending;
    const kept = { code: this.#pending, beside: this.#beside };
    this.#window.history.replaceState(kept, "", `#${this.#pending}`);
  };

  readonly #onHash = (): void => {
    if (this.code() === this.#written) return;
    this.#written = this.code();
    this.#pending = undefined;
    clearTimeout(this.#timer);
    this.#onOpened(this.code());
  };
}
