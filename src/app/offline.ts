import { html, nothing, type ReactiveController, type ReactiveControllerHost } from "lit";
import { define } from "../widgets/define.js";
import type { BenchState } from "./bench-state.js";
import type { isLessonRunning } from "./lesson-running.js";
import { audienceOf } from "./presenting.js";
import { stateInside } from "./state-inside.js";

/** The app, as far as it matters to whether a new version may be taken. */
type App = ReactiveControllerHost & { readonly state: BenchState };

declare global {
  interface Window {
    readonly trustedTypes?: {
      createPolicy(
        name: string,
        rules: { readonly createScriptURL: () => string },
      ): { createScriptURL(address: string): string };
    };
  }
}

/**
 * Where the product may keep its files: not on a disk, in a frame or in the page of one file, nor in development. The
 * window for a class goes with the presenter's.
 */
function keeper(): ServiceWorkerContainer | undefined {
  const isOwnPage =
    window.top === window &&
    stateInside(document) === undefined &&
    audienceOf(window.location.href) === undefined;
  if (!import.meta.env.PROD || !isOwnPage || !window.location.protocol.startsWith("http"))
    return undefined;
  try {
    return navigator.serviceWorker;
  } catch {
    return undefined; // a sandbox refuses even the question
  }
}

/** The one address that this policy lets through. */
function workerAddress(): string {
  const rules = { createScriptURL: () => "service-worker.js" };
  const policy = window.trustedTypes?.createPolicy("reedpoint-service-worker", rules);
  return (policy ?? rules).createScriptURL("");
}

/** After the first visit the app works without a connection; a newer version is taken when nobody is disturbed. */
export class Offline implements ReactiveController {
  readonly #app: App;
  readonly #beforeReload: () => void;
  #next: ServiceWorker | undefined;
  #isRunning: typeof isLessonRunning | undefined;
  #isRunningSomewhere: (() => Promise<boolean>) | undefined;
  #isElsewhere = false;

  /** `beforeReload` writes down what is still to be written. */
  constructor(app: App, beforeReload: () => void) {
    this.#app = app;
    this.#beforeReload = beforeReload;
    app.addController(this);
  }

  hostConnected(): void {
    const container = keeper();
    if (!container) return;
    const register = () => void this.#register(container);
    // What the first screen needs comes first.
    if (document.readyState === "complete") register();
    else window.addEventListener("load", register, { once: true });
  }

  async #register(container: ServiceWorkerContainer): Promise<void> {
    try {
      const registration = await container.register(workerAddress(), { updateViaCache: "none" });
      if (registration.waiting) await this.#ready(registration.waiting, true);
      registration.addEventListener("updatefound", () => {
        const next = registration.installing;
        next?.addEventListener("statechange", () => {
          if (next.state === "installed" && container.controller) void this.#ready(next, false);
        });
      });
    } catch {
      // Where it is refused the app works as before, with a connection.
    }
  }

  /** A version that has been waiting since an earlier visit is taken at once, unless a lesson goes on. */
  async #ready(next: ServiceWorker, isEarlier: boolean): Promise<void> {
    const [{ NewVersionBar }, { isLessonRunning: isRunning }, { isLessonRunningSomewhere }] =
      await Promise.all([
        import("./new-version-bar.js"),
        import("./lesson-running.js"),
        import("./lesson-lock.js"),
      ]);
    this.#isRunningSomewhere = isLessonRunningSomewhere;
    define("new-version-bar", NewVersionBar);
    this.#isRunning = isRunning;
    this.#next = next;
    const isFree = !isRunning(this.#app.state) && !(await this.#looksElsewhere());
    if (isEarlier && isFree) this.#take();
    else this.#app.requestUpdate();
  }

  /** A lesson in another page is not disturbed either; once it is over, the bar says so. */
  async #looksElsewhere(): Promise<boolean> {
    this.#isElsewhere = (await this.#isRunningSomewhere?.()) ?? false;
    if (this.#isElsewhere) setTimeout(() => void this.#lookAgain(), 3000);
    return this.#isElsewhere;
  }

  async #lookAgain(): Promise<void> {
    await this.#looksElsewhere();
    this.#app.requestUpdate();
  }

  readonly #takeIfFree = async (): Promise<void> => {
    if (await this.#looksElsewhere()) this.#app.requestUpdate();
    else this.#take();
  };

  readonly #take = (): void => {
    const reload = () => {
      this.#beforeReload();
      window.location.reload();
    };
    // Another page may have taken it already.
    if (this.#next?.state === "activated") return reload();
    navigator.serviceWorker.addEventListener("controllerchange", reload, { once: true });
    this.#next?.postMessage("take");
  };

  /** What the page says of a version that is ready. */
  bar() {
    if (!this.#next || !this.#isRunning) return nothing;
    return html`<new-version-bar
      ?waits=${this.#isElsewhere || this.#isRunning(this.#app.state)}
      @version-taken=${this.#takeIfFree}
    ></new-version-bar>`;
  }
}
