/**
 * Lets a part of the page follow a fast gesture at its own pace: what it holds is renewed at once when nothing is
 * hurried, otherwise at most once in `milliseconds`; the last state is never left out.
 */
export class Pace<T> {
  readonly #milliseconds: number;
  readonly #renew: () => void;
  #held: T | undefined;
  #at = -Infinity;
  #timer: ReturnType<typeof setTimeout> | undefined;

  /** `renew` is called when something newer waits and its time has come. */
  constructor(milliseconds: number, renew: () => void) {
    this.#milliseconds = milliseconds;
    this.#renew = renew;
  }

  /** What to show now: the fresh thing, or the one shown last. */
  take(fresh: T, hurried: boolean): T {
    const wait = this.#at + this.#milliseconds - performance.now();
    if (!hurried || this.#held === undefined || wait <= 0) {
      this.stop();
      this.#at = performance.now();
      this.#held = fresh;
      return fresh;
    }
    // Beyond its time, so that while moves keep coming one of them does it, in the frame that is drawn anyway.
    clearTimeout(this.#timer);
    this.#timer = setTimeout(this.#renew, wait + 40);
    return this.#held;
  }

  stop(): void {
    clearTimeout(this.#timer);
    this.#timer = undefined;
  }
}
