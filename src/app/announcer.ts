import { Deadline } from "./deadline.js";

/** Words, and a state behind them that need not be said again while it stays as it was. */
export interface Announcement {
  readonly words: string;
  readonly state: string;
  /** The state is said whatever was said before. */
  readonly anyway?: boolean;
}

/** Says things to a screen reader through one polite live region, never the same words twice in a row. */
export class Announcer {
  readonly #say: (words: string) => void;
  readonly #delay: number;
  #last = "";
  #state = "";
  #words: (() => string | Announcement) | undefined;
  readonly #rest = new Deadline(() => this.now(this.#words?.() ?? ""));

  /** `say` puts the words into the live region; `delay` (ms) is how long a movement must rest first. */
  constructor(say: (words: string) => void, delay = 500) {
    this.#say = say;
    this.#delay = delay;
  }

  /** For movement: only the last words of a run are said, and only they are made. */
  later(words: () => string | Announcement): void {
    this.#words = words;
    this.#rest.set(this.#delay);
  }

  /** For events. */
  now(said: string | Announcement): void {
    this.#rest.clear();
    const words = typeof said === "string" ? said : this.#wordsOf(said);
    if (words === this.#last) return;
    this.#last = words;
    this.#say(words);
  }

  #wordsOf({ words, state, anyway = false }: Announcement): string {
    const isKnown = state === this.#state && !anyway && words !== "";
    this.#state = state;
    return [words, isKnown ? "" : state].filter(Boolean).join(" ");
  }

  /** Forgets what was to be said. */
  stop(): void {
    this.#rest.clear();
  }
}
