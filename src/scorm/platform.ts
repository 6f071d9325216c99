import type { Dialect, Elements, Report } from "./dialect.js";
import { findPlatform, type PlatformApi, type Surroundings } from "./find-platform.js";
import type { MarkedAnswer } from "./marked-answer.js";
import type { KeptText } from "./unpack-attempt.js";

/** So many answers are listed at most: the standard asks no platform to keep more (SCORM 2004, 4.2.9). */
const mostInteractions = 250;

/** None found; found, but it does not begin; in conversation; ended. */
export type PlatformState = "absent" | "closed" | "open" | "over";

/**
 * The conversation with a learning platform: begun once, ended once, silent before and after and where there is none.
 * It reads what it has itself written (place, attempt, status, how many answers are listed) and nothing else.
 */
export class Platform {
  readonly #dialect: Dialect;
  readonly #now: () => number;
  #api: PlatformApi | undefined;
  #state: PlatformState = "absent";
  #since = 0;
  #wasDone = false;
  #wasPassed = false;
  #isKept = true;
  readonly #written = new Map<string, string>();

  /** `now` gives milliseconds. */
  constructor(dialect: Dialect, now: () => number = Date.now) {
    this.#dialect = dialect;
    this.#now = now;
  }

  get state(): PlatformState {
    return this.#state;
  }

  /** Whether the platform has taken all that it was told last. */
  get isKept(): boolean {
    return this.#isKept;
  }

  /** Looks for a platform and begins; what it has kept of an earlier sitting, or undefined where there is none. */
  start(view: Surroundings): KeptText | undefined {
    if (this.#state !== "absent") return undefined;
    this.#api = findPlatform(view, this.#dialect.api);
    if (!this.#api) return undefined;
    this.#state = isTrue(this.#ask(this.#dialect.initialize, "")) ? "open" : "closed";
    if (this.#state === "closed") return undefined;
    this.#since = this.#now();
    const { status, success, packed, place } = this.#dialect;
    const was = this.#get(status);
    this.#wasDone = this.#dialect.isDone(was);
    this.#wasPassed = (success === status ? was : this.#get(success)) === "passed";
    return { packed: this.#get(packed), place: this.#get(place) };
  }

  /** Tells how far the lesson is, without asking that it be kept at once. */
  note(report: Report): void {
    if (this.#state !== "open") return;
    const seconds = (this.#now() - this.#since) / 1000;
    // What was completed or passed once is not taken back.
    const stays =
      (this.#wasDone && report.status === "incomplete") ||
      (this.#wasPassed && report.status !== "passed");
    const statuses = stays ? [] : this.#dialect.statuses(report);
    const taken = this.#write([...statuses, ...this.#dialect.reported(report, seconds)]);
    this.#isKept = !taken.includes(false);
  }

  /** Tells how far the lesson is; the platform is to keep it now. */
  keep(report: Report): void {
    if (this.#state !== "open") return;
    this.note(report);
    this.#isKept = isTrue(this.#ask(this.#dialect.commit, "")) && this.#isKept;
  }

  /** Adds an answer to the platform's list of them, where it has one. */
  answered(answer: MarkedAnswer): void {
    if (this.#state !== "open") return;
    const count = this.#get(this.#dialect.count);
    if (!/^\d{1,5}$/.test(count) || Number(count) >= mostInteractions) return;
    this.#write(this.#dialect.interaction(Number(count), answer));
  }

  /** Tells the last of it and ends the conversation: from here on nothing is called any more. */
  finish(report: Report): void {
    if (this.#state !== "open") return;
    this.note(report);
    this.#state = "over";
    this.#ask(this.#dialect.terminate, "");
  }

  /** Writes what differs from what was written last; for each, whether it was taken. */
  #write(elements: Elements): boolean[] {
    return elements.flatMap(([element, value]) => {
      if (this.#written.get(element) === value) return [];
      const taken = isTrue(this.#ask(this.#dialect.set, element, value));
      if (taken) this.#written.set(element, value);
      // Scores are the platform's choice in the standard; without them the rest is as good.
      return element.includes(".score.") ? [] : [taken];
    });
  }

  #get(element: string): string {
    return this.#ask(this.#dialect.get, element);
  }

  /** A platform that throws, or that gives nothing, has said nothing. */
  #ask(call: string, ...words: readonly string[]): string {
    type Calls = Readonly<Record<string, ((...words: readonly string[]) => unknown) | undefined>>;
    try {
      const answer = (this.#api as Calls)[call]?.(...words);
      // Text by the standard; some platforms answer with the value itself.
      return typeof answer === "string" || typeof answer === "boolean" || typeof answer === "number"
        ? String(answer)
        : "";
    } catch {
      return "";
    }
  }
}

function isTrue(answer: string): boolean {
  return answer === "true";
}
