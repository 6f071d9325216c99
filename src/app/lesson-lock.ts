/** Held by every page in which a lesson runs; other pages of the product ask for it. */
const name = "reedpoint-lesson-running";

/** Tells the other pages of the product whether a lesson runs in this one. */
export class LessonLock {
  #release: (() => void) | undefined;

  /** Holds it as long as a lesson runs; where there are no locks, each page looks after itself. */
  hold(isRunning: boolean): void {
    if (isRunning === (this.#release !== undefined)) return;
    if (!isRunning) {
      this.#release?.();
      this.#release = undefined;
      return;
    }
    const over = new Promise<void>((resolve) => (this.#release = resolve));
    locks()
      ?.request(name, { mode: "shared" }, () => over)
      .catch(() => undefined);
  }
}

/** Whether a lesson runs in any page of the product. */
export async function isLessonRunningSomewhere(): Promise<boolean> {
  try {
    const { held = [] } = (await locks()?.query()) ?? {};
    return held.some((one) => one.name === name);
  } catch {
    return false;
  }
}

function locks(): LockManager | undefined {
  return (navigator as { readonly locks?: LockManager }).locks;
}
