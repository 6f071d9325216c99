import type { FeatureId } from "../engine/model.js";
import { isRecord } from "../lesson/is-record.js";
import type { StepView } from "../lesson/lesson-view.js";
import type { LengthUnit } from "../reed/units.js";
import type { Theme } from "./theme.js";

/** Where the presenter points: within a block of the step, as fractions of its width and height. */
export interface Ring {
  readonly block: number;
  readonly x: number;
  readonly y: number;
}

/** What the audience sees. Of an open question it holds no key and nothing computed: `view` stops where the student is. */
export interface Slide {
  readonly title: string;
  readonly steps: number;
  readonly features?: readonly FeatureId[];
  readonly reed?: string;
  readonly start?: Readonly<Record<FeatureId, number>>;
  readonly view: StepView;
  readonly unit: LengthUnit;
  readonly theme: Theme;
  readonly blank: boolean;
  readonly ring?: Ring;
  /** Height of the smallest type as a share of the picture's height. */
  readonly type: number;
}

/** What a clicker's keys ask for. */
export type ClickerKey = "next" | "previous" | "blank" | "plain";

/** What goes between the two windows; whole snapshots, never changes. */
export type PresenterMessage =
  | { readonly kind: "slide"; readonly slide: Slide }
  | { readonly kind: "ping" }
  /** What the presenter has scrolled to the top: a block, and how far down in it, as a fraction. */
  | { readonly kind: "sight"; readonly block: number; readonly y: number }
  /** From the audience: it is there; `needs` when it has no slide yet. */
  | { readonly kind: "here"; readonly needs: boolean }
  /** From the audience: a clicker's key was pressed there. */
  | { readonly kind: "key"; readonly key: ClickerKey };

/** A message on its way. */
export interface Envelope {
  readonly reedpoint: "presenter";
  /** Which pair of windows it is for. */
  readonly pair: string;
  readonly from: "presenter" | "audience";
  /** When its sender was loaded, and its number since: later ones win, whatever way they came. */
  readonly session: number;
  readonly number: number;
  readonly message: PresenterMessage;
}

const clickerKeys: readonly unknown[] = ["next", "previous", "blank", "plain"];

/**
 * A message for this end of a pair, or undefined for anything else.
 *
 * Domain  anything that another window may send; never throws.
 */
export function readEnvelope(
  data: unknown,
  pair: string,
  from: Envelope["from"],
): Envelope | undefined {
  if (!isRecord(data) || data["reedpoint"] !== "presenter") return undefined;
  if (data["pair"] !== pair || data["from"] !== from) return undefined;
  const { session, number, message } = data;
  if (!Number.isFinite(session) || !Number.isInteger(number) || !isRecord(message))
    return undefined;
  const { kind, slide, needs, key, block, y } = message;
  const isSound =
    from === "presenter"
      ? kind === "ping" ||
        (kind === "slide" && isSlide(slide)) ||
        (kind === "sight" && Number.isInteger(block) && Number.isFinite(y))
      : (kind === "here" && typeof needs === "boolean") ||
        (kind === "key" && clickerKeys.includes(key));
  return isSound ? (data as unknown as Envelope) : undefined;
}

/** Whether something has the shape of a slide, as far as what is shown of it is concerned. */
export function isSlide(slide: unknown): slide is Slide {
  if (!isRecord(slide) || !isRecord(slide["view"])) return false;
  const { title, steps, unit, blank, type, view } = slide;
  const { step, title: stepTitle, blocks } = view as Readonly<Record<string, unknown>>;
  return (
    typeof title === "string" &&
    isCount(steps) &&
    typeof unit === "string" &&
    typeof blank === "boolean" &&
    Number.isFinite(type) &&
    isCount(step) &&
    typeof stepTitle === "string" &&
    Array.isArray(blocks) &&
    blocks.every((block: unknown) => isRecord(block) && typeof block["kind"] === "string")
  );
}

function isCount(value: unknown): boolean {
  return Number.isInteger(value) && (value as number) >= 0;
}

/** Whether a message is newer than the last one that was taken. */
export function isNewer(
  { session, number }: Pick<Envelope, "session" | "number">,
  last: Pick<Envelope, "session" | "number"> | undefined,
): boolean {
  if (!last || session > last.session) return true;
  return session === last.session && number > last.number;
}

/**
 * What a key of a clicker asks for; undefined for every other key. F5 stays the browser's: the page comes back as it was.
 *
 * @example clickerKey({ key: "PageDown" }) → "next"
 */
export function clickerKey(event: Pick<KeyboardEvent, "key" | "ctrlKey" | "altKey" | "metaKey">) {
  if (event.ctrlKey || event.altKey || event.metaKey) return undefined;
  const keys: Readonly<Record<string, ClickerKey>> = {
    PageDown: "next",
    PageUp: "previous",
    ".": "blank",
    Escape: "plain",
  };
  return Object.hasOwn(keys, event.key) ? keys[event.key] : undefined;
}

/** 28 px on a picture of 1080: the least for a room. */
export const leastType = 28 / 1080;

/**
 * How tall type must be for the last row, as a share of the picture's height: farthest seat ÷ (picture height × 200),
 * never less than `leastType`. The basic rule of AVIXA DISCAS; its 3.5 % for 10,500 mm and 1,500 mm is the test.
 *
 * Unit    both in the same unit of length.
 *
 * @example typeShare(10500, 1500) → 0.035
 */
export function typeShare(farthestSeat: number, pictureHeight: number): number {
  const asked = farthestSeat / (pictureHeight * 200);
  return Number.isFinite(asked) ? Math.min(0.12, Math.max(leastType, asked)) : leastType;
}
