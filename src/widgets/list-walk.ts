import type { ReactiveControllerHost } from "lit";

/** Keys that open the browser's own list, in which choosing is one press. */
const opening = new Set([" ", "F4"]);

/**
 * A list whose entries can be walked by the arrow keys without choosing one: a browser reports every step of a walk as
 * a change. Only Enter, or a choice by pointer, chooses.
 */
export class ListWalk {
  readonly #host: Pick<ReactiveControllerHost, "requestUpdate">;
  readonly #choose: (value: string) => void;
  #isWalking = false;
  #walked: string | undefined;

  constructor(
    host: Pick<ReactiveControllerHost, "requestUpdate">,
    choose: (value: string) => void,
  ) {
    this.#host = host;
    this.#choose = choose;
  }

  /** The entry that the keys have come to and nobody has chosen yet. */
  get walked(): string | undefined {
    return this.#walked;
  }

  readonly onKey = ({ key, altKey }: KeyboardEvent): void => {
    this.#isWalking = !opening.has(key) && !altKey;
    if (key === "Enter") this.choose();
  };

  readonly onPointer = (): void => {
    this.#isWalking = false;
  };

  readonly onChange = ({ target }: Event): void => {
    this.#stand((target as HTMLSelectElement).value);
    if (!this.#isWalking) this.choose();
  };

  /** Chooses where the walk has come to. */
  readonly choose = (): void => {
    const value = this.#walked;
    this.leave();
    if (value !== undefined) this.#choose(value);
  };

  /** The walk is over, and nothing was chosen. */
  readonly leave = (): void => {
    this.#isWalking = false;
    this.#stand(undefined);
  };

  #stand(value: string | undefined): void {
    if (value === this.#walked) return;
    this.#walked = value;
    this.#host.requestUpdate();
  }
}
