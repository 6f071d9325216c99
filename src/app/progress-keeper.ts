import type { ReactiveController, ReactiveControllerHost } from "lit";
import { mergedProgress, withSaved } from "../lesson/merged-progress.js";
import { keepable, noProgress, progressFrom, type Progress } from "../lesson/progress.js";
import { findStore, makeStore, type DeviceStore } from "./device-store.js";

/** Whether progress is kept: not at all, on this device, or only as long as the page is open because more is refused. */
export type Keeping = "off" | "device" | "memory";

/** What is to happen to progress. */
export type ProgressWish =
  | { readonly kind: "keep"; readonly on: boolean }
  | { readonly kind: "take"; readonly progress: Progress }
  | { readonly kind: "erase" };

/** Under which key of the store. */
const key = "progress";

/** Keeps progress in lessons once it is switched on; told after the fact, it never asks for a change. */
export class ProgressKeeper implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #onFound: (kept: Progress) => void;
  readonly #onEnded: (why: "memory" | "switchedOff") => void;
  #store: DeviceStore | undefined;
  /** Writes run one after the other; an erasure waits for those before it. */
  #queue: Promise<unknown> = Promise.resolve();

  constructor(
    host: ReactiveControllerHost,
    told: {
      /** Progress was found that was kept before. */
      readonly onFound: (kept: Progress) => void;
      /** Keeping has ended without this page's doing. */
      readonly onEnded: (why: "memory" | "switchedOff") => void;
    },
  ) {
    this.#host = host;
    this.#onFound = told.onFound;
    this.#onEnded = told.onEnded;
    host.addController(this);
  }

  get keeping(): Keeping {
    if (!this.#store) return "off";
    return this.#store.isLasting ? "device" : "memory";
  }

  hostConnected(): void {
    if (!this.#store) void this.#look();
  }

  async #look(): Promise<void> {
    const store = await findStore(this.#news);
    if (this.#store) return;
    if (!store) return this.#host.requestUpdate();
    this.#store = store;
    this.#onFound(progressFrom(await store.read(key)));
    this.#host.requestUpdate();
  }

  /** From now on progress is kept, beginning with what there is. */
  async switchOn(progress: Progress): Promise<void> {
    this.#store = await makeStore(this.#news);
    await this.tell(progress);
    this.#host.requestUpdate();
  }

  /** Progress as it is now; where nothing is switched on, nothing happens. */
  tell(progress: Progress): Promise<void> {
    return this.#next(async () => {
      await this.#store?.change(key, (kept) =>
        mergedProgress(keepable(progress), progressFrom(kept)),
      );
    });
  }

  /** Nothing is kept any more, and nothing is left of what was. */
  async switchOff(): Promise<void> {
    await this.#next(async () => {
      const store = this.#store;
      this.#store = undefined;
      await store?.erase();
    });
    this.#host.requestUpdate();
  }

  /**
   * What was kept is erased, for all pages that are open; this one goes on keeping where it did. What another page
   * still holds was begun before, so it does not come back, even where the clock has been set back since.
   */
  async eraseAll({ born = 0 }: Progress): Promise<Progress> {
    const wasOn = this.#store !== undefined;
    await this.switchOff();
    if (!wasOn) return noProgress;
    const anew = { ...noProgress, born: Math.max(Date.now(), born + 1) };
    await this.switchOn(anew);
    return anew;
  }

  /** Does what is wished for; what progress is then, and the name of what is said of it. */
  async fulfil(
    wish: ProgressWish,
    progress: Progress,
  ): Promise<{
    readonly progress: Progress;
    readonly says?: "erased" | "memory" | "switchedOn" | "switchedOff";
  }> {
    if (wish.kind === "take") return { progress: withSaved(progress, wish.progress) };
    if (wish.kind === "erase") {
      return { progress: await this.eraseAll(progress), says: "erased" };
    }
    if (!wish.on) {
      await this.switchOff();
      return { progress, says: "switchedOff" };
    }
    await this.switchOn(progress);
    return { progress, says: this.keeping === "memory" ? "memory" : "switchedOn" };
  }

  async #next(work: () => Promise<void>): Promise<void> {
    this.#queue = this.#queue.then(work, work);
    await this.#queue;
  }

  readonly #news = {
    onErased: (): void => {
      this.#store = undefined;
      this.#host.requestUpdate();
      void this.#afterErasure();
    },
    onRefused: (): void => {
      this.#host.requestUpdate();
      this.#onEnded("memory");
    },
  };

  /** Another page has erased everything, and goes on keeping, or has only switched keeping off. */
  async #afterErasure(): Promise<void> {
    await new Promise((resolve) => setTimeout(resolve, 500));
    await this.#look();
    if (!this.#store) this.#onEnded("switchedOff");
  }
}
