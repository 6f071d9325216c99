/**
 * Runs something once nothing has asked for it for a while. Asking again only moves the time: a drag asks a hundred times
 * a second, and a timer made for each would cost more than what it is for.
 */
export class Deadline {
  readonly #run: () => void;
  #due = 0;
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(run: () => void) {
    this.#run = run;
  }

  get isSet(): boolean {
    return this.#timer !== undefined;
  }

  /** So many ms from now, whatever was set before. */
  set(milliseconds: number): void {
    const before = this.#due;
    this.#due = performance.now() + milliseconds;
    if (this.#timer === undefined || this.#due < before) this.#arm(milliseconds);
  }

  clear(): void {
    clearTimeout(this.#timer);
    this.#timer = undefined;
  }

  #arm(milliseconds: number): void {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.#onTime(), milliseconds);
  }

  #onTime(): void {
    const left = this.#due - performance.now();
    if (left > 1) {
      this.#arm(left);
      return;
    }
    this.#timer = undefined;
    this.#run();
  }
}
