import type { ReactiveController, ReactiveControllerHost } from "lit";

/** What is fetched only when it is shown first: by its name what brings and defines it. */
export type Loaders = Readonly<Record<string, () => Promise<unknown>>>;

/** How far a part is: while it is on its way its place is kept; where it has failed the page says so. */
export type Arrival = "here" | "coming" | "failed";

interface Part {
  arrival: Arrival;
  readonly coming: Promise<void>;
}

const parts = new Map<Loaders[string], Part>();

function setOut(load: Loaders[string]): Part {
  const part: Part = { arrival: "coming", coming: load().then(arrived, failed) };
  function arrived(): void {
    part.arrival = "here";
  }
  function failed(cause: unknown): void {
    console.warn("Reedpoint: a part could not be loaded", cause);
    part.arrival = "failed";
  }
  parts.set(load, part);
  return part;
}

/** Brings what its element is about to show, and lets the element render again when it is here. */
export class LateParts implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #loaders: Loaders;

  constructor(host: ReactiveControllerHost, loaders: Loaders) {
    this.#host = host;
    this.#loaders = loaders;
    host.addController(this);
  }

  hostConnected(): void {}

  /** How far a part is; what is asked for first sets out now. Any other name is here already. */
  arrival(name: string): Arrival {
    const load = this.#loaders[name];
    if (!load) return "here";
    const part = parts.get(load) ?? setOut(load);
    if (part.arrival === "coming") void part.coming.then(() => this.#host.requestUpdate());
    return part.arrival;
  }
}
