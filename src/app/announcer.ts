import { Deadline } from "./deadline.js";

/** Says things to a screen reader through one polite live region, never the same words twice in a row. */
export class Announcer {
  readonly #say: (words: string) => void;
  readonly #delay: number;
  #last = "";
  #words: (() => string) | undefined;
  readonly #rest = new Deadline(() => this.now(this.#words?.() ?? ""));

  /** `say` puts the words into the live region; `delay` (ms) is how long a movement must rest first. */
  constructor(say: (words: string) => void, delay = 500) {
    this.#say = say;
    this.#delay = delay;
  }

  /** For movement: only the last words of a run are said, and only they are made. */
  later(words: () => string): void {
    this.#words = words;
    this.#rest.set(this.#delay);
  }

  /** For events. */
  now(words: string): void {
    this.#rest.clear();
    if (words === this.#last) return;
    this.#last = words;
    this.#say(words);
  }

  /** Forgets what was to be said. */
  stop(): void {
    this.#rest.clear();
  }
}
