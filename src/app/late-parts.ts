import type { ReactiveController, ReactiveControllerHost } from "lit";
import { define } from "../widgets/define.js";

/** What is fetched only when it is shown first: by its name what brings and defines it. */
const loaders: Readonly<Record<string, () => Promise<unknown>>> = {
  measure: async () => define("measure-page", (await import("./measure-page.js")).MeasurePage),
  lip: async () => define("bench-lip", (await import("./bench-lip.js")).BenchLip),
  plan: () => import("./plan-parts.js"),
  standIns: async () =>
    define("bench-stand-ins", (await import("./bench-stand-ins.js")).BenchStandIns),
};

/** How far a part is: while it is on its way its place is kept; where it has failed the page says so. */
export type Arrival = "here" | "coming" | "failed";

const arrivals = new Map<string, Arrival>();
const onTheWay = new Map<string, Promise<void>>();

function fetchPart(part: string): Promise<void> {
  const coming = onTheWay.get(part) ?? fetchOnce(part);
  onTheWay.set(part, coming);
  return coming;
}

async function fetchOnce(part: string): Promise<void> {
  arrivals.set(part, "coming");
  try {
    await loaders[part]!();
    arrivals.set(part, "here");
  } catch (cause) {
    console.warn(`Reedpoint: ${part} could not be loaded`, cause);
    arrivals.set(part, "failed");
  }
}

/** Brings what its element is about to show, and lets the element render again when it is here. */
export class LateParts implements ReactiveController {
  readonly #host: ReactiveControllerHost;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  hostConnected(): void {}

  /** How far a part is; what is asked for first sets out now. Any other name is here already. */
  arrival(part: string): Arrival {
    if (!(part in loaders)) return "here";
    const arrival = arrivals.get(part);
    if (arrival !== "here" && arrival !== "failed") void this.#await(part);
    return arrival ?? "coming";
  }

  async #await(part: string): Promise<void> {
    await fetchPart(part);
    this.#host.requestUpdate();
  }
}
