import {
  isNewer,
  readEnvelope,
  type Envelope,
  type PresenterMessage,
} from "./presenter-messages.js";

/** How long the other window may be silent before it counts as gone, ms; it is asked twice in that time. */
const silence = 4500;

/**
 * One end of a pair of windows on one machine. What is sent goes over a broadcast channel and, where there is none, from
 * window to window; the receiver takes every message once. Either end asks for the other by
 * its own timer, for those of a window that is hidden are slowed down.
 */
export class WindowPair {
  readonly #pair: string;
  readonly #from: Envelope["from"];
  readonly #onMessage: (message: PresenterMessage) => void;
  readonly #onConnected: () => void;
  /** Later than that of any window or pair that was here before. */
  readonly #session = performance.timeOrigin + performance.now();
  #channel: BroadcastChannel | undefined;
  #other: Window | undefined;
  #number = 0;
  #last: Envelope | undefined;
  #heard = -Infinity;
  #wasConnected = false;
  #timer: ReturnType<typeof setInterval> | undefined;

  constructor(
    pair: string,
    from: Envelope["from"],
    told: {
      readonly onMessage: (message: PresenterMessage) => void;
      readonly onConnected: () => void;
    },
  ) {
    this.#pair = pair;
    this.#from = from;
    this.#onMessage = told.onMessage;
    this.#onConnected = told.onConnected;
    this.#channel = channelOf(pair);
    this.#other = openerOf(from);
  }

  get isConnected(): boolean {
    return performance.now() - this.#heard < silence;
  }

  /** The window that has just been opened as the other end. */
  set other(other: Window) {
    this.#other = other;
  }

  open(): void {
    this.#channel?.addEventListener("message", this.#onData);
    window.addEventListener("message", this.#onData);
    this.#timer = setInterval(() => this.#tick(), silence / 3);
    this.#tick();
  }

  close(): void {
    clearInterval(this.#timer);
    this.#channel?.removeEventListener("message", this.#onData);
    this.#channel?.close();
    // An update that was pending may still want to send.
    this.#channel = this.#other = undefined;
    window.removeEventListener("message", this.#onData);
  }

  send(message: PresenterMessage): void {
    this.#number += 1;
    const envelope: Envelope = {
      reedpoint: "presenter",
      pair: this.#pair,
      from: this.#from,
      session: this.#session,
      number: this.#number,
      message,
    };
    this.#channel?.postMessage(envelope);
    try {
      // A file and a sandbox have no origin that could be named; there is nothing secret on a slide.
      this.#other?.postMessage(envelope, self.origin === "null" ? "*" : self.origin);
    } catch {
      this.#other = undefined;
    }
  }

  #tick(): void {
    if (this.#from === "presenter") this.send({ kind: "ping" });
    // Of a presenter's window that is hidden the timers are slowed down: it is asked, and answers at once.
    else if (performance.now() - this.#heard > silence / 2)
      this.send({ kind: "here", needs: true });
    this.#look();
  }

  #look(): void {
    if (this.isConnected === this.#wasConnected) return;
    this.#wasConnected = this.isConnected;
    this.#onConnected();
  }

  readonly #onData = (event: Event): void => {
    const { data, origin, source } = event as MessageEvent<unknown>;
    if (origin !== self.origin && location.protocol !== "file:") return;
    const far = this.#from === "presenter" ? "audience" : "presenter";
    const envelope = readEnvelope(data, this.#pair, far);
    if (!envelope || !isNewer(envelope, this.#last)) return;
    this.#last = envelope;
    // After a reload only the other end knows the way to this window.
    if (source && "closed" in source) this.#other = source;
    this.#heard = performance.now();
    this.#onMessage(envelope.message);
    this.#look();
  };
}

function channelOf(pair: string): BroadcastChannel | undefined {
  try {
    return new BroadcastChannel(`reedpoint-presenter-${pair}`);
  } catch {
    return undefined;
  }
}

function openerOf(from: Envelope["from"]): Window | undefined {
  if (from === "presenter") return undefined;
  try {
    return (window.opener as Window | null) ?? undefined;
  } catch {
    return undefined;
  }
}
