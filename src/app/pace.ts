import { Deadline } from "./deadline.js";

/** Changes that follow each other faster than this are a hurry, ms: a drag brings one a frame, a key at most thirty a second. */
const hurry = 30;

/**
 * Lets a part of the page follow a fast gesture at its own pace: what it holds is renewed at once unless changes come
 * thick and fast, then at most once in `milliseconds`; the last one is never left out.
 */
export class Pace<T> {
  readonly #milliseconds: number;
  #held: T | undefined;
  #newest: T | undefined;
  #came = -Infinity;
  #renewed = -Infinity;
  readonly #late: Deadline;

  /** `renew` is called when something newer waits and its time has come. */
  constructor(milliseconds: number, renew: () => void) {
    this.#milliseconds = milliseconds;
    this.#late = new Deadline(renew);
  }

  /** What to show now: the fresh thing, or the one shown last. Outside a gesture nothing waits. */
  take(fresh: T, gesture: boolean, now = performance.now()): T {
    const another = fresh !== this.#newest;
    const hurried = gesture && another && now - this.#came < hurry;
    if (another) [this.#came, this.#newest] = [now, fresh];
    const wait = this.#renewed + this.#milliseconds - now;
    if (this.#held !== undefined && hurried && wait > 0) {
      // Beyond its time, so that while moves keep coming one of them does it, in the frame that is drawn anyway.
      if (!this.#late.isSet) this.#late.set(wait + 40);
      return this.#held;
    }
    this.stop();
    this.#renewed = now;
    this.#held = fresh;
    return fresh;
  }

  stop(): void {
    this.#late.clear();
  }
}
